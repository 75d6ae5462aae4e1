// A house as found: a drawing held against a record of its days. Unknowns are chosen by what the record can tell, fitted on
// part of the days, judged on days they had not seen and against two simple guesses; intervals are widened by what was
// seen to go wrong; what cannot be told apart, or was not learnt, is said so.

import type { UnknownId } from '../design/as-found.ts';
import type { Habit } from '../design/design.ts';
import { type UnknownValues, valueAt } from '../model/unknowns.ts';
import { chooseUnknowns, type Held } from './chosen-unknowns.ts';
import { type HeatLoss, type HeatLosses, heatLossesOf } from './heat-loss.ts';
import type { HouseRecord, MatchResult, MatchRunner, Windows } from './house-record.ts';
import { hungElsewhere, hungWords } from './hung-elsewhere.ts';
import { intervals, NORMAL_90, type Tie, tiesOf, WIDEST } from './intervals.ts';
import { judgedHours, split, type Unseen } from './judged-hours.ts';
import { jumpsOf } from './jumps.ts';
import {
  type Estimate,
  leastSquares,
  NO_ERROR,
  type OwnError,
  ownErrors,
  readBy,
  residualOf,
} from './least-squares.ts';
import { among } from './noise.ts';
import { type Pattern, patternsOf } from './patterns.ts';
import { populationOf } from './population.ts';
import { rememberingRunner } from './remembering-runner.ts';
import { MATCHES_K, ROUGHLY_K, rms, type VerdictId, verdictOf, yesterday } from './verdict.ts';

export interface FoundUnknown {
  readonly id: UnknownId;
  /** a factor of the drawing, or a shift in K */
  readonly value: number;
  /** nine in ten of such intervals should hold the truth */
  readonly low: number;
  readonly high: number;
  /** the record narrows what houses usually have */
  readonly learnt: boolean;
}

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
  /** those that were learnt first */
  readonly unknowns: readonly FoundUnknown[];
  /** not fitted, since the record could say nothing of them, with why */
  readonly held: readonly Held[];
  readonly ties: readonly Tie[];
  readonly patterns: readonly Pattern[];
  /** heat lost by walls, roof and draughts together, as a factor of the drawing: told better than its parts */
  readonly heatLoss: HeatLoss | null;
  /** the draughts of it, by leaks and by wind, which a record cannot tell apart */
  readonly draughts: HeatLoss | null;
  readonly windows: Windows;
  /** who seems to open them, where it was guessed */
  readonly habit: Habit | null;
  /** the record fits better so many hours later; 0 where the clock is right */
  readonly clockOffH: number;
  readonly notes: readonly string[];
  /** by target, what it would have read, by hour, its own error included */
  readonly readings: MatchResult;
  readonly values: UnknownValues;
  /** that were made; one asked for again is remembered */
  readonly runs: number;
}

export interface MatchOptions {
  readonly windows: Windows;
  /** the picture so far: what the loggers would have read in the house as drawn, and in the likeliest yet */
  readonly onRound?: (readings: MatchResult, drawn: MatchResult) => void;
  /** asked between rounds: true ends the search, and what is found so far is judged */
  readonly isEnough?: () => boolean;
}

const LEAST_WIDENING = 1.25;
const GUESSED_WIDENING = 2;
const CUT_SHORT_WIDENING = 2;
const BLAMED_WIDENING = 3;
/** Narrower than so much of the prior is learnt. */
const LEARNT = 0.8;
/** A clock is said to be off from here [h]. */
const LATE_H = 0.6;

/** Hold a drawing against its record. Throws RangeError where too few hours can be judged. */
export async function matchHouse(
  record: HouseRecord,
  machinery: MatchRunner,
  { windows, onRound, isEnough = () => false }: MatchOptions,
): Promise<Match> {
  const runner = rememberingRunner(machinery);
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
  const { fitted: chosen, considered, held } = chooseUnknowns(record, windows, judged[lead]!);
  const [drawn] = (await runner.run([{ values: {} }])) as [MatchResult];
  const tell = (readings: MatchResult) => onRound?.(readings, drawn);
  tell(drawn);
  let habit: Habit | null = null;
  let population: Awaited<ReturnType<typeof populationOf>> | null = null;
  const fittedLast = split(judged, 'last', false);
  if (windows === 'guessed') {
    population = await populationOf(runner, chosen, targets, fittedLast, tell, isEnough);
    ({ habit } = population);
    notes.push(
      'Nobody wrote down when windows stood open, so habits were guessed along with the house; the intervals are wide for it. A fortnight with windows shut, or a list of when they were open, tells more.',
    );
  }
  const jobOf = (values: UnknownValues) =>
    population === null ? { values } : { values, habit: 'automatic' as const };
  const estimateOn = (way: Unseen, start?: readonly number[], roughRounds?: number) =>
    leastSquares(runner, {
      unknowns: chosen,
      considered,
      targets,
      fitted: split(judged, way, false),
      jobOf,
      ...(start && { start }),
      ...(roughRounds !== undefined && { roughRounds }),
      ...(population === null && { onRound: tell }),
      isEnough,
    });
  // Two ways down the hill, of which the likelier end counts: each is caught in a hollow now and then.
  const ways = [
    await estimateOn('last', population?.places),
    await estimateOn('last', population?.places, 0),
  ] as const;
  const estimate = ways[0].unlikeliness <= ways[1].unlikeliness ? ways[0] : ways[1];
  const other = await estimateOn('every-fourth', estimate.places, 0);
  const elsewhere =
    population === null
      ? await hungElsewhere(runner, record, {
          unknowns: chosen,
          considered,
          fitted: fittedLast,
          estimate,
          jobOf,
          isEnough,
        })
      : [];
  if (elsewhere.length > 0) notes.push(hungWords(elsewhere));
  const isCutShort = isEnough();
  if (isCutShort)
    notes.push('The search was ended early, so the intervals are wider than this record’s need be.');

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
  const left = among(residual, judged[lead]!);
  const jumps = windows === 'guessed' ? null : jumpsOf(record, left);
  const patterns = [...patternsOf(record, left), ...(jumps === null ? [] : [jumps])];
  // The verdict is of the first logger; a room that is missed altogether goes with it into the doubts.
  const missed = targets.filter(
    (target, t) =>
      target.kind === 'temperature' &&
      t !== lead &&
      rms(residualOf(target, readings[t]!, own[t]!), unseenLast[t]!) > ROUGHLY_K,
  );
  for (const { name } of missed)
    notes.push(
      `The house as found does not follow “${name}”. Did it hang in another room, or is something there that the drawing lacks? Decide nothing on that room.`,
    );
  // What is left is no noise then, and the unknowns take the blame for it.
  const isBlamed = patterns.length > 0 || missed.length > 0 || unseenMisfitK >= MATCHES_K;
  if (isBlamed)
    notes.push(
      'Something is left that no unknown explains, such as a stove, a window or a shade nobody told of. The numbers found take the blame for it, so their intervals were widened; find out what it is first.',
    );
  const widening = Math.max(
    LEAST_WIDENING,
    population === null ? 0 : GUESSED_WIDENING,
    isCutShort ? CUT_SHORT_WIDENING : 0,
    isBlamed ? BLAMED_WIDENING : 0,
    Math.min(3, unseenMisfitK / Math.max(misfitK, 0.05)),
  );
  const sds = await intervals(runner, record, chosen, estimate, other, jobOf, fittedLast);
  const found = chosen.map((id, i): FoundUnknown => {
    const sd = Math.min(
      WIDEST,
      widening * (population === null ? sds[i]! : Math.max(sds[i]!, population.sd[i]!)),
    );
    // However the loggers hung, as far as the record tells.
    const ends = [
      [places[i]!, sd] as const,
      ...elsewhere.map((way) => [way.estimate.places[i]!, widening * spreadAt(way.estimate, i)] as const),
    ];
    const low = Math.min(...ends.map(([place, own]) => place - NORMAL_90 * own));
    const high = Math.max(...ends.map(([place, own]) => place + NORMAL_90 * own));
    const learnt = (high - low) / 2 / NORMAL_90 < LEARNT;
    const at = (place: number) => valueAt(id, place);
    return { id, value: at(places[i]!), low: at(low), high: at(high), learnt };
  });
  const losses: (HeatLosses | null)[] = [
    heatLossesOf(record, chosen, considered, places, asWide(estimate, sds), widening),
    ...elsewhere.map((way) =>
      heatLossesOf(record, chosen, considered, way.estimate.places, way.estimate, widening),
    ),
  ];
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
    unknowns: found.toSorted((a, b) => Number(b.learnt) - Number(a.learnt)),
    held,
    ties: tiesOf(chosen, estimate),
    patterns,
    heatLoss: spanOf(losses.map((one) => one?.together ?? null)),
    draughts: spanOf(losses.map((one) => one?.draughts ?? null)),
    windows,
    habit,
    clockOffH,
    notes: [...record.weather.notes, ...notes],
    readings: readings.map((reading, t) => readBy(reading, own[t]!)),
    values: Object.fromEntries(found.map(({ id, value }) => [id, value])),
    runs: runner.runs,
  };
}

/** Standard deviation of an unknown, in those of its prior. */
function spreadAt({ covariance, considered }: Estimate, i: number): number {
  return Math.min(WIDEST, Math.sqrt(covariance[i]![i]! + considered[i]![i]!));
}

/** The first, as wide as all of them. */
function spanOf(losses: readonly (HeatLoss | null)[]): HeatLoss | null {
  const all = losses.filter((one) => one !== null);
  const [first] = all;
  if (first === undefined) return null;
  return {
    value: first.value,
    low: Math.min(...all.map(({ low }) => low)),
    high: Math.max(...all.map(({ high }) => high)),
  };
}

/** An estimate with its own covariance as wide as unknowns were found to be known, by their standard deviations. */
function asWide(estimate: Estimate, sds: readonly number[]): Pick<Estimate, 'covariance' | 'blamed'> {
  const { covariance, considered, blamed } = estimate;
  const times = sds.map((sd, i) => {
    const own = covariance[i]![i]!;
    return Math.sqrt(Math.max(1, (sd * sd - considered[i]![i]!) / own));
  });
  return {
    covariance: covariance.map((row, i) => row.map((value, k) => value * times[i]! * times[k]!)),
    blamed,
  };
}
