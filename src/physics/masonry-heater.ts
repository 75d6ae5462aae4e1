// Size of a masonry heater: mean output and hours between fires in, wood of a fire out.

import { requireRange } from './require-range.ts';

/** Heat to the room of a kilogram of wood, at an efficiency of 78 % [kWh/kg]. EN 15544, memory, confirmed by guild data. */
const KWH_PER_KG = 3.25;
/** The smallest fire, of the largest. EN 15544. */
export const LEAST_FIRE = 0.5;

/**
 * Wood of a full fire.
 *
 * @param nominalKW mean output between fires [kW]; 0 or more
 * @param hours between fires, 8…24
 * @returns [kg]; guild data for 12 h: 10 kg for 2.7 kW, 40 kg for 11 kW
 * Source: EN 15544, m = P t/3.25.
 */
export function fireKg(nominalKW: number, hours: number): number {
  requireRange('nominalKW', nominalKW, 0, 1000, 'kW');
  requireRange('hours', hours, 8, 24, 'h');
  return (nominalKW * hours) / KWH_PER_KG;
}
