// Source: ISO 13788 (surface humidity of building components): saturation pressure, dew point, temperature factor.
// The saturation values are remembered from the standard (high confidence); the rest is computed from its formulas.
import { test } from 'vitest';
import { steadyVapour, vapourExcess } from '../../src/physics/household-moisture.ts';
import {
  densityPressure,
  isoDewPoint,
  isoSaturationPressure,
  leastSurfaceTemperature,
  MOULD_CHECK_RSI,
  neededFactor,
  plainFactor,
  vapourDensity,
} from '../../src/physics/surface-humidity.ts';
import { check } from './ledger.ts';

const SOURCE = 'ISO 13788:2012';

/** Pa, K, –, g/m³, %: the last printed digit, or that of an input rounded in print. */
const ALLOWED = {
  saturation: 1,
  vapourPa: 0.5,
  dewK: 0.02,
  surfaceK: 0.02,
  factor: 0.002,
  density: 0.01,
  humidity: 0.1,
};

test('saturation pressure over water and ice', () => {
  const rows = [
    [-10, 259.3],
    [0, 610.5],
    [10, 1227.3],
    [20, 2337.0],
    [30, 4240.5],
  ] as const;
  for (const [tempC, reference] of rows) {
    check({
      source: SOURCE,
      case: `${tempC} °C`,
      quantity: 'saturation pressure',
      reference,
      ours: isoSaturationPressure(tempC),
      allowed: ALLOWED.saturation,
      unit: 'Pa',
      mark: 'memory',
    });
  }
});

test('vapour at saturation by volume', () => {
  for (const [tempC, reference] of [
    [20, 17.27],
    [5, 6.79],
  ] as const) {
    check({
      source: SOURCE,
      case: `${tempC} °C`,
      quantity: 'saturated vapour',
      reference,
      ours: vapourDensity(isoSaturationPressure(tempC), tempC),
      allowed: ALLOWED.density,
      unit: 'g/m³',
      mark: 'computed',
    });
  }
});

test('needed temperature factor, dew point and least surface temperature of five rooms', () => {
  const rows = [
    {
      inside: 20,
      rh: 0.5,
      outside: 0,
      pressure: 1168.5,
      dew: 9.27,
      surface: 12.62,
      mould: 0.631,
      dewFactor: 0.463,
    },
    {
      inside: 20,
      rh: 0.6,
      outside: 5,
      pressure: 1402.2,
      dew: 12.0,
      surface: 15.43,
      mould: 0.696,
      dewFactor: 0.467,
    },
    {
      inside: 20,
      rh: 0.6,
      outside: -10,
      pressure: 1402.2,
      dew: 12.0,
      surface: 15.43,
      mould: 0.848,
      dewFactor: 0.733,
    },
    {
      inside: 18,
      rh: 0.65,
      outside: 0,
      pressure: 1340.8,
      dew: 11.33,
      surface: 14.74,
      mould: 0.819,
      dewFactor: 0.629,
    },
    {
      inside: 20,
      rh: 0.4,
      outside: -5,
      pressure: 934.8,
      dew: 6.0,
      surface: 9.27,
      mould: 0.571,
      dewFactor: 0.44,
    },
  ];
  for (const { inside, rh, outside, pressure, dew, surface, mould, dewFactor } of rows) {
    const row = {
      source: SOURCE,
      case: `${inside} °C ${100 * rh} % over ${outside} °C`,
      mark: 'computed',
    } as const;
    const vapour = rh * isoSaturationPressure(inside);
    check({
      ...row,
      quantity: 'room vapour pressure',
      reference: pressure,
      ours: vapour,
      allowed: ALLOWED.vapourPa,
      unit: 'Pa',
    });
    check({
      ...row,
      quantity: 'dew point',
      reference: dew,
      ours: isoDewPoint(vapour),
      allowed: ALLOWED.dewK,
      unit: '°C',
    });
    check({
      ...row,
      quantity: 'surface for 80 %',
      reference: surface,
      ours: leastSurfaceTemperature(vapour, 0.8),
      allowed: ALLOWED.surfaceK,
      unit: '°C',
    });
    check({
      ...row,
      quantity: 'factor for 80 %',
      reference: mould,
      ours: neededFactor(inside, outside, vapour, 0.8),
      allowed: ALLOWED.factor,
      unit: '',
    });
    check({
      ...row,
      quantity: 'factor for 100 %',
      reference: dewFactor,
      ours: neededFactor(inside, outside, vapour, 1),
      allowed: ALLOWED.factor,
      unit: '',
    });
  }
});

test('temperature factor of plain areas', () => {
  for (const [uValue, reference] of [
    [0.3, 0.925],
    [0.5, 0.875],
    [1, 0.75],
    [1.5, 0.625],
  ] as const) {
    check({
      source: SOURCE,
      case: `U ${uValue}, Rsi 0.25`,
      quantity: 'temperature factor',
      reference,
      ours: plainFactor(uValue, MOULD_CHECK_RSI),
      allowed: 1e-9,
      unit: '',
      mark: 'computed',
    });
  }
});

test('vapour excess of the humidity classes', () => {
  for (const [humidityClass, reference] of [
    [1, 270],
    [2, 540],
    [3, 810],
    [4, 1080],
  ] as const) {
    check({
      source: SOURCE,
      case: `class ${humidityClass}, 0 °C`,
      quantity: 'vapour excess',
      reference,
      ours: vapourExcess(humidityClass, 0),
      allowed: 1e-9,
      unit: 'Pa',
      mark: 'memory',
    });
  }
});

test('400 g/h into 100 m³/h of air from 5 °C 85 % make 56.6 % at 20 °C', () => {
  const row = { source: SOURCE, case: '400 g/h, 100 m³/h, 5 °C 85 % outside', mark: 'computed' } as const;
  const vapour = steadyVapour(vapourDensity(0.85 * isoSaturationPressure(5), 5), 400, 100);
  const pressure = densityPressure(vapour, 20);
  check({
    ...row,
    quantity: 'room vapour',
    reference: 9.77,
    ours: vapour,
    allowed: ALLOWED.density,
    unit: 'g/m³',
  });
  check({
    ...row,
    quantity: 'room vapour pressure',
    reference: 1322,
    ours: pressure,
    allowed: ALLOWED.vapourPa,
    unit: 'Pa',
  });
  check({
    ...row,
    quantity: 'humidity at 20 °C',
    reference: 56.6,
    ours: (100 * pressure) / isoSaturationPressure(20),
    allowed: ALLOWED.humidity,
    unit: '%',
  });
});
