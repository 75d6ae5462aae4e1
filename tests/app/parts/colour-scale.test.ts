// Scales of colour hold for every eye and in grey: away from the middle they only darken, on the dark screen only brighten.
import { expect, test } from 'vitest';
import {
  type ColourScale,
  colourOf,
  comfortScale,
  HUMIDITY_SCALE,
  heatScale,
  inDark,
} from '../../../src/app/parts/colour-scale.ts';

/** Relative luminance of WCAG 2.2. */
function luminance([r, g, b]: readonly [number, number, number]): number {
  const linear = (channel: number) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
}

/** What is further from calm is never brighter on the light screen, nor darker on the dark one. */
function expectCalmer(calm: number, further: number, scale: ColourScale): void {
  const of = (value: number, shown: ColourScale) => luminance(colourOf(value, shown));
  expect(of(further, scale), `${further}`).toBeLessThanOrEqual(of(calm, scale) + 1e-9);
  expect(of(further, inDark(scale)), `${further}`).toBeGreaterThanOrEqual(of(calm, inDark(scale)) - 1e-9);
}

test('away from comfort the temperature scale only goes one way, so it reads in grey and to every eye', () => {
  for (const [cold, hot] of [
    [16, 26],
    [5, 35],
    [22, 22.5],
  ] as const) {
    const scale = comfortScale(cold, hot);
    const middle = (cold + hot) / 2;
    for (let step = 0; step < 60; step++) {
      expectCalmer(middle + step, middle + step + 1, scale);
      expectCalmer(middle - step, middle - step - 1, scale);
    }
  }
});

test('the scales of humidity and of heat only go one way', () => {
  for (let share = 0; share < 1; share += 0.02) {
    expectCalmer(share, share + 0.02, HUMIDITY_SCALE);
    expectCalmer(share, share + 0.02, heatScale(1));
  }
});

test('on the dark screen what is nothing to mind does not glare: it is as dark as the page', () => {
  // The page in the dark, #1c2125, and the contrast below which WCAG 2.2 calls nothing an edge (1.4.11: 3 to 1).
  const paper = luminance([0x1c, 0x21, 0x25]);
  for (const [calm, scale] of [
    [21, comfortScale(16, 26)],
    [0.4, HUMIDITY_SCALE],
    [0, heatScale(1)],
  ] as const)
    expect((luminance(colourOf(calm, inDark(scale))) + 0.05) / (paper + 0.05)).toBeLessThan(1.5);
});
