// Columns of a year are compared in one loop: the comparison that Vitest has for anything iterable takes a second of a core
// for a year's columns, several times what the year takes. Same meaning: every number the same, NaN like NaN, 0 unlike −0.
import { expect } from 'vitest';

declare global {
  var hasEqualColumns: boolean | undefined;
}

/** Undefined for what is no pair of columns, which others compare. */
function areColumnsEqual(one: unknown, other: unknown): boolean | undefined {
  if (!(one instanceof Float64Array && other instanceof Float64Array)) return undefined;
  return one.length === other.length && one.every((value, i) => Object.is(value, other[i]));
}

// Files share their workers, and with them what is told to `expect`.
if (!globalThis.hasEqualColumns) expect.addEqualityTesters([areColumnsEqual]);
globalThis.hasEqualColumns = true;
