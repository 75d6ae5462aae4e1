// Reading and replacing one value of a design by its dotted path, without touching the old design.

import type { Design } from './design.ts';

/** The value at a path; undefined when there is none. */
export function valueAt(design: Design, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], design);
}

/** The number at a path; throws RangeError when there is none, since paths come from our own tables. */
export function numberAt(design: Design, path: string): number {
  const value = valueAt(design, path);
  if (typeof value !== 'number') throw new RangeError(`${path} is ${String(value)}; allowed: a number`);
  return value;
}

/** A design with one value replaced, or its key left out where the value is undefined; everything else is shared with the old one. */
export function withValueAt(design: Design, path: string, value: unknown): Design {
  const [head, ...rest] = path.split('.');
  return replaced(design as unknown as Record<string, unknown>, head!, rest, value) as unknown as Design;
}

function replaced(
  at: Readonly<Record<string, unknown>>,
  key: string,
  rest: readonly string[],
  value: unknown,
): Record<string, unknown> {
  const [next, ...further] = rest;
  if (next === undefined) {
    const { [key]: _, ...others } = at;
    return value === undefined ? others : { ...at, [key]: value };
  }
  return { ...at, [key]: replaced(at[key] as Record<string, unknown>, next, further, value) };
}
