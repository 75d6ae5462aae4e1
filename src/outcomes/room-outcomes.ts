// The rooms of a divided house judged one by one, and the worst of them. Outcomes of the rooms as zones in; what is told of
// each and of the worst out. Heat and cold count in the hours a room is lived in, damp and mould in all hours and in every
// room.

import type { PlacedRoom } from '../design/room-plan.ts';
import { windowsIdOf } from '../model/openings-of-rooms.ts';
import type { OpeningYear, ZoneYear } from '../network/year.ts';
import { livedHoursOf } from './lived-hours.ts';
import type { RoomOutcome, WorstRoom, WorstRooms, ZoneOutcome } from './outcome.ts';

/**
 * Warm air gathers above in a room that reaches up two storeys: so many kelvins each metre from its middle to the middle of
 * its upper half. Measured gradients of heated halls lie between 0.2 and 1 K/m; common practice, no source.
 */
const LAYERING_K_PER_M = 0.5;

/** How much warmer the upper half of a room that reaches up two storeys is than its middle [K]; null of any other. */
export function upperPartWarmerK({ boxes, volumeM3, floorM2 }: PlacedRoom): number | null {
  return boxes.length > 1 ? (LAYERING_K_PER_M * volumeM3) / floorM2 / 4 : null;
}

/** A room's outcome: `zone` judges it as any zone, in the hours it is lived in. */
export function roomOutcome(
  placed: PlacedRoom,
  zone: ZoneOutcome,
  year: ZoneYear,
  openings: readonly OpeningYear[],
): RoomOutcome {
  const { id, room, floorM2 } = placed;
  const warmerK = upperPartWarmerK(placed);
  const lived = livedHoursOf(room.use);
  let [over, under] = [0, 0];
  for (let hour = 0; hour < year.operativeC.length; hour++) {
    if (!lived.counts(hour)) continue;
    if (year.operativeC[hour]! > zone.overheatLimitC) over++;
    if (year.operativeC[hour]! < zone.underheatLimitC) under++;
  }
  return {
    ...zone,
    id,
    name: room.name,
    use: room.use,
    floorAreaM2: floorM2,
    windowMoves: openings.find((one) => one.id === windowsIdOf(id))?.moves ?? 0,
    lived: { hoursPerDay: lived.hours, overheatedHours: over, underheatedHours: under },
    ...(warmerK !== null && { upperPartWarmerK: warmerK }),
  };
}

/** The worst of several rooms; of equals the first. Where none is lived in, the first with nothing against it. */
export function worstRooms(rooms: readonly RoomOutcome[]): WorstRooms {
  const livedIn = rooms.filter(({ lived }) => lived.hoursPerDay > 0);
  const sleeping = rooms.filter(({ use }) => use === 'bedroom');
  const hottest = largest(livedIn, hotness, rooms);
  return {
    overheated: largest(livedIn, ({ lived }) => lived.overheatedHours, rooms),
    tooHot: { room: hottest.room, value: rooms.find(({ id }) => id === hottest.room)!.tooHot.hours },
    underheated: largest(livedIn, ({ lived }) => lived.underheatedHours, rooms),
    humid: largest(rooms, ({ humidHours }) => humidHours, rooms),
    mould: largest(rooms, ({ mouldIndexMax }) => mouldIndexMax, rooms),
    hotNight: largest(sleeping, ({ hotNightHours }) => hotNightHours, livedIn.length > 0 ? livedIn : rooms),
  };
}

/** Rooms lived in for fewer hours are allowed fewer: what counts is how far beyond. */
function hotness({ tooHot: { hours, limitHours } }: RoomOutcome): number {
  return hours / Math.max(1, limitHours);
}

function largest(
  rooms: readonly RoomOutcome[],
  of: (room: RoomOutcome) => number,
  otherwise: readonly RoomOutcome[],
): WorstRoom {
  const among = rooms.length > 0 ? rooms : otherwise;
  const worst = among.reduce((most, room) => (of(room) > of(most) ? room : most));
  return { room: worst.id, value: of(worst) };
}
