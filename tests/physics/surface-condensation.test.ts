import fc from 'fast-check';
import { expect, test } from 'vitest';
import { condensationRate, massTransferCoefficient } from '../../src/physics/surface-condensation.ts';

const vapour = fc.double({ min: 0, max: 40, noNaN: true });
const film = fc.double({ min: 0, max: 20, noNaN: true });

test('dew is the exchange of a film while the air is damper than the pane, and nothing else', () => {
  fc.assert(
    fc.property(film, vapour, vapour, (h, air, saturated) => {
      const dew = condensationRate(h, air, saturated);
      expect(dew).toBe(air > saturated ? massTransferCoefficient(h) * (air - saturated) : 0);
    }),
  );
});

test('air at saturation over the pane leaves nothing on it', () => {
  expect(condensationRate(3, 12, 12)).toBe(0);
});

test('thin air at altitude carries more vapour for the same heat film', () => {
  expect(condensationRate(3, 12, 6, 900)).toBeCloseTo((1206 / 900) * condensationRate(3, 12, 6), 12);
});
