// Dew point from the relative humidity a file gives. Weather files count humidity over water at any temperature.
import { dewPointFromVapourPressure, saturationPressure } from '../../physics/moist-air.ts';

/** Drier than this is read as this: such air has no dew point worth a number [%]. */
const DRIEST = 1;

/** Lowest vapour pressure that still has a dew point in the formula's range [Pa]. */
const LEAST_VAPOUR = 0.01;

/**
 * Dew point over water.
 *
 * @param dryC air temperature [°C]; outside −90…60 there is no answer
 * @param humidityPercent 0…100; above 100 is read as 100
 * @returns [°C], never above dryC; NaN where either is missing or impossible
 */
export function dewPointFromHumidity(dryC: number, humidityPercent: number): number {
  if (!(dryC >= -90 && dryC <= 60) || Number.isNaN(humidityPercent)) return Number.NaN;
  const share = Math.min(Math.max(humidityPercent, DRIEST), 100) / 100;
  return Math.min(dewPointFromVapourPressure(Math.max(share * saturationPressure(dryC), LEAST_VAPOUR)), dryC);
}
