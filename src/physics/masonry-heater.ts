// Size of a masonry heater: mean output and hours between fires in, wood of a fire out; its masonry by that wood.

import { requireRange } from './require-range.ts';

/** Heat to the room of a kilogram of wood, at an efficiency of 78 % [kWh/kg]. EN 15544, memory, confirmed by guild data. */
const KWH_PER_KG = 3.25;
/** The smallest fire, of the largest. EN 15544. */
export const LEAST_FIRE = 0.5;
/** Inner masonry of a heater for each kilogram of a full fire [kg]: usual of guild heaters, 50 at the least; read. */
const MASONRY_KG_PER_KG = 70;

/**
 * Wood of a full fire.
 *
 * @param nominalKW mean output between fires [kW]; 0…1000
 * @param hours between fires, 8…24
 * @returns [kg]; guild data for 12 h: 10 kg for 2.7 kW, 40 kg for 11 kW
 * Source: EN 15544, m = P t/3.25.
 */
export function fireKg(nominalKW: number, hours: number): number {
  requireRange('nominalKW', nominalKW, 0, 1000, 'kW');
  requireRange('hours', hours, 8, 24, 'h');
  return (nominalKW * hours) / KWH_PER_KG;
}

/**
 * Inner masonry of a heater.
 *
 * @param woodKg of a full fire [kg]; 0 or more
 * @returns [kg], without its footing
 * Source: guild practice, 70 kg for each kg of wood.
 */
export function masonryKg(woodKg: number): number {
  requireRange('woodKg', woodKg, 0, 1e6, 'kg');
  return MASONRY_KG_PER_KG * woodKg;
}
