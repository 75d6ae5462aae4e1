// Source: the Lewis relation between heat and mass transfer, applied to dew on glass; from memory, high confidence. Rows
// are computed from it; the vapour difference [g/m³] is by the vapour relations of ISO 13788.
import { test } from 'vitest';
import { condensationRate, massTransferCoefficient } from '../../src/physics/surface-condensation.ts';
import { check } from './ledger.ts';

/** g/(m²h): the last printed digit, and that of the vapour difference and of the film coefficient's 2.70 mm/s. */
const ALLOWED_DEW = 0.3;

test('dew on glass by the Lewis relation', () => {
  const rows = [
    { air: 20, rh: 0.8, glass: 5, film: 3, delta: 7.03, dew: 68.3 },
    { air: 20, rh: 0.6, glass: 5, film: 3, delta: 3.57, dew: 34.7 },
    { air: 15, rh: 0.9, glass: 0, film: 3, delta: 6.69, dew: 65.1 },
    { air: 25, rh: 0.8, glass: 10, film: 4, delta: 9.01, dew: 116.9 },
  ];
  for (const { air, rh, glass, film, delta, dew } of rows) {
    const row = {
      source: 'Lewis relation',
      case: `${air} °C ${100 * rh} % on ${glass} °C glass, hc ${film}`,
      mark: 'computed',
    } as const;
    const rate = condensationRate(film, delta, 0);
    check({
      ...row,
      quantity: 'condensation',
      reference: dew,
      ours: 3600 * rate,
      allowed: ALLOWED_DEW,
      unit: 'g/(m²h)',
    });
  }
  check({
    source: 'Lewis relation',
    case: 'hc 3',
    quantity: 'mass transfer coefficient',
    reference: 2.7,
    ours: 1000 * massTransferCoefficient(3),
    allowed: 0.005,
    unit: 'mm/s',
    mark: 'computed',
  });
});
