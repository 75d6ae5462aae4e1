// Hours above the adaptive comfort limit. In: operative and outdoor temperature by hour. Out: hours a year.
// Source: EN 16798-1:2019 annex B, category II unless another is asked for (physics/adaptive-comfort.ts): upper limit by the exponentially
// weighted running mean of the outdoor daily means. The standard gives upper limits for running means from 10 to
// 30 °C; outside that range the limit is held at the range's end, so that winter hours are judged as on a 10 °C
// spring day. It was made for people free to open windows and to dress as they like.

import {
  type ComfortCategory,
  EN_RUNNING_MEAN_RANGE,
  enUpperLimit,
  runningMeans,
} from '../physics/adaptive-comfort.ts';
import { DAYS, dailyMeans } from './calendar.ts';

/**
 * Upper adaptive limit of every day.
 *
 * @param outdoorC outdoor air by hour [°C], 8760 hours
 * @returns operative temperature [°C], 365 days; of category II between 25.1 and 31.7
 */
export function adaptiveLimits(outdoorC: Float64Array, category: ComfortCategory = 'II'): Float64Array {
  const { minC, maxC } = EN_RUNNING_MEAN_RANGE;
  return runningMeans(dailyMeans(outdoorC)).map((mean) =>
    enUpperLimit(Math.min(Math.max(mean, minC), maxC), category),
  );
}

/**
 * Hours above that limit.
 *
 * @param operativeC operative temperature by hour [°C]
 * @param outdoorC outdoor air by hour [°C]
 * @returns hours a year, occupied or not
 */
export function adaptiveOverheatedHours(operativeC: Float64Array, outdoorC: Float64Array): number {
  const limits = adaptiveLimits(outdoorC);
  let hours = 0;
  for (let day = 0; day < DAYS; day++) {
    for (let hour = 24 * day; hour < 24 * day + 24; hour++) if (operativeC[hour]! > limits[day]!) hours++;
  }
  return hours;
}
