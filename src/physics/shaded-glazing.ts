// Solar heat gain of glazing behind, before or around a blind: glazing and blind by their normal values in; the total
// solar heat gain coefficient and the light that passes directly out. The blind is one layer of cloth, or slats taken
// for one, drawn over the whole glass.
// Source: ISO 52022-1:2017, simplified method (EN 13363-1 before it): formulas and conductances G1, G2, G3 from memory,
// high confidence; the inside formula is confirmed by a published data sheet (tests/published/iso-52022.test.ts).
// Made for glazing of g 0.15…0.85 and blinds of τ 0…0.5 and ρ 0.1…0.8 at normal incidence, to be safe against heat:
// the standard states an error of −0.02…+0.10. Beyond those ranges the same formulas, with no stated error.

import { requireRange } from './require-range.ts';

/** Where a blind hangs; between means in the gap of a glazing of two sheets or more. */
export type BlindPlace = 'outside' | 'between' | 'inside';

/** Solar values of the drawn blind at normal incidence, 0…1; what is left of 1 it takes up. */
export interface BlindOptics {
  readonly transmittance: number;
  readonly reflectance: number;
}

/** Conductances from the blind to air and glass by place [W/(m²K)]. */
const G1_OUTSIDE = 5;
const G2_OUTSIDE = 10;
const G2_INSIDE = 30;
const G3_BETWEEN = 3;

/**
 * Total solar heat gain coefficient of glazing with a drawn blind.
 *
 * @param place of the blind
 * @param solarHeatGain g of the glazing alone, 0…1
 * @param uValue of the glazing alone [W/(m²K)]; > 0
 * @param blind its solar values
 * @returns g of both together, 0…g
 */
export function shadedSolarHeatGain(
  place: BlindPlace,
  solarHeatGain: number,
  uValue: number,
  blind: BlindOptics,
): number {
  requireRange('solarHeatGain', solarHeatGain, 0, 1, '');
  requireRange('uValue', uValue, 0.05, 10, 'W/(m²K)');
  const absorbed = absorptanceOf(blind);
  const { transmittance, reflectance } = blind;
  const g = solarHeatGain;
  switch (place) {
    case 'outside': {
      const path = 1 / (1 / uValue + 1 / G1_OUTSIDE + 1 / G2_OUTSIDE);
      const total =
        transmittance * g + (absorbed * path) / G2_OUTSIDE + (transmittance * (1 - g) * path) / G1_OUTSIDE;
      return Math.min(g, total);
    }
    case 'inside': {
      const path = 1 / (1 / uValue + 1 / G2_INSIDE);
      return g * (1 - g * reflectance - (absorbed * path) / G2_INSIDE);
    }
    case 'between': {
      const path = 1 / (1 / uValue + 1 / G3_BETWEEN);
      const total = g * transmittance + (g * (absorbed + (1 - g) * reflectance) * path) / G3_BETWEEN;
      return Math.min(g, total);
    }
  }
}

/**
 * Light that passes glass and drawn blind directly, reflections between the two summed.
 *
 * @param glassTransmittance of the glazing alone, 0…1
 * @param glassReflectance of its face to the blind, 0…1
 * @param blind its solar values
 */
export function shadedTransmittance(
  glassTransmittance: number,
  glassReflectance: number,
  blind: BlindOptics,
): number {
  requireRange('glassTransmittance', glassTransmittance, 0, 1, '');
  requireRange('glassReflectance', glassReflectance, 0, 1 - glassTransmittance, '');
  absorptanceOf(blind);
  return (glassTransmittance * blind.transmittance) / (1 - glassReflectance * blind.reflectance);
}

/**
 * Slats at 45° as one layer.
 *
 * @param slat solar values of a slat's own material
 * @returns those of the drawn blind, no sun straight through. Source: EN 13363-1, from memory, medium confidence.
 */
export function slatsAt45(slat: BlindOptics): BlindOptics {
  absorptanceOf(slat);
  return {
    transmittance: 0.65 * slat.transmittance + 0.15 * slat.reflectance,
    reflectance: slat.reflectance * (0.75 + 0.7 * slat.transmittance),
  };
}

function absorptanceOf({ transmittance, reflectance }: BlindOptics): number {
  requireRange('transmittance', transmittance, 0, 1, '');
  requireRange('reflectance', reflectance, 0, 1 - transmittance, '');
  return 1 - transmittance - reflectance;
}
