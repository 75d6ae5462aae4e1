// The windows of a divided house: the front's glass shared by front wall among the rooms behind it, ordinary windows by the
// house's rule or the room's own. A design, site and room plan in; panes out. Beam falls on the floor, or on the wall
// across from the front; none passes a partition.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import type { RoomWindow, WindowSide } from '../design/room.ts';
import type { PlacedRoom, RoomPlan } from '../design/room-plan.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf, warmMonths } from './compass.ts';
import { coversOn } from './covers.ts';
import { equatorPanes } from './equator-glass.ts';
import { glassSystem, paneWith } from './glazing.ts';
import { LEAST_AREA_M2 } from './layers.ts';
import type { Pane } from './model.ts';
import { ORDINARY_FRAME_SHARE, type Side } from './other-windows.ts';
import { roomFront, roomWalls } from './room-walls.ts';
import { massShares } from './rooms-of-design.ts';

/** A window of one's own is about so high [m], for its shade; common practice, no source. */
const WINDOW_HEIGHT_M = 1.3;

/** Panes to outdoors of the rooms, and of the sunspace's front where there is one. */
export function roomPanes(design: Design, site: Site, plan: RoomPlan, sides: readonly Side[]): Pane[] {
  const hasSunspace = design.sunspace.join !== 'none';
  const mass = massShares(plan.rooms).map((share) => share * design.mass.areaM2);
  const front = hasSunspace
    ? equatorPanes(design, site)
    : plan.rooms.flatMap((placed, i) => frontOf(design, site, placed, mass[i]!));
  const { equatorDeg } = compassOf(site, design.house.turnDeg);
  return [
    ...front,
    ...plan.rooms.flatMap((placed) => {
      const { windowM2, window } = roomFront(design, placed);
      const own = ordinaryPane(
        design,
        site,
        placed,
        'equator',
        equatorDeg,
        windowM2,
        placed.wallM2.equator,
        window,
      );
      const walls = roomWalls(design, placed, sides).flatMap((wall) =>
        ordinaryPane(
          design,
          site,
          placed,
          wall.side,
          wall.azimuthDeg,
          wall.windowM2,
          wall.grossM2,
          wall.window,
        ),
      );
      return [...own, ...walls];
    }),
  ];
}

function frontOf(design: Design, site: Site, placed: PlacedRoom, massM2: number): Pane[] {
  const { share } = roomFront(design, placed);
  if (share <= 0) return [];
  const [{ nearM, farM }] = placed.boxes as [PlacedRoom['boxes'][number]];
  return equatorPanes(design, site, {
    zone: placed.id,
    share,
    shallowerM: geometryOf(design).houseDepthM - (farM - nearM),
    massM2,
    wallM2: placed.wallM2.equator,
  });
}

function ordinaryPane(
  design: Design,
  site: Site,
  { id }: PlacedRoom,
  side: WindowSide,
  azimuthDeg: number,
  areaM2: number,
  wallM2: number,
  own: RoomWindow | null,
): Pane[] {
  if (areaM2 <= LEAST_AREA_M2) return [];
  const seasonal =
    (own?.summerShade ?? 0) > 0 ? warmMonths(site).map((warm) => warm * own!.summerShade!) : null;
  const place = side === 'equator' ? 'front' : side;
  return [
    paneWith({
      id: `${side} ${id}`,
      areaM2,
      wallM2,
      frameShare: ORDINARY_FRAME_SHARE,
      glass: glassSystem(own?.type ?? design.glass.type),
      azimuthDeg,
      to: id,
      nightResistance: own?.curtain ?? 0,
      shading: seasonal && { widthM: areaM2 / WINDOW_HEIGHT_M, heightM: WINDOW_HEIGHT_M, seasonal },
      covers: coversOn(design, site, { side: place, inSunspace: false }),
    }),
  ];
}
