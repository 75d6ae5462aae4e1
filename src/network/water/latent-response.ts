// Latent heat of a tried step, and how it would answer a change of the zone's own temperature: the moisture balance's
// humidity ratios in; watts, and watts per kelvin, on each zone's air out. Beds take heat with what they give off, more of
// it in warmer air, which can hold more; water that drains from saturated air gives heat back, less of it in warmer air.
// The response is a slope for a search and no more: the zones' own exchange is in it, that of other zones is not.
// Slope of saturation: Magnus form, WMO No. 8; constants from memory, high confidence.

import { LATENT_HEAT, VAPOUR_MASS_RATIO } from '../../physics/constants.ts';
import type { MoistureInputs, MoistureState } from './moisture-state.ts';
import { drainedInStep } from './saturated-air.ts';

const MAGNUS_C = 237.3;
const MAGNUS_SLOPE = 4098;

/** Into airW and airWPerK, from the humidity ratios that a tried step ends at. */
export function respondByLatentHeat(
  { zone }: MoistureState,
  inputs: MoistureInputs,
  ratio: Float64Array,
  zones: number,
): void {
  const { airW, airWPerK, isPlanted, heldAtSaturation, saturationRatio, saturationPa, pressurePerRatio } =
    zone;
  const { plantsKg, plantsPerPa, soilKg, soilPerPa, bedTakesDeficit, bufferExchange, freeExchange } = zone;
  const { zoneC, stepS } = inputs;
  const { pressurePa } = inputs.weather;
  for (let z = 0; z < zones; z++) {
    const isHeld = heldAtSaturation[z] === 1;
    airW[z] = 0;
    airWPerK[z] = 0;
    if (isPlanted[z] === 0 && !isHeld && ratio[z]! <= saturationRatio[z]!) continue;
    const saturation = saturationPa[z]!;
    const vapour = ratio[z]! * pressurePerRatio[z]!;
    const magnus = zoneC[z]! + MAGNUS_C;
    const saturationPerK = (saturation * MAGNUS_SLOPE) / (magnus * magnus);
    if (isPlanted[z] === 1) {
      const perPa = bedTakesDeficit[z] === 1 ? plantsPerPa[z]! + soilPerPa[z]! : 0;
      const givenKg = plantsKg[z]! + soilKg[z]! + perPa * (saturation - vapour);
      // The air's vapour follows: by what the bed gives more, and what surfaces hold less of.
      const buffer = (bufferExchange[z]! * vapour) / (saturation * saturation);
      const follows = isHeld ? 1 : ((perPa + buffer) * pressurePerRatio[z]!) / freeExchange[z]!;
      airW[z] = -LATENT_HEAT * givenKg;
      airWPerK[z] = -LATENT_HEAT * perPa * saturationPerK * Math.max(0, 1 - follows);
    }
    airW[z]! += (LATENT_HEAT * drainedInStep(zone, z, ratio[z]!)) / stepS;
    if (isHeld) {
      const dry = pressurePa - saturation;
      const ratioPerK = (VAPOUR_MASS_RATIO * pressurePa * saturationPerK) / (dry * dry);
      airWPerK[z]! -= LATENT_HEAT * freeExchange[z]! * ratioPerK;
    }
  }
}
