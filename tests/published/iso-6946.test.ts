// Source: ISO 6946:2017, surface films and wall U-values (from memory, high confidence; more digits computed here).
import { expect, test } from 'vitest';
import {
  blackBodyConductance,
  INSIDE_CONVECTION,
  INSIDE_RESISTANCE,
  OUTSIDE_RESISTANCE,
  outsideConvection,
} from '../../src/physics/films.ts';
import { wallTransfer } from '../../src/physics/wall-response.ts';
import { check } from './ledger.ts';

const SOURCE = 'ISO 6946:2017';

test('black-body radiative coefficient from −10 to 40 °C', () => {
  const printed = [
    [-10, 4.1],
    [0, 4.6],
    [10, 5.1],
    [20, 5.7],
    [30, 6.3],
  ] as const;
  const computed = [
    [-10, 4.133],
    [0, 4.622],
    [10, 5.149],
    [20, 5.714],
    [30, 6.319],
    [40, 6.965],
  ] as const;
  expect(printed.length + computed.length).toBe(11);
  for (const [tempC, reference] of printed) {
    check({
      source: SOURCE,
      case: `${tempC} °C`,
      quantity: 'radiative coefficient, printed',
      reference,
      ours: blackBodyConductance(tempC + 273.15),
      allowed: 0.05,
      unit: 'W/m²K',
      mark: 'memory',
    });
  }
  for (const [tempC, reference] of computed) {
    check({
      source: SOURCE,
      case: `${tempC} °C`,
      quantity: 'radiative coefficient',
      reference,
      ours: blackBodyConductance(tempC + 273.15),
      allowed: 0.0006,
      unit: 'W/m²K',
      mark: 'computed',
    });
  }
});

test('surface resistances follow from convection and radiation at emissivity 0.9', () => {
  const inside = 0.9 * blackBodyConductance(293.15);
  const rows = [
    ['inside, up', INSIDE_RESISTANCE.up, 1 / (INSIDE_CONVECTION.up + inside)],
    ['inside, horizontal', INSIDE_RESISTANCE.horizontal, 1 / (INSIDE_CONVECTION.horizontal + inside)],
    ['inside, down', INSIDE_RESISTANCE.down, 1 / (INSIDE_CONVECTION.down + inside)],
    [
      'outside, wind 4 m/s, 10 °C',
      OUTSIDE_RESISTANCE,
      1 / (outsideConvection(4) + 0.9 * blackBodyConductance(283.15)),
    ],
  ] as const;
  for (const [name, reference, ours] of rows) {
    // Printed with two decimals.
    check({
      source: SOURCE,
      case: name,
      quantity: 'surface resistance',
      reference,
      ours,
      allowed: 0.005,
      unit: 'm²K/W',
      mark: 'memory',
    });
  }
});

test('the U-value of a two-layer wall', () => {
  const wall = wallTransfer(
    [
      { thicknessM: 0.3, conductivity: 2, density: 2300, specificHeat: 1000 },
      { thicknessM: 0.1, conductivity: 0.035, density: 30, specificHeat: 1450 },
    ],
    INSIDE_RESISTANCE.horizontal,
    OUTSIDE_RESISTANCE,
    86_400,
  );
  check({
    source: SOURCE,
    case: '0.3 m at 2.0 and 0.1 m at 0.035 W/mK',
    quantity: 'U-value',
    reference: 0.315,
    ours: wall.uValue,
    allowed: 0.001,
    unit: 'W/m²K',
    mark: 'computed',
  });
});
