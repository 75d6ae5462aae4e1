// Scales of colour hold for every eye and in grey: away from the middle they only darken.
import { expect, test } from 'vitest';
import { colourOf, comfortScale, HUMIDITY_SCALE } from '../../../src/app/parts/colour-scale.ts';

/** Relative luminance of WCAG 2.2. */
function luminance([r, g, b]: readonly [number, number, number]): number {
  const linear = (channel: number) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
}

test('away from comfort the temperature scale only gets darker, so it reads in grey and to every eye', () => {
  for (const [cold, hot] of [
    [16, 26],
    [5, 35],
    [22, 22.5],
  ] as const) {
    const scale = comfortScale(cold, hot);
    const middle = (cold + hot) / 2;
    for (let step = 0; step < 60; step++) {
      const warm = (c: number) => luminance(colourOf(c, scale));
      expect(warm(middle + step + 1)).toBeLessThanOrEqual(warm(middle + step) + 1e-9);
      expect(warm(middle - step - 1)).toBeLessThanOrEqual(warm(middle - step) + 1e-9);
    }
  }
});

test('the humidity scale only gets darker with damp', () => {
  for (let rh = 0; rh < 1; rh += 0.02) {
    expect(luminance(colourOf(rh + 0.02, HUMIDITY_SCALE))).toBeLessThanOrEqual(
      luminance(colourOf(rh, HUMIDITY_SCALE)) + 1e-9,
    );
  }
});
