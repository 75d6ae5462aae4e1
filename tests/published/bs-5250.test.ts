// Source: BS 5250:2002, daily moisture of households by number and way of living; from
// memory, medium confidence; the 9 kg of one person living wet was read in a surveyors' note of 2020.
import { expect, test } from 'vitest';
import { householdMoisture } from '../../src/physics/household-moisture.ts';
import { check } from './ledger.ts';

test('daily totals of one to six people in three ways of living', () => {
  const rows = [
    [3.5, 6, 9],
    [4, 8, 11],
    [4, 9, 12],
    [5, 10, 14],
    [6, 11, 15],
    [7, 12, 16],
  ];
  rows.forEach((totals, i) => {
    (['dry', 'moist', 'wet'] as const).forEach((living, column) => {
      check({
        source: 'BS 5250:2002',
        case: `${i + 1} people, ${living}`,
        quantity: 'moisture',
        reference: totals[column]!,
        ours: householdMoisture(i + 1, living),
        allowed: 0,
        unit: 'kg/d',
        mark: living === 'wet' && i === 0 ? 'document' : 'memory',
      });
    });
  });
});

test('the textbook family of four, about 12 kg a day, lies between living moist and living wet', () => {
  expect(12).toBeGreaterThan(householdMoisture(4, 'moist'));
  expect(12).toBeLessThan(householdMoisture(4, 'wet'));
});
