// Where heat and water come from and go to, month by month, in the units a person reads. The year's books in,
// rows of twelve numbers out; heat into a zone is positive.

import type { Year } from '../network/year.ts';
import { J_PER_KWH } from '../physics/constants.ts';

export interface MonthlyRow {
  readonly zone: string;
  readonly cause: string;
  /** twelve values, January first */
  readonly months: readonly number[];
  readonly year: number;
}

/**
 * Heat of each zone by cause.
 *
 * @param year one run
 * @returns rows in kWh, in the order of the year's books; gains positive, losses negative
 */
export function heatByMonth(year: Year): readonly MonthlyRow[] {
  return year.heat.map(({ zone, cause, monthJ }) =>
    rowOf(
      zone,
      cause,
      monthJ.map((joules) => joules / J_PER_KWH),
    ),
  );
}

/**
 * Water vapour released in each zone by cause.
 *
 * @param year one run
 * @returns rows in kg, in the order of the zones and their causes
 */
export function moistureByMonth(year: Year): readonly MonthlyRow[] {
  return year.zones.flatMap(({ id, moistureByCause }) =>
    moistureByCause.map(({ cause, monthKg }) => rowOf(id, cause, monthKg)),
  );
}

/** The year of a divided house with its rooms as zones beside the house they make up; any other year as it is. */
export function withRoomsApart(year: Year): Year {
  const { rooms = [], roomHeat = [] } = year;
  return { ...year, zones: [...year.zones, ...rooms], heat: [...year.heat, ...roomHeat] };
}

export interface WaterTogether {
  /** given off in rooms and sunspace over the year [kg] */
  readonly releasedKg: number;
  readonly sunspaceKg: number;
  /** that the sunspace's air brought into the rooms; negative where it took some away [kg] */
  readonly broughtKg: number;
}

/** Water of rooms and sunspace as one picture; null without a sunspace. */
export function waterTogether(year: Year): WaterTogether | null {
  const house = year.zones.find(({ id }) => id === 'house');
  const brought = house?.airWaterFrom.find(({ zone }) => zone === 'sunspace');
  if (brought === undefined) return null;
  const rows = moistureByMonth(year);
  const sumOf = (some: readonly MonthlyRow[]) => some.reduce((sum, row) => sum + row.year, 0);
  return {
    releasedKg: sumOf(rows),
    sunspaceKg: sumOf(rows.filter(({ zone }) => zone === 'sunspace')),
    broughtKg: brought.kg,
  };
}

function rowOf(zone: string, cause: string, months: readonly number[]): MonthlyRow {
  return { zone, cause, months, year: months.reduce((sum, value) => sum + value, 0) };
}
