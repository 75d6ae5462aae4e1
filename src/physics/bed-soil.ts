// The ground of a planted bed as it dries into the air: convection over it and what covers it in; vapour it gives by the
// pascal out. Method: the air's film by the Lewis relation (surface-condensation.ts) in series with the resistance of the
// soil's surface, which is what soil gives less than a wet cloth, and with that of mulch upon it. No second stage of drying: by
// FAO-56 (from memory) a medium soil gives its first 8 to 12 mm freely and less only then, and under leaves and glass ours give
// 0.1 mm a day mulched and 0.3 bare, so that a bed watered within a month never comes to it.

import { clamp01 } from './clamp.ts';
import { AIR_HEAT_CAPACITY, GAS_CONSTANT_VAPOUR, ZERO_CELSIUS_K } from './constants.ts';
import { massTransferCoefficient } from './surface-condensation.ts';

/**
 * Surface of soil that is watered when its top begins to dry [s/m]: near 10 just watered, 100 to 300 with a dry skin,
 * thousands once the top centimetre is dry (bare-soil resistances of the 1980s and 1990s); from memory, medium confidence.
 */
const MOIST_SURFACE = 200;

/**
 * Five centimetres of straw or chips [s/m]: vapour diffuses through them at two thirds of its 2.5·10⁻⁵ m²/s in air, which
 * leaves about a fifth to a third of a bare bed's evaporation; handbooks say 0.2 to 0.4. From memory, medium confidence.
 */
const MULCH = 0.05 / (0.67 * 2.5e-5);

/** At and below this the ground is frozen through its skin and gives nothing; up to freezing by degrees [°C]. */
const FROZEN_C = -1;

/**
 * Vapour from the ground of a bed by the pascal between saturation at its surface and the air. Every hour: no guards.
 *
 * @param convection over the ground [W/(m²K)]; > 0
 * @param tempC of its surface [°C]
 * @param cover mulched or bare
 * @returns [kg/(m²·s·Pa)]
 * Source: Lewis relation; resistances as said beside them.
 */
export function soilVapour(convection: number, tempC: number, cover: 'mulched' | 'bare'): number {
  const surface = MOIST_SURFACE + (cover === 'mulched' ? MULCH : 0);
  const film = 1 / massTransferCoefficient(convection, AIR_HEAT_CAPACITY);
  const thawed = clamp01((tempC - FROZEN_C) / -FROZEN_C);
  return thawed / (GAS_CONSTANT_VAPOUR * (tempC + ZERO_CELSIUS_K) * (film + surface));
}
