// Source: ISO 6946:2017, surface films (from memory, high confidence; more digits computed here).
import { expect, test } from 'vitest';
import { blackBodyConductance, outsideConvection } from '../../src/physics/films.ts';
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

/** Printed: convective coefficients inside by the way heat flows [W/m²K], and surface resistances [m²K/W]. */
const PRINTED = {
  convection: { up: 5, horizontal: 2.5, down: 0.7 },
  inside: { up: 0.1, horizontal: 0.13, down: 0.17 },
  outside: 0.04,
};

test('surface resistances follow from convection and radiation at emissivity 0.9', () => {
  const radiation = (tempC: number) => 0.9 * blackBodyConductance(tempC + 273.15);
  const rows = [
    ...(['up', 'horizontal', 'down'] as const).map(
      (way) =>
        [`inside, ${way}`, PRINTED.inside[way], 1 / (PRINTED.convection[way] + radiation(20))] as const,
    ),
    ['outside, wind 4 m/s, 10 °C', PRINTED.outside, 1 / (outsideConvection(4) + radiation(10))] as const,
  ];
  expect(rows).toHaveLength(4);
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
