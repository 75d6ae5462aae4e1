// A house as found: a drawing held against a record of its days. Unknowns are chosen by what the record can tell, fitted on
// part of the days, judged on days they had not seen and against two simple guesses; intervals are widened by what was
// seen to go wrong; what cannot be told apart, or was not learnt, is said so.

import type { UnknownId } from '../design/as-found.ts';
import type { Habit } from '../design/design.ts';
import { modelOf } from '../model/from-design.ts';
import { asDrawn, type UnknownValues, valueAt } from '../model/unknowns.ts';
import { preparedOnce } from '../weather/prepared/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import type { HouseRecord, MatchResult, MatchRunner } from './house-record.ts';
import { judgedHours, split, type Unseen } from './judged-hours.ts';
import {
  dataCost,
  type Estimate,
  leastSquares,
  NO_ERROR,
  type OwnError,
  ownErrors,
  readBy,
  residualOf,
  valuesAt,
} from './least-squares.ts';
import { type Pattern, patternsOf } from './patterns.ts';
import { populationOf } from './population.ts';

/** What is known of what people opened: nothing was, every move was written down, or it is guessed. */
export type Windows = 'shut' | 'known' | 'guessed';

export interface FoundUnknown {
  readonly id: UnknownId;
  /** a factor of the drawing, or a shift in K; as drawn where it was not learnt */
  readonly value: number;
  /** nine in ten of such intervals should hold the truth */
  readonly low: number;
  readonly high: number;
  readonly learnt: boolean;
}

export interface Tie {
  readonly between: readonly [UnknownId, UnknownId];
  /** −1…1 */
  readonly correlation: number;
}

export type VerdictId = 'matches' | 'roughly' | 'not' | 'no-better';

export interface Match {
  /** rms of the first temperature over hours fitted and hours kept unseen, at the end of the record [K] */
  readonly misfitK: number;
  readonly unseenMisfitK: number;
  /** the same with every fourth day kept unseen */
  readonly otherUnseenMisfitK: number;
  /** of two simple guesses on the unseen days: the drawing, and yesterday's same hour */
  readonly drawnMisfitK: number;
  readonly yesterdayMisfitK: number;
  readonly verdict: VerdictId;
  readonly unknowns: readonly FoundUnknown[];
  /** not fitted, since the record could say nothing of them, with why */
  readonly held: readonly { readonly id: UnknownId; readonly why: string }[];
  readonly ties: readonly Tie[];
  readonly patterns: readonly Pattern[];
  /** heat lost by walls, roof and draughts together, as a factor of the drawing: told better than its parts */
  readonly heatLoss: { readonly value: number; readonly low: number; readonly high: number } | null;
  readonly windows: Windows;
  /** who seems to open them, where it was guessed */
  readonly habit: Habit | null;
  /** the record fits better so many hours later; 0 where the clock is right */
  readonly clockOffH: number;
  readonly notes: readonly string[];
  /** by target, what it would have read, by hour, its own error included */
  readonly readings: MatchResult;
  readonly values: UnknownValues;
  readonly runs: number;
}

export interface MatchOptions {
  readonly windows: Windows;
  /** the picture so far */
  readonly onRound?: (readings: MatchResult) => void;
}

const NORMAL_90 = 1.645;
const LEAST_WIDENING = 1.25;
const GUESSED_WIDENING = 2;
const BLAMED_WIDENING = 3;
/** Narrower than so much of the prior is learnt. */
const LEARNT = 0.8;
const TIED = 0.7;
/** A clock is said to be off from here [h]. */
const LATE_H = 0.6;
const MATCHES_K = 0.7;
const ROUGHLY_K = 1.5;

/** Hold a drawing against its record. Throws RangeError where too few hours can be judged. */
export async function matchHouse(
  record: HouseRecord,
  runner: MatchRunner,
  { windows, onRound }: MatchOptions,
): Promise<Match> {
  const { targets } = record;
  const lead = targets.findIndex(({ kind }) => kind === 'temperature');
  if (lead < 0) throw new RangeError('no temperature was measured; allowed: at least one logger of a room');
  const judged = judgedHours(record);
  const hoursJudged = judged[lead]!.reduce((sum, one) => sum + one, 0);
  if (hoursJudged < 72)
    throw new RangeError(
      `${hoursJudged} hours can be judged; allowed: at least 72, with readings and weather`,
    );
  const notes: string[] = [];
  const { chosen, held } = chooseUnknowns(record, windows, judged[lead]!);
  const [drawn] = (await runner.run([{ values: {} }])) as [MatchResult];
  let habit: Habit | null = null;
  let population: Awaited<ReturnType<typeof populationOf>> | null = null;
  let runs = 1;
  const fittedLast = split(judged, 'last', false);
  if (windows === 'guessed') {
    population = await populationOf(runner, chosen, targets, fittedLast, onRound);
    ({ habit } = population);
    runs += population.runs;
    notes.push(
      'Nobody wrote down when windows stood open, so habits were guessed along with the house; the intervals are wide for it. A fortnight with windows shut, or a list of when they were open, tells more.',
    );
  }
  const jobOf = (values: UnknownValues) =>
    population === null ? { values } : { values, habit: 'automatic' as const };
  const estimateOn = (way: Unseen, start?: readonly number[], roughRounds?: number) =>
    leastSquares(runner, {
      unknowns: chosen,
      targets,
      fitted: split(judged, way, false),
      jobOf,
      ...(start && { start }),
      ...(roughRounds !== undefined && { roughRounds }),
      ...(onRound && population === null && { onRound }),
    });
  // Two ways down the hill, of which the likelier end counts: each is caught in a hollow now and then.
  const ways = [
    await estimateOn('last', population?.places),
    await estimateOn('last', population?.places, 0),
  ] as const;
  const estimate = ways[0].unlikeliness <= ways[1].unlikeliness ? ways[0] : ways[1];
  const other = await estimateOn('every-fourth', estimate.places, 0);
  runs += ways[0].runs + ways[1].runs + other.runs;

  const places = population?.places ?? estimate.places;
  const readings = population?.readings ?? estimate.readings;
  const own = population === null ? estimate.own : ownErrors(targets, fittedLast, readings, estimate.noise);
  const misfit = (result: MatchResult, among: readonly Uint8Array[], errors: readonly OwnError[]) =>
    rms(residualOf(targets[lead]!, result[lead]!, errors[lead]!), among[lead]!);
  const unseenLast = split(judged, 'last', true);
  const misfitK = misfit(readings, fittedLast, own);
  const unseenMisfitK = misfit(readings, unseenLast, own);
  const otherUnseenMisfitK = misfit(other.readings, split(judged, 'every-fourth', true), other.own);
  const none = targets.map(() => NO_ERROR);
  const drawnMisfitK = misfit(drawn, unseenLast, none);
  const yesterdayMisfitK = yesterday(targets[lead]!.measured, unseenLast[lead]!);

  const residual = residualOf(targets[lead]!, readings[lead]!, own[lead]!);
  const patterns = patternsOf(
    record,
    residual.map((value, hour) => (judged[lead]![hour] === 1 ? value : Number.NaN)),
  );
  // What is left is no noise then, and the unknowns take the blame for it.
  const isBlamed = patterns.length > 0 || unseenMisfitK >= MATCHES_K;
  if (isBlamed)
    notes.push(
      'Something is left that no unknown explains, such as a stove, a window or a shade nobody told of. The numbers found take the blame for it, so their intervals were widened; find out what it is first.',
    );
  const widening = Math.max(
    LEAST_WIDENING,
    population === null ? 0 : GUESSED_WIDENING,
    isBlamed ? BLAMED_WIDENING : 0,
    Math.min(3, unseenMisfitK / Math.max(misfitK, 0.05)),
  );
  const sds = await intervals(runner, record, chosen, estimate, other, jobOf, judged);
  const found = chosen.map((id, i): FoundUnknown => {
    const sd = Math.min(
      1.2,
      widening * (population === null ? sds[i]! : Math.max(sds[i]!, population.sd[i]!)),
    );
    const learnt = sd < LEARNT && id !== 'wind';
    const at = (place: number) => valueAt(id, place);
    return {
      id,
      value: learnt ? at(places[i]!) : asDrawn(id),
      low: at(places[i]! - NORMAL_90 * sd),
      high: at(places[i]! + NORMAL_90 * sd),
      learnt,
    };
  });
  const { lateH } = own[lead]!;
  const clockOffH = Math.abs(lateH) < LATE_H ? 0 : -Math.round(lateH) || -Math.sign(lateH);
  if (clockOffH !== 0)
    notes.push(
      `The record fits better ${Math.abs(clockOffH)} h ${clockOffH > 0 ? 'later' : 'earlier'}: the logger’s clock, or the weather’s, seems to be off. Settle it before anything is believed.`,
    );
  if (chosen.includes('airtightness') && !record.weather.hasWind)
    notes.push(
      'Wind was not measured, and draughts go with it: the leakage found is that of house and wind together.',
    );
  return {
    misfitK,
    unseenMisfitK,
    otherUnseenMisfitK,
    drawnMisfitK,
    yesterdayMisfitK,
    verdict: verdictOf(unseenMisfitK, drawnMisfitK, yesterdayMisfitK),
    unknowns: found.filter(({ id }) => id !== 'wind'),
    held,
    ties: tiesOf(chosen, estimate),
    patterns,
    heatLoss: heatLossOf(record, chosen, places, estimate, widening),
    windows,
    habit,
    clockOffH,
    notes: [...record.weather.notes, ...notes],
    readings: readings.map((reading, t) => readBy(reading, own[t]!)),
    values: Object.fromEntries(found.filter(({ learnt }) => learnt).map(({ id, value }) => [id, value])),
    runs,
  };
}

/** What the record can tell, at most seven at once; the rest is held at the drawing, and why. */
function chooseUnknowns(
  record: HouseRecord,
  windows: Windows,
  judged: Uint8Array,
): { chosen: UnknownId[]; held: { id: UnknownId; why: string }[] } {
  const { design, weather, targets, startMs, hours } = record;
  const first = Math.round((startMs - weather.startMs) / 3_600_000);
  const outdoorC = (hour: number) =>
    weather.year.dryBulbC[(weather.firstRow + first + hour + HOURS) % HOURS]!;
  const { measured } = targets.find(({ kind }) => kind === 'temperature')!;
  const known = [...judged.keys()].filter((hour) => judged[hour] === 1);
  const mean = (of: (hour: number) => number) =>
    known.reduce((sum, hour) => sum + of(hour), 0) / known.length;
  const difference = mean((hour) => measured[hour]! - outdoorC(hour));
  const isHeated = design.heating.capacityKW > 0 && mean(outdoorC) < design.heating.dayC - 5;
  const swing = meanDailySwing(measured);
  const chosen: UnknownId[] = [];
  const held: { id: UnknownId; why: string }[] = [];
  const use = (id: UnknownId, can: boolean, why: string) => (can ? chosen.push(id) : held.push({ id, why }));
  const hasSun = weather.sun !== 'typical';
  use('airtightness', true, '');
  use('sun', hasSun, 'the sun was not measured');
  use('insulation', Math.abs(difference) >= 5, 'inside and outside were less than 5 K apart');
  use(
    'mass',
    hasSun && swing >= 2,
    hasSun ? 'the room’s warmth moved by less than 2 K a day' : 'the sun was not measured',
  );
  use('stove', isHeated, 'nothing was heated');
  use(
    'gains',
    hasSun && !isHeated,
    isHeated ? 'a stove that nobody metered hides them' : 'the sun was not measured',
  );
  if (windows === 'guessed') {
    const isWarm = known.some((hour) => measured[hour]! > design.vents.opensAboveC - 1);
    use('opensAbove', isWarm, 'it was too cold to open windows');
    use('ventArea', isWarm, 'it was too cold to open windows');
  }
  use(
    'moisture',
    targets.some(({ kind }) => kind === 'humidity'),
    'humidity was not logged',
  );
  use('ground', hours >= 24 * 90, 'less than three months say nothing of it');
  // Whatever the station says, the wind at the house is another; it shares the blame with the cracks.
  chosen.push('wind');
  return { chosen, held };
}

function meanDailySwing(measured: Float64Array): number {
  let [sum, days] = [0, 0];
  for (let from = 0; from + 24 <= measured.length; from += 24) {
    const day = [...measured.subarray(from, from + 24)].filter((value) => !Number.isNaN(value));
    if (day.length < 20) continue;
    sum += Math.max(...day) - Math.min(...day);
    days++;
  }
  return days === 0 ? 0 : sum / days;
}

/**
 * Standard deviations of the places: from the slopes, from how far the two ways of keeping days unseen disagree, and from
 * whether it really costs what the slopes say to go to the ends.
 */
async function intervals(
  runner: MatchRunner,
  record: HouseRecord,
  unknowns: readonly UnknownId[],
  estimate: Estimate,
  other: Estimate,
  jobOf: (values: UnknownValues) => { values: UnknownValues },
  judged: readonly Uint8Array[],
): Promise<number[]> {
  const fitted = split(judged, 'last', false);
  const own = unknowns.map((_, i) => Math.sqrt(estimate.covariance[i]![i]!));
  const ends = unknowns.flatMap((_, i) =>
    [-1, 1].map((side) =>
      estimate.places.map((place, k) => place + (side * NORMAL_90 * estimate.covariance[k]![i]!) / own[i]!),
    ),
  );
  const results = await runner.run(ends.map((places) => jobOf(valuesAt(unknowns, places))));
  const cost = (places: readonly number[], readings: MatchResult) =>
    dataCost(record.targets, fitted, readings, estimate.noise) +
    places.reduce((sum, place) => sum + place * place, 0);
  const here = cost(estimate.places, estimate.readings);
  return unknowns.map((_, i) => {
    const rises = [0, 1].map((side) => cost(ends[2 * i + side]!, results[2 * i + side]!) - here);
    const least = Math.max(0.1, Math.min(...rises));
    const flat = Math.min(2, Math.max(1, Math.sqrt(NORMAL_90 ** 2 / least)));
    const apart = Math.abs(estimate.places[i]! - other.places[i]!) / 2;
    return Math.min(1.2, Math.max(own[i]! * flat, apart));
  });
}

function tiesOf(unknowns: readonly UnknownId[], { covariance }: Estimate): Tie[] {
  const ties: Tie[] = [];
  for (let i = 0; i < unknowns.length; i++) {
    for (let k = 0; k < i; k++) {
      const correlation = covariance[i]![k]! / Math.sqrt(covariance[i]![i]! * covariance[k]![k]!);
      if (Math.abs(correlation) >= TIED) ties.push({ between: [unknowns[k]!, unknowns[i]!], correlation });
    }
  }
  return ties.sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation));
}

/** Walls, roof and draughts together at the record's mean weather, as a factor of the drawing, and how well it is known. */
function heatLossOf(
  record: HouseRecord,
  unknowns: readonly UnknownId[],
  places: readonly number[],
  { covariance }: Estimate,
  widening: number,
): Match['heatLoss'] {
  const parts = (['airtightness', 'insulation', 'wind'] as const).filter((id) => unknowns.includes(id));
  if (!parts.includes('airtightness')) return null;
  const { design, weather } = record;
  const climate = preparedOnce(weather.year);
  const model = modelOf(design, weather.year.site, climate.ground);
  const opaque = model.elements
    .filter(({ a }) => a.kind === 'outdoors')
    .map(({ areaM2, layers }) => ({
      areaM2,
      bare: 0.17,
      insulating: layers.reduce(
        (sum, { conductivity, thicknessM }) => sum + (conductivity < 0.08 ? thicknessM / conductivity : 0),
        0,
      ),
      rest: layers.reduce(
        (sum, { conductivity, thicknessM }) => sum + (conductivity < 0.08 ? 0 : thicknessM / conductivity),
        0,
      ),
    }));
  const wind = 3;
  const difference = 15;
  const lossAt = (at: readonly number[]) => {
    const value = (id: UnknownId) =>
      unknowns.includes(id) ? valueAt(id, at[unknowns.indexOf(id)]!) : asDrawn(id);
    const walls = opaque.reduce(
      (sum, one) => sum + one.areaM2 / (one.bare + one.rest + one.insulating * value('insulation')),
      0,
    );
    const air = model.openings.reduce((sum, opening) => {
      if (opening.kind !== 'cracks') return sum;
      const driven =
        opening.stackCoefficient * difference + opening.windCoefficient * (wind * value('wind')) ** 2;
      return sum + 1.2 * opening.leakageCm2 * value('airtightness') * Math.sqrt(driven);
    }, 0);
    return walls + air;
  };
  const drawn = lossAt(unknowns.map(() => 0));
  const here = Math.log(lossAt(places) / drawn);
  const gradient = unknowns.map((_, i) => {
    const step = 0.05;
    return (
      (Math.log(lossAt(places.map((place, k) => (k === i ? place + step : place))) / drawn) - here) / step
    );
  });
  const variance = gradient.reduce(
    (sum, a, i) => sum + gradient.reduce((total, b, k) => total + a * b * covariance[i]![k]!, 0),
    0,
  );
  const half = NORMAL_90 * widening * Math.sqrt(Math.max(0, variance));
  return { value: Math.exp(here), low: Math.exp(here - half), high: Math.exp(here + half) };
}

function rms(residual: Float64Array, among: Uint8Array): number {
  let [sum, count] = [0, 0];
  for (let hour = 0; hour < residual.length; hour++) {
    if (among[hour] !== 1 || Number.isNaN(residual[hour]!)) continue;
    sum += residual[hour]! ** 2;
    count++;
  }
  return count === 0 ? Number.NaN : Math.sqrt(sum / count);
}

function yesterday(measured: Float64Array, among: Uint8Array): number {
  return rms(
    measured.map((value, hour) => value - (measured[hour - 24] ?? Number.NaN)),
    among,
  );
}

function verdictOf(unseenK: number, drawnK: number, yesterdayK: number): VerdictId {
  if (!(unseenK <= drawnK) || unseenK > yesterdayK) return 'no-better';
  if (unseenK < MATCHES_K) return 'matches';
  return unseenK <= ROUGHLY_K ? 'roughly' : 'not';
}
