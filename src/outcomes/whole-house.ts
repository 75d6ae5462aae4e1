// The rooms of a divided house taken together as the zone 'house', so that whoever asks for the house is answered: a design
// and the year of its rooms in; the same year with the house in their place and the rooms beside it out. Temperatures and
// humidity are means by floor area, heat and water sums, the coldest corner that of the coldest room.

import type { Design } from '../design/design.ts';
import { type PlacedRoom, roomPlanOf } from '../design/room-plan.ts';
import type { HeatByCause, Year, ZoneYear } from '../network/year.ts';

/** The year with its rooms taken together; as it is for a house of one room. */
export function withWholeHouse(design: Design, year: Year): Year {
  const plan = roomPlanOf(design);
  if (plan === null) return year;
  const ids = new Set(plan.rooms.map(({ id }) => id));
  const isRoom = ({ id }: ZoneYear) => ids.has(id);
  const rooms = year.zones.filter(isRoom);
  // A model put in place of the drawn one has zones of its own.
  if (rooms.length !== plan.rooms.length) return year;
  const isOfRoom = ({ zone }: HeatByCause) => ids.has(zone);
  const roomHeat = year.heat.filter(isOfRoom);
  return {
    ...year,
    zones: [houseOf(rooms, plan.rooms), ...year.zones.filter((zone) => !isRoom(zone))],
    heat: [...heatOf(roomHeat), ...year.heat.filter((row) => !isOfRoom(row))],
    rooms,
    roomHeat,
  };
}

function houseOf(rooms: readonly ZoneYear[], placed: readonly PlacedRoom[]): ZoneYear {
  const byFloor = shares(placed.map(({ floorM2 }) => floorM2));
  const byVolume = shares(placed.map(({ volumeM3 }) => volumeM3));
  const whole = placed.map(() => 1);
  type Column = { [K in keyof ZoneYear]: ZoneYear[K] extends Float64Array ? K : never }[keyof ZoneYear];
  const weighed = (column: Column, weights: readonly number[]) => {
    const sum = new Float64Array(rooms[0]![column].length);
    rooms.forEach((room, i) => {
      const weight = weights[i]!;
      const values = room[column];
      for (let hour = 0; hour < sum.length; hour++) sum[hour]! += weight * values[hour]!;
    });
    return sum;
  };
  return {
    id: 'house',
    airC: weighed('airC', byFloor),
    operativeC: weighed('operativeC', byFloor),
    relativeHumidity: weighed('relativeHumidity', byFloor),
    solarW: weighed('solarW', whole),
    heatingW: weighed('heatingW', whole),
    coolingW: weighed('coolingW', whole),
    ventAch: weighed('ventAch', byVolume),
    moistureG: weighed('moistureG', whole),
    condensationG: weighed('condensationG', whole),
    airHeatW: weighed('airHeatW', whole),
    airWaterG: weighed('airWaterG', whole),
    airWaterFrom: fromOthers(rooms),
    moistureByCause: causesOf(rooms),
    cornerC: coldestOf(rooms),
    drainedKg: rooms.reduce((sum, { drainedKg }) => sum + drainedKg, 0),
    waterGainKg: rooms.reduce((sum, { waterGainKg }) => sum + waterGainKg, 0),
    co2Ppm: weighed('co2Ppm', byFloor),
  };
}

/** What air brought from zones that are no rooms. */
function fromOthers(rooms: readonly ZoneYear[]): ZoneYear['airWaterFrom'] {
  const sums = new Map<string, number>();
  for (const { zone, kg } of rooms.flatMap(({ airWaterFrom }) => airWaterFrom)) {
    if (!rooms.some(({ id }) => id === zone)) sums.set(zone, (sums.get(zone) ?? 0) + kg);
  }
  return [...sums].map(([zone, kg]) => ({ zone, kg }));
}

function coldestOf(rooms: readonly ZoneYear[]): Float64Array {
  return rooms[0]!.cornerC.map((_, hour) => Math.min(...rooms.map(({ cornerC }) => cornerC[hour]!)));
}

function shares(amounts: readonly number[]): number[] {
  const whole = amounts.reduce((sum, amount) => sum + amount, 0);
  return amounts.map((amount) => amount / whole);
}

function causesOf(rooms: readonly ZoneYear[]): ZoneYear['moistureByCause'] {
  const sums = new Map<string, readonly number[]>();
  for (const { cause, monthKg } of rooms.flatMap(({ moistureByCause }) => moistureByCause)) {
    sums.set(cause, added(sums.get(cause), monthKg));
  }
  return [...sums].map(([cause, monthKg]) => ({ cause, monthKg }));
}

function heatOf(rows: readonly HeatByCause[]): HeatByCause[] {
  const sums = new Map<string, readonly number[]>();
  for (const { cause, monthJ } of rows) sums.set(cause, added(sums.get(cause), monthJ));
  return [...sums].map(([cause, monthJ]) => ({ zone: 'house', cause, monthJ }));
}

function added(one: readonly number[] | undefined, other: readonly number[]): readonly number[] {
  return one === undefined ? other : one.map((value, i) => value + other[i]!);
}
