// Source: the Lewis relation between heat and mass transfer, applied to dew on glass; from memory, high confidence. Rows
// are computed from it with the vapour relations of ISO 13788.
import { test } from 'vitest';
import {
  condensationRate,
  latentGain,
  massTransferCoefficient,
} from '../../src/physics/surface-condensation.ts';
import { isoSaturationPressure, vapourDensity } from '../../src/physics/surface-humidity.ts';
import { check } from './ledger.ts';

/** g/m³, g/(m²h), W/m²: the last printed digit and, for the flows, that of the film coefficient's 2.70 mm/s. */
const ALLOWED = { density: 0.01, dew: 0.3, latent: 0.3 };

test('dew on glass by the Lewis relation', () => {
  const rows = [
    { air: 20, rh: 0.8, glass: 5, film: 3, delta: 7.03, dew: 68.3, latent: 47.5 },
    { air: 20, rh: 0.6, glass: 5, film: 3, delta: 3.57, dew: 34.7, latent: 24.1 },
    { air: 15, rh: 0.9, glass: 0, film: 3, delta: 6.69, dew: 65.1, latent: 45.2 },
    { air: 25, rh: 0.8, glass: 10, film: 4, delta: 9.01, dew: 116.9, latent: 81.2 },
  ];
  for (const { air, rh, glass, film, delta, dew, latent } of rows) {
    const row = {
      source: 'Lewis relation',
      case: `${air} °C ${100 * rh} % on ${glass} °C glass, hc ${film}`,
      mark: 'computed',
    } as const;
    const room = vapourDensity(rh * isoSaturationPressure(air), air);
    const saturated = vapourDensity(isoSaturationPressure(glass), glass);
    const rate = condensationRate(film, room, saturated);
    check({
      ...row,
      quantity: 'vapour difference',
      reference: delta,
      ours: room - saturated,
      allowed: ALLOWED.density,
      unit: 'g/m³',
    });
    check({
      ...row,
      quantity: 'condensation',
      reference: dew,
      ours: 3600 * rate,
      allowed: ALLOWED.dew,
      unit: 'g/(m²h)',
    });
    check({
      ...row,
      quantity: 'latent gain',
      reference: latent,
      ours: latentGain(rate),
      allowed: ALLOWED.latent,
      unit: 'W/m²',
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
