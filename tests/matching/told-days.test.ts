// Days told as shut or away, as what a run takes in place of rules and schedules; and days that files share.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/daystone.ts';
import { sharedDays } from '../../src/matching/shared-days.ts';
import { toldSeries, windowsTold } from '../../src/matching/told-days.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { NORTH, WAVE } from '../model/sites.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const { design } = EXAMPLES.find(({ id }) => id === 'closed')!;
const model = modelOf(design, NORTH, WAVE);
const start = Date.UTC(2026, 0, 12);
const period = { startMs: start, hours: 24 * 6 };
const day = (first: number, last: number) => ({
  fromMs: start + first * DAY,
  untilMs: start + (last + 1) * DAY,
});

test('windows are known only where every day was told, shut or away', () => {
  expect(windowsTold({ shut: [day(0, 3)], away: [day(4, 5)] }, period)).toBe('shut');
  expect(windowsTold({ shut: [day(0, 3)], away: [day(5, 5)] }, period)).toBe('guessed');
  expect(toldSeries(model, { shut: [], away: [] }, period)).toEqual([]);
});

test('shut days shut all that moves, and the rule takes over after them', () => {
  const series = toldSeries(model, { shut: [day(1, 2)], away: [] }, period);
  const shut = series.filter((one) => one.kind === 'opening');
  expect(shut).toHaveLength(series.length);
  expect(shut.length).toBeGreaterThan(1);
  for (const { events } of shut) {
    expect(events.map(({ at }) => (Number(at) - start) / DAY)).toEqual([0, 1, 3]);
    expect(events.map(({ open }) => open)).toEqual([Number.NaN, 0, Number.NaN]);
  }
});

test('what a diary says was opened goes before shut days, to the minute; other openings stay shut', () => {
  const stretch = { fromMs: start + 12.1 * HOUR, untilMs: start + 12.4 * HOUR, share: 0.5 };
  const whole = { shut: [day(0, 5)], away: [], opened: [{ ...stretch, opening: 'house windows' }] };
  expect(windowsTold(whole, period)).toBe('known');
  const series = toldSeries(model, whole, period);
  const eventsOf = (id: string) =>
    series.flatMap((one) =>
      one.kind === 'opening' && one.opening === id
        ? one.events.map(({ at, open }) => [(Number(at) - start) / HOUR, open])
        : [],
    );
  expect(eventsOf('house windows')).toEqual([
    [0, 0],
    [12.1, 0.5],
    [12.4, 0],
  ]);
  expect(eventsOf('door')).toEqual([[0, 0]]);
});

test('doors between rooms stay as drawn on shut days', () => {
  const { design: divided } = EXAMPLES.find(({ id }) => id === 'divided')!;
  const series = toldSeries(modelOf(divided, NORTH, WAVE), { shut: [day(0, 5)], away: [] }, period);
  const ids = series.flatMap((one) => (one.kind === 'opening' ? [one.opening] : []));
  expect(ids).toContain('door room-1');
  expect(ids.filter((id) => id.startsWith('way'))).toEqual([]);
});

test('in days away nobody breathes, cooks or washes, and appliances are as by night', () => {
  const series = toldSeries(model, { shut: [], away: [day(2, 2)] }, period);
  const values = (kind: string) =>
    series.flatMap((one) =>
      one.kind === kind && 'values' in one ? [[...(one.values as Float64Array)]] : [],
    );
  for (const column of [...values('people'), ...values('moisture')]) {
    expect(column.slice(48, 72).every((value) => value === 0)).toBe(true);
    expect(column.filter((value) => !Number.isNaN(value))).toHaveLength(24);
  }
  const kept = values('gain').map((column) => column[48]!);
  expect(kept.filter((value) => value === 0)).toHaveLength(1);
  expect(Math.max(...kept)).toBeGreaterThan(0);
  expect(Math.max(...kept)).toBeLessThan(design.people.appliancesW);
});

test('days shared are whole days of local standard time', () => {
  const weather = { startMs: start - 30 * DAY, hours: 24 * 60 };
  // Local midnight is 7 h UTC; the logger begins at 9 h and ends ten days later.
  const logger = { startMs: start + 9 * HOUR, hours: 240 };
  expect(sharedDays(weather, -7, [logger])).toEqual({ startMs: start + 31 * HOUR, hours: 24 * 9, days: 9 });
  expect(sharedDays(weather, -7, [{ startMs: start + 400 * DAY, hours: 240 }]).days).toBe(0);
});
