// What follows from a design by plain geometry: areas, heights, volumes and the glass's share of wall and
// floor. Design in, metres and square metres out. The house is a rectangle of equal storeys; the sunspace
// stands in front of the equator-facing wall, its glass rising at the tilt from the sill to the ceiling line.

import { sin, tan } from '../physics/elementary.ts';
import type { Design } from './design.ts';

export interface Geometry {
  /** inside depth from the equator-facing wall to the pole-facing wall [m] */
  readonly houseDepthM: number;
  /** inside height of all storeys [m] */
  readonly heightM: number;
  readonly houseVolumeM3: number;
  readonly roofM2: number;
  /** gross equator-facing wall [m²] */
  readonly equatorWallM2: number;
  readonly poleWallM2: number;
  /** each of the two side walls [m²] */
  readonly sideWallM2: number;
  /** exposed perimeter of the ground floor [m] */
  readonly perimeterM: number;
  readonly groundFloorM2: number;
  /** length of the front that carries the equator-facing glass [m] */
  readonly frontLengthM: number;
  /** the most glass that fits in that front at this tilt [m²] */
  readonly largestGlassM2: number;
  /** the equator-facing glass, frames included [m²] */
  readonly glassM2: number;
  /** glass ÷ gross equator-facing wall of the house, 0… */
  readonly shareOfWall: number;
  /** glass ÷ heated floor area, 0… */
  readonly shareOfFloor: number;
  /** height of glass along its slope, when it runs the whole front [m] */
  readonly glassSlantM: number;
  readonly sunspaceFloorM2: number;
  readonly sunspaceVolumeM3: number;
  /** sunspace roof above the glass, opaque [m²] */
  readonly sunspaceRoofM2: number;
  /** each end wall of the sunspace [m²] */
  readonly sunspaceEndM2: number;
}

/**
 * Areas and volumes of a design.
 *
 * @param design a checked design
 * @returns areas [m²], lengths [m], volumes [m³]
 */
export function geometryOf(design: Design): Geometry {
  const { house, glass, sunspace } = design;
  const heightM = house.ceilingHeightM * house.storeys;
  const groundFloorM2 = house.floorAreaM2 / house.storeys;
  const houseDepthM = groundFloorM2 / house.equatorWallM;
  const equatorWallM2 = house.equatorWallM * heightM;
  const glassM2 =
    glass.basis === 'area'
      ? glass.value
      : glass.value * (glass.basis === 'share-of-wall' ? equatorWallM2 : house.floorAreaM2);

  const hasSunspace = sunspace.join !== 'none';
  const frontLengthM = hasSunspace ? sunspace.lengthM : house.equatorWallM;
  const tilt = (glass.tiltDeg * Math.PI) / 180;
  const glassSlantM = glassM2 / frontLengthM;

  // Leaning glass runs back over the sunspace: its floor is the full depth, its roof what the lean leaves. Glass
  // that would lean past the common wall stands on an upright knee instead, so that it ends at the wall's top.
  const fullLeanM = heightM / tan(tilt);
  const leanM = hasSunspace ? Math.min(sunspace.depthM, fullLeanM) : fullLeanM;
  const kneeM = hasSunspace ? Math.max(0, heightM - sunspace.depthM * tan(tilt)) : 0;
  const largestGlassM2 = frontLengthM * (kneeM + (heightM - kneeM) / sin(tilt));
  const sunspaceFloorM2 = hasSunspace ? sunspace.lengthM * sunspace.depthM : 0;
  const sunspaceEndM2 = hasSunspace
    ? heightM * (sunspace.depthM - leanM) + (leanM * (heightM + kneeM)) / 2
    : 0;

  return {
    houseDepthM,
    heightM,
    houseVolumeM3: groundFloorM2 * heightM,
    roofM2: groundFloorM2,
    equatorWallM2,
    poleWallM2: equatorWallM2,
    sideWallM2: houseDepthM * heightM,
    perimeterM: 2 * (houseDepthM + house.equatorWallM),
    groundFloorM2,
    frontLengthM,
    largestGlassM2,
    glassM2,
    shareOfWall: glassM2 / equatorWallM2,
    shareOfFloor: glassM2 / house.floorAreaM2,
    glassSlantM,
    sunspaceFloorM2,
    sunspaceVolumeM3: sunspaceEndM2 * (hasSunspace ? sunspace.lengthM : 0),
    sunspaceRoofM2: hasSunspace ? sunspace.lengthM * (sunspace.depthM - leanM) : 0,
    sunspaceEndM2,
  };
}
