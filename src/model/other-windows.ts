// Ordinary windows of the house on the pole, east and west sides, and how the earth berm and the windows share each
// wall. A design in; window and wall areas [m²] by side out, and the windows as panes.
// Windows go to the three walls by area. Where earth stands to the full height a window is let into it (a window
// well), so its area comes off the bare wall first and off the bermed wall after that.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf } from './compass.ts';
import { coversOn } from './covers.ts';
import { glassSystem, paneWith } from './glazing.ts';
import { LEAST_AREA_M2 } from './layers.ts';
import type { Pane } from './model.ts';

/** Frame share of ordinary windows: 0.25–0.30; from memory, high confidence. */
export const ORDINARY_FRAME_SHARE = 0.25;
/** Most of a wall that windows may take; a design that asks for more gets this much. House rule. */
const MOST_OF_WALL = 0.9;
/** Earth lower than this counts as none [m]. */
const LEAST_BERM_M = 0.05;

export type SideName = 'pole' | 'east' | 'west';

export interface Side {
  readonly name: SideName;
  readonly azimuthDeg: number;
  /** [m²] */
  readonly grossM2: number;
  readonly windowM2: number;
  /** opaque, to outdoors [m²] */
  readonly bareM2: number;
  /** opaque, against earth [m²] */
  readonly bermedM2: number;
  /** height of earth [m] */
  readonly bermM: number;
}

/** The three walls that carry no equator-facing glass. */
export function otherSides(design: Design, site: Site): readonly Side[] {
  const { poleWallM2, sideWallM2, heightM } = geometryOf(design);
  const compass = compassOf(site, design.house.turnDeg);
  const wallM2 = poleWallM2 + 2 * sideWallM2;
  const asked = design.glass.otherShareOfFloor * design.house.floorAreaM2;
  const share = Math.min(MOST_OF_WALL, asked / wallM2);
  const bermM = design.envelope.bermShare * heightM;
  const bermShare = bermM < LEAST_BERM_M ? 0 : design.envelope.bermShare;
  const side = (name: SideName, azimuthDeg: number, grossM2: number): Side => {
    const windowM2 = share * grossM2;
    const bare = grossM2 * (1 - bermShare);
    return {
      name,
      azimuthDeg,
      grossM2,
      windowM2,
      bareM2: Math.max(0, bare - windowM2),
      bermedM2: grossM2 * bermShare - Math.max(0, windowM2 - bare),
      bermM: bermShare > 0 ? bermM : 0,
    };
  };
  return [
    side('pole', compass.poleDeg, poleWallM2),
    side('east', compass.eastDeg, sideWallM2),
    side('west', compass.westDeg, sideWallM2),
  ];
}

/** The windows: of the front's glass, with whatever covers hang on their side, their beam all on the floor. */
export function otherPanes(design: Design, site: Site, sides: readonly Side[]): Pane[] {
  return sides
    .filter((side) => side.windowM2 > LEAST_AREA_M2)
    .map(({ name, azimuthDeg, windowM2, grossM2 }) =>
      paneWith({
        id: name,
        areaM2: windowM2,
        wallM2: grossM2,
        frameShare: ORDINARY_FRAME_SHARE,
        glass: glassSystem(design.glass.type),
        azimuthDeg,
        to: 'house',
        covers: coversOn(design, site, { side: name, inSunspace: false }),
      }),
    );
}
