// Years that were run once are not run again: what was tried for the page's changes is known when a question, the report or
// the next change asks for the same house. A runner in, a runner out; what it remembers goes with the climate.

import type { RunJob, RunResult } from '../../questions/run-job.ts';
import { type Runner, stopped } from '../../questions/runner.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';

/** Results remembered of a climate, the oldest let go first; each holds some 5 kB. */
const MOST = 600;

const known = new WeakMap<TypicalYear, Map<string, RunResult>>();

/** The same runner, which runs nothing a second time in a climate. */
export function withKnownRuns(runner: Runner, year: TypicalYear): Runner {
  const results = known.get(year) ?? new Map<string, RunResult>();
  known.set(year, results);
  const keep = (key: string, result: RunResult) => {
    results.set(key, result);
    if (results.size > MOST) results.delete(results.keys().next().value!);
  };
  return {
    async run(jobs, options = {}) {
      const { signal, onResult } = options;
      const keys = new Map(jobs.map((job) => [job.id, keyOf(job)]));
      const found = new Map<string, RunResult>();
      for (const { id } of jobs) {
        if (signal?.aborted) throw stopped();
        const before = results.get(keys.get(id)!);
        if (before === undefined) continue;
        const result = { ...before, id };
        found.set(id, result);
        onResult?.(result);
      }
      const wanted = jobs.filter(({ id }) => !found.has(id));
      const run = await runner.run(wanted, {
        ...options,
        onResult(result) {
          keep(keys.get(result.id)!, result);
          onResult?.(result);
        },
      });
      for (const result of run) found.set(result.id, result);
      return jobs.map(({ id }) => found.get(id)!);
    },
  };
}

/** All that a result depends on but the climate. */
function keyOf({ design, change = {}, frontGlass, coldSpell }: RunJob): string {
  return JSON.stringify([frontGlass ?? null, coldSpell ?? null, change, design]);
}
