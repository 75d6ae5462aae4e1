import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  CONVECTION_ENTRIES,
  CONVECTION_PER_ROOT,
  convectionTable,
  LEAST_CONVECTION,
} from '../../../src/network/surfaces/convection-table.ts';
import { inclinedConvection } from '../../../src/physics/convection.ts';

const WALL_HEIGHT_M = 2.5;
/** Linear between entries an eighth of a root-kelvin apart. */
const TABLE_REL = 0.01;
/** Nearer to no difference than this the coefficient itself hardly matters [K]. */
const LEAST_DIFFERENCE = 0.1;

test('the convection table agrees with its correlation between entries, for floors, walls and ceilings', () => {
  const middle = (CONVECTION_ENTRIES - 1) / 2;
  fc.assert(
    fc.property(
      fc.constantFrom(0, 30, 60, 90, 120, 180),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      fc.double({ min: -60, max: 60, noNaN: true }).filter((k) => Math.abs(k) > LEAST_DIFFERENCE),
      (tilt, size, difference) => {
        const table = convectionTable(tilt, size * size);
        const place = middle + Math.sign(difference) * Math.sqrt(Math.abs(difference)) * CONVECTION_PER_ROOT;
        const below = Math.floor(place);
        const ours = table[below]! + (place - below) * (table[below + 1]! - table[below]!);
        const exact = Math.max(LEAST_CONVECTION, inclinedConvection(tilt, difference, WALL_HEIGHT_M, size));
        expect(Math.abs(ours / exact - 1)).toBeLessThan(TABLE_REL);
      },
    ),
    { numRuns: 300 },
  );
});
