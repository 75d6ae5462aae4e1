// The twins that a match is held to: cases in which two weeks can tell much, and wrong ones, which must show in verdict,
// patterns or notes and not as a confident number.

import type { Design, WeatherRecord } from '../../src/daystone.ts';
import type { UnknownId } from '../../src/design/as-found.ts';
import { suspicious } from '../../src/loggers/suspicious.ts';
import type { Windows } from '../../src/matching/house-record.ts';
import type { TwinCase } from './twin-records.ts';

const unheated = (design: Design): Design => ({ ...design, heating: { ...design.heating, capacityKW: 0 } });
const automatic = (design: Design): Design => ({ ...design, vents: { ...design.vents, habit: 'automatic' } });
const forgetful = (design: Design): Design => ({ ...design, vents: { ...design.vents, habit: 'forgetful' } });
const HOUSE = [{ zone: 'house', kind: 'temperature' }] as const;
const ALL = [
  ...HOUSE,
  { zone: 'sunspace', kind: 'temperature' },
  { zone: 'house', kind: 'humidity' },
] as const;
const FREE: readonly UnknownId[] = ['airtightness', 'sun', 'insulation', 'mass', 'gains'];
const winter = { from: '2021-01-15', days: 14, shut: true } as const;

const wrongWeather = (weather: WeatherRecord): WeatherRecord => ({
  ...weather,
  year: {
    ...weather.year,
    windSpeed: weather.year.windSpeed.map((wind) => 0.7 * wind),
    dryBulbC: weather.year.dryBulbC.map((airC) => airC + 0.4),
  },
});
/** Two evenings in three somebody lights a stove that nobody tells of. */
const stoveLit = (reading: Float64Array) =>
  reading.map((airC, hour) => {
    const isEvening = hour % 24 >= 18 && hour % 24 < 23 && Math.floor(hour / 24) % 3 !== 1;
    return airC + (isEvening ? 2.5 : 0);
  });
const hourLate = (reading: Float64Array) => reading.map((_, hour) => reading[Math.max(0, hour - 1)]!);

const otherWindow = (design: Design): Design => ({
  ...design,
  glass: { ...design.glass, otherShareOfFloor: design.glass.otherShareOfFloor + 0.06 },
});
/** From ten to twelve on bright days the sun is on the logger; its file is then read as any other. */
const inTheSun = (reading: Float64Array, say: (note: string) => void) => {
  const isLit = (hour: number) => [10, 11].includes(hour % 24) && Math.floor(hour / 24) % 4 !== 2;
  const read = reading.map((airC, hour) => airC + (isLit(hour) ? 6 : 0));
  const ms = reading.map((_, hour) => hour * 3_600_000);
  const { masked, notes } = suspicious('temperature', ms, read, String);
  notes.forEach(say);
  return read.map((airC, hour) => (masked[hour] === 1 ? Number.NaN : airC));
};
/** The same, too little to be told from a warm room. */
const aLittleSun = (reading: Float64Array) =>
  reading.map(
    (airC, hour) => airC + ([10, 11].includes(hour % 24) && Math.floor(hour / 24) % 4 !== 2 ? 2 : 0),
  );

export const TWIN_CASES: Readonly<Record<string, readonly [TwinCase, Windows]>> = {
  'winter, no heating, shut, air': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE },
    'shut',
  ],
  'winter, no heating, shut, four weeks of air': [
    { design: 'modest', changed: unheated, ...winter, days: 28, truth: FREE, targets: HOUSE },
    'shut',
  ],
  'winter, no heating, shut, air and humidity': [
    {
      design: 'modest',
      changed: unheated,
      ...winter,
      truth: [...FREE, 'moisture'],
      targets: [...HOUSE, { zone: 'house', kind: 'humidity' }],
    },
    'shut',
  ],
  'winter, no heating, shut, air; the house’s wind is another': [
    { design: 'modest', changed: unheated, ...winter, truth: [...FREE, 'wind'], targets: HOUSE },
    'shut',
  ],
  'winter, stove, shut, air': [
    {
      design: 'modest',
      ...winter,
      truth: ['airtightness', 'sun', 'insulation', 'mass', 'stove'],
      targets: HOUSE,
    },
    'shut',
  ],
  'winter, stove, its heat written down, shut, air': [
    {
      design: 'modest',
      ...winter,
      truth: [...FREE, 'stove'],
      targets: HOUSE,
      heatWritten: true,
    },
    'shut',
  ],
  'winter, closed sunspace, shut, all loggers': [
    {
      design: 'closed',
      changed: automatic,
      ...winter,
      truth: ['airtightness', 'sun', 'insulation', 'mass', 'stove', 'moisture'],
      targets: ALL,
    },
    'shut',
  ],
  'summer, shut, air': [
    { design: 'modest', from: '2021-07-05', days: 14, shut: true, truth: FREE, targets: HOUSE },
    'shut',
  ],
  'summer, closed, automatic, rooms and sunspace': [
    {
      design: 'closed',
      changed: automatic,
      from: '2021-07-05',
      days: 14,
      shut: false,
      truth: [...FREE, 'opensAbove', 'ventArea'],
      targets: ALL.slice(0, 2),
    },
    'guessed',
  ],
  'summer, attentive, nobody wrote it down': [
    {
      design: 'modest',
      from: '2021-07-05',
      days: 14,
      shut: false,
      truth: [...FREE, 'opensAbove', 'ventArea'],
      targets: HOUSE,
    },
    'guessed',
  ],
  'summer, forgetful, nobody wrote it down': [
    {
      design: 'modest',
      built: forgetful,
      from: '2021-07-05',
      days: 14,
      shut: false,
      truth: [...FREE, 'opensAbove', 'ventArea'],
      targets: HOUSE,
    },
    'guessed',
  ],
  'wrong: weather 0.4 K off, wind 0.7': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, seen: wrongWeather },
    'shut',
  ],
  'wrong: a stove untold': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, readings: stoveLit },
    'shut',
  ],
  'wrong: a logger in the sun': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, readings: inTheSun },
    'shut',
  ],
  'wrong: a logger in a little sun': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, readings: aLittleSun },
    'shut',
  ],
  'wrong: a window that the drawing lacks': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, built: otherWindow },
    'shut',
  ],
  'divided, a logger in each of two rooms': [
    {
      design: 'divided',
      ...winter,
      truth: ['airtightness', 'sun', 'insulation', 'mass', 'stove'],
      targets: [
        { zone: 'room-1', kind: 'temperature' },
        { zone: 'room-2', kind: 'temperature' },
      ],
    },
    'shut',
  ],
  'wrong: divided, the logger hung in another room': [
    {
      design: 'divided',
      ...winter,
      truth: ['airtightness', 'sun', 'insulation', 'mass', 'stove'],
      targets: [{ zone: 'room-1', kind: 'temperature' }],
      hung: 'room-2',
    },
    'shut',
  ],
  'wrong: logger’s clock an hour late': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, readings: hourLate },
    'shut',
  ],
};
