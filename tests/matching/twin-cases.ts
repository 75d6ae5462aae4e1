// The twins that a match is held to: cases in which two weeks can tell much, and wrong ones, which must show in verdict,
// patterns or notes and not as a confident number.

import type { Design, WeatherRecord } from '../../src/daystone.ts';
import type { UnknownId } from '../../src/design/as-found.ts';
import type { Windows } from '../../src/matching/house-record.ts';
import type { TwinCase } from './twin-records.ts';

const unheated = (design: Design): Design => ({ ...design, heating: { ...design.heating, capacityKW: 0 } });
const automatic = (design: Design): Design => ({ ...design, vents: { ...design.vents, habit: 'automatic' } });
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

export const TWIN_CASES: Readonly<Record<string, readonly [TwinCase, Windows]>> = {
  'winter, no heating, shut, air': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE },
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
  'summer, forgetful or attentive, nobody wrote it down': [
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
  'wrong: weather 0.4 K off, wind 0.7': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, seen: wrongWeather },
    'shut',
  ],
  'wrong: a stove untold': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, readings: stoveLit },
    'shut',
  ],
  'wrong: logger’s clock an hour late': [
    { design: 'modest', changed: unheated, ...winter, truth: FREE, targets: HOUSE, readings: hourLate },
    'shut',
  ],
};
