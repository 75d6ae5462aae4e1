// The equator-facing glass as panes: 'front' on the slope and, in a sunspace too shallow for its slope, 'front knee'
// upright below. Design, site and the laid-out front in; panes with shade, shutters and the room behind them out.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf, warmMonths } from './compass.ts';
import { coversOn } from './covers.ts';
import { type EquatorFront, equatorFront } from './equator-front.ts';
import { glassSystem, paneWith } from './glazing.ts';
import { LEAST_AREA_M2 } from './layers.ts';
import type { Pane, Shading } from './model.ts';

/** An overhang reaches this far past each side of the glass [m]; common practice, no source. */
export const OVERHANG_REACH_M = 0.5;

/** What one room of a divided house without a sunspace has of the front. */
export interface FrontPart {
  readonly zone: string;
  /** of the front's glass, 0…1 */
  readonly share: number;
  /** the room is so much less deep than the house [m] */
  readonly shallowerM: number;
  /** extra mass in it, and its own front wall, gross [m²] */
  readonly massM2: number;
  readonly wallM2: number;
}

/**
 * Panes of the equator-facing front; none without glass.
 *
 * @param design its glass, sunspace and house
 * @param site for azimuth and season
 * @param part of one room; absent for all of it
 */
export function equatorPanes(design: Design, site: Site, part?: FrontPart): Pane[] {
  const front = part ? frontOfPart(equatorFront(design), part) : equatorFront(design);
  const suffix = part ? ` ${part.zone}` : '';
  const { glass, sunspace } = design;
  const shared = {
    frameShare: glass.frameShare,
    glass: glassSystem(glass.type),
    azimuthDeg: compassOf(site, design.house.turnDeg).equatorDeg,
    to: sunspace.join === 'none' ? (part?.zone ?? 'house') : 'sunspace',
    nightResistance: glass.nightResistance,
    covers: coversOn(design, site, { side: 'front', inSunspace: sunspace.join !== 'none' }),
  };
  const panes: Pane[] = [];
  if (front.slopeGlassM2 > LEAST_AREA_M2) {
    panes.push(
      paneWith({
        ...shared,
        id: `front${suffix}`,
        areaM2: front.slopeGlassM2,
        wallM2: front.largestGlassM2,
        tiltDeg: glass.tiltDeg,
        shading: shadingOf(design, site, front),
        lightRoom: {
          depthM: lightDepth(design, front, part),
          sillM: front.sillM,
          headM: front.headM,
        },
      }),
    );
  }
  if (front.kneeGlassM2 > LEAST_AREA_M2) {
    const { lengthM, kneeM, kneeGlassM2, roomDepthM } = front;
    panes.push(
      paneWith({
        ...shared,
        id: `front knee${suffix}`,
        areaM2: kneeGlassM2,
        wallM2: lengthM * kneeM,
        shading: seasonalOnly(design, site, lengthM, kneeGlassM2 / lengthM),
        // A knee that is all glass ends on the floor; round-off must not put it below.
        lightRoom: { depthM: roomDepthM, sillM: Math.max(0, kneeM - kneeGlassM2 / lengthM), headM: kneeM },
      }),
    );
  }
  return panes;
}

/**
 * Depth at the sill to what the beam strikes: the back plane of the room, or the sunlit mass that stands halfway in a
 * house without a sunspace, as the section drawing has it, by the share of the back plane that the mass covers.
 */
function lightDepth(design: Design, front: EquatorFront, part?: FrontPart): number {
  const { mass, sunspace } = design;
  if (sunspace.join !== 'none' || mass.place !== 'sunlit') return front.depthAtSillM;
  const massM2 = part ? part.massM2 : mass.areaM2;
  const covered = Math.min(1, massM2 / (part ? part.wallM2 : geometryOf(design).equatorWallM2));
  return front.depthAtSillM - 0.5 * covered * front.roomDepthM;
}

/** Areas by the room's share, depths by its own; lengths stay, so that the overhang runs on over its neighbours. */
function frontOfPart(front: EquatorFront, { share, shallowerM }: FrontPart): EquatorFront {
  return {
    ...front,
    slopeGlassM2: share * front.slopeGlassM2,
    kneeGlassM2: share * front.kneeGlassM2,
    largestGlassM2: share * front.largestGlassM2,
    depthAtSillM: front.depthAtSillM - shallowerM,
    roomDepthM: front.roomDepthM - shallowerM,
  };
}

function shadingOf(design: Design, site: Site, front: EquatorFront): Shading | null {
  const { overhangM, overhangGapM } = design.glass;
  const seasonal = seasonalOnly(design, site, front.lengthM, front.slantM);
  if (overhangM <= 0) return seasonal;
  return {
    ...(seasonal ?? { widthM: front.lengthM, heightM: front.slantM }),
    overhang: { depthM: overhangM, gapM: overhangGapM, extendM: OVERHANG_REACH_M },
  };
}

function seasonalOnly(design: Design, site: Site, widthM: number, heightM: number): Shading | null {
  const { summerShade } = design.glass;
  if (summerShade <= 0) return null;
  return { widthM, heightM, seasonal: warmMonths(site).map((warm) => warm * summerShade) };
}
