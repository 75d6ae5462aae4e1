// The rooms of a divided house as zones of air: each its size, furniture, its part of people, gains and water, and the heater
// that stands in it. A design and its room plan in; zones out, in the order of the rooms.

import type { Design } from '../design/design.ts';
import type { PlacedRoom, RoomPlan } from '../design/room-plan.ts';
import { type SharedCause, sharesOf } from '../design/room-uses.ts';
import { gainsOf, isAwake, moistureOf, peopleAtHome } from './household.ts';
import type { Schedule, Thermostat, Zone } from './model.ts';
import { plantingIn } from './planting.ts';
import { withEachHour } from './schedule.ts';
import { FURNITURE_J_PER_K, houseZone } from './zone-house.ts';

/** Of the furniture's store, what partitions make up, which are drawn here [J/K each m² of floor]; common practice, no source. */
const PARTITIONS_J_PER_K = 8_000;

/** Zones of the rooms. */
export function roomZones(design: Design, plan: RoomPlan): Zone[] {
  const { rooms } = plan;
  const house = houseZone(design);
  const shares = new Map<SharedCause, number[]>();
  const share = (cause: SharedCause, i: number) => {
    const known = shares.get(cause) ?? sharesOf(rooms, cause);
    shares.set(cause, known);
    return known[i]!;
  };
  const people = peopleAtHome(design);
  const gains = gainsOf(design);
  const moisture = moistureOf(design);
  return rooms.map((placed, i): Zone => {
    const { floorM2 } = placed;
    const present = (hour: number) => share(isAwake(hour) ? 'awake' : 'asleep', i);
    const steady = (cause: SharedCause) => () => share(cause, i);
    const causeOf = (cause: string) =>
      cause === 'people' ? present : steady(cause === 'drying clothes' ? 'drying' : (cause as SharedCause));
    return {
      id: placed.id,
      floorAreaM2: floorM2,
      volumeM3: placed.volumeM3,
      furnitureCapacity: (FURNITURE_J_PER_K - PARTITIONS_J_PER_K) * floorM2,
      furnitureMoisture: (house.furnitureMoisture * floorM2) / house.floorAreaM2,
      thermostat: heaterIn(placed, rooms, house.thermostat),
      gains: gains.map((gain) => ({
        ...gain,
        power: shared(gain.power, gain.id === 'people' ? present : steady('appliances')),
      })),
      moisture: moisture.map(({ cause, rate }) => ({ cause, rate: shared(rate, causeOf(cause)) })),
      planting: i === gardenRoom(plan) ? plantingIn(design, 'house', placed.groundM2) : null,
      people: people && shared(people, present),
      cornerFactor: house.cornerFactor,
    };
  });
}

/** Back-up heat in a heated room: its part, by floor area, of all there is. */
function heaterIn(
  { room, floorM2 }: PlacedRoom,
  rooms: readonly PlacedRoom[],
  whole: Thermostat | null,
): Thermostat | null {
  if (whole === null || !room.heated) return null;
  const heatedM2 = rooms.reduce((sum, other) => sum + (other.room.heated ? other.floorM2 : 0), 0);
  return { ...whole, heatCapacityW: (whole.heatCapacityW * floorM2) / heatedM2 };
}

/** Place in the plan of the room whose front has most wall on the ground; a planted bed stands there where there is no sunspace. */
export function gardenRoom({ rooms }: RoomPlan): number {
  const front = rooms.map(({ room, wallM2 }) => (room.storey === 0 ? wallM2.equator : -1));
  return front.indexOf(Math.max(...front));
}

/** A room's part of a schedule of the house, by the hour of the day. */
function shared(schedule: Schedule, shareAt: (hour: number) => number): Schedule {
  return withEachHour(schedule, (value, hour) => value * shareAt(hour));
}
