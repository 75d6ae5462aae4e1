// Hours too hot by what the design counts as too hot, and how many are allowed. Hourly zone and weather in, figures out.
// Without fans and by one temperature they are `overheatedHours`; by EN 16798-1, category II, `adaptiveOverheatedHours`.

import type { Design } from '../design/design.ts';
import type { ZoneYear } from '../network/year.ts';
import type { TypicalYear } from '../weather/typical-year.ts';
import { type FanHours, hotLimits } from './hot-limits.ts';
import { ALL_HOURS, type LivedHours } from './lived-hours.ts';

export interface TooHot {
  /** id of the criterion (design/too-hot-criterion.ts) */
  readonly criterion: string;
  /** hours above its limit, and how many of them it allows */
  readonly hours: number;
  readonly limitHours: number;
  /** its limit; absent where the limit follows the weather or fans move the air [°C] */
  readonly limitC?: number;
  /** lowest and highest limit of the year, without fans [°C] */
  readonly lowestLimitC: number;
  readonly highestLimitC: number;
  /** ceiling fans that run; absent without */
  readonly fans?: FanHours;
}

/** Count a zone's hours too hot, of those in which it is lived in; of so many hours a day as many are allowed in proportion. */
export function tooHot(
  design: Design,
  zone: ZoneYear,
  weather: TypicalYear,
  lived: LivedHours = ALL_HOURS,
): TooHot {
  const { criterion, limitC, lowC, highC, fans } = hotLimits(design, zone, weather, lived);
  const { operativeC } = zone;
  let hours = 0;
  for (let hour = 0; hour < operativeC.length; hour++) if (operativeC[hour]! > limitC[hour]!) hours++;
  return {
    criterion: criterion.id,
    hours,
    limitHours: lived.hours === 24 ? criterion.hours : Math.floor((criterion.hours * lived.hours) / 24),
    lowestLimitC: lowC,
    highestLimitC: highC,
    ...(fans === null ? criterion.aboveC !== null && { limitC: criterion.aboveC } : { fans }),
  };
}

/** Whether a zone is beyond what its criterion allows. */
export function isTooHot({ tooHot: { hours, limitHours } }: { readonly tooHot: TooHot }): boolean {
  return hours > limitHours;
}
