// The limit of every hour, by what the design counts as too hot. In: design, the zone's hours, outdoor air, latitude. Out:
// the operative temperature above which each hour is too hot. A limit that follows the weather is held at the ends of its
// range, so that winter hours are judged as on a spring day; hours outside the criterion's months have no limit. Under
// ceiling fans the limit is higher by what moving air takes off: physics/moving-air.ts.

import type { Design } from '../design/design.ts';
import { criterionOf, type TooHotCriterion } from '../design/too-hot-criterion.ts';
import { peopleAtHome } from '../model/household.ts';
import { blankMoment, momentOf, scheduled } from '../network/hour/clock.ts';
import type { ZoneYear } from '../network/year.ts';
import { runningMeans } from '../physics/adaptive-comfort.ts';
import {
  ADAPTIVE_AIR_MS,
  coolingTable,
  MOVING_AIR_FROM_C,
  MOVING_AIR_UNTIL_C,
  STILL_AIR_MS,
} from '../physics/moving-air.ts';
import { summerDays, tm52Limit } from '../physics/overheating-criteria.ts';
import type { TypicalYear } from '../weather/typical-year.ts';
import { adaptiveLimits } from './adaptive-hours.ts';
import { DAYS, dailyMeans } from './calendar.ts';
import { ALL_HOURS, type LivedHours } from './lived-hours.ts';

/** TM52 rounds the excess to whole kelvin and counts from one: half a kelvin is the least that does. */
const TM52_COUNTS_FROM_K = 0.5;

export interface HotLimits {
  readonly criterion: TooHotCriterion;
  /** by hour [°C], 8760; Infinity where the criterion judges nothing */
  readonly limitC: Float64Array;
  /** lowest and highest limit without fans [°C]; the same where there is one temperature */
  readonly lowC: number;
  readonly highC: number;
  /** null where no fans run */
  readonly fans: FanHours | null;
}

export interface FanHours {
  readonly speedMs: number;
  /** hours they run */
  readonly hours: number;
  /** how much cooler than in still air the rooms then feel, on the mean [K] */
  readonly coolerK: number;
  /** how the worst hour feels, operative, fans counted [°C] */
  readonly hottestFeelsC: number;
}

/**
 * Limits of a zone.
 *
 * @param zone its hours: operative and air temperature, humidity
 * @param weather the year the design stood in
 * @param lived hours in which it is judged; the others have no limit. All unless said
 */
export function hotLimits(
  design: Design,
  zone: ZoneYear,
  { dryBulbC, site }: TypicalYear,
  lived: LivedHours = ALL_HOURS,
): HotLimits {
  const criterion = criterionOf(design, site.latitudeDeg);
  const daily = dailyLimits(criterion, dryBulbC, site.latitudeDeg);
  const limitC = new Float64Array(24 * DAYS);
  let [lowC, highC] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let day = 0; day < DAYS; day++) {
    const limit = daily[day]!;
    limitC.fill(limit, 24 * day, 24 * day + 24);
    if (limit === Number.POSITIVE_INFINITY) continue;
    lowC = Math.min(lowC, limit);
    highC = Math.max(highC, limit);
  }
  const fans = raiseByFans(limitC, design, zone, criterion);
  for (let hour = 0; hour < limitC.length; hour++) {
    if (!lived.counts(hour)) limitC[hour] = Number.POSITIVE_INFINITY;
  }
  return { criterion, limitC, lowC, highC, fans };
}

/** By day [°C], 365. */
function dailyLimits(
  { limit, season }: TooHotCriterion,
  outdoorC: Float64Array,
  latitudeDeg: number,
): Float64Array {
  if (limit.kind === 'fixed') return new Float64Array(DAYS).fill(limit.aboveC);
  const limits =
    limit.kind === 'tm52'
      ? runningMeans(dailyMeans(outdoorC)).map((mean) => tm52Limit(mean) + TM52_COUNTS_FROM_K)
      : adaptiveLimits(outdoorC, limit.category);
  if (season === 'year') return limits;
  const { firstDay, days } = summerDays(latitudeDeg);
  return limits.map((value, day) =>
    (day - firstDay + DAYS) % DAYS < days ? value : Number.POSITIVE_INFINITY,
  );
}

/**
 * Raise the limits of hours with fans running: somebody at home, rooms between 25 and 35 °C. Nobody turns a fan faster
 * than is pleasant, so moving air never makes a room feel cooler than 25 °C, and more warmth never feels like less.
 */
function raiseByFans(
  limitC: Float64Array,
  design: Design,
  { id, operativeC, airC, relativeHumidity }: ZoneYear,
  { limit }: TooHotCriterion,
): FanHours | null {
  const speedMs = design.comfort.airSpeedMs ?? 0;
  const people = peopleAtHome(design);
  if (id === 'sunspace' || speedMs <= STILL_AIR_MS || people === null) return null;
  const fromStill = coolingTable(speedMs, STILL_AIR_MS);
  // Limits that follow the weather hold for air that moves a little already.
  const raise = limit.kind === 'fixed' ? fromStill : coolingTable(speedMs, ADAPTIVE_AIR_MS);
  const moment = blankMoment();
  let [hours, sumK, hottestFeelsC] = [0, 0, Number.NEGATIVE_INFINITY];
  for (let hour = 0; hour < limitC.length; hour++) {
    const operative = operativeC[hour]!;
    const isOn =
      operative > MOVING_AIR_FROM_C &&
      airC[hour]! <= MOVING_AIR_UNTIL_C &&
      scheduled(people, momentOf(hour, moment)) > 0;
    const most = operative - MOVING_AIR_FROM_C;
    const coolerK = isOn ? Math.min(fromStill(operative, relativeHumidity[hour]!), most) : 0;
    hottestFeelsC = Math.max(hottestFeelsC, operative - coolerK);
    if (!isOn) continue;
    hours++;
    sumK += coolerK;
    limitC[hour]! += Math.min(raise(operative, relativeHumidity[hour]!), most);
  }
  return hours === 0 ? null : { speedMs, hours, coolerK: sumK / hours, hottestFeelsC };
}
