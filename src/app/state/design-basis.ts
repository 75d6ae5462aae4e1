// The same glass counted another way: as an area, a share of the equator-facing wall, or of the floor.

import type { Design, GlassBasis } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import type { FittedDesign } from './design-fit.ts';

/** The design with its glass given on another basis; the glass stays what it is to three decimals, if it can. */
export function rebasedGlass(design: Design, basis: GlassBasis): FittedDesign {
  if (basis === design.glass.basis) return { design, notes: [] };
  const { glassM2, equatorWallM2, largestGlassM2 } = geometryOf(design);
  const per = basis === 'area' ? 1 : basis === 'share-of-wall' ? equatorWallM2 : design.house.floorAreaM2;
  const most = basis === 'area' ? largestGlassM2 : Math.min(1, largestGlassM2 / per);
  const rounded = Math.round((glassM2 / per) * 1000) / 1000;
  const value = rounded > most ? Math.floor(most * 1000) / 1000 : rounded;
  const note = {
    path: 'glass.value',
    was: rounded,
    now: value,
    reason: 'A share cannot pass the whole; leaning glass larger than its wall is given as an area.',
  };
  return {
    design: { ...design, glass: { ...design.glass, basis, value } },
    notes: rounded - value > 0.001 ? [note] : [],
  };
}
