import { expect, test } from 'vitest';
import { operativeTemperature } from '../../src/physics/operative-temperature.ts';

test('operative temperature is the mean of air and surfaces, as ISO 7726 and ASHRAE 55 have it in still air', () => {
  expect(operativeTemperature(20, 24)).toBe(22);
  expect(operativeTemperature(24, 20)).toBe(22);
});
