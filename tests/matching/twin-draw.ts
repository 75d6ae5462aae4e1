// One draw of a twin: matched, and set beside its truth, as a line of plain data that a file can keep.

import type { UnknownId } from '../../src/design/as-found.ts';
import { type HeatLosses, heatLossesOf } from '../../src/matching/heat-loss.ts';
import type { HouseRecord } from '../../src/matching/house-record.ts';
import { matchHouse } from '../../src/matching/match.ts';
import type { VerdictId } from '../../src/matching/verdict.ts';
import { UNKNOWNS, type UnknownValues } from '../../src/model/unknowns.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';
import { TWIN_CASES } from './twin-cases.ts';
import { plainMatchRunner, twinOf } from './twin-records.ts';

interface Told {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly truth: number;
}

export interface TwinDraw {
  readonly name: string;
  readonly seed: number;
  readonly runs: number;
  /** fitted, unseen, as drawn, yesterday [K] */
  readonly misfitsK: readonly [number, number, number, number];
  readonly verdict: VerdictId;
  readonly habit: string | null;
  readonly clockOffH: number;
  readonly patterns: readonly string[];
  /** sentences of the match itself, and of the reader of the logger's file */
  readonly notes: readonly string[];
  readonly heatLoss: Told | null;
  readonly draughts: Told | null;
  readonly unknowns: readonly (Told & { readonly id: UnknownId; readonly learnt: boolean })[];
  readonly isGroundLearnt: boolean;
}

/** Match one draw of a case. */
export async function twinDraw(name: string, typical: TypicalYear, seed: number): Promise<TwinDraw> {
  const [made, windows] = TWIN_CASES[name]!;
  const { record, truth, notes } = twinOf(made, typical, seed);
  const match = await matchHouse(record, plainMatchRunner(record), { windows });
  const losses = trueLosses(record, truth);
  const ofWeather = new Set(record.weather.notes);
  return {
    name,
    seed,
    runs: match.runs,
    misfitsK: [match.misfitK, match.unseenMisfitK, match.drawnMisfitK, match.yesterdayMisfitK],
    verdict: match.verdict,
    habit: match.habit,
    clockOffH: match.clockOffH,
    patterns: match.patterns.map((pattern) => pattern.with),
    notes: [...notes, ...match.notes.filter((note) => !ofWeather.has(note))],
    heatLoss: match.heatLoss && { ...match.heatLoss, truth: losses.together.value },
    draughts: match.draughts && { ...match.draughts, truth: losses.draughts.value },
    unknowns: match.unknowns.flatMap(({ id, value, low, high, learnt }) => {
      const true_ = truth[id];
      return true_ === undefined ? [] : [{ id, value, low, high, learnt, truth: true_ }];
    }),
    isGroundLearnt: match.unknowns.some(({ id, learnt }) => id === 'ground' && learnt),
  };
}

/** Heat lost by the true house, as factors of the drawing. */
function trueLosses(record: HouseRecord, truth: UnknownValues): HeatLosses {
  const ids = Object.keys(truth) as UnknownId[];
  const places = ids.map((id) => placeOf(id, truth[id]!));
  const known = ids.map(() => ids.map(() => 0));
  return heatLossesOf(record, ids, [], places, { covariance: known, blamed: known }, 1)!;
}

function placeOf(id: UnknownId, value: number): number {
  const { scale, priorSd } = UNKNOWNS[id];
  return (scale === 'factor' ? Math.log(value) : value) / priorSd;
}
