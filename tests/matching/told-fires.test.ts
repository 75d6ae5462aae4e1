// Heat that was written down, as series of a run. A kg of beech with 18 % water gives about 4.1 kWh net (wood-fuel handbooks; its
// own check stands with the formula), of which a light stove brings 0.78 into the room.
import { expect, test } from 'vitest';
import { ALL_EXAMPLES } from '../../src/design/stove-examples.ts';
import type { DiaryLine } from '../../src/loggers/diary-file.ts';
import { amountIn } from '../../src/loggers/heat-amount.ts';
import { toldHeat } from '../../src/matching/told-fires.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { NORTH, WAVE } from '../model/sites.ts';

const HOUR = 3_600_000;
const start = Date.UTC(2026, 0, 12, 7);
const period = { startMs: start, hours: 24 * 6 };
const line = (fromH: number, untilH: number, what: string): DiaryLine => ({
  fromMs: start + fromH * HOUR,
  untilMs: start + untilH * HOUR,
  what,
  share: 1,
  amount: amountIn(what)!,
});
const told = (id: string, ...lines: readonly DiaryLine[]) => {
  const { design } = ALL_EXAMPLES.find((one) => one.id === id)!;
  const { series, notes } = toldHeat(design, modelOf(design, NORTH, WAVE), lines, period, -7);
  return {
    notes,
    columns: series.map((one) => ({
      kind: one.kind,
      zone: 'zone' in one ? one.zone : '',
      values: 'values' in one ? Array.from(one.values) : [],
    })),
  };
};
const sum = (values: readonly number[]) => values.reduce((a, b) => a + (Number.isNaN(b) ? 0 : b), 0);

test('power is the heat of its hours, nothing beside them, and unknown on days nobody wrote of', () => {
  const [heat] = told('modest', line(25.5, 28, 'heater 2 kW'), line(50, 50, '0 kg')).columns;
  expect(heat!.kind).toBe('heat');
  expect(heat!.values.slice(24, 30)).toEqual([0, 1000, 2000, 2000, 0, 0]);
  expect(heat!.values.map(Number.isNaN).indexOf(false)).toBe(24);
  expect(heat!.values.map(Number.isNaN).lastIndexOf(false)).toBe(71);
});

test('wood without a stove in the drawing is heat as a light stove gives it, load after load', () => {
  const [heat] = told('modest', line(30, 30, 'stove 8 kg')).columns;
  const kWh = sum(heat!.values) / 1000;
  expect(kWh).toBeGreaterThan(8 * 4.0 * 0.78 * 0.95);
  expect(kWh).toBeLessThan(8 * 4.2 * 0.78 * 1.05);
  // A light stove gives no 25 kW at once.
  expect(Math.max(...heat!.values.filter((value) => !Number.isNaN(value)))).toBeLessThan(7000);
  expect(heat!.values[29]).toBe(0);
});

test('on the drawing’s stove the wood is burnt there, and nothing else in the house heats', () => {
  const stove = ALL_EXAMPLES.find(({ design }) => design.heating.source?.kind === 'stove')!;
  const { columns, notes } = told(stove.id, line(18, 22, 'stove 8 kg'), line(42, 42, 'stove 6 logs'));
  expect(columns[0]!.kind).toBe('wood');
  expect(sum(columns[0]!.values)).toBeCloseTo(8 + 6 * 1.3, 9);
  expect(columns[0]!.values.slice(18, 22)).toEqual([2, 2, 2, 2]);
  expect(notes.join(' ')).toMatch(/nothing else is taken to heat.*weigh ten/);
});

test('each room that a heater warms is known to get nothing but what was written down', () => {
  const { design } = ALL_EXAMPLES.find(({ id }) => id === 'divided')!;
  const rooms = { ...design.rooms!, list: design.rooms!.list.map((room) => ({ ...room, heated: true })) };
  const model = modelOf({ ...design, rooms }, NORTH, WAVE);
  const { series } = toldHeat({ ...design, rooms }, model, [line(18, 22, 'stove 8 kg')], period, -7);
  const sums = series.map((one) => ('values' in one ? sum(Array.from(one.values)) : Number.NaN));
  expect(sums.length).toBe(rooms.list.length);
  expect(sums[0]).toBeGreaterThan(0);
  for (const one of sums.slice(1)) expect(one).toBe(0);
});
