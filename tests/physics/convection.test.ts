import { expect, test } from 'vitest';
import { alamdariHammond, buoyancy, turbulentConvection } from '../../src/physics/convection.ts';
import { blackBodyConductance, heatFlowDirection, insideConvection } from '../../src/physics/films.ts';

test('a warm floor and a cool ceiling stir the air; a cool floor and a warm ceiling do not', () => {
  expect([buoyancy(0, 5), buoyancy(180, -5), buoyancy(0, -5), buoyancy(180, 5), buoyancy(90, 5)]).toEqual([
    'unstable',
    'unstable',
    'stable',
    'stable',
    'vertical',
  ]);
  expect([
    heatFlowDirection(0, 5),
    heatFlowDirection(180, -5),
    heatFlowDirection(0, -5),
    heatFlowDirection(180, 5),
  ]).toEqual(['up', 'up', 'down', 'down']);
  expect([insideConvection(0, 5), insideConvection(90, 5), insideConvection(180, 5)]).toEqual([5, 2.5, 0.7]);
});

test('the two correlation sets agree within a third for a wall and a warm floor', () => {
  for (const deltaK of [1, 2, 5, 10]) {
    const wall = turbulentConvection(90, deltaK) / alamdariHammond('vertical', deltaK, 2.5);
    const floor = turbulentConvection(0, deltaK) / alamdariHammond('unstable', deltaK, 4);
    expect(Math.abs(wall - 1)).toBeLessThan(1 / 3);
    expect(Math.abs(floor - 1)).toBeLessThan(1 / 3);
  }
});

test('turning from wall to floor, the coefficient moves without a jump and meets upright from both sides', () => {
  // The published constants themselves differ by 0.03 % where they meet.
  expect(turbulentConvection(89.999, 5) / turbulentConvection(90.001, 5)).toBeCloseTo(1, 3);
  expect(turbulentConvection(60, 5)).toBeGreaterThan(turbulentConvection(60, -5));
});

test('no difference, no convection', () => {
  expect(turbulentConvection(30, 0)).toBe(0);
  expect(alamdariHammond('vertical', 0, 2.5)).toBe(0);
  expect(alamdariHammond('stable', 0, 4)).toBe(0);
});

test('an impossible temperature is refused where radiation is linearised', () => {
  expect(() => blackBodyConductance(20)).toThrow(/meanTempK is 20 K/);
});
