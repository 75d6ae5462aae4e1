import fc from 'fast-check';
import { expect, test } from 'vitest';
import { snowShapeFactor } from '../../src/physics/snow-load.ts';

test('steeper glass never carries more snow, and held snow never less than 0.8', () => {
  const tilt = fc.double({ min: 0, max: 90, noNaN: true });
  fc.assert(
    fc.property(tilt, tilt, (a, b) => {
      expect(snowShapeFactor(Math.max(a, b), true)).toBeLessThanOrEqual(
        snowShapeFactor(Math.min(a, b), true),
      );
      expect(snowShapeFactor(a, false)).toBe(0.8);
    }),
  );
});
