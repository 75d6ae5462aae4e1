// What people find comfortable once the weather has been warm or cool for a while. In: daily mean outdoor temperatures.
// Out: running mean, comfort temperature and its upper limits, all operative. Method: EN 16798-1:2019, for
// rooms without heating or cooling running, whose people open windows and dress as they like. From memory, high confidence.
import { requireRange } from './require-range.ts';

/** Weight of yesterday's running mean [–]: EN 16798-1. */
const RUNNING_MEAN_ALPHA = 0.8;

/** Running means for which EN 16798-1 gives upper limits, °C. */
export const EN_RUNNING_MEAN_RANGE = { minC: 10, maxC: 30 } as const;

/** I high expectation (the sick, the very old), II normal, III moderate. */
export type ComfortCategory = 'I' | 'II' | 'III';

const SEVEN_DAY_WEIGHTS = [1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2];

/** EN 16798-1:2019, annex B: K above the comfort temperature. */
const EN_ABOVE_K: Readonly<Record<ComfortCategory, number>> = { I: 2, II: 3, III: 4 };

/**
 * Running mean of outdoor temperature from the seven days before.
 *
 * @param previousDaysC daily means, yesterday first [°C]; at least seven, the first seven count
 * @returns (T₁ + 0.8 T₂ + 0.6 T₃ + 0.5 T₄ + 0.4 T₅ + 0.3 T₆ + 0.2 T₇) / 3.8 [°C]
 * Source: EN 16798-1:2019, annex B.
 */
export function runningMeanStart(previousDaysC: ArrayLike<number>): number {
  requireRange('previousDaysC.length', previousDaysC.length, 7, Number.MAX_SAFE_INTEGER, '');
  return SEVEN_DAY_WEIGHTS.reduce((sum, weight, i) => sum + weight * previousDaysC[i]!, 0) / 3.8;
}

/** Today's running mean from yesterday's running mean and yesterday's daily mean [°C]: (1 − α)·T + α·Trm. Every time step: no guards. */
export function runningMeanNext(runningMeanC: number, dailyMeanC: number, alpha: number): number {
  return (1 - alpha) * dailyMeanC + alpha * runningMeanC;
}

/**
 * Running mean of every day of a year that follows itself: the days before 1 January are the last ones of the year.
 *
 * @param dailyMeansC daily mean outdoor temperatures [°C]; at least seven
 * @returns running mean by day [°C]; a day's own mean does not enter its value
 */
export function runningMeans(dailyMeansC: ArrayLike<number>): Float64Array {
  const days = dailyMeansC.length;
  requireRange('dailyMeansC.length', days, 7, 100000, '');
  const before = SEVEN_DAY_WEIGHTS.map((_, i) => dailyMeansC[days - 1 - i]!);
  const means = new Float64Array(days);
  means[0] = runningMeanStart(before);
  for (let day = 1; day < days; day++) {
    means[day] = runningMeanNext(means[day - 1]!, dailyMeansC[day - 1]!, RUNNING_MEAN_ALPHA);
  }
  return means;
}

/** Comfort temperature of EN 16798-1: 0.33·Trm + 18.8 [°C]. Every time step: no guards. */
export function enComfortTemperature(runningMeanC: number): number {
  return 0.33 * runningMeanC + 18.8;
}

/**
 * Upper limit of EN 16798-1. Every time step: no guards. The caller holds the running mean inside
 * `EN_RUNNING_MEAN_RANGE` or says that it went outside.
 *
 * @param runningMeanC [°C]
 * @param category I, II or III
 * @returns operative temperature [°C]
 */
export function enUpperLimit(runningMeanC: number, category: ComfortCategory): number {
  return enComfortTemperature(runningMeanC) + EN_ABOVE_K[category];
}
