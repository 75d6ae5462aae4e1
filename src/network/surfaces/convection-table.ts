// Natural convection of one face by table: Alamdari–Hammond over the temperature difference, worked out once per
// face and read by linear interpolation in the hourly loop. Entries run over the signed root of the difference,
// so that the steep start near zero is well sampled. Error: below 1 % (tests/network/surfaces/convection-table.test.ts).

import { alamdariHammond, buoyancy } from '../../physics/convection.ts';

/** Entries per √K, and how many √K each way. */
export const CONVECTION_PER_ROOT = 8;
const ROOTS = 9;
/** The middle entry is no difference at all. */
export const CONVECTION_ENTRIES = 2 * ROOTS * CONVECTION_PER_ROOT + 1;
/** Air is never quite still [W/(m²K)]; keeps a face with no temperature difference coupled. */
export const LEAST_CONVECTION = 0.1;

/**
 * Table of a face.
 *
 * @param faceTiltDeg outward normal towards the air [°]: 0 a floor, 90 a wall, 180 a ceiling
 * @param lengthM height of a wall, side of a floor or ceiling [m]; > 0
 * @returns CONVECTION_ENTRIES coefficients [W/(m²K)]; entry i is for a surface warmer than the air by
 *   ±((i − middle)/CONVECTION_PER_ROOT)² K, to ±81 K
 */
export function convectionTable(faceTiltDeg: number, lengthM: number): Float64Array {
  const key = `${faceTiltDeg} ${lengthM}`;
  const known = remembered.get(key);
  if (known) return known;
  if (remembered.size >= MOST_REMEMBERED) remembered.clear();
  const table = tableOf(faceTiltDeg, lengthM);
  remembered.set(key, table);
  return table;
}

const remembered = new Map<string, Float64Array>();
const MOST_REMEMBERED = 300;

function tableOf(faceTiltDeg: number, lengthM: number): Float64Array {
  const middle = (CONVECTION_ENTRIES - 1) / 2;
  return Float64Array.from({ length: CONVECTION_ENTRIES }, (_, i) => {
    const root = (i - middle) / CONVECTION_PER_ROOT;
    const difference = Math.sign(root) * root * root;
    const coefficient = alamdariHammond(buoyancy(faceTiltDeg, difference), difference, lengthM);
    return Math.max(LEAST_CONVECTION, coefficient);
  });
}
