// Side-by-side timing: several pieces of work run in turn, round after round, so that a noisy machine slows all of
// them alike; medians and ratios of one run are what to quote.

export interface Line {
  readonly name: string;
  readonly run: () => void;
}

export interface Measured {
  readonly name: string;
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
  return lines.map(({ name }, i) => {
    const sorted = times[i]!.toSorted((a, b) => a - b);
    return { name, medianMs: sorted[rounds >> 1]!, lowMs: sorted[0]!, highMs: sorted.at(-1)! };
  });
}

/** Print lines with their ratio to the first. */
export function printTable(title: string, measured: readonly Measured[]): void {
  const base = measured[0]!.medianMs;
  console.log(`\n${title}`);
  console.log(
    `${'what'.padEnd(52)}${'median'.padStart(10)}${'lowest'.padStart(10)}${'highest'.padStart(10)}${'ratio'.padStart(8)}`,
  );
  for (const { name, medianMs, lowMs, highMs } of measured) {
    const cells = [medianMs, lowMs, highMs].map((ms) => `${ms.toFixed(1)} ms`.padStart(10)).join('');
    console.log(`${name.padEnd(52)}${cells}${(medianMs / base).toFixed(2).padStart(8)}`);
  }
}

/** The bare loop: sweeps down and up one chain of this many nodes, four steps an hour for a year, and nothing else. */
export function bareLoop(nodes: number): () => void {
  const t = new Float64Array(nodes).fill(20);
  const y = new Float64Array(nodes);
  const c = new Float64Array(nodes).fill(0.9);
  const f = new Float64Array(nodes).fill(0.3);
  const inverse = new Float64Array(nodes).fill(0.7);
  return () => {
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
}
