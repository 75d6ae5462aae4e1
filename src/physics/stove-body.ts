// The body of a stove as one store that cools as it is warm: heat it holds and heat put in, in; heat it holds then, out.
// Exact for heat put in evenly over the time. The room it gives to is taken as of one temperature: a body 40 K and more
// above it gives a few per cent less to a room a kelvin or two warmer, which is left out.

import { exp } from './elementary.ts';
import { requireRange } from './require-range.ts';

/**
 * Heat a body holds above the room's temperature after some time.
 *
 * @param storedJ before [J]
 * @param inW put in, evenly [W]
 * @param coolingS time in which what it holds falls to 1/e of itself [s]; above 0
 * @param seconds how long, 0 or more
 * @returns [J]; what it gave meanwhile is inW · seconds less what it gained
 * Source: dE/dt = P − E/τ, closed form.
 */
export function bodyHeatAfter(storedJ: number, inW: number, coolingS: number, seconds: number): number {
  requireRange('storedJ', storedJ, 0, Number.POSITIVE_INFINITY, 'J');
  requireRange('inW', inW, 0, Number.POSITIVE_INFINITY, 'W');
  requireRange('coolingS', coolingS, Number.MIN_VALUE, Number.POSITIVE_INFINITY, 's');
  requireRange('seconds', seconds, 0, Number.POSITIVE_INFINITY, 's');
  const left = exp(-seconds / coolingS);
  return storedJ * left + inW * coolingS * (1 - left);
}
