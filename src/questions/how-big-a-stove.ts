// How big a stove? The stove as drawn, or a light one where none is, and a masonry heater beside it, from far too small to far
// too big for the floor: the smallest that does but for a few hours, and what one too big does to the rooms.

import type { Design } from '../design/design.ts';
import { LEAST_STOVE_KW, ofKind, type StoveKind, USUAL_STOVE } from '../design/heat-source.ts';
import { limitOf } from '../design/limits.ts';
import { ACCEPTABLE_SHORT_HOURS as SHORT_HOURS } from '../outcomes/acceptable-hours.ts';
import { PLAINLY_K } from '../outcomes/short-hours.ts';
import { dayCountInWords } from '../quantities/words.ts';
import { bracketOf } from './bracket.ts';
import { withHeatedRoom } from './heat-levers.ts';
import { changeOf } from './how-sure.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence, Table } from './question.ts';
import type { RunJob } from './run-job.ts';
import { type Unknown, unknownsOf } from './what-nobody-knows.ts';
import { capitalised, countInWords, hoursInWords } from './words.ts';

/** Output by floor area [W/m²]: from a superinsulated house in a mild winter to an old one in a hard one. House rule. */
const W_PER_M2 = [5, 10, 15, 20, 30, 45, 70, 110] as const;
const STEP_KW = 0.5;
/** Hours too hot beyond those of the smallest that does, from which a stove is too big. House rule. */
const TOO_BIG_HOURS = 50;

const KIND_WORDS: Readonly<Record<StoveKind, string>> = {
  steel: 'a light steel stove',
  'cast-iron': 'a cast-iron stove',
  soapstone: 'a stove clad in soapstone',
  masonry: 'a masonry heater',
};

export const howBigAStove: Question = {
  id: 'how-big-a-stove',
  title: 'How big a stove?',
  asks: 'Which is the smallest stove that keeps the rooms warm but for a few hours, and from what size is one too big?',
  plan: (basis) =>
    kindsTried(basis.design).flatMap((kind) =>
      sizesFor(basis.design, kind).map((kW) => ({
        id: idOf(kind, kW),
        label: `${KIND_WORDS[kind]}, ${basis.words.power(1000 * kW)}`,
        design: withStove(basis.design, kind, kW),
        at: { kind, kW },
      })),
    ),
  refine: (basis, runs) => unknownsTried(basis).flatMap((unknown) => stillToTry(basis, runs, unknown)),
  answer,
};

function unknownsTried({ design, isMade }: Basis): readonly Unknown[] {
  return unknownsOf(design, isMade);
}

function overId(unknown: Unknown, kW: number): string {
  return `in doubt, ${unknown.id}: ${kW} kW`;
}

/**
 * What the smallest that does becomes over an unknown, by the runs there: its output, null where none tried does [kW], and
 * which is to be tried next. From the size that does in the house as drawn it goes up until one does, or down until one does not.
 */
function sizeOver(basis: Basis, runs: Runs, unknown: Unknown): { kW?: number | null; next?: number } {
  const [kind] = kindsTried(basis.design);
  const sizes = sizesFor(basis.design, kind!);
  const start = sizes.indexOf(Number(sizesOf(kind!, runs).least.job.at.kW));
  const does = (kW: number) => {
    const run = runs.get(overId(unknown, kW));
    return run && shortOf(run) <= SHORT_HOURS;
  };
  const atStart = does(sizes[start]!);
  if (atStart === undefined) return { next: sizes[start]! };
  let smallest: number | null = atStart ? sizes[start]! : null;
  const others = atStart ? sizes.slice(0, start).reverse() : sizes.slice(start + 1);
  for (const kW of others) {
    const known = does(kW);
    if (known === undefined) return { next: kW };
    if (known) smallest = kW;
    if (known !== atStart) break;
  }
  return { kW: smallest };
}

function stillToTry(basis: Basis, runs: Runs, unknown: Unknown): readonly RunJob[] {
  const { next } = sizeOver(basis, runs, unknown);
  if (next === undefined) return [];
  const [kind] = kindsTried(basis.design);
  return [
    {
      id: overId(unknown, next),
      label: `${KIND_WORDS[kind!]}, ${basis.words.power(1000 * next)}, ${unknown.when(basis.words)}`,
      design: unknown.apply(withStove(basis.design, kind!, next)),
      at: { doubt: unknown.id, of: kind!, kW: next },
      ...changeOf(unknown),
    },
  ];
}

/** What helps where no size does. */
function cureOf({ people }: Design): string {
  return people.awayWeekends
    ? 'They are cold after weekends away: have someone light it the evening before, or insulate.'
    : 'Insulate before you buy a bigger one.';
}

/** "How sure? In a year 1.5 °C colder, it takes 5 kW. It is the same in the other 6 of 7 trials." */
function sureInWords(basis: Basis, runs: Runs, toldKW: number | null): string {
  const unknowns = unknownsTried(basis);
  const otherwise = new Map<number | null, Set<string>>();
  let same = 0;
  for (const unknown of unknowns) {
    const { kW } = sizeOver(basis, runs, unknown);
    if (kW === undefined || kW === toldKW) same++;
    else otherwise.set(kW, (otherwise.get(kW) ?? new Set()).add(unknown.when(basis.words)));
  }
  const told = [...otherwise]
    .sort(([one], [other]) => (one ?? Number.POSITIVE_INFINITY) - (other ?? Number.POSITIVE_INFINITY))
    .map(
      ([kW, when]) =>
        `${capitalised([...when].join(', or '))}, ${kW === null ? 'none that we tried does' : `it takes ${basis.words.power(1000 * kW)}`}.`,
    );
  const rest =
    same === 0
      ? []
      : [
          `It is the same in ${told.length === 0 ? 'all' : `the other ${same} of`} ${unknowns.length} trials.`,
        ];
  return ` How sure? ${[...told, ...rest].join(' ')}`;
}

function idOf(kind: StoveKind, kW: number): string {
  return `${kind}, ${kW} kW`;
}

/** The drawn kind first, then the other way to burn wood. */
function kindsTried({ heating }: Design): readonly StoveKind[] {
  const drawn = heating.source?.kind === 'stove' ? heating.source.stove : USUAL_STOVE.stove;
  return drawn === 'masonry' ? ['masonry', 'steel'] : [drawn, 'masonry'];
}

/** The one drawn among them. */
function sizesFor({ house, heating }: Design, kind: StoveKind): readonly number[] {
  const { max } = limitOf('heating.capacityKW');
  const least = LEAST_STOVE_KW[kind];
  const sizes = W_PER_M2.map((each) => {
    const kW = STEP_KW * Math.round((each * house.floorAreaM2) / 1000 / STEP_KW);
    return Math.min(max, Math.max(least, kW));
  });
  const { source, capacityKW } = heating;
  const drawn = source?.kind === 'stove' && source.stove === kind && capacityKW > 0 ? [capacityKW] : [];
  return [...new Set([...sizes, ...drawn])].sort((one, other) => one - other);
}

/** With the stove that is drawn, or else a usual one, of a kind and size. */
function withStove(design: Design, kind: StoveKind, capacityKW: number): Design {
  const { source } = design.heating;
  const stove = ofKind(source?.kind === 'stove' ? source : USUAL_STOVE, kind);
  return { ...withHeatedRoom(design), heating: { ...design.heating, capacityKW, source: stove } };
}

function bySize(kind: string, runs: Runs): Run[] {
  return [...runs.values()]
    .filter(({ job }) => job.at.kind === kind)
    .sort((one, other) => Number(one.job.at.kW) - Number(other.job.at.kW));
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { design, words } = basis;
  const kinds = kindsTried(design);
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [
      {
        id: 'sizes',
        title: 'A bigger stove warms colder days, and from some size on only overheats the rooms',
        x: { label: 'output of the stove', unit: 'kW' },
        y: ['coldestC', 'tooHotHours', 'underheatedHours', 'heatingKWh'],
        curves: kinds.map((kind) => ({
          id: kind,
          label: KIND_WORDS[kind],
          points: bySize(kind, runs).map((run) => ({
            x: Number(run.job.at.kW),
            run: run.job.id,
            figures: run.figures,
          })),
        })),
        marks:
          design.heating.capacityKW > 0
            ? [
                {
                  id: 'drawn',
                  kind: 'drawn',
                  x: design.heating.capacityKW,
                  label: 'as drawn',
                  curve: null,
                  source: 'the design',
                },
              ]
            : [],
      },
    ],
    tables: kinds.map((kind) => sizeTable(kind, bySize(kind, runs), complete ? advisedOf(kind, runs) : null)),
    map: null,
    notes: [
      ...(design.heating.source?.kind === 'stove'
        ? []
        : ['No stove is drawn: a light one on dry beech stands in, fed by whoever is at home and awake.']),
      `It falls short where people are up, from 9 to 22 h, and a heated room is more than ${words.degrees(PLAINLY_K)} colder than asked for; ${SHORT_HOURS} hours a year may be so. House rules.`,
      `The smallest tried is the smallest made: ${words.power(1000 * LEAST_STOVE_KW.steel)} of a light stove, ${words.power(1000 * LEAST_STOVE_KW.masonry)} of a masonry heater.`,
      'A light stove’s size is its nominal output, a masonry heater’s its mean output between fires. Wood burns with the same efficiency whatever the load and its water, and a flue that stands warm draws no air here. A real stove throttled far down, or fed wet wood, burns badly and soots its flue; over a season count on some ten points less than was tested.',
      'A stove needs a flue, clear distance from what can burn, air of its own and a carbon monoxide alarm: the maker’s sheet, the local code and a licensed fitter come first.',
    ],
    proposal: null,
  };
}

function sizeTable(kind: StoveKind, runs: readonly Run[], advised: string | null): Table {
  return {
    ...(advised !== null && { advised }),
    id: `sizes-${kind}`,
    title: `${capitalised(KIND_WORDS[kind])} by size`,
    columns: [
      { label: 'output', unit: 'kW', digits: 1 },
      { label: 'hours short of warmth', unit: 'h/year', digits: 0 },
      { label: 'hours too hot', unit: 'h/year', digits: 0 },
      { label: 'coldest hour', unit: '°C', digits: 1 },
      { label: 'wood', unit: 'kg/year', digits: 0 },
      { label: 'stacked', unit: 'm³/year', digits: 1 },
      { label: 'loads', unit: 'per year', digits: 0 },
      { label: 'loads on the busiest day', unit: '', digits: 0 },
      { label: 'days with fire', unit: 'per year', digits: 0 },
    ],
    rowRuns: runs.map(({ job }) => job.id),
    rows: runs.map(({ job, result, figures }) => {
      const { fuel } = result.outcome;
      return [
        Number(job.at.kW),
        figures.shortHours,
        figures.tooHotHours,
        figures.coldestC,
        fuel?.kg ?? null,
        fuel?.stackedM3 ?? null,
        fuel?.loads ?? null,
        fuel?.loadsOnBusiestDay ?? null,
        fuel?.daysWithFire ?? null,
      ];
    }),
  };
}

function timesInWords(times: number): string {
  return ['never', 'once', 'twice'][times] ?? `${times} times`;
}

const shortOf = ({ figures }: Run) => figures.shortHours ?? figures.underheatedHours;

/** The smallest that does, or the biggest tried; and the first that is too big, if any is. */
function sizesOf(kind: StoveKind, runs: Runs) {
  const all = bySize(kind, runs);
  const { passesAtStart, before, after } = bracketOf(
    all.map((run) => ({ x: Number(run.job.at.kW), passes: shortOf(run) <= SHORT_HOURS })),
  );
  const leastKW = passesAtStart ? Number(all[0]!.job.at.kW) : (after ?? before);
  const least = all.find(({ job }) => job.at.kW === leastKW)!;
  const tooBig = all.find(
    ({ job, figures }) =>
      Number(job.at.kW) > leastKW && figures.tooHotHours > least.figures.tooHotHours + TOO_BIG_HOURS,
  );
  return { does: shortOf(least) <= SHORT_HOURS, least, tooBig };
}

/** The run of the size that is advised; null where none does, or none is needed. */
function advisedOf(kind: StoveKind, runs: Runs): string | null {
  const { does, least } = sizesOf(kind, runs);
  return does && !isNeverLit(least) ? least.job.id : null;
}

/** Whether a year goes by in which nobody lights it. */
function isNeverLit({ result }: Run): boolean {
  return result.outcome.fuel?.kg === 0;
}

/** Of a stove that is never lit: what over which it would be. */
function litOver(basis: Basis, runs: Runs, { job }: Run): readonly string[] {
  return unknownsTried(basis).flatMap((unknown) => {
    const run = runs.get(overId(unknown, Number(job.at.kW)));
    return run === undefined || isNeverLit(run)
      ? []
      : [`${unknown.when(basis.words)}, on ${dayCountInWords(run.result.outcome.fuel!.daysWithFire!)}`];
  });
}

function litInWords(lit: readonly string[], trials: number): string {
  return lit.length === 0
    ? ` How sure? Nor is it in any of ${trials} trials.`
    : ` How sure? It is lit ${lit.join('; ')}.`;
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { design, words } = basis;
  const [first, second] = kindsTried(design) as [StoveKind, StoveKind];
  const [own, other] = [sizesOf(first, runs), sizesOf(second, runs)];
  const power = (run: Run) => words.power(1000 * Number(run.job.at.kW));
  const { least, tooBig } = own;
  const { fuel } = least.result.outcome;
  const wood = fuel?.kg
    ? ` It burns ${words.weight(fuel.kg)} of wood a year, ${words.stackedWood(fuel.stackedM3!)}, on ${dayCountInWords(fuel.daysWithFire!)}, and is fed ${timesInWords(fuel.loadsOnBusiestDay!)} on the busiest.`
    : '';
  const unneeded = own.does && isNeverLit(least);
  const isSmallestMade = Number(least.job.at.kW) === LEAST_STOVE_KW[first];
  const head = own.does
    ? `${isSmallestMade ? `The smallest made does, ${KIND_WORDS[first]} of ${power(least)}` : `The smallest that does is ${KIND_WORDS[first]} of ${power(least)}`}: the rooms fall short for ${hoursInWords(shortOf(least))} a year.`
    : `No size of ${KIND_WORDS[first].replace(/^a /, '')} does: at ${power(least)} the rooms still fall short for ${hoursInWords(shortOf(least))} a year. ${cureOf(design)}`;
  const big = !own.does
    ? ''
    : tooBig === undefined
      ? first === 'masonry'
        ? ' None that we tried is too big.'
        : ' A bigger one does not overheat the rooms, but burns low on most days, and that soots its flue.'
      : ` One of ${power(tooBig)} is too big: it makes ${countInWords(tooBig.figures.tooHotHours)} hours too hot rather than ${countInWords(least.figures.tooHotHours)}.`;
  const instead = other.does
    ? ` As ${KIND_WORDS[second]} it would be ${power(other.least)}${other.tooBig ? `, and too big from ${power(other.tooBig)} on` : ''}.`
    : ` No ${KIND_WORDS[second].replace(/^a /, '')} that we tried does.`;
  const over = unknownsTried(basis).map((unknown) => ({
    id: unknown.id,
    kW: sizeOver(basis, runs, unknown).kW ?? null,
  }));
  const kWOver = (id: Unknown['id']) => over.find((one) => one.id === id)?.kW ?? null;
  const lit = unneeded ? litOver(basis, runs, least) : [];
  const told = own.does ? Number(least.job.at.kW) : null;
  const sizes = over.flatMap(({ kW }) => (kW === null ? [] : [kW]));
  return {
    text: unneeded
      ? `No stove is needed in a year like this one: ${KIND_WORDS[first]} of ${power(least)}, the smallest tried, is never lit.${litInWords(lit, over.length)}`
      : `${head}${wood}${big}${instead}${sureInWords(basis, runs, told)}`,
    figures: {
      kW: Number(least.job.at.kW),
      shortHours: shortOf(least),
      allowedHours: SHORT_HOURS,
      tooHotHours: least.figures.tooHotHours,
      woodKg: fuel?.kg ?? null,
      stackedM3: fuel?.stackedM3 ?? null,
      daysWithFire: fuel?.daysWithFire ?? null,
      loadsOnBusiestDay: fuel?.loadsOnBusiestDay ?? null,
      tooBigKW: tooBig ? Number(tooBig.job.at.kW) : null,
      tooBigHotHours: tooBig?.figures.tooHotHours ?? null,
      otherKW: Number(other.least.job.at.kW),
      otherTooBigKW: other.tooBig ? Number(other.tooBig.job.at.kW) : null,
      coldYearKW: kWOver('cold-year'),
      leakyKW: kWOver('leaky'),
      trials: over.length,
      turnedTrials: unneeded ? lit.length : over.filter(({ kW }) => kW !== told).length,
      leastKW: sizes.length === 0 ? null : Math.min(...sizes),
      mostKW: over.some(({ kW }) => kW === null) ? null : Math.max(...sizes),
    },
  };
}
