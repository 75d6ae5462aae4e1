// What people told of days: that all stood shut, or that nobody was at home and all stood shut; and what a diary says was
// opened meanwhile, to the minute. Stretches in; series that a run takes in place of its rules and schedules out. Doors
// between rooms stay as drawn: nobody keeps those shut for a test.

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

/** An opening of the model that stood open by a share, 0…1. */
export interface OpenedStretch extends Stretch {
  readonly opening: string;
  readonly share: number;
}

export interface ToldDays {
  /** windows, vents and the sunspace's door stood shut, but for what was opened */
  readonly shut: readonly Stretch[];
  /** nobody was at home, and all stood shut */
  readonly away: readonly Stretch[];
  /** goes before both */
  readonly opened?: readonly OpenedStretch[];
}

const isIn = (stretches: readonly Stretch[], ms: number): boolean =>
  stretches.some(({ fromMs, untilMs }) => ms >= fromMs && ms < untilMs);

/** Whether what stood open is known of every hour. */
export function windowsTold({ shut, away, opened = [] }: ToldDays, { startMs, hours }: HourGrid): Windows {
  const known = [...shut, ...away];
  for (let hour = 0; hour < hours; hour++) if (!isIn(known, startMs + hour * HOUR_MS)) return 'guessed';
  return opened.length > 0 ? 'known' : 'shut';
}

/** As series of the period; by rule and schedule where nothing was told. */
export function toldSeries(
  model: Model,
  { shut, away, opened = [] }: ToldDays,
  period: HourGrid,
): PeriodSeries[] {
  return [...openingSeries(model, [...shut, ...away], opened, period), ...awaySeries(model, away, period)];
}

function openingSeries(
  { openings }: Model,
  shut: readonly Stretch[],
  opened: readonly OpenedStretch[],
  { startMs, hours }: HourGrid,
): PeriodSeries[] {
  const untilMs = startMs + hours * HOUR_MS;
  return openings.flatMap((opening): PeriodSeries[] => {
    if (opening.kind !== 'vent' && (opening.kind !== 'door' || opening.seeThrough)) return [];
    const isInner = opening.kind === 'door' && opening.zone !== SUNSPACE && opening.other !== SUNSPACE;
    const own = opened.filter((one) => one.opening === opening.id);
    const closed = isInner ? [] : shut;
    if (own.length + closed.length === 0) return [];
    const edges = new Set([startMs, ...[...own, ...closed].flatMap((one) => [one.fromMs, one.untilMs])]);
    const openAt = (at: number) =>
      own.findLast(({ fromMs, untilMs }) => at >= fromMs && at < untilMs)?.share ??
      (isIn(closed, at) ? 0 : Number.NaN);
    const events = [...edges]
      .filter((at) => at >= startMs && at < untilMs)
      .sort((a, b) => a - b)
      .map((at) => ({ at, open: openAt(at) }));
    return [{ kind: 'opening', opening: opening.id, events }];
  });
}

const SUNSPACE = 'sunspace';

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
