// What a record can tell at most of a twin: how narrow slopes at the truth, priors and loggers whose errors are known exactly leave
// each unknown (Cramér–Rao bound with priors; H. L. Van Trees, Detection, Estimation, and Modulation Theory I, 1968; from memory).
// No fit can do better on the mean; one that must find the loggers' noise as well does worse.

import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { UnknownId } from '../../src/design/as-found.ts';
import { runMatch, type Target } from '../../src/matching/house-record.ts';
import { UNKNOWNS, type UnknownValues, valueAt } from '../../src/model/unknowns.ts';
import { DRIFT_KEPT, LOGGER_NOISE, type Twin } from './twin-records.ts';

/** In standard deviations of the prior. */
const STEP = 0.1;
/** Prior of what a logger's clock is late [h]. */
const LATE_H = 0.5;

/** Standard deviation of each unknown of the truth [logarithm, or K], if the first so many days are fitted. */
export function boundOf(
  { record, truth }: Twin,
  days: readonly number[],
): Partial<Record<UnknownId, number>>[] {
  const ids = Object.keys(truth) as UnknownId[];
  // Before the record windows move as an opener moves them: a hand's jumps would make slopes that tell nothing.
  const runAt = (values: UnknownValues) => runMatch(record, { values, habit: 'automatic' });
  const here = runAt(truth);
  const slopes = ids.map((id) => {
    const values = { ...truth, [id]: shifted(id, truth[id]!) };
    return runAt(values).map((moved, t) => moved.map((value, hour) => (value - here[t]![hour]!) / STEP));
  });
  return days.map((count) => {
    const hours = 24 * count;
    const size = ids.length + 2 * record.targets.length;
    const matrix = Matrix.eye(size, size);
    record.targets.forEach(({ kind }, t) => {
      const late = here[t]!.map((_, hour) => LATE_H * (here[t]![Math.max(0, hour - 1)]! - here[t]![hour]!));
      const offset = here[t]!.map(() => LOGGER_NOISE[kind].offset);
      const white = whitener(kind, hours);
      const columns = [...slopes.map((of) => of[t]!), offset, late].map(white);
      const at = [...ids.keys(), ids.length + 2 * t, ids.length + 2 * t + 1];
      columns.forEach((a, i) => {
        columns.forEach((b, k) => {
          const product = a.reduce((sum, value, hour) => sum + value * b[hour]!, 0);
          matrix.set(at[i]!, at[k]!, matrix.get(at[i]!, at[k]!) + product);
        });
      });
    });
    const covariance = new CholeskyDecomposition(matrix).solve(Matrix.eye(size, size));
    return Object.fromEntries(
      ids.map((id, i) => [id, UNKNOWNS[id].priorSd * Math.sqrt(covariance.get(i, i))]),
    );
  });
}

function shifted(id: UnknownId, value: number): number {
  const { scale, priorSd } = UNKNOWNS[id];
  return scale === 'factor' ? value * valueAt(id, STEP) : value + STEP * priorSd;
}

const whiteners = new Map<string, (column: Float64Array) => Float64Array>();

/** Takes out of a column what the errors of a logger have in common from hour to hour. */
function whitener(kind: Target['kind'], hours: number): (column: Float64Array) => Float64Array {
  const key = `${kind} ${hours}`;
  const known = whiteners.get(key);
  if (known !== undefined) return known;
  const { slow, fast, step } = LOGGER_NOISE[kind];
  const jitter = fast ** 2 + step ** 2 / 12;
  const covariance = Matrix.zeros(hours, hours);
  for (let i = 0; i < hours; i++)
    for (let k = 0; k < hours; k++)
      covariance.set(i, k, slow ** 2 * DRIFT_KEPT ** Math.abs(i - k) + (i === k ? jitter : 0));
  const lower = new CholeskyDecomposition(covariance).lowerTriangularMatrix.to2DArray();
  const white = (column: Float64Array) => {
    const out = new Float64Array(hours);
    for (let i = 0; i < hours; i++) {
      let left = column[i]!;
      const row = lower[i]!;
      for (let k = 0; k < i; k++) left -= row[k]! * out[k]!;
      out[i] = left / row[i]!;
    }
    return out;
  };
  whiteners.set(key, white);
  return white;
}

/** Chance that a normal error of a logarithm leaves a factor within a share of the truth. */
export function chanceWithin(share: number, sd: number): number {
  return normalBelow(Math.log(1 + share) / sd) - normalBelow(Math.log(1 - share) / sd);
}

/** Standard normal distribution, to 7e-8 (M. Abramowitz, I. Stegun, 1964, 26.2.17; from memory). */
function normalBelow(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x < 0 ? tail : 1 - tail;
}
