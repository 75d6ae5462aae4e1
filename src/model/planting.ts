// Where the planted bed stands, sunspace before house, and what its leaves are like. A design in; planting or null
// out. A bed larger than the floor it stands on counts as that floor, so that it takes no more light than there is.

import type { Design } from '../design/design.ts';
import type { Planting } from './model.ts';

/** Leaf boundary layer in still indoor air [s/m]: 200–300; from memory, medium confidence. */
const BOUNDARY_RESISTANCE = 275;
/** Of foliage: FAO-56 reference surface. */
const FOLIAGE_ALBEDO = 0.23;

/** Planting of a zone. */
export function plantingIn(design: Design, zone: 'house' | 'sunspace', floorAreaM2: number): Planting | null {
  const { bedM2, leafAreaIndex, soil } = design.plants;
  const home = design.sunspace.join === 'none' ? 'house' : 'sunspace';
  if (bedM2 <= 0 || zone !== home) return null;
  return {
    bedM2: Math.min(bedM2, floorAreaM2),
    leafAreaIndex,
    boundaryResistance: BOUNDARY_RESISTANCE,
    albedo: FOLIAGE_ALBEDO,
    soil,
  };
}
