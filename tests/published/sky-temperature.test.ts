// Source: Berdahl and Martin 1984: five air states computed from the published formula (from memory, high confidence) without pressure term, as daily mean and at midnight.
import { expect, test } from 'vitest';
import { clearSkyEmissivity, skyDomeTempC } from '../../src/physics/sky-temperature.ts';
import { check } from './ledger.ts';

const ALLOWED_EMISSIVITY = 0.0002;
const ALLOWED_TEMPERATURE_K = 0.05;

/** air, dew point; daily mean ε and sky; midnight ε and sky */
const STATES = [
  [10, 5, 0.7408, -10.46, 0.7538, -9.31],
  [20, 10, 0.7743, 1.84, 0.7873, 2.99],
  [0, -5, 0.6848, -24.67, 0.6978, -23.5],
  [30, 15, 0.8114, 14.57, 0.8244, 15.72],
  [-10, -15, 0.6434, -37.47, 0.6564, -36.29],
] as const;

test('clear skies over five states of air', () => {
  expect(STATES).toHaveLength(5);
  for (const [air, dew, meanE, meanT, nightE, nightT] of STATES) {
    // At 6 h the hour term is nothing: the daily mean.
    const mean = clearSkyEmissivity(dew, 6, 100_000);
    const night = clearSkyEmissivity(dew, 0, 100_000);
    const rows = [
      ['Berdahl-Martin 1984', 'emissivity, daily mean', meanE, mean],
      ['Berdahl-Martin 1984', 'emissivity, midnight', nightE, night],
      ['Berdahl-Martin 1984', 'sky temperature, daily mean', meanT, skyDomeTempC(air, mean)],
      ['Berdahl-Martin 1984', 'sky temperature, midnight', nightT, skyDomeTempC(air, night)],
    ] as const;
    for (const [source, quantity, reference, ours] of rows) {
      const isEmissivity = quantity.startsWith('emissivity');
      check({
        source,
        case: `air ${air} °C, dew point ${dew} °C`,
        quantity,
        reference,
        ours,
        allowed: isEmissivity ? ALLOWED_EMISSIVITY : ALLOWED_TEMPERATURE_K,
        unit: isEmissivity ? '' : '°C',
        mark: 'computed',
      });
    }
  }
});
