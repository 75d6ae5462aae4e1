// Source: FAO Irrigation and Drainage Paper 56 (1998), printed steps of examples 17 and 18 that the run takes too: slope of
// the saturation curve, radiation above the air. From memory, high confidence.
import { expect, test } from 'vitest';
import { saturationSlope } from '../../src/physics/moist-air.ts';
import { dailyExtraterrestrial } from '../../src/weather/assembly/radiation-timing.ts';
import { check } from './ledger.ts';

const EXAMPLES = [
  {
    name: 'example 17, Bangkok, 15 April',
    tempC: 30.2,
    slope: 0.246,
    latitudeDeg: 13.73,
    day: 105,
    radiation: 38.06,
  },
  {
    name: 'example 18, Uccle, 6 July',
    tempC: 16.9,
    slope: 0.122,
    latitudeDeg: 50.8,
    day: 187,
    radiation: 41.09,
  },
] as const;

test('slope of the saturation curve and radiation above the air, as printed', () => {
  expect(EXAMPLES).toHaveLength(2);
  for (const { name, tempC, slope, latitudeDeg, day, radiation } of EXAMPLES) {
    const row = { source: 'FAO-56 (1998)', case: name, mark: 'memory' } as const;
    check({
      ...row,
      quantity: 'slope',
      reference: slope,
      ours: saturationSlope(tempC) / 1000,
      // half the last digit
      allowed: 0.0005,
      unit: 'kPa/K',
    });
    check({
      ...row,
      quantity: 'extraterrestrial radiation',
      kind: 'rel',
      reference: radiation,
      ours: (dailyExtraterrestrial(latitudeDeg, day - 1) * 3600) / 1e6,
      // FAO-56 takes the sun's distance and declination by one cosine each, good to about 1 %
      allowed: 0.01,
      unit: 'MJ/m²',
    });
  }
});
