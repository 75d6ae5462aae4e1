import { expect, test } from 'vitest';
import { feltHeat } from '../../src/outcomes/felt-heat.ts';
import { madeZone } from './made-year.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const feltBy = (airC: (hour: number) => number, humidity: number) =>
  feltHeat(madeZone('house', { airC, relativeHumidity: humidity }));

test('counts the hours that damp makes dangerous, and finds the worst, by the chart of the weather service', () => {
  // US National Weather Service, heat index chart: at 70 %, 82 °F feels like 86 °F, 86 °F like 95 °F, 90 °F like 105 °F.
  // From memory, high confidence; the regression fits its table within 1.3 °F.
  const temperatures = [86, 86, 86, 86, 86, 90, 82];
  const felt = feltBy((hour) => celsius(temperatures[hour - 100] ?? 60), 0.7);
  expect(felt.hours).toBe(6);
  expect(felt.maxHour).toBe(105);
  expect(Math.abs(felt.maxC! - celsius(105))).toBeLessThan(1.3 / 1.8);
});

test('knows no worst hour where the air stays cool', () => {
  expect(feltBy(() => 24.9, 1)).toMatchObject({ hours: 0, maxC: null, maxHour: null });
});

test('ends where the chart ends, however hot and damp the room', () => {
  const felt = feltBy((hour) => (hour === 40 ? 90 : 20), 1.001);
  expect(felt).toMatchObject({ hours: 1, maxC: celsius(137), maxHour: 40 });
});
