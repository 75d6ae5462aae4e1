// How hot damp heat feels in the shade, and when it is dangerous. In: air temperature and relative humidity (fraction).
// Out: heat index and its band of danger. Method: the regression of the US National Weather Service with its published
// low and high humidity corrections. It is for the shade and light wind; full sun adds up to 8 K. A warning, not medical advice.
import { requireRange } from './require-range.ts';

export type HeatBand = 'none' | 'caution' | 'extreme caution' | 'danger' | 'extreme danger';

const EXTREME_CAUTION_F = 90;

/** Lower ends of the bands in °F; the service also prints an older set that splits at 105 and 130 °F. */
const BAND_STARTS_F: readonly (readonly [number, HeatBand])[] = [
  [125, 'extreme danger'],
  [103, 'danger'],
  [EXTREME_CAUTION_F, 'extreme caution'],
  [80, 'caution'],
];

/** Where "extreme caution" begins [°C]. */
export const EXTREME_CAUTION_C = (EXTREME_CAUTION_F - 32) / 1.8;
/** The service's chart ends near 137 °F [°C]; beyond it the regression runs away. */
export const HEAT_INDEX_CHART_END_C = (137 - 32) / 1.8;

/**
 * Heat index.
 *
 * Below 80 °F a straight-line form stands in: the mean of T and 0.5·(T + 61 + 1.2·(T − 68) + 0.094·R), in °F and %;
 * at 40 °F and below damp heat has no meaning and the air temperature itself is returned.
 *
 * @param airTempC in the shade [°C]; −50…60
 * @param relativeHumidity [–]; 0…1
 * @returns heat index [°C]
 * Error: the regression fits its table within 1.3 °F.
 * Source: US National Weather Service, heat index equation; the regression was read, its low-end form and humidity
 *   corrections are from memory, high confidence.
 */
export function heatIndex(airTempC: number, relativeHumidity: number): number {
  requireRange('airTempC', airTempC, -50, 60, '°C');
  requireRange('relativeHumidity', relativeHumidity, 0, 1, '');
  const t = airTempC * 1.8 + 32;
  if (t <= 40) return airTempC;
  const r = 100 * relativeHumidity;
  const simple = 0.5 * (t + 0.5 * (t + 61 + 1.2 * (t - 68) + 0.094 * r));
  return ((simple < 80 ? simple : regression(t, r) + humidityCorrection(t, r)) - 32) / 1.8;
}

/**
 * Band of a heat index. The service's table works in whole °F and leaves the numbers between bands open; here a band
 * begins at its first number.
 *
 * @param heatIndexC from `heatIndex` [°C]; −60…300
 */
export function heatBand(heatIndexC: number): HeatBand {
  requireRange('heatIndexC', heatIndexC, -60, 300, '°C');
  const fahrenheit = heatIndexC * 1.8 + 32;
  return BAND_STARTS_F.find(([start]) => fahrenheit >= start)?.[1] ?? 'none';
}

/** T in °F, R in %; result in °F. */
function regression(t: number, r: number): number {
  return (
    -42.379 +
    2.04901523 * t +
    10.14333127 * r -
    0.22475541 * t * r -
    6.83783e-3 * t * t -
    5.481717e-2 * r * r +
    1.22874e-3 * t * t * r +
    8.5282e-4 * t * r * r -
    1.99e-6 * t * t * r * r
  );
}

/** °F: dry air below 13 % feels cooler, damp air above 85 % and below 87 °F warmer than the regression says. */
function humidityCorrection(t: number, r: number): number {
  if (r < 13 && t >= 80 && t <= 112) return (-(13 - r) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17);
  if (r > 85 && t >= 80 && t <= 87) return ((r - 85) / 10) * ((87 - t) / 5);
  return 0;
}
