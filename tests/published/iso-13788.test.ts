// Source: ISO 13788 (surface humidity of building components): saturation pressure, dew point, temperature factor.
// The saturation values are remembered from the standard (high confidence); the rest is computed from its formulas.
import { test } from 'vitest';
import { dewPointFromVapourPressure, saturationPressure } from '../../src/physics/moist-air.ts';
import {
  leastSurfaceTemperature,
  MOULD_CHECK_RSI,
  neededFactor,
  plainFactor,
  vapourDensity,
} from '../../src/physics/surface-humidity.ts';
import { check } from './ledger.ts';

const SOURCE = 'ISO 13788:2012';

/** K and –: the last printed digit, or that of an input rounded in print. */
const ALLOWED = {
  /** the run saturates by WMO-No. 8, within 0.32 % of steam tables, where the standard has its own formula */
  saturationRel: 0.0032,
  /** 0.32 % of saturation is 0.05 K of dew point */
  dewK: 0.05,
  surfaceK: 0.05,
  factor: 0.002,
};

test('saturation pressure over water', () => {
  const rows = [
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
      kind: 'rel',
      ours: saturationPressure(tempC),
      allowed: ALLOWED.saturationRel,
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
      kind: 'rel',
      ours: vapourDensity(saturationPressure(tempC), tempC),
      allowed: ALLOWED.saturationRel,
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
    check({
      ...row,
      quantity: 'dew point',
      reference: dew,
      ours: dewPointFromVapourPressure(pressure),
      allowed: ALLOWED.dewK,
      unit: '°C',
    });
    check({
      ...row,
      quantity: 'surface for 80 %',
      reference: surface,
      ours: leastSurfaceTemperature(pressure, 0.8),
      allowed: ALLOWED.surfaceK,
      unit: '°C',
    });
    check({
      ...row,
      quantity: 'factor for 80 %',
      reference: mould,
      ours: neededFactor(inside, outside, pressure, 0.8),
      allowed: ALLOWED.factor,
      unit: '',
    });
    check({
      ...row,
      quantity: 'factor for 100 %',
      reference: dewFactor,
      ours: neededFactor(inside, outside, pressure, 1),
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
