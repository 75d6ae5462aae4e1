// Which of a few houses is best: the one that weighs least (weights.ts); of those that weigh nearly the same, the first named,
// so a question names the plainest first. House rules, told in its notes. Figures in, one of them out.

import { burden, type Weighed, type Weights, weightsBetween, weightsInWords } from './weights.ts';

/** What weighs so much more or less, in hours or as a share of it, nobody would tell apart. House rule. */
const SAME_HOURS = 20;
const SAME_SHARE = 0.05;

/** The rule in words, for the notes of an answer. */
export function choiceRule(weights: Weights): string {
  return `Best is the house that weighs least, and of those within ${SAME_HOURS} hours or a twentieth of it the plainest; where all are too damp, damp and mould are left out. ${weightsInWords(weights)}`;
}

/**
 * The best of some houses.
 *
 * @param houses at least one, the plainest first
 * @param figuresOf the figures of a house
 * @param daysOf work that it takes over the house as drawn, below zero where it spares some [days of one person]
 */
export function bestHouse<H>(
  houses: readonly H[],
  figuresOf: (house: H) => Weighed,
  daysOf: (house: H) => number,
  weights: Weights,
): H {
  const fair = weightsBetween(houses.map(figuresOf), weights);
  const of = (house: H) => burden(figuresOf(house), daysOf(house), fair);
  const least = Math.min(...houses.map(of));
  return houses.find((house) => of(house) <= least + Math.max(SAME_HOURS, SAME_SHARE * least))!;
}
