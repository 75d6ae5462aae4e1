// Sine, exponential, logarithm and their kin, by sums, products, quotients and roots alone. IEEE 754 rounds those the same
// everywhere, while the language leaves the functions of `Math` to each engine: Node and a browser differ in the last digit
// of most of them, which is enough to settle whether a fire is lit. Integer powers are written as products where they stand.
// Errors are measured against the engine's own functions (tests/physics/elementary.test.ts). Method: series of the textbook
// on a short interval; DLMF 4.19, 4.24, 4.38, 4.6.

import { requireRange } from './require-range.ts';

/** Furthest angle that is brought back into the first eighth of a turn without loss [rad]. */
const MOST_ANGLE = 1e6;
/** π/2 in three parts, of which the first two have 33 bits: so many quarter turns of them are exact. */
const QUARTER = [1.5707963267341256, 6.077100506303966e-11, 2.0222662487959506e-21] as const;
/** ln 2 in two parts, the first of 33 bits. */
const LN2 = [0.6931471803691238, 1.9082149292705877e-10] as const;
/** Beyond these the exponential is more than, and less than, a double holds. */
const MOST_EXPONENT = 709;
const LEAST_EXPONENT = -744;
const SMALLEST_POWER = -1074;
const POWERS_OF_TWO = powersOfTwo();
/** Whole powers up to this are products. */
const MOST_FACTORS = 16;

const ONE = new Float64Array([1]);
/** A double and, beside it, its two halves; the upper one holds sign and exponent. */
const WORDS = new Int32Array(ONE.buffer);
const UPPER = WORDS[1] === 0 ? 0 : 1;
const SMALLEST_NORMAL = 2.2250738585072014e-308;
/** 2^54, which makes any double a normal one. */
const LIFT = 18014398509481984;

/** @param x [rad]; −10⁶…10⁶ @returns sine; within 2e-16 */
export function sin(x: number): number {
  return turned(x, 0);
}

/** @param x [rad]; −10⁶…10⁶ @returns cosine; within 2e-16 */
export function cos(x: number): number {
  return turned(x, 1);
}

/** @param x [rad]; −10⁶…10⁶ @returns tangent; within 5e-16 of itself in the first turn, but for where sine or cosine vanish */
export function tan(x: number): number {
  return sin(x) / cos(x);
}

/** Sine of x and so many quarter turns more. */
function turned(x: number, quarters: number): number {
  if (Math.abs(x) > MOST_ANGLE) requireRange('angle', x, -MOST_ANGLE, MOST_ANGLE, 'rad');
  const turns = Math.round(x / (Math.PI / 2));
  const r = x - turns * QUARTER[0] - turns * QUARTER[1] - turns * QUARTER[2];
  const quadrant = (turns + quarters) & 3;
  const size = quadrant & 1 ? cosineSeries(r * r) : r + r * sineSeries(r * r);
  return quadrant & 2 ? -size : size;
}

/** sin r / r − 1 of z = r², |r| ≤ π/4. */
function sineSeries(z: number): number {
  return (
    z *
    (-1 / 6 +
      z *
        (1 / 120 +
          z *
            (-1 / 5040 +
              z *
                (1 / 362_880 +
                  z * (-1 / 39_916_800 + z * (1 / 6_227_020_800 + z * (-1 / 1_307_674_368_000)))))))
  );
}

/** cos r of z = r², |r| ≤ π/4. */
function cosineSeries(z: number): number {
  const beyond =
    z *
    z *
    (1 / 24 +
      z *
        (-1 / 720 +
          z *
            (1 / 40_320 +
              z *
                (-1 / 3_628_800 +
                  z * (1 / 479_001_600 + z * (-1 / 87_178_291_200 + z * (1 / 20_922_789_888_000)))))));
  return 1 - (z / 2 - beyond);
}

/** @returns angle whose tangent is y/x, in the quadrant of (x, y) [rad], −π…π; within 1e-15 of itself */
export function atan2(y: number, x: number): number {
  const [up, along] = [Math.abs(y), Math.abs(x)];
  const most = Math.max(up, along);
  const first = most === 0 ? 0 : arc(Math.min(up, along) / most);
  const upright = up > along ? Math.PI / 2 - first : first;
  const angle = x < 0 ? Math.PI - upright : upright;
  return y < 0 ? -angle : angle;
}

/** @param x −1…1 @returns [rad], −π/2…π/2; within 1e-15 of itself */
export function asin(x: number): number {
  return atan2(x, Math.sqrt((1 - x) * (1 + x)));
}

/** @param x −1…1 @returns [rad], 0…π; within 1e-15 of itself */
export function acos(x: number): number {
  return atan2(Math.sqrt((1 - x) * (1 + x)), x);
}

/** Angle of a tangent of 0…1, by the series of a quarter of it. */
function arc(tangent: number): number {
  const quarter = ofHalf(ofHalf(tangent));
  const z = quarter * quarter;
  let sum = 1 / 25;
  for (let n = 23; n > 0; n -= 2) sum = 1 / n - z * sum;
  return 4 * quarter * sum;
}

/** Tangent of half an angle by that of the whole. */
function ofHalf(tangent: number): number {
  return tangent / (1 + Math.sqrt(1 + tangent * tangent));
}

/** @returns e to the x; within 3e-16 of itself; 0 below −744, Infinity above 709 */
export function exp(x: number): number {
  if (x > MOST_EXPONENT) return Number.POSITIVE_INFINITY;
  if (x < LEAST_EXPONENT) return 0;
  const twos = Math.round(x / Math.LN2);
  const r = x - twos * LN2[0] - twos * LN2[1];
  return (1 + nearOne(r)) * POWERS_OF_TWO[twos - SMALLEST_POWER]!;
}

/** @returns e to the x, less 1; within 6e-16 of itself */
export function expm1(x: number): number {
  return Math.abs(x) < 0.34 ? nearOne(x) : exp(x) - 1;
}

/** e to the r, less 1, |r| ≤ ½ ln 2: 2 r/(q − r), where q = r coth(r/2) is even. */
function nearOne(r: number): number {
  const z = r * r;
  const q =
    2 +
    z *
      (1 / 6 +
        z *
          (-1 / 360 +
            z * (1 / 15_120 + z * (-1 / 604_800 + z * (1 / 23_950_080 + z * (-691 / 653_837_184_000))))));
  return (2 * r) / (q - r);
}

/** @returns natural logarithm; within 3e-16 of itself; −Infinity of 0, NaN below it */
export function log(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY))
    return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
  const isTiny = x < SMALLEST_NORMAL;
  const lifted = isTiny ? x * LIFT : x;
  ONE[0] = lifted;
  let twos = (WORDS[UPPER]! >> 20) - 1023;
  let rest = lifted * POWERS_OF_TWO[-twos - SMALLEST_POWER]!;
  if (rest > Math.SQRT2) {
    rest /= 2;
    twos++;
  }
  if (isTiny) twos -= 54;
  const f = rest - 1;
  const s = f / (2 + f);
  const z = s * s;
  // Two sums side by side, which a processor works out at once.
  const w = z * z;
  const odd = z * (2 / 3 + w * (2 / 7 + w * (2 / 11 + w * (2 / 15 + w * (2 / 19)))));
  const even = w * (2 / 5 + w * (2 / 9 + w * (2 / 13 + w * (2 / 17 + w * (2 / 21)))));
  const beyond = odd + even;
  return twos * LN2[0] - (s * (f - beyond) - twos * LN2[1] - f);
}

/** @returns x times itself */
export function square(x: number): number {
  return x * x;
}

/**
 * A power: of whole exponents by products.
 *
 * @param base 0 or more; any where the exponent is whole
 * @returns base to the exponent; within 3e-16 (1 + |exponent ln base|) of itself
 */
export function power(base: number, exponent: number): number {
  if (Number.isInteger(exponent) && Math.abs(exponent) <= MOST_FACTORS) {
    let product = 1;
    for (let i = Math.abs(exponent); i > 0; i--) product *= base;
    return exponent < 0 ? 1 / product : product;
  }
  return exp(exponent * log(base));
}

/** 2^−1074 … 2^1023, each by halving or doubling the last, which is exact. */
function powersOfTwo(): Float64Array {
  const powers = new Float64Array(1024 - SMALLEST_POWER);
  powers[-SMALLEST_POWER] = 1;
  for (let i = 1 - SMALLEST_POWER; i < powers.length; i++) powers[i] = 2 * powers[i - 1]!;
  for (let i = -SMALLEST_POWER - 1; i >= 0; i--) powers[i] = powers[i + 1]! / 2;
  return powers;
}
