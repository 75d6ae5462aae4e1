// One year in, the outcome's named figures out; src/findings makes sentences of them.

import type { Design } from '../design/design.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { Model } from '../model/model.ts';
import type { CoverYear, Year, ZoneYear } from '../network/year.ts';
import { tm59NightHours } from '../physics/overheating-criteria.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { adaptiveOverheatedHours } from './adaptive-hours.ts';
import { hoursAbove, hoursBelow, meanDailySwing, overheating } from './comfort-hours.ts';
import { dampSpots } from './damp-spots.ts';
import { extremesOf } from './extremes.ts';
import { feltHeat } from './felt-heat.ts';
import { freshAir } from './fresh-air.ts';
import { fuelOf } from './fuel.ts';
import { equatorGlass, massInside } from './glass-and-mass.ts';
import { requirePossible } from './impossible-year.ts';
import { ALL_HOURS, type LivedHours, livedHoursOf } from './lived-hours.ts';
import { moistureLoad } from './moisture-load.ts';
import type { OutcomeFigures, RoomOutcome, ZoneOutcome } from './outcome.ts';
import { roomOutcome, worstRooms } from './room-outcomes.ts';
import { shortHoursOf } from './short-hours.ts';
import { tooHot } from './too-hot.ts';
import { movesOf, ventMoves } from './vent-moves.ts';
import { ventilation } from './ventilation.ts';
import { VERSION } from './version.ts';

/**
 * The outcome of one year.
 *
 * @param design what was asked
 * @param model what it meant
 * @param climate the weather it was run in
 * @param year the hourly result
 * @returns the figures; throws ImpossibleYear for rooms no house can have
 */
export function summarise(
  design: Design,
  model: Model,
  climate: PreparedClimate,
  year: Year,
): OutcomeFigures {
  requirePossible(year);
  const { name, latitudeDeg, longitudeDeg, elevationM } = climate.year.site;
  const glass = equatorGlass(design, year);
  const house = year.zones.find((zone) => zone.id === 'house');
  const sunspace = year.zones.find((zone) => zone.id === 'sunspace');
  if (house === undefined) throw new RangeError("zones of the year lack 'house'");
  const { busiestMonth: _, ...vents } = ventMoves(year.openings);
  const plan = roomPlanOf(design);
  const rooms = plan?.rooms.map((placed) => {
    const zone = year.rooms!.find(({ id }) => id === placed.id)!;
    const judged = zoneOutcome(design, model, climate, year, zone, livedHoursOf(placed.room.use));
    return roomOutcome(placed, judged, zone, year.openings);
  });
  const zones = {
    house: rooms
      ? wholeOutcome(design, model, climate, year, house, rooms)
      : zoneOutcome(design, model, climate, year, house),
    ...(sunspace === undefined ? {} : { sunspace: zoneOutcome(design, model, climate, year, sunspace) }),
  };
  const heating = {
    ...energyAndPeak(year.zones, (zone) => zone.heatingW),
    shortHours: shortHoursOf(model, year, climate.calendar),
  };
  const fuel = fuelOf(design, year, heating.energyKWh);
  return {
    daystone: VERSION,
    design: design.name,
    site: { name, latitudeDeg, longitudeDeg, elevationM },
    equatorGlass: glass,
    mass: massInside(model, glass.areaM2),
    zones,
    ...(rooms && { rooms, worst: worstRooms(rooms) }),
    heating,
    ...(fuel && { fuel }),
    cooling: energyAndPeak(year.zones, (zone) => zone.coolingW),
    vents,
    ...(year.covers && { covers: coversAsk(year.covers) }),
    ventilation: ventilation(model, climate, year),
    books: { heatResidual: year.books.heatResidual, waterResidual: year.books.waterResidual },
  };
}

/** What covers ask of people, without the month. */
function coversAsk(covers: readonly CoverYear[]): NonNullable<OutcomeFigures['covers']> {
  const { busiestMonth: _, ...asked } = movesOf(covers);
  return asked;
}

/** Rooms taken together have no corner of their own: mould, dew and frost are those of the worst room. */
function wholeOutcome(
  design: Design,
  model: Model,
  climate: PreparedClimate,
  year: Year,
  house: ZoneYear,
  rooms: readonly RoomOutcome[],
): ZoneOutcome {
  const dampest = rooms.reduce((most, room) => (room.mouldIndexMax > most.mouldIndexMax ? room : most));
  return {
    ...zoneOutcome(design, model, climate, year, house, ALL_HOURS, dampest.dampSpots),
    frostHours: Math.max(...rooms.map(({ frostHours }) => frostHours)),
  };
}

function zoneOutcome(
  design: Design,
  model: Model,
  climate: PreparedClimate,
  year: Year,
  zone: ZoneYear,
  lived: LivedHours = ALL_HOURS,
  spots: ZoneOutcome['dampSpots'] = dampSpots(zone, model, climate.year.dryBulbC),
): ZoneOutcome {
  const { overheatC, underheatC, humidLimit } = design.comfort;
  const air = extremesOf(zone.airC);
  const operative = extremesOf(zone.operativeC);
  const hot = overheating(zone.operativeC, overheatC);
  const load = moistureLoad(zone);
  return {
    meanAirC: air.mean,
    maxAirC: air.max,
    minAirC: air.min,
    maxOperativeC: operative.max,
    minOperativeC: operative.min,
    overheatedHours: hot.hours,
    overheatedDegreeHours: hot.degreeHours,
    overheatLimitC: overheatC,
    adaptiveOverheatedHours: adaptiveOverheatedHours(zone.operativeC, climate.year.dryBulbC),
    tooHot: tooHot(design, zone, climate.year, lived),
    underheatedHours: hoursBelow(zone.operativeC, underheatC),
    underheatLimitC: underheatC,
    meanDailySwingK: meanDailySwing(zone.operativeC),
    meanRelativeHumidity: extremesOf(zone.relativeHumidity).mean,
    humidHours: hoursAbove(zone.relativeHumidity, humidLimit),
    humidLimit,
    mouldIndexMax: spots[0]!.mouldIndexMax,
    condensationKg: condensed(zone.condensationG),
    moistureLoadKgPerDay: load.kgPerDay,
    moistureByCause: load.byCause,
    dampSpots: spots,
    freshAir: freshAir(zone),
    feltHeat: feltHeat(zone),
    hotNightHours: tm59NightHours(zone.operativeC),
    drainedKg: zone.drainedKg,
    frostHours: year.panes.reduce(
      (most, pane) => (pane.to === zone.id ? Math.max(most, pane.frostHours) : most),
      0,
    ),
    hottestHour: operative.maxHour,
    coldestHour: operative.minHour,
  };
}

/** Water that formed on the panes over the year [kg]; what dried off again is not subtracted. */
function condensed(condensationG: Float64Array): number {
  return condensationG.reduce((sum, grams) => sum + Math.max(grams, 0), 0) / 1000;
}

/** Energy of the year and the highest hour of all zones together. */
function energyAndPeak(
  zones: readonly ZoneYear[],
  powerOf: (zone: ZoneYear) => Float64Array,
): { energyKWh: number; peakW: number } {
  let energyWh = 0;
  let peakW = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const watts = zones.reduce((sum, zone) => sum + powerOf(zone)[hour]!, 0);
    energyWh += watts;
    peakW = Math.max(peakW, watts);
  }
  return { energyKWh: energyWh / 1000, peakW };
}
