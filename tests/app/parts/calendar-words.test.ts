import { expect, test } from 'vitest';
import { dayText, hourText } from '../../../src/app/parts/calendar-words.ts';

test('days and hours have the names a calendar gives them', () => {
  expect(dayText(0)).toBe('1 January');
  expect(dayText(31 * 24)).toBe('1 February');
  // Day 59 of a year without 29 February is 1 March.
  expect(dayText(59 * 24)).toBe('1 March');
  expect(hourText(8759)).toBe('31 December, 23–24 h');
});
