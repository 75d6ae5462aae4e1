// Side-by-side timing: several pieces of work run in turn, round after round, so that a noisy machine slows all of
// them alike; medians and ratios of one run are what to quote.

export interface Line {
  readonly name: string;
  readonly run: () => void;
  /** name of a line of the same table that it is set against, besides the first */
  readonly beside?: string;
}

export interface Measured {
  readonly name: string;
  readonly beside: string | undefined;
  readonly medianMs: number;
  readonly lowMs: number;
  readonly highMs: number;
}

/** Time each line `rounds` times in turn after `warmUps` unmeasured rounds. */
export function measure(lines: readonly Line[], rounds: number, warmUps: number): Measured[] {
  const times = lines.map((): number[] => []);
  for (let round = -warmUps; round < rounds; round++) {
    lines.forEach(({ run }, i) => {
      const start = performance.now();
      run();
      if (round >= 0) times[i]!.push(performance.now() - start);
    });
  }
  return lines.map(({ name, beside }, i) => {
    const sorted = times[i]!.toSorted((a, b) => a - b);
    return { name, beside, medianMs: sorted[rounds >> 1]!, lowMs: sorted[0]!, highMs: sorted.at(-1)! };
  });
}

/** Print lines with their ratio to the first, and to the line each is set against where there is one. */
export function printTable(title: string, measured: readonly Measured[]): void {
  const base = measured[0]!.medianMs;
  const byName = new Map(measured.map(({ name, medianMs }) => [name, medianMs]));
  const ownTitle = measured.some(({ beside }) => beside) ? 'own shape'.padStart(11) : '';
  console.log(`\n${title}`);
  console.log(
    `${'what'.padEnd(52)}${'median'.padStart(10)}${'lowest'.padStart(10)}${'highest'.padStart(10)}${'ratio'.padStart(8)}${ownTitle}`,
  );
  for (const { name, beside, medianMs, lowMs, highMs } of measured) {
    const cells = [medianMs, lowMs, highMs].map((ms) => `${ms.toFixed(1)} ms`.padStart(10)).join('');
    const own = beside ? (medianMs / byName.get(beside)!).toFixed(2).padStart(11) : '';
    console.log(`${name.padEnd(52)}${cells}${(medianMs / base).toFixed(2).padStart(8)}${own}`);
  }
}

/**
 * The bare loop: sweeps down and up one chain of this many nodes, four steps an hour for a year, and nothing else. One
 * function for all lengths: of several made alike the compiler would no longer know the arrays, and each took half as long again.
 */
export const bareLoop = (() => {
  const most = 1000;
  const t = new Float64Array(most).fill(20);
  const y = new Float64Array(most);
  const c = new Float64Array(most).fill(0.9);
  const f = new Float64Array(most).fill(0.3);
  const inverse = new Float64Array(most).fill(0.7);
  return (nodes: number): void => {
    // Beyond its arrays the loop would step nothing, slowly.
    if (nodes > most) throw new RangeError(`nodes ${nodes}; allowed: up to ${most}`);
    for (let step = 0; step < 35_040; step++) {
      let sweep = 0;
      for (let i = 0; i < nodes; i++) {
        sweep = c[i]! * t[i]! + f[i]! * sweep;
        y[i] = sweep;
      }
      let below = 20;
      for (let i = nodes - 1; i >= 0; i--) {
        below = y[i]! * inverse[i]! + f[i]! * below;
        t[i] = below;
      }
    }
  };
})();
