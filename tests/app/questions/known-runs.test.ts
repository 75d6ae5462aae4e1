import { expect, test } from 'vitest';
import { withKnownRuns } from '../../../src/app/questions/known-runs.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import type { OutcomeFigures } from '../../../src/outcomes/outcome.ts';
import type { RunJob, RunResult } from '../../../src/questions/run-job.ts';
import type { Runner } from '../../../src/questions/runner.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';

const design = EXAMPLES[0]!.design;
const job = (id: string, of = design, more: Partial<RunJob> = {}): RunJob => ({
  id,
  label: id,
  design: of,
  at: {},
  ...more,
});

/** A climate nobody reads. */
const climate = () => ({}) as TypicalYear;

/** Notes what it ran; each result is a fresh object. */
function noting(): { readonly runner: Runner; readonly ran: string[] } {
  const ran: string[] = [];
  return {
    ran,
    runner: {
      run: async (jobs, options = {}) =>
        jobs.map(({ id }): RunResult => {
          ran.push(id);
          const result = { id, outcome: {} as OutcomeFigures, frontGlass: null };
          options.onResult?.(result);
          return result;
        }),
    },
  };
}

test('a house that was run is not run again, and is told under the name it is asked by', async () => {
  const year = climate();
  const { runner, ran } = noting();
  const first = await withKnownRuns(runner, year).run([job('a'), job('b', { ...design, name: 'b' })]);
  const seen: string[] = [];
  // Asked for anew, by a list of its own: equal houses count, not the same object.
  const second = await withKnownRuns(runner, year).run(
    [job('c', { ...design, name: 'c' }), job('again', structuredClone(design))],
    { onResult: ({ id }) => seen.push(id) },
  );
  expect(ran).toEqual(['a', 'b', 'c']);
  expect(second.map(({ id }) => id)).toEqual(['c', 'again']);
  expect(second[1]!.outcome).toBe(first[0]!.outcome);
  expect(seen).toEqual(['again', 'c']);
});

test('another climate, a changed year and whatever else is reported are run', async () => {
  const year = climate();
  const { runner, ran } = noting();
  const ask = (jobs: readonly RunJob[], of = year) => withKnownRuns(runner, of).run(jobs);
  await ask([job('drawn')]);
  await ask([job('elsewhere')], climate());
  await ask([
    job('warmer', design, { change: { groundK: 1 } }),
    job('warmer still', design, { change: { groundK: 2 } }),
  ]);
  await ask([job('glass', design, { frontGlass: true }), job('spell', design, { coldSpell: true })]);
  expect(ran).toEqual(['drawn', 'elsewhere', 'warmer', 'warmer still', 'glass', 'spell']);
});

test('what is stopped runs nothing, and what failed is run when it is asked for again', async () => {
  const year = climate();
  const { runner, ran } = noting();
  const stop = new AbortController();
  stop.abort();
  await expect(withKnownRuns(runner, year).run([job('a')], { signal: stop.signal })).rejects.toThrow(
    'stopped',
  );
  expect(ran).toEqual([]);
  const broken: Runner = { run: () => Promise.reject(new Error('no thread')) };
  await expect(withKnownRuns(broken, year).run([job('a')])).rejects.toThrow('no thread');
  await withKnownRuns(runner, year).run([job('a')]);
  expect(ran).toEqual(['a']);
});

test('of many houses the oldest are let go', async () => {
  const year = climate();
  const { runner, ran } = noting();
  const many = Array.from({ length: 700 }, (_, i) => job(`${i}`, { ...design, name: `${i}` }));
  await withKnownRuns(runner, year).run(many);
  ran.length = 0;
  await withKnownRuns(runner, year).run([many[0]!, many[699]!]);
  expect(ran).toEqual(['0']);
});
