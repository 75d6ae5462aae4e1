import { expect, test } from 'vitest';
import { hotterWords } from '../../src/findings/hotter-words.ts';
import { wordingOf } from '../../src/findings/wording.ts';

const said = (winterK: number, summerK: number, waveK: number, units: 'metric' | 'us' = 'metric') =>
  hotterWords({ winterK, summerK, waveDays: 10, waveK }, wordingOf(units));

test('a hotter year is said in a few words, in both unit systems', () => {
  expect(said(2, 2, 0)).toBe('2 °C warmer all year');
  expect(said(0, 3, 0)).toBe('3 °C warmer in summer');
  expect(said(1, 0, 0)).toBe('1 °C warmer in winter');
  expect(said(0, 0, 5)).toBe('with a heat wave of 10 days, 5 °C hotter');
  expect(said(1.5, 3, 5)).toBe(
    '1.5 °C warmer in winter and 3 °C in summer, with a heat wave of 10 days, 5 °C hotter',
  );
  expect(said(-1.5, -1.5, 0)).toBe('1.5 °C colder all year');
  expect(said(-1, 2, 0)).toBe('1 °C colder in winter and 2 °C warmer in summer');
  expect(said(0, 5, 5, 'us')).toBe('9 °F warmer in summer, with a heat wave of 10 days, 9 °F hotter');
});
