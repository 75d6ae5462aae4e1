// Firewood: heat by moisture, weight and stacked volume by kind. Water as a share of the wet mass in; kWh/kg, kg and m³ out.
// Net heat (lower heating value): water leaves by the flue as vapour.

import { clamp01 } from './clamp.ts';
import { requireRange } from './require-range.ts';

/** Heat that water in wet wood takes to boil and leave [kWh/kg of water]. Standard form, memory, high confidence. */
const WATER_KWH_PER_KG = 0.68;
/** Moisture at which stacks are tabled, and above which wood swells no further, wet basis. */
const TABLED_MOISTURE = 0.15;
const SWOLLEN_MOISTURE = 0.3;
/**
 * A stacked cubic metre holds this much less dry wood at 30 % water than at 15 %: fitted to the five kinds of which the
 * table gives both (0.945 to 0.951 of it).
 */
const SWELLS = 0.052;
/** 128 cubic feet stacked, by definition [m³]. */
export const CORD_M3 = 3.625;

/** A kind of firewood: a stere (stacked m³ of one-metre logs) at 15 % water. Austrian biomass table, read. */
export interface Wood {
  readonly id: string;
  readonly words: string;
  readonly kgPerStere: number;
  readonly kWhPerStere: number;
}

export const WOODS = [
  { id: 'beech', words: 'beech', kgPerStere: 435, kWhPerStere: 1800 },
  { id: 'oak', words: 'oak or ash', kgPerStere: 429, kWhPerStere: 1760 },
  { id: 'birch', words: 'birch', kgPerStere: 391, kWhPerStere: 1570 },
  { id: 'larch', words: 'larch', kgPerStere: 370, kWhPerStere: 1580 },
  { id: 'pine', words: 'pine', kgPerStere: 360, kWhPerStere: 1550 },
  { id: 'spruce', words: 'spruce', kgPerStere: 293, kWhPerStere: 1310 },
  { id: 'poplar', words: 'poplar or aspen', kgPerStere: 256, kWhPerStere: 1020 },
] as const satisfies readonly Wood[];

export type WoodId = (typeof WOODS)[number]['id'];

/** A kind of wood by its id. */
export function woodById(id: WoodId): Wood {
  return WOODS.find((wood) => wood.id === id)!;
}

/**
 * Net heat of wood.
 *
 * @param dryKWhPerKg of bone-dry wood [kWh/kg]; about 5.0 hardwood, 5.2 softwood
 * @param moisture water as a share of the wet mass, 0…0.6
 * @returns [kWh/kg of wet wood]; beech and spruce within 0.01 of the table at 30 %
 * Source: standard form H = (H₀ (100 − w) − 0.68 w)/100, memory, confirmed by the table of WOODS.
 */
export function woodHeat(dryKWhPerKg: number, moisture: number): number {
  requireRange('dryKWhPerKg', dryKWhPerKg, 0, 10, 'kWh/kg');
  requireRange('moisture', moisture, 0, 0.6, '');
  return dryKWhPerKg * (1 - moisture) - WATER_KWH_PER_KG * moisture;
}

/** Bone-dry heat of a kind of wood, from its row of the table [kWh/kg]. */
export function dryHeatOf({ kgPerStere, kWhPerStere }: Wood): number {
  return (kWhPerStere / kgPerStere + WATER_KWH_PER_KG * TABLED_MOISTURE) / (1 - TABLED_MOISTURE);
}

/**
 * Weight of a stacked cubic metre.
 *
 * @param moisture water as a share of the wet mass, 0…0.6
 * @returns [kg]; heat of it within 0.8 % of the table at 30 %, which is rounded to ten kWh
 * Source: dry matter of the table at 15 %, less what the wood swells.
 */
export function stackedKgPerM3(wood: Wood, moisture: number): number {
  requireRange('moisture', moisture, 0, 0.6, '');
  const swollen = clamp01((moisture - TABLED_MOISTURE) / (SWOLLEN_MOISTURE - TABLED_MOISTURE));
  return (wood.kgPerStere * (1 - TABLED_MOISTURE) * (1 - SWELLS * swollen)) / (1 - moisture);
}
