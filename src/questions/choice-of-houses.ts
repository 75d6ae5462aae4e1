// Which of a few houses is best: the one with the fewest hours too hot or too damp beyond what is allowed; of those that
// are nearly as good in that, the one that asks for the least heat; of those nearly equal in both, the first named, so a
// question names the plainest first. House rules, told in its notes. Figures in, one of them out.

import { ACCEPTABLE_DAMP_HOURS } from '../outcomes/acceptable-hours.ts';
import type { Figures } from './figures.ts';

export type HotAndDamp = Pick<Figures, 'tooHotHours' | 'tooHotLimitHours' | 'humidHours'>;

/** Hours nobody would tell apart [h], or this share of them, whichever is more. */
const SAME_HOURS = 40;
const SAME_SHARE = 0.1;
/** Heat nobody would tell apart [kWh a year], or this share of it. */
const SAME_KWH = 100;
const SAME_HEAT_SHARE = 0.05;

/** The rule in words, for the notes of an answer. */
export const CHOICE_RULE =
  'Best is the house with the fewest hours too hot or too damp beyond what is allowed (damp: one hour in twenty). Houses within 40 hours or a tenth of that are told apart by back-up heat, and houses alike in that by which is plainest. A house rule: weigh it otherwise if your client does.';

/** Hours of discomfort beyond those that are allowed, or that nobody minds. */
export function trouble({ tooHotHours, tooHotLimitHours, humidHours }: HotAndDamp): number {
  return Math.max(0, tooHotHours - tooHotLimitHours) + Math.max(0, humidHours - ACCEPTABLE_DAMP_HOURS);
}

/**
 * The best of some houses.
 *
 * @param houses at least one, the plainest first
 * @param figuresOf the figures of a house
 */
export function bestHouse<H>(
  houses: readonly H[],
  figuresOf: (house: H) => HotAndDamp & Pick<Figures, 'heatingKWh'>,
): H {
  const least = Math.min(...houses.map((house) => trouble(figuresOf(house))));
  const fair = houses.filter(
    (house) => trouble(figuresOf(house)) <= least + Math.max(SAME_HOURS, SAME_SHARE * least),
  );
  const leastHeat = Math.min(...fair.map((house) => figuresOf(house).heatingKWh));
  return fair.find(
    (house) => figuresOf(house).heatingKWh <= leastHeat + Math.max(SAME_KWH, SAME_HEAT_SHARE * leastHeat),
  )!;
}
