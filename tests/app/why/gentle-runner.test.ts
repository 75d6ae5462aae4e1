import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { stoppedGently } from '../../../src/app/why/gentle-runner.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import type { OutcomeFigures } from '../../../src/outcomes/outcome.ts';
import type { RunJob, RunResult } from '../../../src/questions/run-job.ts';
import type { Runner, StopSignal } from '../../../src/questions/runner.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';
import { RunPool } from '../../../workers/run-pool.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Lets every promise that can settle do so. */
const settle = () => vi.advanceTimersByTimeAsync(0);
const job = (id: string): RunJob => ({ id, label: id, design: EXAMPLES[0]!.design, at: {} });
const resultOf = ({ id }: RunJob): RunResult => ({ id, outcome: {} as OutcomeFigures, frontGlass: null });

/** A pool of one thread, whose years wait until they are let go. */
function heldPool() {
  const counts = { started: 0, ended: 0 };
  const held: (() => void)[] = [];
  const pool = new RunPool({
    threads: 1,
    idleMs: 60_000,
    startThread: () => {
      counts.started++;
      return {
        died: new Promise<never>(() => {}),
        end: () => void counts.ended++,
        service: {
          keepClimate: () => {},
          runJobs: (jobs) => new Promise((resolve) => held.push(() => resolve(jobs.map(resultOf)))),
        },
      };
    },
  });
  pool.keepClimate('here', {} as TypicalYear);
  return { counts, held, runner: pool.runner('here') };
}

/** A run that is stopped while its year is under way, then one of the next design. */
async function stoppedThenNext(
  { held, runner }: ReturnType<typeof heldPool>,
  stoppable: (signal: StopSignal) => Runner,
): Promise<readonly RunResult[]> {
  const stop = new AbortController();
  const first = stoppable(stop.signal).run([job('first')]);
  await settle();
  stop.abort();
  await expect(first).rejects.toThrow('stopped');
  const next = runner.run([job('next')]);
  for (let i = 0; i < 10; i++) {
    await settle();
    held.shift()?.();
  }
  return next;
}

test('a run that is stopped gives up at once and leaves its thread to the next', async () => {
  const pool = heldPool();
  const results = await stoppedThenNext(pool, (signal) => stoppedGently(pool.runner, signal));
  expect(results.map(({ id }) => id)).toEqual(['next']);
  expect(pool.counts).toEqual({ started: 1, ended: 0 });
});

test('of a runner that is not gentle the thread is ended, and another started', async () => {
  const pool = heldPool();
  await stoppedThenNext(pool, (signal) => ({ run: (jobs) => pool.runner.run(jobs, { signal }) }));
  expect(pool.counts).toEqual({ started: 2, ended: 1 });
});
