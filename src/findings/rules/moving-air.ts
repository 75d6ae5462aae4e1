// Ceiling fans: what moving air does for people and what it does not. Cooling effect: ASHRAE 55; where it ends: health
// advice of the US and of the World Health Organization (physics/moving-air.ts, from memory, high confidence).

import { tooHot } from '../../outcomes/too-hot.ts';
import { MOVING_AIR_FROM_C, MOVING_AIR_UNTIL_C } from '../../physics/moving-air.ts';
import type { Context } from '../context.ts';
import { finding, type Rule } from '../rule.ts';
import { hours } from '../wording.ts';

/** The same hours judged without the fans. */
function withoutFans({ design, houseYear, climate }: Context): number {
  const { airSpeedMs: _, ...comfort } = design.comfort;
  return tooHot({ ...design, comfort }, houseYear, climate.year).hours;
}

export const MOVING_AIR_RULES: readonly Rule[] = [
  finding({
    id: 'ceiling-fans',
    severity: 'note',
    applies: ({ house }) => house.tooHot.fans !== undefined,
    figures: (context) => {
      const { hours: count, fans } = context.house.tooHot;
      return {
        fanHours: fans!.hours,
        speedMs: fans!.speedMs,
        coolerK: fans!.coolerK,
        hours: count,
        withoutHours: withoutFans(context),
        hottestFeelsC: fans!.hottestFeelsC,
        maxOperativeC: context.house.maxOperativeC,
        fromC: MOVING_AIR_FROM_C,
        untilC: MOVING_AIR_UNTIL_C,
        source: 'ASHRAE 55, elevated air speed; where fans stop helping: health advice',
      };
    },
    says: (f, { words }) =>
      `Ceiling fans run for ${hours(f.fanHours)} a year, while somebody is at home and the rooms are above ${words.temperature(f.fromC)}. ` +
      `Their air, at ${words.speed(f.speedMs)}, feels ${words.degrees(f.coolerK)} cooler than still air on average; it is no cooler. ` +
      `With them the rooms are too hot for ${hours(f.hours)}, and without them for ${hours(f.withoutHours)}. ` +
      `The hottest hour, ${words.temperature(f.maxOperativeC, 1)}, feels like ${words.temperature(f.hottestFeelsC, 1)}. ` +
      `In air above ${words.temperature(f.untilC)} a fan can harm the old and the sick, so we count it for nothing there.`,
  }),
];
