// Can it do without? The house with no back-up heat at all, and with what is usually built against the cold; then the house as
// drawn when its heat, or the power, fails on the eve of the coldest days of its year.

import type { Design } from '../design/design.ts';
import { FEW_COLD_HOURS } from '../outcomes/acceptable-hours.ts';
import { dateOfHour, MONTH_NAMES } from '../outcomes/calendar.ts';
import type { ColdSpell, Failure } from './cold-spell.ts';
import type { Figures } from './figures.ts';
import { changeOf, type HowSure, rangeInWords, rangeOf } from './how-sure.ts';
import type { AnswerBody, Basis, Question, Runs, Sentence, Table } from './question.ts';
import type { RunJob } from './run-job.ts';
import { runAt, runTable } from './run-table.ts';
import { type Changes, varied } from './variation.ts';
import { type Unknown, unknownsOf } from './what-nobody-knows.ts';
import { capitalised, countInWords, hoursInWords, type Words } from './words.ts';

/** How far below too cold the coldest hour may be, where it is so for few [K]. House rule. */
const SHORT_COLD_K = 2;
/** A load that is worth a word [W]. */
const LEAST_PEAK_W = 50;
/** What people do build against the cold. House rules. */
const WALL_RESISTANCE = 6;
const ROOF_RESISTANCE = 10;
const FLOOR_RESISTANCE = 2.5;
const NIGHT_RESISTANCE = 1;
const TIGHTEST_ACH50 = 0.6;

const DRAWN = 'drawn';
const NONE = 'none';
const ALL = 'none, all three';

export const doWithout: Question = {
  id: 'do-without',
  title: 'Can it do without?',
  asks: 'How does the house fare with no back-up heat, what would that take, and how long does it stay warm when heat or power fails?',
  plan: (basis) => [
    { id: DRAWN, label: 'as drawn', design: basis.design, at: { heat: 'drawn' }, coldSpell: true },
    ...triedWithout(basis.design).map(([id, label, changes]) => ({
      id,
      label,
      design: varied(basis.design, { 'heating.capacityKW': 0, ...changes }),
      at: { heat: id },
    })),
    ...inDoubt(basis),
  ],
  answer,
};

/** No heat, and no heat with all the cures, over what nobody can know. */
function inDoubt(basis: Basis): RunJob[] {
  const tried = triedWithout(basis.design).filter(([id]) => id === NONE || id === ALL);
  return unknownsOf(basis.design, basis.isMade).flatMap((unknown) =>
    tried.map(([id, label, changes]) => ({
      id: overId(unknown.id, id),
      label: `${label}, ${unknown.when(basis.words)}`,
      design: unknown.apply(varied(basis.design, { 'heating.capacityKW': 0, ...changes })),
      at: { doubt: unknown.id, of: id },
      ...changeOf(unknown),
    })),
  );
}

function overId(unknown: string, house: string): string {
  return `in doubt, ${unknown}: ${house}`;
}

/** No heat, alone and with each cure and all of them. */
function triedWithout(design: Design): readonly (readonly [string, string, Changes])[] {
  const { envelope, floor, glass, air } = design;
  const insulated: Changes = {
    'envelope.wallResistance': Math.max(envelope.wallResistance, WALL_RESISTANCE),
    'envelope.roofResistance': Math.max(envelope.roofResistance, ROOF_RESISTANCE),
    'floor.resistance': Math.max(floor.resistance, FLOOR_RESISTANCE),
  };
  const tight: Changes = { 'air.ach50': Math.max(Math.min(air.ach50, TIGHTEST_ACH50), air.ach50 / 2) };
  const covered: Changes = { 'glass.nightResistance': Math.max(glass.nightResistance, NIGHT_RESISTANCE) };
  return [
    [NONE, 'no back-up heat', {}],
    ['none, insulated', 'no back-up heat, walls, roof and floor insulated more', insulated],
    ['none, tight', 'no back-up heat, built twice as tight', tight],
    ['none, covered', 'no back-up heat, the glass covered at night', covered],
    [ALL, 'no back-up heat, and all three', { ...insulated, ...tight, ...covered }],
  ];
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { words, design } = basis;
  const spell = runs.get(DRAWN)?.result.coldSpell;
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [],
    tables: [
      runTable(
        'without-heat',
        'The house with no back-up heat, and with what would help it',
        'house',
        ['underheatedHours', 'coldestC', 'heatingKWh', 'heatingPeakW', 'mouldIndex'],
        [...runs.values()],
      ),
      ...(spell ? [failureTable(spell, words, design)] : []),
    ],
    map: null,
    notes: [
      ...(spell
        ? [
            `The coldest days begin on ${dayInWords(spell.fromRow)}: ${words.temperature(spell.outdoorMeanC)} on average, ${words.temperature(spell.outdoorLowestC)} at the lowest. Heat or power fails at 18 h on the day before and stays away; the house is followed for ${spell.daysFollowed} days.`,
          ]
        : []),
      'With no heat nobody lights a stove, and what a masonry heater holds it still gives. With no power fans and lamps stop, motors of windows, doors and covers stay where they are, and all heat stops but that of a stove people feed; one with a back boiler must not be lit then. Openers of a sunspace’s vents are taken to be of wax, which needs no power, and go on.',
      'Pipes in an outer wall freeze before the rooms do: the coldest corner stands for them. Let water out of what can freeze, and ask a plumber how.',
      'A house without heat in deep cold is a danger to the old, the ill and the very young. Have a second source of heat that needs no power, with a flue and a carbon monoxide alarm.',
    ],
    proposal: null,
  };
}

function failureTable(spell: ColdSpell, words: Words, { comfort }: Design): Table {
  const rows: readonly (readonly [string, Failure])[] = [
    ['no heat', spell.noHeat],
    ['no power', spell.noPower],
  ];
  return {
    id: 'failure',
    title: 'When heat or power fails on the eve of the coldest days',
    columns: [
      { label: 'what fails', unit: '', digits: 0 },
      { label: `stays above ${words.temperature(comfort.underheatC)} for`, unit: 'h', digits: 0 },
      { label: 'next morning', unit: '°C', digits: 1 },
      { label: 'at the coldest', unit: '°C', digits: 1 },
      { label: 'coldest corner freezes after', unit: 'h', digits: 0 },
    ],
    rows: rows.map(([what, { warmHours, nextMorningC, lowestC, unfrozenHours }]) => [
      what,
      warmHours ?? 'all along',
      nextMorningC,
      lowestC,
      unfrozenHours ?? 'never',
    ]),
  };
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { design, words } = basis;
  const [drawn, none, all] = [DRAWN, NONE, ALL].map((id) => runAt(runs, id));
  const limitC = design.comfort.underheatC;
  const { underheatedHours, coldestC } = none!.figures;
  const best = all!.figures;
  const verdict = verdictOf(none!.figures, best, limitC);
  const sure = sureOf(basis, runs, verdict);
  const spell = drawn!.result.coldSpell;
  const limit = words.temperature(limitC);
  const peak = drawn!.figures.heatingPeakW;
  const needs = peak >= LEAST_PEAK_W ? ` As drawn its heat gives ${words.power(peak)} at most.` : '';
  const lasts = ({ warmHours }: Failure, stay: string, within: string) =>
    warmHours === 0
      ? `${within} within the hour`
      : `${stay} ${warmHours === null ? 'all along' : `for ${hoursInWords(warmHours)}`}`;
  const told =
    spell === undefined
      ? ''
      : ` If its heat fails on the eve of the coldest days, ${lasts(spell.noHeat, `the rooms stay above ${limit}`, `it is below ${limit} in some room`)}, and it is ${words.temperature(spell.noHeat.nextMorningC, 1)} next morning. ` +
        `In a power cut ${lasts(spell.noPower, spell.noHeat.warmHours === 0 ? 'all stay above it' : 'they stay so', 'it is so in some room')}. ` +
        (spell.noHeat.unfrozenHours === null
          ? 'Its coldest corner does not freeze in that time.'
          : `Its coldest corner freezes after ${hoursInWords(spell.noHeat.unfrozenHours)}: pipes there must be drained.`);
  return {
    figures: {
      limitC,
      noneHours: underheatedHours,
      noneColdestC: coldestC,
      allHours: best.underheatedHours,
      allColdestC: best.coldestC,
      peakW: peak,
      heatingKWh: drawn!.figures.heatingKWh,
      ...sure.figures,
      ...(spell && {
        noHeatWarmHours: spell.noHeat.warmHours,
        noHeatMorningC: spell.noHeat.nextMorningC,
        noHeatFreezesHours: spell.noHeat.unfrozenHours,
        noPowerWarmHours: spell.noPower.warmHours,
        noPowerLowestC: spell.noPower.lowestC,
      }),
    },
    text:
      `${verdictInWords(verdict, sure.figures)} With none it is below ${limit} for ${hoursInWords(underheatedHours)} a year, and ${words.temperature(coldestC, 1)} at its coldest.` +
      // Where it is never too cold, nothing is left to be built against it.
      `${underheatedHours === 0 ? '' : ` Insulated more, half as leaky and covered at night that is ${hoursInWords(best.underheatedHours)} and ${words.temperature(best.coldestC, 1)}.`}${sure.text}${needs}${told}`,
  };
}

const CAN = 'It can do without back-up heat in this year, and a small heater is still wise.';
const COULD = 'It cannot do without as drawn, and better built it could.';
const CANNOT = 'It cannot do without back-up heat, not even with all that we tried.';

function verdictOf(none: Figures, all: Figures, limitC: number): string {
  const isFine = ({ underheatedHours, coldestC }: Figures) =>
    underheatedHours <= FEW_COLD_HOURS && coldestC >= limitC - SHORT_COLD_K;
  return isFine(none) ? CAN : isFine(all) ? COULD : CANNOT;
}

/** The verdict; that it can do without is told with the trials in which it cannot. */
function verdictInWords(verdict: string, { trials, turnedTrials }: { trials: number; turnedTrials: number }) {
  return verdict === CAN && turnedTrials > 0
    ? `It can do without back-up heat in this year, but not in ${turnedTrials} of ${trials} trials: keep a small heater.`
    : verdict;
}

/** As it follows what would turn a verdict into it. */
const TURNED: Readonly<Record<string, string>> = {
  [CAN]: 'it could do without as drawn',
  [COULD]: 'it could do without only when better built',
  [CANNOT]: 'it could not do without, not even with all that we tried',
};

/** The same over what nobody can know, and whether the verdict turns. */
function sureOf(basis: Basis, runs: Runs, verdict: string) {
  const { design, isMade, words } = basis;
  const unknowns = unknownsOf(design, isMade);
  const figuresOver = (unknown: Unknown, house: string) => runAt(runs, overId(unknown.id, house)).figures;
  const sure = (house: string): HowSure => ({
    drawn: runAt(runs, house).figures,
    turned: unknowns.map((unknown) => ({ unknown, design, figures: figuresOver(unknown, house) })),
  });
  const [none, all] = [sure(NONE), sure(ALL)] as const;
  const hours = (of: HowSure) => rangeOf('underheatedHours', of);
  const coldest = (of: HowSure) => rangeOf('coldestC', of);
  const celsius = (value: number) => words.temperature(value, 1);
  const turns = new Map<string, Set<string>>();
  for (const unknown of unknowns) {
    const then = verdictOf(figuresOver(unknown, NONE), figuresOver(unknown, ALL), design.comfort.underheatC);
    if (then !== verdict) turns.set(then, (turns.get(then) ?? new Set()).add(unknown.when(words)));
  }
  const turned = [...turns].map(
    ([then, when]) => ` ${capitalised([...when].join(', or '))}, ${TURNED[then]}.`,
  );
  const turnedTrials = [...turns.values()].reduce((sum, when) => sum + when.size, 0);
  const figures: Record<string, number> & { trials: number; turnedTrials: number } = {
    turnedTrials,
    noneLeastHours: hours(none).least,
    noneMostHours: hours(none).most,
    noneLowestC: coldest(none).least,
    noneHighestC: coldest(none).most,
    allLeastHours: hours(all).least,
    allMostHours: hours(all).most,
    trials: unknowns.length,
  };
  for (const unknown of unknowns) {
    if (unknown.id !== 'leaky' && unknown.id !== 'cold-year') continue;
    const key = unknown.id === 'leaky' ? 'leaky' : 'coldYear';
    figures[`${key}Hours`] = figuresOver(unknown, NONE).underheatedHours;
    figures[`${key}ColdestC`] = figuresOver(unknown, NONE).coldestC;
    figures[`${key}AllHours`] = figuresOver(unknown, ALL).underheatedHours;
    figures[`${key}AllColdestC`] = figuresOver(unknown, ALL).coldestC;
  }
  return {
    text:
      ` How sure? Hours too cold with none: ${rangeInWords(hours(none), countInWords, words)}. ` +
      `At the coldest: ${rangeInWords(coldest(none), celsius, words)}.` +
      (none.drawn.underheatedHours === 0
        ? ''
        : ` Hours too cold with all three: ${rangeInWords(hours(all), countInWords, words)}.`) +
      (turned.length === 0 ? ` The verdict holds in all ${unknowns.length} trials.` : turned.join('')),
    figures,
  };
}

function dayInWords(row: number): string {
  const { day, month } = dateOfHour(row);
  return `${day} ${MONTH_NAMES[month - 1]}`;
}
