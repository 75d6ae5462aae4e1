// Ways to divide a house, each a list of rooms and the storeys it needs: a design in, the same design divided out. The first
// is what "Divide into rooms" makes of a house of one storey: windows, people and heat shared as before, so that the divided
// house starts near the undivided one.

import type { Design } from './design.ts';
import { geometryOf } from './geometry.ts';
import { glassThatFits } from './numbers-that-fit.ts';
import type { Room, Rooms } from './room.ts';
import { roomsThatFit } from './room-fit.ts';
import { withRooms } from './room-rules.ts';

export interface RoomPreset {
  readonly id: string;
  readonly name: string;
  /** what it makes, in a line */
  readonly line: string;
  readonly storeys: 1 | 2;
  readonly list: readonly Room[];
}

const STAIR_M2 = 3;
/** Of the house's depth, the front row's part. */
const FRONT_SHARE = 0.55;

function room(own: Partial<Room> & Pick<Room, 'name' | 'use'>): Room {
  return {
    row: 'front',
    storey: 0,
    share: 1,
    reachesUp: false,
    heated: false,
    door: own.use === 'bedroom' ? 'by-day' : 'open',
    mass: false,
    ...own,
  };
}

const LIVING = room({ name: 'Living room', use: 'living', heated: true });

export const ROOM_PRESETS: readonly RoomPreset[] = [
  {
    id: 'front-and-back',
    name: 'Front and back',
    line: 'a living room to the sun, a bedroom behind it',
    storeys: 1,
    list: [LIVING, room({ name: 'Bedroom', use: 'bedroom', row: 'back' })],
  },
  {
    id: 'row-of-three',
    name: 'Long row of three',
    line: 'living room, kitchen and bedroom side by side, all to the sun',
    storeys: 1,
    list: [
      { ...LIVING, share: 0.4 },
      room({ name: 'Kitchen', use: 'kitchen', share: 0.25 }),
      room({ name: 'Bedroom', use: 'bedroom', share: 0.35 }),
    ],
  },
  {
    id: 'front-back-upstairs',
    name: 'Front, back, upstairs',
    line: 'living room and kitchen below, a bedroom over both; two storeys',
    storeys: 2,
    list: [
      LIVING,
      room({ name: 'Kitchen', use: 'kitchen', row: 'back' }),
      room({ name: 'Bedroom', use: 'bedroom', storey: 1 }),
    ],
  },
  {
    id: 'loft-over-one',
    name: 'Loft over one',
    line: 'one room below, one above it; two storeys',
    storeys: 2,
    list: [LIVING, room({ name: 'Loft', use: 'bedroom', storey: 1, door: 'open' })],
  },
  {
    id: 'gallery',
    name: 'Two-storey space with gallery',
    line: 'a living room that reaches up to the roof in front, a gallery behind it; two storeys',
    storeys: 2,
    list: [
      { ...LIVING, reachesUp: true },
      room({ name: 'Gallery', use: 'bedroom', row: 'back', storey: 1, door: 'wide' }),
    ],
  },
];

/** The preset that suits a house as it stands. */
export function usualPreset({ house }: Design): RoomPreset {
  return ROOM_PRESETS.find(({ storeys }) => storeys === Math.min(2, house.storeys))!;
}

/** The design divided so, its storeys those the preset needs, its glass drawn back to what then fits. */
export function dividedBy(design: Design, { storeys, list }: RoomPreset): Design {
  const built: Design = { ...design, house: { ...design.house, storeys } };
  const depthM = geometryOf(built).houseDepthM;
  const rooms: Rooms = {
    frontDepthM: Math.max(0.1, Math.round(10 * FRONT_SHARE * depthM) / 10),
    partition: 'light',
    partitionM: 0.12,
    stairM2: storeys > 1 ? STAIR_M2 : 0,
    list,
  };
  const fitted = { ...built, glass: { ...built.glass, value: glassThatFits(built) } };
  return withRooms(fitted, roomsThatFit({ ...fitted, rooms }));
}
