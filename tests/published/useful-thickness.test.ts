// Source: diurnal heat capacity of slabs with an insulated back, US national-laboratory method of 1983 (values computed
// independently by ISO 13786 at 24 h): the thickness at which it is largest.
import { expect, test } from 'vitest';
import { usefulThickness } from '../../src/physics/wall-response.ts';
import { check } from './ledger.ts';

/** Conductivity [W/(m·K)], density [kg/m³], specific heat [J/(kg·K)], best thickness [m]. */
const MATERIALS = [
  ['concrete', 1.75, 2300, 1000, 0.171],
  ['rammed earth', 1.0, 1950, 900, 0.148],
  ['adobe', 0.7, 1600, 900, 0.137],
] as const;

test('a slab stores most of a day at its useful thickness', () => {
  expect(MATERIALS).toHaveLength(3);
  for (const [name, conductivity, density, specificHeat, reference] of MATERIALS) {
    check({
      source: 'Diurnal heat capacity, 1983 method',
      case: name,
      quantity: 'best thickness',
      reference,
      ours: usefulThickness({ conductivity, density, specificHeat }),
      // half the last digit of the thickness, half of that of the factor 1.18
      allowed: 0.0005 + (0.005 / 1.18) * reference,
      unit: 'm',
      mark: 'computed',
    });
  }
});
