// Where the planted bed stands, sunspace before house, what its leaves are like and what it is made of. A design in; planting
// or null, and the bed as an element in the floor's place, out. The floor has what the bed leaves of it.

import type { Design } from '../design/design.ts';
import type { GroundContact } from './ground-contact.ts';
import { faceIn, LEAST_AREA_M2, layerOf } from './layers.ts';
import type { Element, Layer, Planting } from './model.ts';

/** Leaf boundary layer in still indoor air [s/m]: 200–300; from memory, medium confidence. */
const BOUNDARY_RESISTANCE = 275;
/** Of foliage: FAO-56 reference surface. */
const FOLIAGE_ALBEDO = 0.23;
/** Depth of a raised or dug bed, and of a pool [m]; common practice, no source. */
const BED_DEPTH_M = 0.3;
/** Watered garden soil, a quarter water by volume: soil physics texts, from memory, medium confidence. */
const MOIST_SOIL: Layer = {
  name: 'moist soil of the bed',
  thicknessM: BED_DEPTH_M,
  conductivity: 1,
  density: 1350,
  specificHeat: 1750,
};

/** Bed of the house or of the sunspace [m²], at most the floor that it may stand on. */
export function bedM2In(design: Design, place: 'house' | 'sunspace', mostM2: number): number {
  const home = design.sunspace.join === 'none' ? 'house' : 'sunspace';
  const bedM2 = Math.min(design.plants.bedM2, mostM2);
  return place === home && bedM2 > LEAST_AREA_M2 ? bedM2 : 0;
}

/** Planting of the bed there, on at most so much floor [m²]; null where there is none. */
export function plantingIn(design: Design, place: 'house' | 'sunspace', mostM2: number): Planting | null {
  const bedM2 = bedM2In(design, place, mostM2);
  if (bedM2 === 0) return null;
  const { leafAreaIndex, soil } = design.plants;
  return { bedM2, leafAreaIndex, boundaryResistance: BOUNDARY_RESISTANCE, albedo: FOLIAGE_ALBEDO, soil };
}

/**
 * A bed on the ground in place of the slab; none of no area.
 *
 * @param contactOf ground under layers as large as the whole floor
 * @param under layers of the floor that stay below the bed, from the ground up
 */
export function bedIn(
  design: Design,
  zone: string,
  areaM2: number,
  contactOf: (layers: readonly Layer[]) => GroundContact,
  under: readonly Layer[] = [],
): Element[] {
  if (areaM2 === 0) return [];
  const isWater = design.plants.soil === 'open-water';
  const layers = [...under, isWater ? layerOf('water', BED_DEPTH_M) : MOIST_SOIL];
  const contact = contactOf(layers);
  return [
    {
      id: `${zone} bed`,
      areaM2,
      layers: [...contact.soil, ...layers],
      a: contact.face,
      b: faceIn(zone, isWater ? 'water' : 'soil', 0, 'floor'),
      isBed: true,
    },
  ];
}
