// A design whose single numbers are within limits, drawn back to one that can be built: what hangs on a number is made to fit
// it, in the order storeys, sunspace, glass, rooms. A house drawn by hand, one made of five answers and one that a question
// varies all come through here.

import type { Design } from './design.ts';
import { glassThatFits, lengthThatFits } from './numbers-that-fit.ts';
import { roomsThatFit, storeysThatFit } from './room-fit.ts';

/**
 * Draw dependent numbers back to what fits.
 *
 * @returns a divided house with the storeys of its rooms and a heater where there is back-up heat, the sunspace no longer than
 *   its wall, the glass no larger than its front; the same object where all fits
 */
export function designThatFits(asked: Design): Design {
  const storeys = storeysThatFit(asked);
  const design = storeys === asked.house.storeys ? asked : { ...asked, house: { ...asked.house, storeys } };
  const { sunspace, glass } = design;
  const lengthM = lengthThatFits(design);
  const next = lengthM === sunspace.lengthM ? design : { ...design, sunspace: { ...sunspace, lengthM } };
  const value = glassThatFits(next);
  const glazed = value === glass.value ? next : { ...next, glass: { ...glass, value } };
  const rooms = roomsThatFit(glazed);
  return rooms === glazed.rooms ? glazed : { ...glazed, rooms: rooms! };
}
