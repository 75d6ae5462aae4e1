// The same glass counted another way: as an area, a share of the equator-facing wall, or of the floor.

import type { Design, GlassBasis } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';

/** The design with its glass given on another basis; the glass stays what it is to three decimals. */
export function rebasedGlass(design: Design, basis: GlassBasis): Design {
  if (basis === design.glass.basis) return design;
  const { glassM2, equatorWallM2, largestGlassM2 } = geometryOf(design);
  const per = basis === 'area' ? 1 : basis === 'share-of-wall' ? equatorWallM2 : design.house.floorAreaM2;
  const most = basis === 'area' ? largestGlassM2 : Math.min(1, largestGlassM2 / per);
  const rounded = Math.round((glassM2 / per) * 1000) / 1000;
  const value = rounded > most ? Math.floor(most * 1000) / 1000 : rounded;
  return { ...design, glass: { ...design.glass, basis, value } };
}
