// Whether a room overheats by the tests in use. In: operative temperature of 8760 hours, outdoor running mean of 365 days,
// who is there when. Out: each criterion's number, its limit and the verdict. Sources: CIBSE TM52 (2013, read in its
// institution's journal), TM59 (2017, from memory high confidence), Guide A (2006, same), and certification practice for
// low-energy houses. Hour 0 of an array is 0 to 1 o'clock on 1 January; the year has 365 days.
import { requireRange } from './require-range.ts';

const HOURS = 8760;
const DAYS = 365;

/** First day and number of days of the months judged: May to September, November to March south of the equator (own rule). */
const NORTHERN_SEASON = { firstDay: 120, days: 153 };
const SOUTHERN_SEASON = { firstDay: 304, days: 151 };

/** The months judged, as days of the year; the southern ones run over new year. */
export function summerDays(latitudeDeg: number): { readonly firstDay: number; readonly days: number } {
  return latitudeDeg < 0 ? SOUTHERN_SEASON : NORTHERN_SEASON;
}

/** TM52: share of occupied hours, degree-weighted hours in a day, K above the limit. */
export const TM52_LIMITS = { hourShare: 0.03, dailyWeight: 6, excessK: 4 } as const;

/** TM59 for bedrooms: 26 °C from 22 to 7 o'clock, in no more than 1 % of the year's 3285 such hours. */
export const TM59_NIGHT = { limitC: 26, nightHours: 3285, share: 0.01 } as const;

/** TM59 for homes without openable windows enough: 26 °C in at most 3 % of occupied hours. */
export const TM59_MECHANICAL = { limitC: 26, share: 0.03 } as const;

/** CIBSE Guide A (2006): at most 1 % of occupied hours above. */
export const GUIDE_A = { livingC: 28, bedroomC: 26, share: 0.01 } as const;

/** Low-energy-house certification practice: at most 10 % of all hours above 25 °C. */
export const PRACTICE_LIMIT_C = 25;

/** Least indoor temperature for health in the cold season of temperate and cold climates, °C: WHO 2018. */
export const WHO_WINTER_MINIMUM_C = 18;

/** TM52 limit for normal expectation, operative: 0.33·Trm + 21.8 [°C]. Every time step: no guards. */
export function tm52Limit(runningMeanC: number): number {
  return 0.33 * runningMeanC + 21.8;
}

/** Excess of the operative temperature over the limit, both [°C], in whole K, halves up; negative below it. Every time step: no guards. */
export function tm52Excess(operativeC: number, limitC: number): number {
  return Math.round(operativeC - limitC);
}

/** Degree-weighted exceedance of a day: the sum of the positive excesses of its occupied hours [K·h]. */
export function tm52DailyWeight(excessesK: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < excessesK.length; i++) sum += Math.max(excessesK[i]!, 0);
  return sum;
}

/** The three criteria of TM52, what they came to and whether each holds; any two failed is overheating. */
export interface Tm52Verdict {
  readonly occupiedHours: number;
  /** occupied hours of the season at 1 K or more over the limit */
  readonly hoursOver: number;
  /** criterion 1: hoursOver / occupiedHours [–] */
  readonly hourShare: number;
  /** criterion 2: worst day's weight [K·h] */
  readonly worstDayWeight: number;
  /** criterion 3: largest excess in whole K; 0 when the limit is never reached */
  readonly worstExcessK: number;
  readonly failed: readonly (1 | 2 | 3)[];
  readonly overheats: boolean;
}

/**
 * TM52 over a year.
 *
 * @param operativeC operative temperature by hour [°C]; 8760
 * @param runningMeansC outdoor running mean by day [°C]; 365
 * @param occupied 0 away, anything else at home, by hour; 8760
 * @param latitudeDeg of the site, north positive [°]; chooses the season
 * Source: CIBSE TM52 (2013). The southern season is our own rule.
 */
export function judgeTm52(
  operativeC: ArrayLike<number>,
  runningMeansC: ArrayLike<number>,
  occupied: ArrayLike<number>,
  latitudeDeg: number,
): Tm52Verdict {
  requireRange('operativeC.length', operativeC.length, HOURS, HOURS, '');
  requireRange('runningMeansC.length', runningMeansC.length, DAYS, DAYS, '');
  requireRange('occupied.length', occupied.length, HOURS, HOURS, '');
  requireRange('latitudeDeg', latitudeDeg, -90, 90, '°');
  const season = summerDays(latitudeDeg);
  let [occupiedHours, hoursOver, worstDayWeight, worstExcessK] = [0, 0, 0, 0];
  for (let i = 0; i < season.days; i++) {
    const day = (season.firstDay + i) % DAYS;
    const limit = tm52Limit(runningMeansC[day]!);
    const excesses: number[] = [];
    for (let hour = 24 * day; hour < 24 * (day + 1); hour++) {
      if (occupied[hour] !== 0) excesses.push(tm52Excess(operativeC[hour]!, limit));
    }
    occupiedHours += excesses.length;
    hoursOver += excesses.filter((excess) => excess >= 1).length;
    worstDayWeight = Math.max(worstDayWeight, tm52DailyWeight(excesses));
    worstExcessK = Math.max(worstExcessK, ...excesses);
  }
  const hourShare = occupiedHours > 0 ? hoursOver / occupiedHours : 0;
  const broken = [
    hourShare > TM52_LIMITS.hourShare,
    worstDayWeight > TM52_LIMITS.dailyWeight,
    worstExcessK > TM52_LIMITS.excessK,
  ];
  const failed = ([1, 2, 3] as const).filter((criterion) => broken[criterion - 1]);
  return {
    occupiedHours,
    hoursOver,
    hourShare,
    worstDayWeight,
    worstExcessK,
    failed,
    overheats: failed.length >= 2,
  };
}

/** Hours above TM59's 26 °C between 22 and 7 o'clock; operativeC by hour [°C], 8760. */
export function tm59NightHours(operativeC: ArrayLike<number>): number {
  requireRange('operativeC.length', operativeC.length, HOURS, HOURS, '');
  let hours = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const ofDay = hour % 24;
    if ((ofDay >= 22 || ofDay < 7) && operativeC[hour]! > TM59_NIGHT.limitC) hours += 1;
  }
  return hours;
}

/** Whether a bedroom with that many warm night hours passes TM59: at most 1 % of 3285, so 32 pass and 33 fail. */
export function passesTm59Night(warmNightHours: number): boolean {
  requireRange('warmNightHours', warmNightHours, 0, TM59_NIGHT.nightHours, 'h');
  return warmNightHours <= TM59_NIGHT.share * TM59_NIGHT.nightHours;
}
