// Changed climates inside a runner: what a change does, and that no change leaves the site's own year.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { createJobRunner, type RunJob } from '../../src/questions/run-job.ts';
import { createPlainRunner } from '../../src/questions/runner.ts';
import { varied } from '../../src/questions/variation.ts';
import { madeClimate } from '../outcomes/made-climate.ts';

const climate = madeClimate({
  dryBulbC: (hour) => 12 - 12 * Math.cos((2 * Math.PI * hour) / 8760),
  globalHorizontal: (hour) => Math.max(0, 700 * Math.sin(((hour % 24) - 6) / 3.82)),
});
const job = (changes: Partial<RunJob> = {}): RunJob => ({
  id: 'a',
  label: 'a',
  design: EXAMPLES[2]!.design,
  at: {},
  ...changes,
});

test('a run is the same again, and an empty change is no change', () => {
  const runJob = createJobRunner(climate);
  const first = runJob(job());
  expect(runJob(job({ change: {} }))).toEqual(first);
  expect(first.frontGlass).toBeNull();
});

test('a warmer year, brighter ground and warmer deep ground each warm the house', () => {
  const runJob = createJobRunner(climate);
  // Nobody opens a window, since that would carry the warmth off again.
  const design = varied(EXAMPLES[2]!.design, { 'vents.habit': 'never' });
  const mean = (changes: Partial<RunJob>) => runJob(job({ design, ...changes })).outcome.zones.house.meanAirC;
  const plain = mean({});
  expect(mean({ change: { shiftK: new Array(12).fill(3) } })).toBeGreaterThan(plain);
  expect(mean({ change: { albedoTimes: 2 } })).toBeGreaterThan(plain);
  expect(mean({ change: { groundK: 4 } })).toBeGreaterThan(plain);
});

test('a runner that is told to stop runs no further job', async () => {
  const stop = new AbortController();
  const seen: string[] = [];
  const jobs = ['a', 'b', 'c'].map((id) => job({ id }));
  const answer = createPlainRunner(climate).run(jobs, {
    signal: stop.signal,
    onResult: ({ id }) => {
      seen.push(id);
      stop.abort();
    },
  });
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect(seen).toEqual(['a']);
});
