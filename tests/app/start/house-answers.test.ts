import { expect, test } from 'vitest';
import {
  BUILDS,
  FIRST_GIVEN,
  GLASS_AMOUNTS,
  houseOf,
  JOINS,
  STOREYS,
  TILTS,
} from '../../../src/app/start/house-answers.ts';
import { geometryOf } from '../../../src/design/geometry.ts';
import { parseDesign } from '../../../src/design/schema.ts';

test('whatever is answered, the house can be built, and is what was answered', () => {
  let houses = 0;
  for (const [build] of BUILDS)
    for (const [join] of JOINS)
      for (const [tiltDeg] of TILTS)
        for (const [glass] of GLASS_AMOUNTS)
          for (const [storeys] of STOREYS)
            for (const floorAreaM2 of [4, 30, 100, 2000]) {
              const design = houseOf({ build, join, tiltDeg, glass, storeys, floorAreaM2 }, 'denver');
              const said = JSON.stringify({ build, join, tiltDeg, glass, storeys, floorAreaM2 });
              expect(parseDesign(design), said).toMatchObject({ ok: true });
              const { glassM2, largestGlassM2 } = geometryOf(design);
              expect(glassM2, said).toBeLessThanOrEqual(largestGlassM2 + 1e-9);
              expect(design.sunspace.join).toBe(join);
              houses++;
            }
  expect(houses).toBe(5 * 3 * 4 * 4 * 3 * 4);
});

test('more glass is more glass, and a whole front is all that fits', () => {
  const of = (glass: (typeof GLASS_AMOUNTS)[number][0]) =>
    geometryOf(houseOf({ ...FIRST_GIVEN, glass }, 'denver'));
  const areas = GLASS_AMOUNTS.map(([id]) => of(id).glassM2);
  expect(areas).toEqual(areas.toSorted((a, b) => a - b));
  expect(areas.at(-1)! / of('front').largestGlassM2).toBeGreaterThan(0.98);
});
