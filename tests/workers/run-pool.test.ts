import { expect, test } from 'vitest';
import type { RunJob } from '../../src/questions/run-job.ts';
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
