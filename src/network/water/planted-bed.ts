// A planted bed for an hour of the water balance: canopy by Penman–Monteith under glass as a line in the vapour
// deficit, soil by what light drives or open water by the deficit. Light on the floor, air and vapour in; watts and
// kilograms a second, constant and per pascal, out. Formulas: src/physics/transpiration.ts, water-surface.ts.

import type { Model } from '../../model/model.ts';
import { LATENT_HEAT } from '../../physics/constants.ts';
import { saturationPressureUnchecked } from '../../physics/moist-air.ts';
import {
  canopyConstant,
  canopyPerPascal,
  canopyRadiation,
  leafResistance,
  priestleyTaylor,
} from '../../physics/transpiration.ts';
import { MULCHED_BED, openWaterEvaporation, UNDISTURBED_WATER } from '../../physics/water-surface.ts';

type Planting = NonNullable<Model['zones'][number]['planting']>;

/** A planted bed for an hour: what it gives in full air, and more by the pascal of deficit. */
export interface Bed {
  readonly planting: Planting;
  /** of the light on the floor: taken up by the canopy, and by the soil below it [–] */
  readonly canopyShare: number;
  readonly soilShare: number;
  /** canopy by Penman–Monteith under glass [W], [W/Pa] */
  plantsW: number;
  plantsPerPa: number;
  /** soil by its cover [kg/s], open water [kg/(s·Pa)] */
  soil: number;
  soilPerPa: number;
}

/** A bed that gives nothing yet. */
export function bedOf(planting: Planting): Bed {
  const { leafAreaIndex, albedo, soil } = planting;
  const canopyShare = canopyRadiation(1, leafAreaIndex, albedo);
  const cover = soil === 'open-water' ? 0 : soil === 'mulched' ? MULCHED_BED : 1;
  return {
    planting,
    canopyShare,
    soilShare: cover * (1 - albedo - canopyShare),
    plantsW: 0,
    plantsPerPa: 0,
    soil: 0,
    soilPerPa: 0,
  };
}

/**
 * Make a bed ready for an hour, in place, so that nothing is allocated in the run.
 *
 * @param tempC air of the zone [°C], −45…60; frozen beds give nothing
 * @param vapourPa vapour pressure of the zone's air [Pa], which sets the stomata
 * @param floorLight light on the zone's floor [W/m²]
 * @param pressurePa of the air [Pa]
 */
export function readyBed(
  bed: Bed,
  tempC: number,
  vapourPa: number,
  floorLight: number,
  pressurePa: number,
): void {
  const { bedM2, leafAreaIndex, boundaryResistance, soil } = bed.planting;
  bed.plantsW = 0;
  bed.plantsPerPa = 0;
  bed.soil = 0;
  bed.soilPerPa = 0;
  if (tempC <= 0) return;
  if (leafAreaIndex >= 0.05) {
    const deficit = Math.max(0, saturationPressureUnchecked(tempC) - vapourPa);
    const net = bed.canopyShare * floorLight;
    const leaf = leafResistance(net, leafAreaIndex, deficit);
    bed.plantsPerPa = bedM2 * canopyPerPascal(tempC, leafAreaIndex, boundaryResistance, leaf, pressurePa);
    if (net > 0) bed.plantsW = bedM2 * canopyConstant(tempC, net, boundaryResistance, leaf, pressurePa);
  }
  if (soil === 'open-water') {
    bed.soilPerPa = (bedM2 * openWaterEvaporation(1, 0, 0, UNDISTURBED_WATER)) / 1000;
  } else if (floorLight > 0) {
    const lightW = bedM2 * bed.soilShare * floorLight;
    bed.soil = Math.max(0, priestleyTaylor(tempC, lightW)) / LATENT_HEAT;
  }
}
