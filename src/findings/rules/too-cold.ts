// Rooms that get too cold, and what keeping them warm takes. Limits: the design's own; 18 °C in winter is the
// World Health Organization's housing guideline (2018); 15 kWh/m² is the well-known mark of very low heat demand
// (common practice, no source).

import { hoursByMonth } from '../../outcomes/calendar.ts';
import { WHO_WINTER_MINIMUM_C } from '../../physics/overheating-criteria.ts';
import type { Context } from '../context.ts';
import { heatedRooms, roomFigure } from '../room-words.ts';
import { finding, type Rule } from '../rule.ts';
import { during, hours, isUs, moment } from '../wording.ts';
import { stoveOf } from './heat-source.ts';
import { calmHours, monthsThatMatter } from './season.ts';
import { FEW_STALE_HOURS, MOST_OF_THE_YEAR } from './too-damp.ts';

const LOW_DEMAND_KWH_PER_M2 = 15;
/** A heater within this share of its capacity runs flat out. */
const FLAT_OUT = 0.98;

function heatPerFloor({ outcome, design }: Context): number {
  return outcome.heating.energyKWh / design.house.floorAreaM2;
}

function runsFlatOut({ outcome, design }: Context): boolean {
  return outcome.heating.peakW >= FLAT_OUT * 1000 * design.heating.capacityKW;
}

export const TOO_COLD_RULES: readonly Rule[] = [
  finding({
    id: 'too-cold',
    severity: 'warning',
    applies: ({ house }) => house.underheatedHours > calmHours(),
    figures: (context) => {
      const { house, design } = context;
      const place = context.worst('cold');
      const cold = place.year.operativeC.map((value, hour) => (place.lived.counts(hour) ? value : Infinity));
      const byMonth = hoursByMonth(cold, (value) => value < house.underheatLimitC);
      return {
        ...roomFigure(place),
        heated: place.room !== null && !heatedRooms(design).includes(place.room.id) ? 'no' : 'yes',
        hours: house.underheatedHours,
        limitC: house.underheatLimitC,
        months: during(monthsThatMatter(byMonth)),
        minOperativeC: house.minOperativeC,
        coldest: moment(house.coldestHour),
        capacityKW: design.heating.capacityKW,
        flatOut: runsFlatOut(context) ? 'yes' : 'no',
        stove: stoveOf(context) === null ? 'no' : 'yes',
      };
    },
    says: (f, { words, worst }) =>
      `${worst('cold').atStart} ${worst('cold').verb('are', 'is')} below ${words.temperature(f.limitC)} for ${hours(f.hours)} a year, mostly ${f.months}. ` +
      `The coldest hour is ${words.temperature(f.minOperativeC, 1)}, on ${f.coldest}. ` +
      (f.capacityKW === 0
        ? 'There is no back-up heat in this design. Insulation, night covers on the glass and a small heater are the cure, in that order.'
        : f.heated === 'no'
          ? 'No heater stands in it. A door kept open by day and night, a grille or a small fan brings it warmth from the next room; a wide opening brings more.'
          : f.stove === 'yes'
            ? 'Nobody feeds the stove by night or while they are away. More insulation, covers on the glass at night and mass in the rooms carry them through; a small heater that needs no hand guards the pipes.'
            : f.flatOut === 'yes'
              ? `The heater runs flat out then, at ${words.power(1000 * f.capacityKW)}. Insulate more or cover the glass at night before you buy a bigger one.`
              : 'The heater could give more: it is the set-point at night that lets the rooms cool.'),
  }),
  finding({
    id: 'cool-rooms',
    severity: 'note',
    applies: ({ design }) => design.heating.dayC < WHO_WINTER_MINIMUM_C,
    figures: ({ design }) => ({
      dayC: design.heating.dayC,
      healthyC: WHO_WINTER_MINIMUM_C,
      source: 'World Health Organization, housing and health guidelines (2018)',
    }),
    says: (f, { words }) =>
      `The rooms are heated to ${words.temperature(f.dayC)} by day. The World Health Organization advises at least ${words.temperature(f.healthyC)} in winter, and more for the old, the sick and small children.`,
  }),
  finding({
    id: 'heat-needed',
    severity: 'note',
    applies: (context) => heatPerFloor(context) > LOW_DEMAND_KWH_PER_M2,
    figures: (context) => ({
      energyKWh: context.outcome.heating.energyKWh,
      peakW: context.outcome.heating.peakW,
      kWhPerM2: heatPerFloor(context),
      lowKWhPerM2: LOW_DEMAND_KWH_PER_M2,
      source: 'the low mark: common practice, no source',
    }),
    says: (f, { words, units }) =>
      `The sun does not carry this house alone. It needs ${words.energy(f.energyKWh)} of back-up heat a year, and up to ${words.power(f.peakW)} at once. ` +
      `That is ${words.energyPerArea(f.kWhPerM2)} for each ${isUs(units) ? 'square foot' : 'square metre'} of floor; good low-energy houses stay under ${words.energyPerArea(f.lowKWhPerM2)}.`,
  }),
  finding({
    id: 'little-heat-needed',
    severity: 'good',
    // Little heat is no feat in a house that gets too little air.
    applies: (context) =>
      heatPerFloor(context) <= LOW_DEMAND_KWH_PER_M2 &&
      context.house.underheatedHours <= calmHours() &&
      context.house.freshAir.staleAirHours <= FEW_STALE_HOURS &&
      context.house.freshAir.belowVentilationHours <= MOST_OF_THE_YEAR,
    figures: (context) => ({
      energyKWh: context.outcome.heating.energyKWh,
      peakW: context.outcome.heating.peakW,
      kWhPerM2: heatPerFloor(context),
      lowKWhPerM2: LOW_DEMAND_KWH_PER_M2,
      minOperativeC: context.house.minOperativeC,
      source: 'the low mark: common practice, no source',
    }),
    says: (f, { words, design, units }) =>
      f.energyKWh < 5
        ? `The house needs no back-up heat in ${design.hotter === undefined ? 'a typical' : 'this hotter'} year. Its coldest hour is ${words.temperature(f.minOperativeC, 1)}.`
        : `The house needs little back-up heat: ${words.energy(f.energyKWh)} a year, and up to ${words.power(f.peakW)} at once. That is ${words.energyPerArea(f.kWhPerM2)} for each ${isUs(units) ? 'square foot' : 'square metre'} of floor; good low-energy houses stay under ${words.energyPerArea(f.lowKWhPerM2)}. The coldest hour is ${words.temperature(f.minOperativeC, 1)}.`,
  }),
];
