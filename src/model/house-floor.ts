// The floor of the house: slab, insulation under it and what is laid on top. A design in; layers from the ground up,
// the plan ISO 13370 asks for, and the face the room sees out.

import type { Design, FloorCover } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import type { FloorPlan } from '../physics/ground-floor.ts';
import { insulationOf, layerOf, resistanceOf, thicknessOf, wallLayers } from './layers.ts';
import type { Layer } from './model.ts';

const UNDER_SLAB = 'xps';

/** Thickness of what covers the slab [m] and of what it is made: common practice, no source. */
const COVERS = {
  tile: { material: 'tile', thicknessM: 0.01 },
  /** with its underlay, 0.1 m²K/W */
  carpet: { material: 'carpet', thicknessM: 0.006 },
  wood: { material: 'softwood', thicknessM: 0.02 },
} as const;

/** Insulation under the slab, of a resistance [m²K/W]. */
export function insulationUnderSlab(resistance: number): Layer[] {
  return insulationOf(resistance, UNDER_SLAB);
}

/** Layers of the house floor from the insulation up. */
export function floorLayers(design: Design): Layer[] {
  const { floor } = design;
  const layers = [...insulationUnderSlab(floor.resistance), layerOf(floor.material, floor.thicknessM)];
  if (floor.cover === 'bare') return layers;
  const cover = COVERS[floor.cover];
  return [...layers, layerOf(cover.material, cover.thicknessM)];
}

/** Thickness of what lies on the slab [m]. */
export function floorCoverM(cover: FloorCover): number {
  return cover === 'bare' ? 0 : COVERS[cover].thicknessM;
}

/** Catalogue material of the face a person walks on. */
export function floorFinish(design: Design): string {
  return design.floor.cover === 'bare' ? design.floor.material : COVERS[design.floor.cover].material;
}

/** Moisture buffer of that face [g/(m²·%RH)]. */
export function floorBuffer(design: Design): number {
  return materialById(floorFinish(design)).moistureBuffer;
}

/**
 * Plan of the house floor. An open sunspace carries on the same floor, so the side it stands on loses nothing at its
 * edge; a closed one is an unheated space and does not shorten the exposed perimeter. Earth stands against the three other
 * walls.
 */
export function housePlan(design: Design): FloorPlan {
  const { groundFloorM2, perimeterM, houseDepthM, heightM } = geometryOf(design);
  const inner = design.sunspace.join === 'open' ? design.sunspace.lengthM : 0;
  const exposedM = perimeterM - inner;
  const bermedM = design.house.equatorWallM + 2 * houseDepthM;
  return {
    areaM2: groundFloorM2,
    perimeterM: exposedM,
    wallThicknessM: wallThickness(design),
    floorResistance: resistanceOf(floorLayers(design)),
    berm: { heightM: design.envelope.bermShare * heightM, share: Math.min(1, bermedM / exposedM) },
  };
}

/** Outer wall, skin to inner leaf [m]. */
export function wallThickness(design: Design): number {
  const { wallResistance, wallLining, wallLiningM } = design.envelope;
  return thicknessOf(wallLayers(wallResistance, wallLining, wallLiningM));
}
