import { expect, test } from 'vitest';
import { alamdariHammond, inclinedConvection } from '../../src/physics/convection.ts';
import { blackBodyConductance } from '../../src/physics/films.ts';

/** Wall 2.5 m high, floor or ceiling of 4 m. */
const at = (faceTiltDeg: number, surfaceMinusAirK: number) =>
  inclinedConvection(faceTiltDeg, surfaceMinusAirK, 2.5, 4);

test('a warm floor and a cool ceiling stir the air; a cool floor and a warm ceiling do not', () => {
  const [stirred, still] = [alamdariHammond('unstable', 5, 4), alamdariHammond('stable', 5, 4)];
  expect([at(0, 5), at(180, -5), at(0, -5), at(180, 5)]).toEqual([stirred, stirred, still, still]);
  expect(at(90, 5)).toBe(alamdariHammond('vertical', 5, 2.5));
  expect(at(90, -5)).toBe(at(90, 5));
});

test('no tilt is a step: a hundredth of a degree moves no coefficient by more than a fiftieth', () => {
  let steps = 0;
  for (const difference of [-20, -5, -0.5, 0.5, 5, 20]) {
    for (let k = 0; k < 18_000; k++) {
      const ratio = at((k + 1) / 100, difference) / at(k / 100, difference);
      if (!(Math.abs(ratio - 1) < 0.02)) expect.fail(`${difference} K, ${k / 100}°: ${ratio}`);
      steps++;
    }
  }
  expect(steps).toBe(6 * 18_000);
});

test('leaning glass stirs the air under it less than upright glass when warm, and more when cold', () => {
  expect(at(120, 10)).toBeLessThan(at(90, 10));
  expect(at(120, -10)).toBeGreaterThan(at(90, -10));
  expect(at(150, -10)).toBeGreaterThan(at(120, -10));
  expect(at(150, 10)).toBeLessThan(at(120, 10));
});

test('no difference, no convection', () => {
  expect(alamdariHammond('vertical', 0, 2.5)).toBe(0);
  expect(alamdariHammond('stable', 0, 4)).toBe(0);
});

test('an impossible temperature is refused where radiation is linearised', () => {
  expect(() => blackBodyConductance(20)).toThrow(/meanTempK is 20 K/);
});
