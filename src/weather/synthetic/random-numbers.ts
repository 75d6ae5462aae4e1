// Random numbers that are the same on every machine for the same seed: what is made today can be made again.
// Source: the sfc32 generator of the PractRand test suite (public domain), seeded by splitting one number.

import { cos, log, square } from '../../physics/elementary.ts';

export interface RandomNumbers {
  /** evenly spread, 0 ≤ u < 1 */
  readonly uniform: () => number;
  /** normal, mean 0, standard deviation 1 (Box and Muller 1958) */
  readonly normal: () => number;
}

/**
 * A sequence of its own for each seed.
 *
 * @param seed any whole number; its lowest 32 bits count
 */
export function randomNumbers(seed: number): RandomNumbers {
  let a = 0x9e3779b9 ^ (seed | 0);
  let b = 0x243f6a88;
  let c = 0xb7e15162 + (seed | 0);
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return (sum >>> 0) / 4_294_967_296;
  };
  for (let i = 0; i < 20; i++) next();
  const normal = (): number => {
    const radius = Math.sqrt(-2 * log(1 - next()));
    return radius * cos(2 * Math.PI * next());
  };
  return { uniform: next, normal };
}

/**
 * A first-order autoregressive sequence of normal values with mean 0 and standard deviation 1.
 *
 * @param lagOne correlation of neighbours, −1…1
 */
export function autoregressive(random: RandomNumbers, count: number, lagOne: number): Float64Array {
  const values = new Float64Array(count);
  const fresh = Math.sqrt(1 - square(lagOne));
  let last = random.normal();
  for (let i = 0; i < count; i++) {
    values[i] = last;
    last = lagOne * last + fresh * random.normal();
  }
  return values;
}
