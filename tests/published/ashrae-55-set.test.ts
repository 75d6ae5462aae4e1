// Source: ASHRAE 55, table of 21 cases that a program for standard effective temperature must meet, and its cooling effect
// of moving air; EN 16798-1:2019 and ASHRAE 55, by how much the adaptive limit may rise with air speed. From memory, high
// confidence; the table is rounded to 0.1 °C, so half of that is allowed, and the rise to 0.1 K likewise.
import { test } from 'vitest';
import { ADAPTIVE_AIR_MS, coolingEffect, STILL_AIR_MS } from '../../src/physics/moving-air.ts';
import {
  type Surroundings,
  standardEffectiveTemperature,
} from '../../src/physics/standard-effective-temperature.ts';
import { check } from './ledger.ts';

const ROUNDED = 0.05 + 1e-9;
const BASE: Surroundings = {
  airTempC: 25,
  meanRadiantTempC: 25,
  airSpeed: 0.15,
  relativeHumidity: 0.5,
  activityMet: 1,
  clothingClo: 0.5,
};

const CASES: readonly (readonly [string, Partial<Surroundings>, number])[] = [
  ['the base case', {}, 23.8],
  ...(
    [
      [0, 12.3],
      [10, 17.0],
      [15, 19.3],
      [20, 21.6],
      [30, 26.4],
      [40, 34.3],
    ] as const
  ).map(([airTempC, set]) => [`air at ${airTempC} °C`, { airTempC }, set] as const),
  ['surfaces at 40 °C', { meanRadiantTempC: 40 }, 31.8],
  ['surfaces at 10 °C', { meanRadiantTempC: 10 }, 15.2],
  ['10 % humidity', { relativeHumidity: 0.1 }, 23.3],
  ['90 % humidity', { relativeHumidity: 0.9 }, 24.9],
  ...(
    [
      [0.1, 24.0],
      [0.6, 21.4],
      [1.1, 20.3],
      [3, 18.8],
    ] as const
  ).map(([airSpeed, set]) => [`${airSpeed} m/s`, { airSpeed }, set] as const),
  ...(
    [
      [0.1, 20.7],
      [1, 27.3],
      [2, 32.5],
      [4, 37.7],
    ] as const
  ).map(([clothingClo, set]) => [`${clothingClo} clo`, { clothingClo }, set] as const),
  ...(
    [
      [0.8, 23.3],
      [2, 29.7],
      [4, 36.0],
    ] as const
  ).map(([activityMet, set]) => [`${activityMet} met`, { activityMet }, set] as const),
];

test('standard effective temperature, the 21 cases of the standard', () => {
  for (const [name, changed, reference] of CASES) {
    check({
      source: 'ASHRAE 55, table of SET',
      case: name,
      quantity: 'standard effective temperature',
      reference,
      ours: standardEffectiveTemperature({ ...BASE, ...changed }),
      allowed: ROUNDED,
      unit: '°C',
      mark: 'memory',
    });
  }
});

test('moving air lets the adaptive limit rise as the standards say', () => {
  for (const [speed, reference] of [
    [0.6, 1.2],
    [0.9, 1.8],
    [1.2, 2.2],
  ] as const) {
    check({
      source: 'EN 16798-1:2019',
      case: `air at ${speed} m/s, 28 °C, 50 %`,
      quantity: 'rise of the adaptive limit',
      reference,
      ours: coolingEffect(28, 0.5, speed, ADAPTIVE_AIR_MS),
      allowed: ROUNDED,
      unit: 'K',
      mark: 'memory',
    });
  }
});

test('a breeze at a desk is worth about 2 K', () => {
  // Published rounded to whole degrees Fahrenheit ("about 4 °F") for 24.4 °C, 50 %, 0.5 m/s, nearly the same clothes and
  // work; a whole kelvin of room for that.
  check({
    source: 'Moving air in offices, published field trial',
    case: '0.5 m/s, 24.4 °C, 50 %',
    quantity: 'cooling effect',
    reference: 2.2,
    ours: coolingEffect(24.4, 0.5, 0.5, STILL_AIR_MS),
    allowed: 0.5,
    unit: 'K',
    mark: 'memory',
  });
});
