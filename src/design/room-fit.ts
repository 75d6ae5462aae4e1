// What a divided house asks of the house around it: as many storeys as its rooms stand on, and a heater in one of them where
// there is back-up heat. A design in, storeys and rooms that fit out. Depths and windows are built as far as they fit
// (room-plan.ts, room-rules.ts) and stay as asked, so that a house made smaller and larger again is the same.

import type { Design } from './design.ts';
import type { Rooms } from './room.ts';

/** Storeys of the house; of a divided one those of its rooms, since nobody can say which room a storey more would be. */
export function storeysThatFit({ house, rooms }: Design): number {
  return rooms === undefined
    ? house.storeys
    : Math.max(...rooms.list.map(({ storey, reachesUp }) => storey + (reachesUp ? 2 : 1)));
}

/** The rooms with a heater in the first where back-up heat would stand nowhere; the same ones where all fits. */
export function roomsThatFit({ rooms, heating }: Design): Rooms | undefined {
  if (rooms === undefined || heating.capacityKW <= 0 || rooms.list.some(({ heated }) => heated)) return rooms;
  return { ...rooms, list: rooms.list.map((room, i) => (i === 0 ? { ...room, heated: true } : room)) };
}
