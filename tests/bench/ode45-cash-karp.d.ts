// The part of ode45-cash-karp that the bench uses; the package comes without types.
declare module 'ode45-cash-karp' {
  type Rates = (dydt: Float64Array, y: Float64Array, t: number) => void;
  interface Integrator {
    readonly y: Float64Array;
    readonly t: number;
    /** many adaptive steps, until a time */
    steps(count: number, until?: number): boolean;
  }
  export default function ode45(
    y: Float64Array,
    rates: Rates,
    t: number,
    dt: number,
    options?: { readonly tol?: number },
  ): Integrator;
}
