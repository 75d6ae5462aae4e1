// The attached sunspace as one zone of air: unheated, sparsely furnished, with the plants. A design in; zone, or null
// without a sunspace, out.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { cornerFactor } from './corner-factor.ts';
import { FRAME_U_VALUE } from './glazing.ts';
import { resistanceOf } from './layers.ts';
import type { Zone } from './model.ts';
import { plantingIn } from './planting.ts';
import { sunspaceWallLayers } from './sunspace-elements.ts';
import { FURNITURE_J_PER_K, FURNITURE_KG } from './zone-house.ts';

/** Pots, benches and a chair against a furnished room; common practice, no source. */
const SPARSE = 0.25;

/** The sunspace. */
export function sunspaceZone(design: Design): Zone | null {
  if (design.sunspace.join === 'none') return null;
  const { sunspaceFloorM2, sunspaceVolumeM3 } = geometryOf(design);
  return {
    id: 'sunspace',
    floorAreaM2: sunspaceFloorM2,
    volumeM3: sunspaceVolumeM3,
    furnitureCapacity: SPARSE * FURNITURE_J_PER_K * sunspaceFloorM2,
    furnitureMoisture: SPARSE * FURNITURE_KG * sunspaceFloorM2,
    thermostat: null,
    gains: [],
    moisture: [],
    planting: plantingIn(design, 'sunspace', sunspaceFloorM2),
    people: null,
    cornerFactor: sunspaceCorner(design),
  };
}

/** Films of ISO 6946 that a U-value of a whole frame holds [m²K/W]. */
const FRAME_FILMS = 0.17;

/** Glazed ends meet the front in frames; insulated ones in a wall. */
function sunspaceCorner(design: Design): number {
  if (design.sunspace.endWalls === 'glazed') return cornerFactor(1 / FRAME_U_VALUE - FRAME_FILMS);
  return cornerFactor(resistanceOf(sunspaceWallLayers(design)));
}
