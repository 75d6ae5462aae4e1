// What the back-up heat asks for in a year: fuel by its own measure, and of a stove wood, loads and days with fire. A design
// and its year in, figures out; of a design that tells no source nothing is told.

import type { Design } from '../design/design.ts';
import { efficiencyOf, type Fuel, type HeaterSource, type StoveSource } from '../design/heat-source.ts';
import type { StoveYear, Year } from '../network/year.ts';
import { KWH_PER_THERM } from '../physics/constants.ts';
import { FUEL_CONTENT } from '../physics/fuel-content.ts';
import { CORD_M3, stackedKgPerM3, woodById } from '../physics/wood-fuel.ts';

const WH_PER_KWH = 1000;
const HOURS_A_DAY = 24;

/** Fuel by its measure; null where it is not measured so. */
export interface FuelOutcome {
  readonly fuel: Fuel | 'wood';
  /** net heat of what was burnt, or electricity, and of it what went up the flue or was lost in the heater */
  readonly fuelKWh: number;
  readonly lostKWh: number;
  readonly kg: number | null;
  readonly litres: number | null;
  /** therms of gas */
  readonly therms: number | null;
  /** of wood stacked, of pellets heaped; cords are wood alone */
  readonly stackedM3: number | null;
  readonly cords: number | null;
  /** times wood was put on, most of them on one day, and days with fire; null for what no one feeds */
  readonly loads: number | null;
  readonly loadsOnBusiestDay: number | null;
  readonly daysWithFire: number | null;
}

const NOT_MEASURED = {
  kg: null,
  litres: null,
  therms: null,
  stackedM3: null,
  cords: null,
  loads: null,
  loadsOnBusiestDay: null,
  daysWithFire: null,
} as const;

/** What a design's source asked for; null where it tells none, or has no heat. */
export function fuelOf({ heating }: Design, { stoves }: Year, heatKWh: number): FuelOutcome | null {
  const { source, capacityKW } = heating;
  if (source === undefined || capacityKW <= 0) return null;
  return source.kind === 'stove' ? woodOf(source, stoves ?? []) : boughtOf(source, heatKWh);
}

function boughtOf(source: HeaterSource, heatKWh: number): FuelOutcome {
  const fuelKWh = heatKWh / efficiencyOf(source);
  const { oilKWhPerL, propaneKWhPerL, pelletsKWhPerKg, pelletsKgPerM3, gasGrossPerNet } = FUEL_CONTENT;
  const told = { ...NOT_MEASURED, fuel: source.fuel, fuelKWh, lostKWh: fuelKWh - heatKWh };
  switch (source.fuel) {
    case 'oil':
      return { ...told, litres: fuelKWh / oilKWhPerL };
    case 'propane':
      return { ...told, litres: fuelKWh / propaneKWhPerL };
    case 'gas':
      return { ...told, therms: (gasGrossPerNet * fuelKWh) / KWH_PER_THERM };
    case 'pellets': {
      const kg = fuelKWh / pelletsKWhPerKg;
      return { ...told, kg, stackedM3: kg / pelletsKgPerM3 };
    }
    case 'electric':
      return told;
  }
}

function woodOf({ wood, moisture }: StoveSource, stoves: readonly StoveYear[]): FuelOutcome {
  const sum = (columnOf: (stove: StoveYear) => Float64Array) =>
    stoves.reduce((all, stove) => all + columnOf(stove).reduce((one, value) => one + value, 0), 0);
  const kg = sum(({ loadKg }) => loadKg);
  const stackedM3 = kg / stackedKgPerM3(woodById(wood), moisture);
  const byDay = new Float64Array(366);
  const burning = new Set<number>();
  for (const { loadKg, burntW } of stoves) {
    loadKg.forEach((load, hour) => {
      const day = Math.floor(hour / HOURS_A_DAY);
      if (load > 0) byDay[day]!++;
      if (burntW[hour]! > 0) burning.add(day);
    });
  }
  return {
    ...NOT_MEASURED,
    fuel: 'wood',
    fuelKWh: sum(({ burntW }) => burntW) / WH_PER_KWH,
    lostKWh: sum(({ flueW }) => flueW) / WH_PER_KWH,
    kg,
    stackedM3,
    cords: stackedM3 / CORD_M3,
    loads: byDay.reduce((all, loads) => all + loads, 0),
    loadsOnBusiestDay: Math.max(...byDay),
    daysWithFire: burning.size,
  };
}
