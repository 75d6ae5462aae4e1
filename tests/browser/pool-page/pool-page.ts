// A page with nothing on it but the pool: runs questions on real workers and tells what it saw. Driven by the browser
// tests and the bench through window.pool.

import denver from '../../../climates/denver.txt?raw';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { ask } from '../../../src/questions/ask.ts';
import { basisOf } from '../../../src/questions/basis.ts';
import { glassAndMassMap } from '../../../src/questions/glass-and-mass-map.ts';
import type { Basis } from '../../../src/questions/question.ts';
import { readBundle } from '../../../src/weather/formats/bundle-form.ts';
import { RunPool } from '../../../workers/run-pool.ts';
import { startSimulationThread } from '../../../workers/simulation-thread.ts';
import { serviceThreadOf } from '../../../workers/worker-thread.ts';
import { yearMarks } from './year-marks.ts';

export interface MapReport {
  /** first picture drawn, all cells in [ms] */
  readonly firstMs: number;
  readonly allMs: number;
  /** runs that were in when the first picture was drawn; 0 when none was drawn on the way */
  readonly firstPictureAt: number;
  readonly runs: number;
  /** longest task on the page's thread meanwhile [ms]; 0 when none reached 50 */
  readonly longestTaskMs: number;
  readonly tooHotHours: readonly (number | null)[];
  readonly finding: string;
}

const bundle = readBundle(denver);
if (!bundle.ok) throw new Error('climates/denver.txt does not read');
const { year } = bundle;

/** A picture at most this often [ms]. */
const PICTURE_MS = 100;
const workers: Worker[] = [];

function poolOf(threads: number, silentMs: number): RunPool {
  const pool = new RunPool({
    threads,
    idleMs: 60_000,
    silentMs,
    startThread: () => {
      const worker = startSimulationThread();
      workers.push(worker);
      return serviceThreadOf(worker);
    },
  });
  pool.keepClimate('denver', year);
  return pool;
}

function basisFor(example: string, mapSide: number, everyCell: boolean): Basis {
  const { design } = EXAMPLES.find(({ id }) => id === example)!;
  return basisOf(design, year.site, { mapSide, everyCell });
}

/** The map of an example on fresh threads, or on ones made `warm`; `killAfter` ends one worker, untold, when so many runs are in. */
async function map(
  example: string,
  mapSide: number,
  everyCell: boolean,
  threads: number,
  killAfter = Number.POSITIVE_INFINITY,
  warm = false,
): Promise<MapReport> {
  let longestTaskMs = 0;
  const observer = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) longestTaskMs = Math.max(longestTaskMs, duration);
  });
  observer.observe({ type: 'longtask' });
  const pool = poolOf(threads, killAfter < Number.POSITIVE_INFINITY ? 5000 : 60_000);
  if (warm) await pool.warm('denver', glassAndMassMap.plan(basisFor(example, mapSide, everyCell))[0]!);
  const start = performance.now();
  let firstMs = 0;
  let firstPictureAt = 0;
  let lastPicture = 0;
  try {
    const answer = await ask(glassAndMassMap, basisFor(example, mapSide, everyCell), pool.runner('denver'), {
      onProgress: ({ done, soFar }) => {
        if (done === killAfter) workers.at(-1)!.terminate();
        const now = performance.now();
        if (firstPictureAt > 0 && now - lastPicture < PICTURE_MS) return;
        lastPicture = now;
        if (soFar().map!.filled === null || firstPictureAt > 0) return;
        firstMs = performance.now() - start;
        firstPictureAt = done;
      },
    });
    const allMs = performance.now() - start;
    // Tasks are told once the thread is at rest.
    await new Promise((resolve) => requestIdleCallback(resolve));
    for (const { duration } of observer.takeRecords()) longestTaskMs = Math.max(longestTaskMs, duration);
    const { tooHotHours } = answer.map!;
    return {
      firstMs,
      allMs,
      firstPictureAt,
      runs: answer.runs.length,
      longestTaskMs,
      tooHotHours,
      finding: answer.finding!.text,
    };
  } finally {
    observer.disconnect();
    pool.close();
  }
}

/** Milliseconds that the first cells of a map take on one thread and on two, warmed up, in turn. */
async function scaling(example: string, cells: number, rounds: number): Promise<[number, number][]> {
  const jobs = glassAndMassMap.plan(basisFor(example, 21, true)).slice(0, cells);
  const pools = [poolOf(1, 60_000), poolOf(2, 60_000)];
  const timed = async (pool: RunPool) => {
    const start = performance.now();
    await pool.runner('denver').run(jobs);
    return performance.now() - start;
  };
  for (const pool of pools) await timed(pool);
  const times: [number, number][] = [];
  for (let round = 0; round < rounds; round++) times.push([await timed(pools[0]!), await timed(pools[1]!)]);
  for (const pool of pools) pool.close();
  return times;
}

/** Stop a map after its first run: what came after, while the same pool ran two years more, and what was at work. */
async function stopped(
  example: string,
): Promise<{ readonly after: number; readonly busy: number; readonly name: string }> {
  const pool = poolOf(2, 60_000);
  const stop = new AbortController();
  let results = 0;
  const name = await ask(glassAndMassMap, basisFor(example, 21, true), pool.runner('denver'), {
    signal: stop.signal,
    onProgress: () => {
      results++;
      stop.abort();
    },
  }).then(
    () => 'none',
    (error: Error) => error.name,
  );
  const { busy } = pool.state;
  await pool.runner('denver').run(glassAndMassMap.plan(basisFor(example, 21, true)).slice(0, 2));
  pool.close();
  return { after: results - 1, busy, name };
}

const api = { map, scaling, stopped, marks: () => yearMarks(year) };
export type PoolPage = typeof api;
declare global {
  interface Window {
    pool: PoolPage;
  }
}
window.pool = api;
