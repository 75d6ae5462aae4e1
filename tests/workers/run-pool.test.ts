import { expect, test } from 'vitest';
import type { RunJob, RunResult } from '../../src/questions/run-job.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';
import { RunPool } from '../../workers/run-pool.ts';

test('a climate given anew under its key reaches a thread before its next run', async () => {
  const log: string[] = [];
  const pool = new RunPool({
    threads: 1,
    idleMs: 60_000,
    startThread: () => ({
      died: new Promise<never>(() => {}),
      end: () => {},
      service: {
        keepClimate: (_, { id }) => log.push(id),
        runJobs: () => {
          log.push('run');
          return [];
        },
      },
    }),
  });
  const yearOf = (id: string) => ({ id }) as TypicalYear;
  const run = () => pool.runner('own:station').run([{ id: 'a' } as RunJob]);
  pool.keepClimate('own:station', yearOf('first'));
  await run();
  await run();
  pool.keepClimate('own:station', yearOf('corrected'));
  await run();
  pool.close();
  expect(log).toEqual(['first', 'run', 'run', 'corrected', 'run']);
});

/** Threads that log what they are asked for; each has a number. */
function loggingPool(threads: number, keep: (thread: number, log: string[]) => unknown) {
  const log: string[] = [];
  let started = 0;
  const pool = new RunPool({
    threads,
    idleMs: 60_000,
    startThread: () => {
      const thread = ++started;
      return {
        died: new Promise<never>(() => {}),
        end: () => log.push(`${thread} ends`),
        service: {
          keepClimate: () => keep(thread, log),
          runJobs: (jobs) => {
            log.push(`${thread} runs ${jobs.map(({ id }) => id).join(' ')}`);
            return jobs.map(({ id }) => ({ id }) as RunResult);
          },
        },
      };
    },
  });
  pool.keepClimate('here', {} as TypicalYear);
  return { pool, log };
}

const job = (id: string) => ({ id }) as RunJob;

test('made ready, every thread has the climate and one year behind it, once; the runs find it there', async () => {
  const { pool, log } = loggingPool(2, (thread, lines) => lines.push(`${thread} prepares`));
  await pool.warm('here', job('warm'));
  expect(log.toSorted()).toEqual(['1 prepares', '1 runs warm', '2 prepares', '2 runs warm']);
  expect(pool.state).toEqual({ threads: 2, busy: 0 });
  await pool.warm('here', job('warm'));
  expect(log).toHaveLength(4);
  await pool.runner('here').run(['a', 'b'].map(job));
  expect(log.slice(4).toSorted()).toEqual(['1 runs a', '2 runs b']);
  pool.close();
  expect(log.slice(6).toSorted()).toEqual(['1 ends', '2 ends']);
});

test('runs asked for while a thread still prepares wait for it and do not prepare again', async () => {
  let ready = () => {};
  const { pool, log } = loggingPool(1, (_, lines) => {
    lines.push('prepares');
    return new Promise<void>((resolve) => {
      ready = resolve;
    });
  });
  const warming = pool.warm('here', job('warm'));
  const running = pool.runner('here').run([job('a')]);
  await null;
  expect(log).toEqual(['prepares']);
  ready();
  expect((await running).map(({ id }) => id)).toEqual(['a']);
  await warming;
  expect(log.filter((line) => line === 'prepares')).toHaveLength(1);
  pool.close();
});

test('a climate that a thread could not take is tried again with the next runs', async () => {
  let tries = 0;
  const { pool } = loggingPool(1, () => {
    if (++tries === 1) throw new Error('no room');
  });
  await pool.warm('here', job('warm'));
  expect((await pool.runner('here').run([job('a')])).map(({ id }) => id)).toEqual(['a']);
  expect(tries).toBe(2);
  await expect(pool.runner('nowhere').run([job('a')])).rejects.toThrow("climate is 'nowhere'");
  pool.close();
});
