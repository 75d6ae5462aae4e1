import { expect, test } from 'vitest';
import { alamdariHammond, buoyancy } from '../../src/physics/convection.ts';
import { blackBodyConductance } from '../../src/physics/films.ts';

test('a warm floor and a cool ceiling stir the air; a cool floor and a warm ceiling do not', () => {
  expect([buoyancy(0, 5), buoyancy(180, -5), buoyancy(0, -5), buoyancy(180, 5), buoyancy(90, 5)]).toEqual([
    'unstable',
    'unstable',
    'stable',
    'stable',
    'vertical',
  ]);
});

test('no difference, no convection', () => {
  expect(alamdariHammond('vertical', 0, 2.5)).toBe(0);
  expect(alamdariHammond('stable', 0, 4)).toBe(0);
});

test('an impossible temperature is refused where radiation is linearised', () => {
  expect(() => blackBodyConductance(20)).toThrow(/meanTempK is 20 K/);
});
