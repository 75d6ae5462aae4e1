// Complex numbers for periodic heat flow: pairs of real and imaginary part, and 2×2 matrices of them.

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

export function add(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im };
}

export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

export function scale(a: Complex, factor: number): Complex {
  return { re: a.re * factor, im: a.im * factor };
}

export function divide(a: Complex, b: Complex): Complex {
  const size = b.re ** 2 + b.im ** 2;
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
}

export function modulus(a: Complex): number {
  return Math.hypot(a.re, a.im);
}

/** Hyperbolic cosine. */
export function cosh(a: Complex): Complex {
  return { re: Math.cosh(a.re) * Math.cos(a.im), im: Math.sinh(a.re) * Math.sin(a.im) };
}

/** Hyperbolic sine. */
export function sinh(a: Complex): Complex {
  return { re: Math.sinh(a.re) * Math.cos(a.im), im: Math.cosh(a.re) * Math.sin(a.im) };
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
