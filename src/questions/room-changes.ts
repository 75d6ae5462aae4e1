// Changes that could help one room of a divided house: its door, a grille, a fan, the heat or the mass in it, shade, windows,
// drier living. A design and a room in; each change by itself, as it is said and as it is made, out.

import type { Design } from '../design/design.ts';
import type { Room } from '../design/room.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import { varied } from './variation.ts';
import type { Words } from './words.ts';

/** A fan between rooms, and an extract fan, as usually bought [m³/h, air changes an hour]; common practice, no source. */
const FAN_M3H = 60;
const EXTRACT_ACH = 0.4;
const MORE_WINDOWS = 2;
const LEAST_WINDOW_M2 = 1;
/** Blinds or leaves that keep out so much in summer; common practice, no source. */
const SHADE = 0.8;

export interface RoomChange {
  /** as said to a person: "its door shut" */
  readonly words: string;
  /** the house with it made */
  readonly design: Design;
}

/**
 * What could help a room, each by itself.
 *
 * @param design divided into rooms
 * @param i of the room in the design's list
 */
export function roomChanges(design: Design, i: number, { airFlow }: Words): RoomChange[] {
  const rooms = design.rooms!;
  const room = rooms.list[i]!;
  const plan = roomPlanOf(design)!;
  const hasWay = plan.ways.some((way) => way.room === i);
  const hasStove = design.heating.capacityKW > 0 && design.heating.source?.kind === 'stove';
  const changed = (own: Partial<Room>, others: Partial<Room> = {}): Design =>
    varied(
      {
        ...design,
        rooms: { ...rooms, list: rooms.list.map((each, n) => ({ ...each, ...(n === i ? own : others) })) },
      },
      {},
    );
  const made: (RoomChange & { readonly when: boolean })[] = [
    {
      words: 'its door open by day and night',
      design: changed({ door: 'open' }),
      when: hasWay && room.door !== 'open' && room.door !== 'wide',
    },
    {
      words: 'a wide opening in place of its door',
      design: changed({ door: 'wide' }),
      // Who sleeps there wants a door to shut.
      when: hasWay && room.door !== 'wide' && room.use !== 'bedroom',
    },
    {
      words: 'a low and a high grille by its shut door',
      design: changed({ door: 'grille' }),
      when: hasWay && room.door === 'shut',
    },
    { words: 'its door shut', design: changed({ door: 'shut' }), when: hasWay && room.door !== 'shut' },
    {
      words: `a fan of ${airFlow(FAN_M3H)} from the next room`,
      design: changed({ fanM3H: FAN_M3H }),
      when: hasWay && (room.fanM3H ?? 0) < FAN_M3H,
    },
    {
      words: 'the stove in it',
      design: changed({ heated: true }, { heated: false }),
      // Nobody is told to light a fire where people sleep.
      when:
        hasStove &&
        room.use !== 'bedroom' &&
        !(room.heated && rooms.list.filter(({ heated }) => heated).length === 1),
    },
    {
      words: 'a heater in it too',
      design: changed({ heated: true }),
      when: design.heating.capacityKW > 0 && !hasStove && !room.heated,
    },
    {
      words: 'the extra mass in it alone',
      design: changed({ mass: true }, { mass: false }),
      when: design.mass.areaM2 > 0 && !(room.mass && rooms.list.filter(({ mass }) => mass).length === 1),
    },
    {
      words: 'its own windows shaded in summer',
      design: changed({
        ...(room.windows && { windows: room.windows.map((window) => ({ ...window, summerShade: SHADE })) }),
      }),
      when: room.windows?.some(({ summerShade = 0 }) => summerShade < SHADE) ?? false,
    },
    {
      words: 'all windows shaded from outside in summer',
      design: varied(design, { 'glass.summerShade': SHADE }),
      when: design.glass.summerShade < SHADE && design.glass.value > 0,
    },
    {
      words: 'twice as much window to open in the house',
      design: varied(design, {
        'vents.houseM2': Math.max(LEAST_WINDOW_M2, MORE_WINDOWS * design.vents.houseM2),
      }),
      when: room.windows === undefined,
    },
    {
      words: `an extract fan in kitchen and bath, ${EXTRACT_ACH} air changes an hour`,
      design: varied(design, { 'vents.extractAch': EXTRACT_ACH }),
      when: design.vents.extractAch < EXTRACT_ACH,
    },
    {
      words: 'cooking under a hood and drying no washing in the rooms',
      design: varied(design, { 'people.living': 'dry' }),
      when: design.people.count > 0 && design.people.living !== 'dry',
    },
  ];
  return made.filter(({ when }) => when);
}
