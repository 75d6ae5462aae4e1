// Factors: NIST SP 811, appendix B.
import { expect, test } from 'vitest';
import { cellText, unitShown, valueShown } from '../../../src/app/questions/answer-units.ts';

test('in metric an answer is shown as it is, with its own decimals', () => {
  expect(cellText(12.34, { label: 'glass', unit: 'm²', digits: 1 }, 'metric')).toBe('12.3');
  expect(unitShown('m³', 'metric').sign).toBe('m³');
});

test.each([
  ['m²', 10, 107.639, 'ft²'],
  ['m³', 1, 35.3147, 'ft³'],
  ['m', 0.2, 7.874, 'in'],
  ['t', 1, 1.10231, 'tons'],
  ['°C', 26, 78.8, '°F'],
  ['K', 2, 3.6, '°F'],
  ['kWh', 500, 500, 'kWh'],
  ['kW', 3, 3, 'kW'],
  ['W', 3000, 3000, 'W'],
  ['kg/year', 100, 220.462, 'lb/year'],
  ['%', 12, 12, '%'],
  ['', 3, 3, ''],
] as const)('in US units %s is another amount or the same: %f', (unit, si, us, sign) => {
  expect(valueShown(si, unit, 'us')).toBeCloseTo(us, 3);
  expect(unitShown(unit, 'us').sign).toBe(sign);
});

test('where heat is billed in therms its power is in thousands of Btu an hour', () => {
  expect(valueShown(3, 'kW', 'us-therms')).toBeCloseTo(10.236, 3);
  expect(valueShown(3000, 'W', 'us-therms')).toBeCloseTo(10.236, 3);
  expect(unitShown('W', 'us-therms').sign).toBe('kBtu/h');
});
