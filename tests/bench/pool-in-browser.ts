// The pool in a browser, timed: a whole map of glass and mass for a house with a sunspace, and one worker against two.
import { openPool } from '../browser/served-pool.ts';

const CELLS = 24;
const ROUNDS = 15;

/** Print both tables. */
export async function benchPool(): Promise<void> {
  const open = await openPool();
  try {
    const threads = await open.page.evaluate(() => navigator.hardwareConcurrency);
    const cold = await open.page.evaluate((count) => window.pool.map('closed', 5, false, count), threads);
    console.log(
      `\nFirst picture of a map from fresh workers: ${(cold.firstMs / 1000).toFixed(2)} s (below from workers made ready, as when the panel is open)`,
    );
    for (const everyCell of [false, true]) {
      const report = await open.page.evaluate(
        ([every, count]) => window.pool.map('closed', 21, every, count, undefined, true),
        [everyCell, threads] as const,
      );
      const which = everyCell ? 'every cell run' : 'every second cell and those beside the limit run';
      console.log(`\nMap of glass and mass in the browser, 21 × 21, two zones, ${threads} workers, ${which}`);
      console.log(`  runs             ${report.runs}`);
      console.log(`  first picture    ${(report.firstMs / 1000).toFixed(2)} s (wanted: under 1)`);
      console.log(`  whole map        ${(report.allMs / 1000).toFixed(1)} s (wanted: under 8)`);
      console.log(
        `  longest task     ${report.longestTaskMs.toFixed(0)} ms on the page's thread, 0 = none over 50`,
      );
    }
    const times = await open.page.evaluate(
      ([cells, rounds]) => window.pool.scaling('closed', cells, rounds),
      [CELLS, ROUNDS] as const,
    );
    console.log(`\nOne worker against two, ${CELLS} runs each, in turn, ${ROUNDS} rounds`);
    const medianOf = (values: readonly number[]) => values.toSorted((a, b) => a - b)[ROUNDS >> 1]!;
    const ratios = times.map(([one, two]) => one / two);
    console.log(
      `  ${(medianOf(times.map(([one]) => one)) / CELLS).toFixed(1)} ms a run, ${(medianOf(times.map(([, two]) => two)) / CELLS).toFixed(1)} ms a run (medians)`,
    );
    console.log(
      `  ${ratios.map((ratio) => ratio.toFixed(2)).join(' ')}: median ${medianOf(ratios).toFixed(2)} times`,
    );
  } finally {
    await open.close();
  }
}
