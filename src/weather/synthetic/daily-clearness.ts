// Days of a month from its mean clearness: how many are clear and how many dull, and in what order they come.
// The distribution is that of Liu and Jordan in the form of Bendt, Collares-Pereira and Rabl 1981 (Duffie and Beckman,
// Solar Engineering of Thermal Processes, section 2.9); each month gets its evenly spaced quantiles (Knight, Klein
// and Duffie 1991), so that every made year has the same days and only their order is drawn.

import { cos, exp, expm1, log, power, square } from '../../physics/elementary.ts';

/** Clearness of the darkest day. */
const DARKEST = 0.05;

/**
 * Clearness of the clearest day of a month.
 *
 *   Kmax = 0.6313 + 0.267 K − 11.9 (K − 0.75)⁸
 *
 * @param mean monthly mean clearness K; 0.1…0.8
 * Source: Hollands and Huget 1983 (Duffie and Beckman, equation 2.9.8).
 */
export function clearestDay(mean: number): number {
  return 0.6313 + 0.267 * mean - 11.9 * power(mean - 0.75, 8);
}

/**
 * Parameter γ of the distribution F(k) = (e^{γ Kmin} − e^{γ k}) / (e^{γ Kmin} − e^{γ Kmax}) that gives the mean.
 *
 * Found by halving on the exact mean; Herzog's fit to it (Duffie and Beckman, equation 2.9.6) is the test.
 */
export function distributionShape(mean: number): number {
  const highest = clearestDay(mean);
  let low = -80;
  let high = 80;
  for (let pass = 0; pass < 60; pass++) {
    const middle = (low + high) / 2;
    if (meanOf(middle, highest) < mean) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Mean of the distribution. */
function meanOf(shape: number, highest: number): number {
  const span = highest - DARKEST;
  if (Math.abs(shape * span) < 1e-4) return DARKEST + span / 2 + (shape * square(span)) / 12;
  return DARKEST + span / (1 - exp(-shape * span)) - 1 / shape;
}

/**
 * Clearness of each day of a month.
 *
 * @param mean monthly mean clearness; 0.1 to just below clearestDay(mean)
 * @param order one value a day; the day with the highest gets the clearest sky
 * @returns clearness in the order of the days
 */
export function dailyClearnessOfMonth(mean: number, order: Float64Array): Float64Array {
  const shape = distributionShape(mean);
  const highest = clearestDay(mean);
  const days = order.length;
  const ranked = Array.from(order.keys()).sort((a, b) => order[a]! - order[b]!);
  const clearness = new Float64Array(days);
  for (const [rank, day] of ranked.entries()) clearness[day] = quantile((rank + 0.5) / days, shape, highest);
  return clearness;
}

function quantile(share: number, shape: number, highest: number): number {
  const span = highest - DARKEST;
  if (Math.abs(shape * span) < 1e-4) return DARKEST + share * span;
  return DARKEST + log(1 + share * expm1(shape * span)) / shape;
}

/** Clearness of the hours of a day: TAG model, Aguiar and Collares-Pereira 1992, Solar Energy 49; from memory, high. */
export interface HourlyClearness {
  /** mean clearness of an hour at the sun's sine */
  readonly mean: (sine: number) => number;
  /** standard deviation there */
  readonly deviation: (sine: number) => number;
  /** lag-one autocorrelation */
  readonly persistence: number;
}

/**
 * Mean, scatter and persistence of the hourly clearness of a day.
 *
 *   k = λ + ε e^{−κ/sin h},  σ = A e^{B (1 − sin h)},  φ = 0.38 + 0.06 cos(7.4 K − 2.5)
 *
 * @param day clearness K of the day; 0…0.85
 * @returns mean and scatter as functions of the sine of the sun's height, above 0; clearness and persistence are shares
 */
export function hourlyClearness(day: number): HourlyClearness {
  const lambda = -0.19 + 1.12 * day + 0.24 * exp(-8 * day);
  const epsilon = 0.32 - 1.6 * square(day - 0.5);
  const kappa = 0.19 + 2.27 * square(day) - 2.51 * power(day, 3);
  const a = 0.14 * exp(-20 * square(day - 0.35));
  const b = 3 * square(day - 0.45) + 16 * power(day, 5);
  return {
    mean: (sine) => lambda + epsilon * exp(-kappa / sine),
    deviation: (sine) => a * exp(b * (1 - sine)),
    persistence: 0.38 + 0.06 * cos(7.4 * day - 2.5),
  };
}

/** Clearness no hour exceeds: 0.88 cos(π (t − 12)/30), t solar time [h]; the cut-off of the same model. */
export function clearestHour(solarTimeH: number): number {
  return 0.88 * cos((Math.PI * (solarTimeH - 12)) / 30);
}
