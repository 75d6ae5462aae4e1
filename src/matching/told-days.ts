// What people told of days: that all stood shut, or that nobody was at home and all stood shut. Stretches in; series that a
// run takes in place of its rules and schedules out.

import type { PeriodSeries } from '../daystone.ts';
import type { Model } from '../model/model.ts';
import { valuesOf } from '../model/schedule.ts';
import { HOUR_MS } from '../weather/moments.ts';
import type { HourGrid } from '../weather/real/hourly-means.ts';
import type { Windows } from './house-record.ts';

export interface Stretch {
  readonly fromMs: number;
  /** after the last */
  readonly untilMs: number;
}

export interface ToldDays {
  /** windows, vents and doors stood shut */
  readonly shut: readonly Stretch[];
  /** nobody was at home, and all stood shut */
  readonly away: readonly Stretch[];
}

const isIn = (stretches: readonly Stretch[], ms: number): boolean =>
  stretches.some(({ fromMs, untilMs }) => ms >= fromMs && ms < untilMs);

/** Whether what stood open is known of every hour. */
export function windowsTold({ shut, away }: ToldDays, { startMs, hours }: HourGrid): Windows {
  const known = [...shut, ...away];
  for (let hour = 0; hour < hours; hour++) if (!isIn(known, startMs + hour * HOUR_MS)) return 'guessed';
  return 'shut';
}

/** As series of the period; by rule and schedule where nothing was told. */
export function toldSeries(model: Model, { shut, away }: ToldDays, period: HourGrid): PeriodSeries[] {
  return [...shutSeries(model, [...shut, ...away], period), ...awaySeries(model, away, period)];
}

function shutSeries({ openings }: Model, stretches: readonly Stretch[], period: HourGrid): PeriodSeries[] {
  if (stretches.length === 0) return [];
  const { startMs, hours } = period;
  const movable = openings.filter(
    (opening) => opening.kind === 'vent' || (opening.kind === 'door' && !opening.seeThrough),
  );
  const edges = new Set([startMs, ...stretches.flatMap(({ fromMs, untilMs }) => [fromMs, untilMs])]);
  const inside = [...edges]
    .filter((ms) => ms >= startMs && ms < startMs + hours * HOUR_MS)
    .sort((a, b) => a - b);
  return movable.map(({ id }) => ({
    kind: 'opening',
    opening: id,
    events: inside.map((at) => ({ at, open: isIn(stretches, at) ? 0 : Number.NaN })),
  }));
}

/** An empty house: no people, nothing cooked or washed, lights and appliances as by night (common practice, no source). */
function awaySeries(
  { zones }: Model,
  away: readonly Stretch[],
  { startMs, hours }: HourGrid,
): PeriodSeries[] {
  if (away.length === 0) return [];
  const only = (value: number) =>
    Float64Array.from({ length: hours }, (_, hour) =>
      isIn(away, startMs + hour * HOUR_MS) ? value : Number.NaN,
    );
  return zones.flatMap(({ id: zone, people, gains, moisture }): PeriodSeries[] => [
    ...(people === null ? [] : [{ kind: 'people', zone, values: only(0) } as const]),
    ...gains.map(({ id: gain, power }) => ({
      kind: 'gain' as const,
      zone,
      gain,
      values: only(gain === 'people' ? 0 : Math.min(...valuesOf(power))),
    })),
    ...moisture.map(({ cause }) => ({ kind: 'moisture' as const, zone, cause, values: only(0) })),
  ]);
}
