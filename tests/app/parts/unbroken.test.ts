import { expect, test } from 'vitest';
import { unbroken } from '../../../src/app/parts/unbroken.ts';

const HELD = '\u00a0';

test('a number is held to the unit after it, and to no other word', () => {
  expect(unbroken('Above 26 °C for 1450 hours, 67 % of them')).toBe(
    `Above 26${HELD}°C for 1450${HELD}hours, 67${HELD}% of them`,
  );
  expect(unbroken('than 16 m² would, at 2 in the afternoon; take 3 more')).toBe(
    `than 16${HELD}m² would, at 2${HELD}in the afternoon; take 3 more`,
  );
});

test('what is read stays the same but for the spaces', () => {
  const sentence = 'The level is 148 Bq/m³ (4 pCi/L), and never more than 300. Up to 6 kW, R 4 m²K/W.';
  expect(unbroken(sentence).replaceAll(HELD, ' ')).toBe(sentence);
});
