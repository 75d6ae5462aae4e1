// The same glass counted another way: as an area, a share of the equator-facing wall, or of the floor.

import type { Design, GlassBasis } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import type { FitNote, FittedDesign } from './design-fit.ts';

/**
 * The design with its glass given on another basis; the glass stays what it is to three decimals, if it can, and glass
 * asked for that does not fit stays asked for.
 */
export function rebasedGlass(
  design: Design,
  basis: GlassBasis,
  notes: readonly FitNote[] = [],
): FittedDesign {
  if (basis === design.glass.basis) return { design, notes: [] };
  const { glassM2, equatorWallM2, largestGlassM2 } = geometryOf(design);
  const per = basis === 'area' ? 1 : basis === 'share-of-wall' ? equatorWallM2 : design.house.floorAreaM2;
  const most = basis === 'area' ? largestGlassM2 : Math.min(1, largestGlassM2 / per);
  const rounded = Math.round((glassM2 / per) * 1000) / 1000;
  const value = rounded > most ? Math.floor(most * 1000) / 1000 : rounded;
  const unbuilt = notes.find(({ path }) => path === 'glass.value');
  const was = unbuilt ? Math.round(((unbuilt.was * glassM2) / unbuilt.now / per) * 1000) / 1000 : rounded;
  const reason = 'A share cannot pass the whole; leaning glass larger than its wall is given as an area.';
  const note = { path: 'glass.value', was, now: value, reason: unbuilt?.reason ?? reason };
  return {
    design: { ...design, glass: { ...design.glass, basis, value } },
    notes: was - value > 0.001 ? [note] : [],
  };
}
