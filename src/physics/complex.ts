// Complex numbers for periodic heat flow: pairs of real and imaginary part, and 2×2 matrices of them.

import { cos, exp, expm1, sin, square } from './elementary.ts';

export interface Complex {
  readonly re: number;
  readonly im: number;
}

/** Rows: [z11, z12], [z21, z22]. */
export interface ComplexMatrix {
  readonly z11: Complex;
  readonly z12: Complex;
  readonly z21: Complex;
  readonly z22: Complex;
}

/** a + b. */
export function add(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im };
}

/** a · b. */
export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

/** a times a real factor. */
export function scale(a: Complex, factor: number): Complex {
  return { re: a.re * factor, im: a.im * factor };
}

/** a / b; b not 0. */
export function divide(a: Complex, b: Complex): Complex {
  const size = square(b.re) + square(b.im);
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
}

/** |a|. */
export function modulus(a: Complex): number {
  return Math.sqrt(square(a.re) + square(a.im));
}

/** Hyperbolic cosine. */
export function cosh(a: Complex): Complex {
  const { even, odd } = halvesOfExp(a.re);
  return { re: even * cos(a.im), im: odd * sin(a.im) };
}

/** Hyperbolic sine. */
export function sinh(a: Complex): Complex {
  const { even, odd } = halvesOfExp(a.re);
  return { re: odd * cos(a.im), im: even * sin(a.im) };
}

/** Hyperbolic cosine and sine of a real number. */
function halvesOfExp(x: number): { readonly even: number; readonly odd: number } {
  const grown = exp(Math.abs(x));
  const odd = (Math.abs(x) < 1 ? expm1(Math.abs(x)) * (1 + 1 / grown) : grown - 1 / grown) / 2;
  return { even: (grown + 1 / grown) / 2, odd: x < 0 ? -odd : odd };
}

/** Matrix product a·b. */
export function multiplyMatrices(a: ComplexMatrix, b: ComplexMatrix): ComplexMatrix {
  const entry = (p: Complex, q: Complex, r: Complex, s: Complex) => add(multiply(p, q), multiply(r, s));
  return {
    z11: entry(a.z11, b.z11, a.z12, b.z21),
    z12: entry(a.z11, b.z12, a.z12, b.z22),
    z21: entry(a.z21, b.z11, a.z22, b.z21),
    z22: entry(a.z21, b.z12, a.z22, b.z22),
  };
}
