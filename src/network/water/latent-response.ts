// Latent heat of a tried step, and how it would answer a change of the zone's own temperature: the moisture balance's
// humidity ratios in; watts, and watts per kelvin, on each zone's air out. Water that drains from saturated air gives heat
// back, less of it in warmer air. What beds take is taken from their leaves and ground (beds.ts).
// The response is a slope for a search and no more: the zones' own exchange is in it, that of other zones is not.
// Slope of saturation: Magnus form, WMO No. 8; constants from memory, high confidence.

import { LATENT_HEAT, VAPOUR_MASS_RATIO } from '../../physics/constants.ts';
import type { MoistureInputs, MoistureState } from './moisture-state.ts';
import { drainedInStep } from './saturated-air.ts';

const MAGNUS_C = 237.3;
const MAGNUS_SLOPE = 4098;

/** Into airW and airWPerK, from the humidity ratios that a tried step ends at. */
export function respondByLatentHeat({ zone }: MoistureState, inputs: MoistureInputs, zones: number): void {
  const {
    airW,
    airWPerK,
    heldAtSaturation,
    saturationRatio,
    saturationPa,
    freeExchange,
    endRatio,
    endByMean,
  } = zone;
  const { zoneC, stepS } = inputs;
  const { pressurePa } = inputs.weather;
  for (let z = 0; z < zones; z++) {
    const isHeld = heldAtSaturation[z] === 1;
    airW[z] = 0;
    airWPerK[z] = 0;
    if (!isHeld && endRatio[z]! <= saturationRatio[z]!) continue;
    airW[z]! += (LATENT_HEAT * drainedInStep(zone, z, endRatio[z]!)) / stepS;
    if (isHeld) {
      const saturation = saturationPa[z]!;
      const magnus = zoneC[z]! + MAGNUS_C;
      const saturationPerK = (saturation * MAGNUS_SLOPE) / (magnus * magnus);
      const dry = pressurePa - saturation;
      const ratioPerK = (VAPOUR_MASS_RATIO * pressurePa * saturationPerK) / (dry * dry);
      airWPerK[z]! -= (LATENT_HEAT * freeExchange[z]! * ratioPerK) / endByMean[z]!;
    }
  }
}
