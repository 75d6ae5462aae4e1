// Divided houses for tests: the closed example on two storeys with four rooms, and the modest one on one with four alike.
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Room, Rooms } from '../../src/design/room.ts';
import { withRooms } from '../../src/design/room-rules.ts';

export const example = (id: string): Design => EXAMPLES.find((one) => one.id === id)!.design;

/** A front living room with its door open; give what differs. */
export function room(own: Partial<Room> & Pick<Room, 'name'>): Room {
  return {
    row: 'front',
    storey: 0,
    share: 1,
    reachesUp: false,
    use: 'living',
    heated: false,
    door: 'open',
    mass: false,
    ...own,
  };
}

const SHARED = { partition: 'light', partitionM: 0.12, stairM2: 3 } as const;

/** Two storeys and a closed sunspace: stove and mass in the living room, kitchen behind it, a bedroom above each. */
export function fourRooms(change: Partial<Room> = {}, base: Design = example('closed')): Design {
  const list = [
    room({ name: 'Living room', heated: true, mass: true }),
    room({ name: 'Kitchen', row: 'back', use: 'kitchen', ...change }),
    room({ name: 'Front bedroom', storey: 1, use: 'bedroom', ...change }),
    room({ name: 'Back bedroom', row: 'back', storey: 1, use: 'bedroom', ...change }),
  ];
  const house = { ...base.house, storeys: 2, equatorWallM: 10, ceilingHeightM: 2.5 };
  const sunspace = { ...base.sunspace, lengthM: 8 };
  return withRooms({ ...base, house, sunspace }, { ...SHARED, frontDepthM: 3, list });
}

/** One storey without a sunspace: four living rooms, two by two, each heated by its part, with mass out of the sun. */
export function alikeRooms(change: Partial<Room> = {}): Design {
  const modest = example('modest');
  const all = { use: 'living', heated: true, door: 'wide', ...change } as const;
  const depthM = modest.house.floorAreaM2 / modest.house.equatorWallM;
  const rooms: Rooms = {
    ...SHARED,
    frontDepthM: depthM / 2,
    list: [
      room({ name: 'Front east', share: 0.5, ...all }),
      room({ name: 'Front west', share: 0.5, ...all }),
      room({ name: 'Back east', row: 'back', share: 0.5, ...all }),
      room({ name: 'Back west', row: 'back', share: 0.5, ...all }),
    ],
  };
  const mass = { ...modest.mass, place: 'shaded' } as const;
  return withRooms({ ...modest, mass, vents: { ...modest.vents, habit: 'automatic' } }, rooms);
}
