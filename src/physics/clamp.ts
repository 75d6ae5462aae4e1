// A share that may be reckoned beyond its ends. Any number in, 0…1 out.

/** A number held to 0…1; NaN stays NaN. No checks: called in the hourly loop. */
export function clamp01(value: number): number {
  return value < 0 ? 0 : Math.min(value, 1);
}
