// What is left between a record and a run: its size, how much of it lasts from one hour to the next, and the same with that
// taken out, so that forty like hours do not count as forty proofs. Heavy tails are cut: a party does not bend the house.

/** Residuals of one logger are taken no finer than this: half of what cheap ones are rounded to, and their drift. */
const FINEST = { temperature: 0.15, humidity: 1 } as const;
/** What lasts longer than half a day is the house’s, or the logger’s constant error, and no noise. */
const MOST_LASTING = 0.92;
/** Whitened residuals beyond so many standard deviations count by their distance and no longer by its square (Huber). */
const HUBER = 3;

export interface Noise {
  /** standard deviation, °C or % */
  readonly sd: number;
  /** of what lasts, so much is left after an hour, 0…0.92 */
  readonly lasting: number;
  /** standard deviation of what is new in an hour */
  readonly fresh: number;
}

/**
 * Of residuals by hour, NaN where not judged.
 *
 * What lasts and what jitters are told apart by the correlations over one hour and over two: of a drift with jitter on it
 * the second is less than the first by the drift's own rate, while the first alone would call the drift too short.
 */
export function noiseOf(kind: 'temperature' | 'humidity', residual: Float64Array): Noise {
  const variance = lagged(residual, 0);
  if (Number.isNaN(variance) || variance === 0) return { sd: FINEST[kind], lasting: 0, fresh: FINEST[kind] };
  const one = lagged(residual, 1) / variance;
  const two = lagged(residual, 2) / variance;
  const rate = one > LEAST_RELATED ? Math.max(one, two / one) : one;
  const lasting = Math.min(MOST_LASTING, Math.max(0, rate || 0));
  const sd = Math.sqrt(variance);
  const news = residual.map((value, hour) => value - lasting * (residual[hour - 1] ?? Number.NaN));
  const fresh = Math.sqrt(lagged(news, 0)) || sd;
  const scale = Math.max(1, FINEST[kind] / sd);
  return { sd: sd * scale, lasting, fresh: fresh * scale };
}

/** Correlations below this say nothing of a rate. */
const LEAST_RELATED = 0.3;

/** Mean product of a column and itself some hours before; NaN without any pair. */
function lagged(column: Float64Array, by: number): number {
  let [sum, count] = [0, 0];
  for (let hour = by; hour < column.length; hour++) {
    const product = column[hour]! * column[hour - by]!;
    if (Number.isNaN(product)) continue;
    sum += product;
    count++;
  }
  return count === 0 ? Number.NaN : sum / count;
}

/** A column with NaN where it does not count. */
export function among(column: Float64Array, counts: Uint8Array): Float64Array {
  return column.map((value, hour) => (counts[hour] === 1 ? value : Number.NaN));
}

/** A column with what lasts from the hour before taken out, in standard deviations of what is new; NaN where not judged. */
export function whitened(column: Float64Array, { sd, lasting, fresh }: Noise): Float64Array {
  return column.map((value, hour) => {
    const before = column[hour - 1];
    return before === undefined || Number.isNaN(before) ? value / sd : (value - lasting * before) / fresh;
  });
}

/** Weight that makes squares of residuals grow no faster than their distance beyond HUBER. */
export function huberWeight(residual: number): number {
  const size = Math.abs(residual);
  return size <= HUBER ? 1 : HUBER / size;
}

/** What it costs. */
export function huberCost(residual: number): number {
  const size = Math.abs(residual);
  return size <= HUBER ? size * size : HUBER * (2 * size - HUBER);
}
