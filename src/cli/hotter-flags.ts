// The flags that put a design into a hotter year. They take the place of what the design itself says about it; nothing
// added (--hotter 0 --heat-wave 10,0) is the typical year as it is.

import type { Design, Hotter } from '../design/design.ts';
import { HOTTER_LIMITS, NO_CHANGE, withHotter } from '../design/hotter.ts';
import type { ParsedArguments } from './arguments.ts';

export const HOTTER_FLAGS: readonly string[] = ['hotter', 'heat-wave'];

export const HOTTER_USAGE = [
  '--hotter K, or --hotter WINTER,SUMMER: the typical year made hotter, in kelvin',
  '--heat-wave DAYS,K: with a heat wave over its hottest spell',
] as const;

/** The design as the flags want it, or one line a fault. */
export function hotterDesign(
  { values }: ParsedArguments,
  design: Design,
): Design | { readonly faults: readonly string[] } {
  const faults: string[] = [];
  const numbersOf = (flag: string, form: string, keys: readonly (keyof Hotter)[]): Partial<Hotter> => {
    const text = values.get(flag);
    if (text === undefined) return {};
    const parts = text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
    const numbers = flag === 'hotter' && parts.length === 1 ? [parts[0]!, parts[0]!] : parts;
    if (numbers.length !== keys.length) {
      faults.push(`--${flag}: ${text}; allowed: ${form}`);
      return {};
    }
    const pairs = keys.map((key, i) => [key, numbers[i] ?? Number.NaN] as const);
    for (const [key, value] of pairs) {
      const { label, min, max, whole } = HOTTER_LIMITS.find((limit) => limit.key === key)!;
      if (value >= min && value <= max && (!whole || Number.isInteger(value))) continue;
      faults.push(
        `--${flag}: ${text}; allowed: ${label.toLowerCase()} ${min} to ${max}${whole ? ', whole' : ' K'}`,
      );
    }
    return Object.fromEntries(pairs);
  };
  const given = {
    ...numbersOf('hotter', 'K, or WINTER,SUMMER', ['winterK', 'summerK']),
    ...numbersOf('heat-wave', 'DAYS,K', ['waveDays', 'waveK']),
  };
  if (faults.length > 0) return { faults };
  return Object.keys(given).length === 0
    ? design
    : withHotter(design, { ...NO_CHANGE, ...design.hotter, ...given });
}
