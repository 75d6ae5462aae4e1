// The rooms of a divided house in section: a design and its shape in; the places that are cut, partitions, stairs and names as
// marks out. The section runs from front to back: of rooms that stand side by side in a row it cuts the one picked, else the
// first. Nothing for an undivided house.

import type { Design } from '../../design/design.ts';
import { type PlacedRoom, type RoomPlan, roomPlanOf } from '../../design/room-plan.ts';
import { fittingText, type ZoneText } from './hour-marks.ts';
import { box, line, type Mark, point, word } from './mark.ts';
import type { SectionShape } from './section-shape.ts';

const PARTITION_M = 0.12;
const UPPER_FLOOR_M = 0.22;
const STAIR_RUN_M = 1.6;
const NAME_BELOW_CEILING_M = 0.42;

/** What is cut of a room on one storey [m]. */
export interface CutRoom {
  readonly id: string;
  readonly name: string;
  readonly storey: number;
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** The rooms that the section cuts, storey by storey from the back. */
export function cutRooms(design: Design, picked: string | null): readonly CutRoom[] {
  const plan = roomPlanOf(design);
  if (plan === null) return [];
  const at = cutAt(plan, picked);
  return plan.rooms
    .flatMap(({ id, room, boxes }) =>
      boxes
        .filter(({ fromM, toM }) => fromM <= at && at < toM)
        .map(({ storey, nearM, farM }) => ({
          id,
          name: room.name,
          storey,
          x0: plan.depthM - farM,
          x1: plan.depthM - nearM,
          y0: storey * plan.storeyM,
          y1: (storey + 1) * plan.storeyM,
        })),
    )
    .sort((one, other) => one.storey - other.storey || one.x0 - other.x0);
}

/** Where along the front it cuts: through the middle of the room picked, else of the first. */
function cutAt({ rooms }: RoomPlan, picked: string | null): number {
  const { boxes } = rooms.find(({ id }) => id === picked) ?? (rooms[0] as PlacedRoom);
  return (boxes[0]!.fromM + boxes[0]!.toM) / 2;
}

/** Rooms as areas tinted each for itself. */
export function roomAreaMarks(cut: readonly CutRoom[], fills: Readonly<Record<string, string>>): Mark[] {
  return cut.map(({ id, x0, x1, y0, y1 }) => box('room', x0, y0, x1, y1, fills[id]));
}

/** Partitions and stairs. */
export function partitionMarks(design: Design, cut: readonly CutRoom[]): Mark[] {
  const plan = roomPlanOf(design);
  if (plan === null) return [];
  const walls = cut.flatMap((one): Mark[] => {
    const next = cut.find(
      ({ storey, x0, id }) => storey === one.storey && id !== one.id && Math.abs(x0 - one.x1) < 1e-6,
    );
    return next === undefined
      ? []
      : [box('partition', one.x1 - PARTITION_M / 2, one.y0, one.x1 + PARTITION_M / 2, one.y1)];
  });
  const stairs = plan.ways
    .filter(({ kind }) => kind === 'stairs')
    .flatMap(({ room, to }): Mark[] => {
      const ids = [plan.rooms[room]!.id, plan.rooms[to]!.id];
      const lower = cut.find(
        ({ id, storey }) =>
          ids.includes(id) &&
          cut.some((upper) => ids.includes(upper.id) && upper.id !== id && upper.storey === storey + 1),
      );
      if (lower === undefined) return [];
      const x = lower.x0 + 0.3;
      const run = Math.min(STAIR_RUN_M, lower.x1 - lower.x0 - 0.4);
      return [
        box('stairs', x, lower.y1 - UPPER_FLOOR_M, x + run, lower.y1),
        line('stair-flight', [point(x, lower.y1), point(x + run, lower.y0)]),
      ];
    });
  return [...walls, ...stairs];
}

/** A letter of their names, and the lines of a room from its ceiling down to its floor [px]. */
const NAME_LETTER_PX = 6.2;
const NAME_LINE_PX = 14;
const TEXT_LINE_PX = 19;

/**
 * Their names, under the ceiling; with what is measured there, where an hour is shown. What is wider than its room is said
 * shorter or left to the plan.
 */
export function roomNameMarks(
  cut: readonly CutRoom[],
  texts: Readonly<Record<string, ZoneText>>,
  pxPerM: number,
): Mark[] {
  const seen = new Set<string>();
  return cut.flatMap(({ id, name, x0, x1, y1 }): Mark[] => {
    if (seen.has(id)) return [];
    seen.add(id);
    const x = (x0 + x1) / 2;
    const widePx = (x1 - x0) * pxPerM;
    const named = name.length * NAME_LETTER_PX <= widePx;
    const nameY = y1 - Math.max(NAME_BELOW_CEILING_M, NAME_LINE_PX / pxPerM);
    const text = texts[id] && fittingText(texts[id], widePx);
    return [
      ...(named ? [word('room-name', point(x, nameY), name)] : []),
      ...(text
        ? [word('zone-word', point(x, (named ? nameY : y1) - Math.max(0.5, TEXT_LINE_PX / pxPerM)), text)]
        : []),
    ];
  });
}

/** Stretches of the floor at a height, between the rooms it parts; none where a room reaches up through it. */
export function floorStretches(
  design: Design,
  shape: SectionShape,
  y: number,
  picked: string | null,
): readonly (readonly [number, number])[] {
  const cut = cutRooms(design, picked);
  if (cut.length === 0) return [[0, shape.wallInnerX]];
  return cut
    .filter(({ y0 }) => Math.abs(y0 - y) < 1e-6)
    .filter(({ id, storey }) => !cut.some((below) => below.id === id && below.storey === storey - 1))
    .map(({ x0, x1 }) => [x0, x1] as const);
}
