// Natural convection of one face by table: Alamdari–Hammond over the temperature difference, worked out once per
// face and read by linear interpolation in the hourly loop. Entries run over the signed root of the difference,
// so that the steep start near zero is well sampled. Error: below 1 % (tests/network/surfaces/convection-table.test.ts).

import { inclinedConvection } from '../../physics/convection.ts';

/** Entries per √K, and how many √K each way. */
export const CONVECTION_PER_ROOT = 8;
const ROOTS = 9;
/** The middle entry is no difference at all. */
export const CONVECTION_ENTRIES = 2 * ROOTS * CONVECTION_PER_ROOT + 1;
/** Air is never quite still [W/(m²K)]; keeps a face with no temperature difference coupled. */
export const LEAST_CONVECTION = 0.1;
/** Height of a wall, and of leaning glass along its slope [m]. */
const WALL_HEIGHT_M = 2.5;

/**
 * Table of a face.
 *
 * @param faceTiltDeg outward normal towards the air [°]: 0 a floor, 90 a wall, 180 a ceiling
 * @param areaM2 > 0; of no account for a wall
 * @returns CONVECTION_ENTRIES coefficients [W/(m²K)]; entry i is for a surface warmer than the air by
 *   ±((i − middle)/CONVECTION_PER_ROOT)² K, to ±81 K
 */
export function convectionTable(faceTiltDeg: number, areaM2: number): Float64Array {
  const key = faceTiltDeg === 90 ? 'wall' : `${faceTiltDeg} ${areaM2}`;
  const known = remembered.get(key);
  if (known) return known;
  if (remembered.size >= MOST_REMEMBERED) remembered.clear();
  const table = tableOf(faceTiltDeg, Math.sqrt(areaM2));
  remembered.set(key, table);
  return table;
}

const remembered = new Map<string, Float64Array>();
const MOST_REMEMBERED = 300;

function tableOf(faceTiltDeg: number, sizeM: number): Float64Array {
  const middle = (CONVECTION_ENTRIES - 1) / 2;
  return Float64Array.from({ length: CONVECTION_ENTRIES }, (_, i) => {
    const root = (i - middle) / CONVECTION_PER_ROOT;
    const difference = Math.sign(root) * root * root;
    return Math.max(LEAST_CONVECTION, inclinedConvection(faceTiltDeg, difference, WALL_HEIGHT_M, sizeM));
  });
}
