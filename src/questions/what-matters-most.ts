// What matters most? Every input moved, one at a time, across its plausible range, and ranked by what it does to
// hours too hot, heat and humid hours; then a spread of samples over what nobody can know beforehand, so that
// each headline figure can be given as a range.

import { valueAt } from '../design/design-path.ts';
import { hotInWords } from './criterion.ts';
import type { FigureKey } from './figures.ts';
import { FIGURE_NAMES } from './figures.ts';
import { type MovedInput, movedInputs } from './inputs-moved.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence, Table } from './question.ts';
import type { RunJob } from './run-job.ts';
import { runAt } from './run-table.ts';
import { quantile, sampled } from './unknowns.ts';
import { varied, withGlassAsArea } from './variation.ts';
import { capitalised, countInWords, hoursInWords, lowered, type Words } from './words.ts';

const DRAWN = 'as drawn';
const SAMPLE = 'sample';
const RANKED = ['tooHotHours', 'heatingKWh', 'humidHours'] as const;
type Ranked = (typeof RANKED)[number];
const SPREAD: readonly FigureKey[] = [
  'tooHotHours',
  'heatingKWh',
  'coldestC',
  'warmestC',
  'humidHours',
  'mouldIndex',
];

/** What comes with the family and the plot: ranked in the tables, and not named as what to change. */
const GIVEN: readonly string[] = ['house.floorAreaM2', 'people.count', 'air.shelter'];

/** An input with what its moves do. */
export interface Effect {
  readonly input: MovedInput;
  /** drawn value first, then the values tried, each with its run */
  readonly tried: readonly { readonly value: unknown; readonly run: Run }[];
  /** largest less smallest over the tried values */
  readonly span: Readonly<Record<Ranked, number>>;
}

export const whatMattersMost: Question = {
  id: 'what-matters-most',
  title: 'What matters most?',
  asks: 'Which inputs move the answer most, and how sure can the figures be?',
  plan: (basis) => {
    const design = withGlassAsArea(basis.design);
    const moved = movedInputs(design).flatMap(({ path, label, values, unit }) =>
      values.map(
        (value): RunJob => ({
          id: idOf(path, value),
          label: `${label}: ${valueInWords(value, unit, basis.words)}`,
          design: varied(design, { [path]: value }),
          at: { path, value: String(value) },
        }),
      ),
    );
    const samples = sampled(design, basis.samples).map(
      (sample, i): RunJob => ({
        id: `${SAMPLE} ${i + 1}`,
        label: `${SAMPLE} ${i + 1}`,
        ...sample,
        at: { sample: i + 1 },
      }),
    );
    return [{ id: DRAWN, label: DRAWN, design, at: {} }, ...moved, ...samples];
  },
  answer,
};

function idOf(path: string, value: unknown): string {
  return `${path} = ${String(value)}`;
}

function valueInWords(value: unknown, unit: string, words: Words): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number' && unit === 'm²') return words.area(value);
  if (typeof value === 'number' && unit === 'm')
    return value < 1 ? words.thickness(value) : words.length(value);
  if (typeof value === 'number' && unit === '°C') return words.temperature(value, 1);
  if (typeof value === 'number' && unit === 'm²K/W') return words.resistance(value);
  const text = typeof value === 'number' ? String(Number(value.toPrecision(3))) : String(value);
  return unit === '' ? text : unit === '°' ? `${text}°` : `${text} ${unit}`;
}

/** Effects of the inputs whose runs are all in, in the order of the inputs. */
export function effectsOf(basis: Basis, runs: Runs): readonly Effect[] {
  const drawn = runs.get(DRAWN);
  if (drawn === undefined) return [];
  const design = withGlassAsArea(basis.design);
  return movedInputs(design).flatMap((input): Effect[] => {
    const moved = input.values.map((value) => ({ value, run: runs.get(idOf(input.path, value)) }));
    if (moved.some(({ run }) => run === undefined)) return [];
    const tried = [{ value: valueAt(design, input.path), run: drawn }, ...moved].map(({ value, run }) => ({
      value,
      run: run!,
    }));
    const span = (key: Ranked) => {
      const values = tried.map(({ run }) => run.figures[key]);
      return Math.max(...values) - Math.min(...values);
    };
    return [
      {
        input,
        tried,
        span: {
          tooHotHours: span('tooHotHours'),
          heatingKWh: span('heatingKWh'),
          humidHours: span('humidHours'),
        },
      },
    ];
  });
}

/** The same, largest span first; of equal spans in the order of the inputs. */
export function ranked(effects: readonly Effect[], key: Ranked): readonly Effect[] {
  return [...effects].sort((one, other) => other.span[key] - one.span[key]);
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const effects = effectsOf(basis, runs);
  return {
    finding: complete ? finding(effects, runs, basis) : null,
    charts: [],
    tables: [...RANKED.map((key) => rankingTable(effects, key, basis.words)), ...spreadTable(runs)],
    map: null,
    notes: [
      'Each input alone goes across the range a designer would plausibly move in; two moved together may do more or less than the sum.',
      'The spread draws airtightness from 0.7 to 2 times as drawn, habits, one person more or less, daily moisture, set-points, appliances, ground and land around, and a year 1 K cooler or warmer; these ranges are house rules.',
    ],
    proposal: null,
  };
}

function rankingTable(effects: readonly Effect[], key: Ranked, words: Words): Table {
  const { label, unit, digits } = FIGURE_NAMES[key];
  return {
    id: `rank-${key}`,
    title: `What moves ${label} most`,
    columns: [
      { label: 'input', unit: '', digits: 0 },
      { label: 'at its least', unit: '', digits: 0 },
      { label: label, unit, digits },
      { label: 'at its most', unit: '', digits: 0 },
      { label: label, unit, digits },
      { label: 'moves by', unit, digits },
    ],
    rows: ranked(effects, key).map((effect) => {
      const { input, span } = effect;
      const [least, most] = extremes(effect, key);
      return [
        input.label,
        valueInWords(least.value, input.unit, words),
        least.run.figures[key],
        valueInWords(most.value, input.unit, words),
        most.run.figures[key],
        span[key],
      ];
    }),
  };
}

/** The tried values that give the least and the most of a figure. */
function extremes({ tried }: Effect, key: Ranked): [Effect['tried'][number], Effect['tried'][number]] {
  const sorted = [...tried].sort((one, other) => one.run.figures[key] - other.run.figures[key]);
  return [sorted[0]!, sorted.at(-1)!];
}

function samplesOf(runs: Runs, key: FigureKey): number[] {
  return [...runs.values()]
    .filter(({ job }) => job.at.sample !== undefined)
    .map(({ figures }) => figures[key] ?? Number.NaN);
}

function spreadTable(runs: Runs): Table[] {
  const drawn = runs.get(DRAWN);
  const count = samplesOf(runs, 'tooHotHours').length;
  if (drawn === undefined || count === 0) return [];
  const column = (label: string) => ({ label, unit: '', digits: 0 });
  return [
    {
      id: 'spread',
      title: `How sure the figures are: ${count} samples of what nobody can know`,
      columns: [
        { label: 'figure', unit: '', digits: 0 },
        column('as drawn'),
        column('one in ten below'),
        column('half below'),
        column('nine in ten below'),
        column('least'),
        column('most'),
      ],
      rowDigits: SPREAD.map((key) => FIGURE_NAMES[key].digits),
      rowUnits: SPREAD.map((key) => FIGURE_NAMES[key].unit),
      rows: SPREAD.map((key) => {
        const values = samplesOf(runs, key);
        const { label, unit } = FIGURE_NAMES[key];
        const at = [0.1, 0.5, 0.9, 0, 1].map((share) => quantile(values, share));
        return [`${label}, ${unit}`, drawn.figures[key], ...at];
      }),
    },
  ];
}

function finding(effects: readonly Effect[], runs: Runs, basis: Basis): Sentence {
  const { words, criterion } = basis;
  const open = effects.filter(({ input }) => !GIVEN.includes(input.path));
  const top = (key: Ranked, count: number) => ranked(open, key).slice(0, count);
  const [hot, second, third] = top('tooHotHours', 3) as [Effect, Effect, Effect];
  const [cold] = top('heatingKWh', 1) as [Effect];
  const [damp] = top('humidHours', 1) as [Effect];
  const drawn = runAt(runs, DRAWN).figures;
  const spread = (key: FigureKey) =>
    [quantile(samplesOf(runs, key), 0.1), quantile(samplesOf(runs, key), 0.9)] as const;
  const [hotLow, hotHigh] = spread('tooHotHours');
  const [heatLow, heatHigh] = spread('heatingKWh');
  const figures = {
    hottestInput: hot.input.path,
    hottestSpanHours: hot.span.tooHotHours,
    secondInput: second.input.path,
    thirdInput: third.input.path,
    coldestInput: cold.input.path,
    coldestSpanKWh: cold.span.heatingKWh,
    dampestInput: damp.input.path,
    dampestSpanHours: damp.span.humidHours,
    drawnHours: drawn.tooHotHours,
    hoursLow: hotLow,
    hoursHigh: hotHigh,
    drawnHeatingKWh: drawn.heatingKWh,
    heatingLowKWh: heatLow,
    heatingHighKWh: heatHigh,
    limitC: criterion.aboveC,
  };
  return {
    figures,
    text:
      `${hottestInWords(basis, [hot, second, third])} ` +
      `${othersInWords(cold, damp, words)} ` +
      `Nobody can know everything beforehand: in eight cases of ten expect ${spanInWords(hotLow, hotHigh, hoursInWords, countInWords)} ${hotInWords(basis)}, and ${spanInWords(heatLow, heatHigh, words.energy, words.energy)} of heat. ` +
      `As drawn it is ${hoursInWords(drawn.tooHotHours)} and ${words.energy(drawn.heatingKWh)}.`,
  };
}

/** What moves heat and damp most; nothing is named that moves neither. */
function othersInWords(cold: Effect, damp: Effect, words: Words): string {
  const heat =
    cold.span.heatingKWh >= 0.5 ? `${nameOf(cold)} (${words.energy(cold.span.heatingKWh)})` : 'nothing';
  const wet =
    damp.span.humidHours >= 0.5 ? `${nameOf(damp)} (${hoursInWords(damp.span.humidHours)})` : 'nothing';
  return `For back-up heat it is ${heat}, for damp ${wet}.`;
}

/** "4 to 535 hours"; once where both ends read the same. */
function spanInWords(
  low: number,
  high: number,
  inWords: (value: number) => string,
  firstInWords: (value: number) => string,
): string {
  return inWords(low) === inWords(high) ? inWords(low) : `${firstInWords(low)} to ${inWords(high)}`;
}

/** Inputs that stand otherwise in a sentence than over a field. */
const SAID: Readonly<Record<string, string>> = {
  'house.storeys': 'the number of storeys',
  'house.turnDeg': 'how far the house is turned',
  'glass.otherShareOfFloor': 'the area of the other windows',
  'sunspace.commonGlassM2': 'the area of windows in the common wall',
  'mass.areaM2': 'the area of extra mass',
  'mass.thicknessM': 'the thickness of extra mass',
  'envelope.bermShare': 'the earth berm',
  'vents.sunspaceM2': 'the area of the sunspace vents',
  'vents.houseM2': 'the area of windows that open',
  'vents.opensAboveC': 'the temperature above which vents open',
  'ventilation.airedMinutes': 'how long rooms are aired',
  'ventilation.airedTimes': 'how often rooms are aired',
  'ventilation.extractHumidity': 'the humidity at which the extract fan runs in full',
  'ventilation.fanWPerM3H': 'the power of the fans',
  'people.appliancesW': 'the heat of lights and appliances',
  'people.awayWorkdays': 'whether people are away on workdays',
  'plants.leafAreaIndex': 'how leafy the plants are',
};

function nameOf({ input: { path, label } }: Effect): string {
  const said = lowered(label);
  return SAID[path] ?? (/^(who|how|when) /.test(said) ? said : `the ${said}`);
}

/** What moves the hours too hot, the inputs that move them most first; those that do not are not named. */
function hottestInWords(basis: Basis, ranked: readonly Effect[]): string {
  const [most, ...then] = ranked.filter(({ span }) => span.tooHotHours > 0);
  const hours = `the hours ${hotInWords(basis)}`;
  if (most === undefined) return `Nothing that we moved changes ${hours}.`;
  const first = `${capitalised(nameOf(most))} moves ${hours} most: by ${countInWords(most.span.tooHotHours)}.`;
  if (then.length === 0) return `${first} Nothing else moves them.`;
  return `${first} Then ${then.length === 1 ? 'comes' : 'come'} ${then.map(nameOf).join(' and ')}.`;
}
