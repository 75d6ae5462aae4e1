// The sunspace by itself: whether people can use it, whether plants live in it and their bed fits, whether it helps the rooms. Plant
// limits: growers' handbooks (physics/plant-limits.ts, from memory, medium confidence).

import { bedFloorM2, isBedTooLarge } from '../../design/numbers-that-fit.ts';
import { heatByMonth } from '../../outcomes/balances.ts';
import { monthlySums } from '../../outcomes/calendar.ts';
import { hoursAbove, hoursBelow } from '../../outcomes/comfort-hours.ts';
import { extremesOf } from '../../outcomes/extremes.ts';
import { isTooHot } from '../../outcomes/too-hot.ts';
import { PLANT_LIMITS, type PlantRisk } from '../../physics/plant-limits.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Context } from '../context.ts';
import { heaterWords } from '../fuel-words.ts';
import { hotPhrase } from '../hot-words.ts';
import { finding, type Rule } from '../rule.ts';
import { hours, moment, percent } from '../wording.ts';
import { sunspaceIsDangerous } from './cautions-sunspace.ts';

/** Air in which people like to sit in a sunspace by day [°C]. House rule. */
const PLEASANT = { low: 16, high: 30 } as const;
/** A day in the sunspace, 9 to 18 o'clock. */
const DAY = { first: 9, last: 18 } as const;
const SCORCHING_C = limitOf('leaf scorch');
const FROST_C = limitOf('frost');
const CHILLING_C = limitOf('chilling');
/** Heat over a heating season worth a word [kWh]. House rule. */
const WORTH_KWH = 100;
/** Leaves stay wet in air damper than this; so many hours of it a year are worth a word. Common practice, no source. */
const LEAVES_WET = 0.95;
const WORTH_WET_HOURS = 100;
const DAMP_SOURCE = 'common practice, no source';
const PLANT_SOURCE = "growers' handbooks (from memory, medium confidence)";

function limitOf(risk: PlantRisk): number {
  return PLANT_LIMITS.find((row) => row.risk === risk)!.limit;
}

function hasPlants({ design, sunspace }: Context): boolean {
  return sunspace !== null && design.plants.bedM2 > 0;
}

function frostHours({ sunspaceYear }: Context): number {
  return hoursBelow(sunspaceYear!.airC, FROST_C);
}

function scorchHours({ sunspaceYear }: Context): number {
  return hoursAbove(sunspaceYear!.airC, SCORCHING_C);
}

function wetHours({ sunspaceYear }: Context): number {
  return hoursAbove(sunspaceYear!.relativeHumidity, LEAVES_WET);
}

/** Heat the rooms get from the sunspace in the months with heating [kWh]; negative where they heat it. */
function givenWhenHeating({ year, houseYear }: Context): number {
  const heating = monthlySums(houseYear.heatingW).map((wattHours) => wattHours > 0);
  return heatByMonth(year)
    .filter(({ zone, cause }) => zone === 'house' && cause === 'other zones')
    .reduce(
      (sum, row) => sum + row.months.reduce((part, kWh, month) => part + (heating[month] ? kWh : 0), 0),
      0,
    );
}

/** Share of the day's hours with pleasant air. */
function pleasantShare({ sunspaceYear }: Context): number {
  let [day, pleasant] = [0, 0];
  for (let hour = 0; hour < HOURS; hour++) {
    if (hour % 24 < DAY.first || hour % 24 >= DAY.last) continue;
    const air = sunspaceYear!.airC[hour]!;
    day++;
    if (air >= PLEASANT.low && air <= PLEASANT.high) pleasant++;
  }
  return pleasant / day;
}

export const SUNSPACE_RULES: readonly Rule[] = [
  finding({
    id: 'plants-freeze',
    severity: 'warning',
    applies: (context) => hasPlants(context) && frostHours(context) > 0,
    figures: (context) => {
      const air = extremesOf(context.sunspaceYear!.airC);
      return {
        hours: frostHours(context),
        minAirC: air.min,
        coldest: moment(air.minHour),
        frostC: FROST_C,
        source: PLANT_SOURCE,
      };
    },
    says: (f, { words }) =>
      `Tender plants freeze in the sunspace: its air is ${hours(f.hours)} below ${words.temperature(f.frostC)}, down to ${words.temperature(f.minAirC)} on ${f.coldest}. Grow hardy greens there in winter, cover the glass at night, or bring the pots in.`,
  }),
  finding({
    id: 'plants-chill',
    severity: 'note',
    applies: (context) =>
      hasPlants(context) &&
      frostHours(context) === 0 &&
      hoursBelow(context.sunspaceYear!.airC, CHILLING_C) > 0,
    figures: (context) => ({
      hours: hoursBelow(context.sunspaceYear!.airC, CHILLING_C),
      chillingC: CHILLING_C,
      minAirC: extremesOf(context.sunspaceYear!.airC).min,
      source: PLANT_SOURCE,
    }),
    says: (f, { words }) =>
      `No frost reaches the plants, but the air of the sunspace is below ${words.temperature(f.chillingC)} for ${hours(f.hours)} a year, too cold for tomatoes and bananas. The air falls to ${words.temperature(f.minAirC, 1)}; the table counts walls and floor in as well. Leafy greens and herbs will do well.`,
  }),
  finding({
    id: 'plants-scorch',
    severity: 'warning',
    applies: (context) => hasPlants(context) && scorchHours(context) > 0,
    figures: (context) => {
      const air = extremesOf(context.sunspaceYear!.airC);
      return {
        hours: scorchHours(context),
        scorchC: SCORCHING_C,
        maxAirC: air.max,
        hottest: moment(air.maxHour),
        source: PLANT_SOURCE,
      };
    },
    says: (f, { words }) =>
      `The sunspace is hot enough to scorch leaves for ${hours(f.hours)} a year: above ${words.temperature(f.scorchC)}, and ${words.temperature(f.maxAirC)} on ${f.hottest}. Shade cloth outside the glass and vents that open by themselves save the plants.`,
  }),
  finding({
    id: 'plants-damp',
    severity: 'note',
    applies: (context) => hasPlants(context) && wetHours(context) > WORTH_WET_HOURS,
    figures: (context) => ({
      hours: wetHours(context),
      humidLimit: LEAVES_WET,
      source: DAMP_SOURCE,
    }),
    says: (f) =>
      `The sunspace is too damp for leaves for ${hours(f.hours)} a year: its air is above ${percent(f.humidLimit)} humidity, and grey mould grows on wet leaves. Water in the morning, mulch the bed, and open a vent a little while it is dry outside.`,
  }),
  finding({
    id: 'bed-does-not-fit',
    severity: 'warning',
    applies: ({ design }) => isBedTooLarge(design),
    figures: ({ design }) => ({ askedM2: design.plants.bedM2, fitsM2: bedFloorM2(design) }),
    says: (f, { sunspace, words }) =>
      `The planted bed is larger than the floor it stands on: ${words.area(f.askedM2)} are asked for, and the ${sunspace === null ? 'house' : 'sunspace'} has ${words.area(f.fitsM2)}. The run plants all of that floor and no more. Make the bed smaller, or its room larger.`,
  }),
  finding({
    id: 'sunspace-extreme',
    severity: 'note',
    applies: (context) => context.sunspace !== null && !hasPlants(context) && pleasantShare(context) < 0.4,
    figures: (context) => ({
      pleasantShare: pleasantShare(context),
      lowC: PLEASANT.low,
      highC: PLEASANT.high,
      minAirC: context.sunspace!.minAirC,
      maxAirC: context.sunspace!.maxAirC,
    }),
    says: (f, { words }) =>
      `The sunspace is a place to sit for ${percent(f.pleasantShare)} of the daytime, between ${words.temperature(f.lowC)} and ${words.temperature(f.highC)}. Its air ranges from ${words.temperature(f.minAirC)} to ${words.temperature(f.maxAirC)}. Think of it as a warm porch, not as a room.`,
  }),
  finding({
    id: 'sunspace-pleasant',
    severity: 'good',
    // A place that can kill on one afternoon is not praised for the others.
    applies: (context) =>
      context.sunspace !== null && pleasantShare(context) >= 0.6 && !sunspaceIsDangerous(context),
    figures: (context) => ({
      pleasantShare: pleasantShare(context),
      lowC: PLEASANT.low,
      highC: PLEASANT.high,
    }),
    says: (f, { words }) =>
      `The sunspace is warm enough and not too hot to sit in for ${percent(f.pleasantShare)} of the daytime: air between ${words.temperature(f.lowC)} and ${words.temperature(f.highC)}. That is a wider limit than the rooms have, and it says nothing of damp.`,
  }),
  finding({
    id: 'sunspace-gives',
    severity: 'good',
    applies: (context) => context.sunspace !== null && givenWhenHeating(context) > WORTH_KWH,
    figures: (context) => ({
      kWh: givenWhenHeating(context),
      heatingKWh: context.outcome.heating.energyKWh,
      heater: heaterWords(context.design),
    }),
    says: (f, { words }) =>
      `In the months with heating the sunspace gives the rooms ${words.energy(f.kWh)}. The ${f.heater} has to add ${words.energy(f.heatingKWh)}.`,
  }),
  finding({
    id: 'sunspace-takes',
    severity: 'note',
    applies: (context) =>
      context.design.sunspace.join === 'closed' &&
      context.sunspace !== null &&
      givenWhenHeating(context) < -WORTH_KWH,
    figures: (context) => ({ kWh: -givenWhenHeating(context) }),
    says: (f, { words }) =>
      `In the months with heating the sunspace takes ${words.energy(f.kWh)} from the rooms: they heat it. Shut the door at dusk, insulate the wall between, or cover the sunspace glass at night.`,
  }),
  finding({
    id: 'sunspace-open',
    severity: 'warning',
    applies: ({ design, sunspace, house }) =>
      sunspace !== null &&
      design.sunspace.join === 'open' &&
      (isTooHot(house) || house.humidHours > 0.05 * HOURS),
    figures: ({ house, design }) => ({
      tooHotHours: house.tooHot.hours,
      limitC: house.tooHot.limitC ?? house.tooHot.lowestLimitC,
      humidHours: house.humidHours,
      humidLimit: house.humidLimit,
      openM2: design.sunspace.doorM2,
    }),
    says: (f, { house, words }) =>
      `The sunspace stands open to the rooms, so they share its heat and its damp: ${hours(f.tooHotHours)} ${hotPhrase(house.tooHot, words)} and ${hours(f.humidHours)} above ${percent(f.humidLimit)} humidity. A wall between them with a door lets you choose: shut, it keeps out heat and damp.`,
  }),
];
