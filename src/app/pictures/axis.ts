// Round numbers along an axis. In: the range to be held and about how many steps. Out: the numbers, the first at or
// below the range and the last at or above it.

import { roundStep } from '../charts/month-bars.ts';

/** Round numbers around low…high. */
export function axisTicks(low: number, high: number, steps: number): readonly number[] {
  const step = roundStep(Math.max(high - low, 1e-9) / steps);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(high / step - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}
