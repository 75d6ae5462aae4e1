// The equator-facing front in section: where its slope runs, how much of it is glass, and how far behind the glass the
// room ends. A design in; areas, heights and depths in metres out. The glass hangs from the ceiling line down, as
// geometry.ts and the section drawing have it; what a shallow sunspace leaves no room for stands upright below.
// A house of several storeys carries its share of the glass on each; a sunspace runs through all of them.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { sin, tan } from '../physics/elementary.ts';

export interface EquatorFront {
  /** glass on the slope, and upright below it [m²] */
  readonly slopeGlassM2: number;
  readonly kneeGlassM2: number;
  /** opaque rest of slope and of the upright part [m²] */
  readonly slopeWallM2: number;
  readonly kneeWallM2: number;
  /** what the slope can carry at most [m²] */
  readonly largestGlassM2: number;
  readonly lengthM: number;
  /** heights of one row of glass above its floor, and along the slope */
  readonly sillM: number;
  readonly headM: number;
  readonly slantM: number;
  readonly rows: number;
  /** from the glass's lower edge to the wall behind the room [m] */
  readonly depthAtSillM: number;
  /** height of the upright part under the slope [m] */
  readonly kneeM: number;
  /** depth of the sunspace, or of the house without one [m] */
  readonly roomDepthM: number;
}

/** Lay out the front. */
export function equatorFront(design: Design): EquatorFront {
  const { glass, sunspace, house } = design;
  const geometry = geometryOf(design);
  const hasSunspace = sunspace.join !== 'none';
  const tilt = (glass.tiltDeg * Math.PI) / 180;
  const isUpright = glass.tiltDeg >= 90;
  const cotangent = isUpright ? 0 : 1 / tan(tilt);
  const wholeLeanM = geometry.heightM * cotangent;
  const leanM = hasSunspace ? Math.min(sunspace.depthM, wholeLeanM) : wholeLeanM;
  const kneeM = isUpright ? 0 : Math.max(0, geometry.heightM - leanM / cotangent);
  const lengthM = geometry.frontLengthM;
  const slopeM2 = (lengthM * (geometry.heightM - kneeM)) / sin(tilt);
  const kneeM2 = lengthM * kneeM;
  const kneeGlassM2 = Math.min(Math.max(0, geometry.glassM2 - slopeM2), kneeM2);
  const slopeGlassM2 = geometry.glassM2 - kneeGlassM2;
  const rows = hasSunspace ? 1 : house.storeys;
  const slantM = slopeGlassM2 / lengthM / rows;
  const riseM = slantM * sin(tilt);
  const headM = geometry.heightM / rows;
  const roomDepthM = hasSunspace ? sunspace.depthM : geometry.houseDepthM;
  const depthAtHeadM = hasSunspace ? sunspace.depthM - leanM : geometry.houseDepthM;
  return {
    slopeGlassM2,
    kneeGlassM2,
    slopeWallM2: Math.max(0, slopeM2 - slopeGlassM2),
    kneeWallM2: Math.max(0, kneeM2 - kneeGlassM2),
    largestGlassM2: geometry.largestGlassM2,
    lengthM,
    sillM: Math.max(0, headM - riseM),
    headM,
    slantM,
    rows,
    depthAtSillM: depthAtHeadM + riseM * cotangent,
    kneeM,
    roomDepthM,
  };
}
