// The pool with real worker threads and real years: the same results as in place, nothing lost when a thread is
// killed, nothing left when stopped.
import { afterAll, expect, test } from 'vitest';
import { startSimulation } from '../../src/cli/run-pool.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { RunJob } from '../../src/questions/run-job.ts';
import { createPlainRunner } from '../../src/questions/runner.ts';
import { withGlassM2 } from '../../src/questions/variation.ts';
import { RunPool } from '../../workers/run-pool.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';

const JOBS: readonly RunJob[] = [2, 7, 12, 17].map((glassM2) => ({
  id: `${glassM2}`,
  label: `${glassM2} m²`,
  design: withGlassM2(EXAMPLES[2]!.design, glassM2),
  at: { glassM2 },
}));
const inPlace = createPlainRunner(bundledClimate('denver')).run(JOBS);

// A thread takes as long to start as several years to run, so one pool does for all; as createThreadPool makes it, with the
// ends of its threads in hand.
const ends: (() => void)[] = [];
const pool = new RunPool({
  threads: 2,
  idleMs: 60_000,
  startThread: () => {
    const thread = startSimulation();
    ends.push(thread.end);
    return thread;
  },
});
pool.keepClimate('denver', bundledYear('denver'));
afterAll(() => pool.close());

test('two threads give what one thread in place gives', async () => {
  expect(await pool.runner('denver').run(JOBS)).toEqual(await inPlace);
  expect(ends).toHaveLength(2);
});

test('a thread killed in the middle loses no result', async () => {
  let results = 0;
  const answer = await pool.runner('denver').run(JOBS, {
    onResult: () => {
      results++;
      // From outside, as the system would: the pool is not told.
      if (results === 2) ends[0]!();
    },
  });
  expect(answer).toEqual(await inPlace);
  expect(results).toBe(JOBS.length);
});

test('stopping leaves no run behind', async () => {
  const stop = new AbortController();
  let results = 0;
  const answer = pool.runner('denver').run(JOBS, {
    signal: stop.signal,
    onResult: () => {
      results++;
      stop.abort();
    },
  });
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect(pool.state.busy).toBe(0);
  const seen = results;
  // Two years more, one for each thread: what was left running would have come meanwhile.
  await pool.runner('denver').run(JOBS.slice(0, 2));
  expect(results).toBe(seen);
  expect(results).toBeLessThan(JOBS.length);
});

test('a climate that was never given is named', async () => {
  await expect(pool.runner('atlantis').run(JOBS)).rejects.toThrow("climate is 'atlantis'");
});
