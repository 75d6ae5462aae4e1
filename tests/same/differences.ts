// Where two results of the same shape are not the same to the last bit: two values in, how many numbers were compared
// and a line for each place that differs out.

export interface Differences {
  readonly compared: number;
  readonly differences: readonly string[];
}

/** Compare every number and text below two values; arrays of numbers are told by their largest difference. */
export function differencesOf(before: unknown, now: unknown): Differences {
  const differences: string[] = [];
  let compared = 0;
  const visit = (one: unknown, other: unknown, path: string): void => {
    if (one instanceof Float64Array && other instanceof Float64Array) {
      compared += one.length;
      const told = columnDifference(one, other);
      if (told !== null) differences.push(`${path} ${told}`);
    } else if (isRecord(one) && isRecord(other)) {
      for (const key of new Set([...Object.keys(one), ...Object.keys(other)])) {
        visit(one[key], other[key], path === '' ? key : `${path}.${key}`);
      }
    } else {
      compared++;
      if (!Object.is(one, other)) differences.push(`${path} ${String(one)} → ${String(other)}`);
    }
  };
  visit(before, now, '');
  return { compared, differences };
}

function columnDifference(one: Float64Array, other: Float64Array): string | null {
  if (one.length !== other.length) return `${one.length} → ${other.length} rows`;
  const row = one.findIndex((value, i) => !Object.is(value, other[i]));
  if (row === -1) return null;
  const range =
    one.reduce((most, value) => Math.max(most, value), -Infinity) -
    one.reduce((least, value) => Math.min(least, value), Infinity);
  const largest = one.reduce((most, value, i) => Math.max(most, Math.abs(value - other[i]!)), 0);
  return `from row ${row}, by up to ${largest.toPrecision(3)} (${((100 * largest) / range).toPrecision(2)} % of its range)`;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !(value instanceof Float64Array);
}
