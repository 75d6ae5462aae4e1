// What a hot upright surface gives a room by radiation and by the air it stirs: temperatures in, W/m² and a share out.

import { STEFAN_BOLTZMANN, ZERO_CELSIUS_K } from './constants.ts';
import { power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** Turbulent free convection on upright surfaces: 1.31 ΔT^⅓ [W/(m²K)]; ASHRAE Fundamentals, memory, high confidence. */
const CONVECTION = 1.31;

/**
 * Heat of a hot upright surface, and how much of it is radiation.
 *
 * @param surfaceC a kelvin above the room, to 1000 °C
 * @param roomC air and the surfaces around, −50…60 °C
 * @param emissivity 0…1
 * @returns flux [W/m²]; radiant share, 0…1
 * Source: 1.31 ΔT^⅓ and ε σ (T⁴ − T_room⁴); trade figures for a plate at 204 °C, 1200 Btu/h a square foot and 65 %.
 */
export function hotSurface(
  surfaceC: number,
  roomC: number,
  emissivity: number,
): { readonly flux: number; readonly radiantShare: number } {
  requireRange('roomC', roomC, -50, 60, '°C');
  requireRange('surfaceC', surfaceC, roomC + 1, 1000, '°C');
  requireRange('emissivity', emissivity, 0, 1, '');
  const overK = surfaceC - roomC;
  const byAir = CONVECTION * power(overK, 4 / 3);
  const radiant =
    emissivity * STEFAN_BOLTZMANN * (power(surfaceC + ZERO_CELSIUS_K, 4) - power(roomC + ZERO_CELSIUS_K, 4));
  return { flux: byAir + radiant, radiantShare: radiant / (byAir + radiant) };
}
