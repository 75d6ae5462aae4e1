// Round numbers along an axis. In: the range to be held and about how many steps. Out: the numbers, the first at or
// below the range and the last at or above it.

/** Round numbers around low…high. */
export function axisTicks(low: number, high: number, steps: number): readonly number[] {
  const step = roundStep(Math.max(high - low, 1e-9) / steps);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(high / step - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}

/** 1, 2 or 5 times a power of ten, at least the step asked for. */
export function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  for (const factor of [1, 2, 5, 10]) if (factor * power >= step * (1 - 1e-9)) return factor * power;
  return 10 * power;
}
