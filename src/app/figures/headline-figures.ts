// The figures a person reads first, out of an outcome: value, limit, verdict, and which picture explains it. The
// verdicts' bounds:
//   hours too hot: what the design's criterion allows; a third of that is little (house rule; of 3 % of the year it is
//     the 1 % of the older CIBSE Guide A);
//   mould index: 1 = first growth under the microscope, 3 = visible growth, VTT model;
//   cold hours, humid hours, vent moves: common practice, no source.

import type { Design } from '../../design/design.ts';
import { fuelWords } from '../../findings/fuel-words.ts';
import { wordingOf } from '../../findings/wording.ts';
import { COLD_HOURS, FEW_COLD_HOURS, FEW_DAMP_HOURS, fewHotHours } from '../../outcomes/acceptable-hours.ts';
import { judgedHouse, type Respect, worstIn } from '../../outcomes/judged-house.ts';
import type { OutcomeFigures, ZoneOutcome } from '../../outcomes/outcome.ts';
import type { TooHot } from '../../outcomes/too-hot.ts';
import { fuelCostInWords } from '../../quantities/fuel-cost.ts';
import { NO_PRICES, type PriceList } from '../../quantities/prices.ts';
import type { FigureKey, Figures } from '../../questions/figures.ts';
import type { ShownQuantity, UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import type { Explanation } from '../state/session.ts';

export type Verdict = 'good' | 'fair' | 'poor' | 'plain';

export interface HeadlineFigure {
  readonly id: string;
  readonly zone: 'house' | 'sunspace' | 'whole';
  readonly label: string;
  readonly value: number;
  readonly quantity: ShownQuantity;
  readonly digits: number;
  /** what the figure is held against, in words; '' for none */
  readonly limit: string;
  readonly verdict: Verdict;
  readonly verdictWords: string;
  /** which way is better, to mark a change */
  readonly better: 'less' | 'more' | 'neither';
  readonly opens: Explanation;
}

/** The same figure among those that runs of changes keep, by the headline's id; sunspace-overheated has none. */
const KEPT_OF_RUNS: Readonly<Record<string, FigureKey>> = {
  'house-overheated': 'tooHotHours',
  'house-coldest': 'coldestC',
  'house-humid': 'humidHours',
  'house-mould': 'mouldIndex',
  heating: 'heatingKWh',
  vents: 'ventMovesPerDay',
  'sunspace-coldest': 'sunspaceColdestC',
};

/** What a headline figure is in another run; null where runs keep none. */
export function inRun(id: string, figures: Figures): number | null {
  const key = KEPT_OF_RUNS[id];
  return key === undefined ? null : figures[key];
}

/** Least and most of a figure over what nobody can know, by the figure's id. */
export type FigureRanges = ReadonlyMap<string, { readonly least: number; readonly most: number }>;

const YEAR_HOURS = 8760;
/** shares of the year in which a vent stood wrong */
const SOMETIMES_NEGLECTED = 0.02;
const OFTEN_NEGLECTED = 0.12;

/** Figures of the house, then of what it asks of people. */
export function headlineFigures(
  outcome: OutcomeFigures,
  design: Design,
  system: UnitSystem,
  prices: PriceList = NO_PRICES,
): readonly HeadlineFigure[] {
  const { sunspace } = outcome.zones;
  const made = zoneFigures('house', judgedHouse(outcome), system).map((figure) =>
    inWorstRoom(figure, outcome),
  );
  const money = outcome.fuel ? fuelCostInWords(outcome.fuel, prices) : '';
  const fuel = outcome.fuel
    ? `; ${fuelWords(outcome.fuel, design, wordingOf(system))}${money === '' ? '' : `, ${money}`}`
    : '';
  made.push({
    id: 'heating',
    zone: 'house',
    label: 'back-up heat',
    value: outcome.heating.energyKWh,
    quantity: 'energy',
    digits: 0,
    limit: `${peakWords(outcome, design, system)}${fuel}`,
    verdict: 'plain',
    verdictWords: `${quantityText(outcome.heating.energyKWh / design.house.floorAreaM2, 'energyPerArea', system, 0)} of floor`,
    better: 'less',
    opens: 'heat',
  });
  made.push(ventFigure(outcome));
  if (sunspace) made.push(...zoneFigures('sunspace', sunspace, system));
  return made;
}

/** What a stove is sold by is a mean of its burn: what it gives at its peak may be more. */
function peakWords({ heating }: OutcomeFigures, design: Design, system: UnitSystem): string {
  if (design.heating.capacityKW === 0) return 'no heater and no stove is drawn';
  const peak = quantityText(heating.peakW / 1000, 'powerKW', system);
  const size = quantityText(design.heating.capacityKW, 'powerKW', system);
  return design.heating.source?.kind === 'stove'
    ? `peak ${peak} from a stove of ${size}`
    : `peak ${peak} of ${size} there is`;
}

function zoneFigures(
  zone: 'house' | 'sunspace',
  outcome: ZoneOutcome,
  system: UnitSystem,
): readonly HeadlineFigure[] {
  const t = (value: number) => quantityText(value, 'temperature', system);
  const { tooHot } = outcome;
  const overheated = judged(tooHot.hours, fewHotHours(tooHot.limitHours), tooHot.limitHours, [
    'comfortable',
    'warm spells',
    'overheats',
  ]);
  const humid = judged(outcome.humidHours, FEW_DAMP_HOURS, 0.1 * YEAR_HOURS, [
    'dry enough',
    'damp at times',
    'damp',
  ]);
  const mould = judged(outcome.mouldIndexMax, 1, 3, ['no growth', 'growth begins', 'visible mould']);
  const cold = judged(outcome.underheatedHours, FEW_COLD_HOURS, COLD_HOURS, [
    'warm',
    'cool at times',
    'cold',
  ]);
  const figures: HeadlineFigure[] = [
    {
      id: `${zone}-overheated`,
      zone,
      label: 'hours too hot',
      value: tooHot.hours,
      quantity: 'hours',
      digits: 0,
      limit: `${hotLimitText(tooHot, t)}; ${tooHot.limitHours} h allowed; hottest ${t(outcome.maxOperativeC)}`,
      ...overheated,
      better: 'less',
      opens: 'hot-week',
    },
    {
      id: `${zone}-coldest`,
      zone,
      label: zone === 'house' ? 'coldest hour' : 'coldest night',
      value: outcome.minOperativeC,
      quantity: 'temperature',
      digits: 1,
      limit: `${quantityText(outcome.underheatedHours, 'hours', system)} below ${t(outcome.underheatLimitC)}`,
      ...(zone === 'house' ? cold : frost(outcome.minAirC)),
      better: 'more',
      opens: 'cold-week',
    },
    {
      id: `${zone}-humid`,
      zone,
      label: 'humid hours',
      value: outcome.humidHours,
      quantity: 'hours',
      digits: 0,
      limit: `above ${quantityText(outcome.humidLimit, 'share', system, 0)} humidity`,
      ...humid,
      better: 'less',
      opens: 'moisture',
    },
    {
      id: `${zone}-mould`,
      zone,
      label: 'mould index in the corners',
      value: outcome.mouldIndexMax,
      quantity: 'number',
      digits: 1,
      limit: `of 6; seen by eye from 3${worseSpot(outcome)}`,
      ...mould,
      better: 'less',
      opens: 'moisture',
    },
  ];
  return figures;
}

const RESPECTS: Readonly<Record<string, Respect>> = {
  'house-overheated': 'hot',
  'house-coldest': 'cold',
  'house-humid': 'damp',
  'house-mould': 'mould',
};

/** Of a divided house a figure is that of the worst room, which it names. */
function inWorstRoom(figure: HeadlineFigure, outcome: OutcomeFigures): HeadlineFigure {
  const room = worstIn(outcome, RESPECTS[figure.id]!);
  return room === null ? figure : { ...figure, limit: `${room.name}: ${figure.limit}` };
}

/** The number without its unit. */
const bare = (text: string) => text.replace(/[\s\u202f].*$/, '');

/** Above what an hour is too hot. */
function hotLimitText(
  { limitC, lowestLimitC, highestLimitC, fans }: TooHot,
  t: (value: number) => string,
): string {
  const above =
    highestLimitC - lowestLimitC < 0.05
      ? `above ${t(limitC ?? lowestLimitC)}`
      : `above ${bare(t(lowestLimitC))} to ${t(highestLimitC)} with the weather`;
  return fans === undefined ? above : `${above}, by feel under the fans`;
}

/** The findings speak of the worst spot; where that is no corner, the figure says so beside its own. */
function worseSpot({ mouldIndexMax, dampSpots }: ZoneOutcome): string {
  const worst = Math.max(mouldIndexMax, ...dampSpots.map((spot) => spot.mouldIndexMax));
  const spot = dampSpots.find((entry) => entry.mouldIndexMax === worst)?.spot;
  if (!spot || worst - mouldIndexMax < 0.1) return '';
  return `; ${spot === 'window frame' ? 'frames' : spot} ${worst.toFixed(1)}`;
}

function ventFigure(outcome: OutcomeFigures): HeadlineFigure {
  const { movesPerDayInBusiestMonth, neglectedShare } = outcome.vents;
  return {
    id: 'vents',
    zone: 'whole',
    label: 'vent moves a day',
    value: movesPerDayInBusiestMonth,
    quantity: 'number',
    digits: 1,
    limit: `in the busiest month; ${Math.round(outcome.vents.moves)} in the year${outcome.rooms ? ', windows and doors of all rooms together' : ''}`,
    ...(neglectedShare > OFTEN_NEGLECTED
      ? { verdict: 'poor' as const, verdictWords: 'often left undone' }
      : neglectedShare > SOMETIMES_NEGLECTED
        ? { verdict: 'fair' as const, verdictWords: 'at times left undone' }
        : judged(movesPerDayInBusiestMonth, 2, 5, ['little to do', 'a daily round', 'a full round'])),
    better: 'less',
    opens: 'vents',
  };
}

function judged(
  value: number,
  good: number,
  fair: number,
  words: readonly [string, string, string],
): { verdict: Verdict; verdictWords: string } {
  if (value <= good) return { verdict: 'good', verdictWords: words[0] };
  if (value <= fair) return { verdict: 'fair', verdictWords: words[1] };
  return { verdict: 'poor', verdictWords: words[2] };
}

function frost(minAirC: number): { verdict: Verdict; verdictWords: string } {
  if (minAirC > 7) return { verdict: 'good', verdictWords: 'frost-free' };
  if (minAirC > 0) return { verdict: 'fair', verdictWords: 'just frost-free' };
  return { verdict: 'poor', verdictWords: 'freezes' };
}
