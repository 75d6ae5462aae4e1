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

test('the outside surface resistance follows from wind of 4 m/s and radiation at 10 °C and emissivity 0.9', () => {
  check({
    source: SOURCE,
    case: 'outside, wind 4 m/s, 10 °C',
    quantity: 'surface resistance',
    reference: 0.04,
    ours: 1 / (outsideConvection(4) + 0.9 * blackBodyConductance(283.15)),
    // printed with two decimals
    allowed: 0.005,
    unit: 'm²K/W',
    mark: 'memory',
  });
});
