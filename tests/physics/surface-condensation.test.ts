import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  condensationRate,
  filmEvaporation,
  latentGain,
  massTransferCoefficient,
} from '../../src/physics/surface-condensation.ts';

const vapour = fc.double({ min: 0, max: 40, noNaN: true });
const film = fc.double({ min: 0, max: 20, noNaN: true });

test('dew settles or dries, never both, and the two are one exchange with its sign turned', () => {
  fc.assert(
    fc.property(film, vapour, vapour, (h, air, saturated) => {
      const dew = condensationRate(h, air, saturated);
      const drying = filmEvaporation(h, air, saturated);
      expect(dew).toBeGreaterThanOrEqual(0);
      expect(Math.min(dew, drying)).toBe(0);
      expect(dew - drying).toBeCloseTo(massTransferCoefficient(h) * (air - saturated), 12);
    }),
  );
});

test('air at saturation over the pane leaves nothing on it', () => {
  expect(condensationRate(3, 12, 12)).toBe(0);
  expect(latentGain(0)).toBe(0);
});

test('thin air at altitude carries more vapour for the same heat film', () => {
  expect(condensationRate(3, 12, 6, 900)).toBeCloseTo((1206 / 900) * condensationRate(3, 12, 6), 12);
});
