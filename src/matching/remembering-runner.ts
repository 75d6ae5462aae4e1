// A runner that makes no run twice: a fit comes back to places it has been at, and its ways start from one.

import type { MatchJob, MatchResult, MatchRunner } from './house-record.ts';

export interface RememberingRunner extends MatchRunner {
  /** runs made so far */
  readonly runs: number;
}

/** Runs of one record, each made once. */
export function rememberingRunner(runner: MatchRunner): RememberingRunner {
  const known = new Map<string, MatchResult>();
  return {
    get runs() {
      return known.size;
    },
    async run(jobs) {
      const keys = jobs.map((job) => JSON.stringify(job));
      const fresh = new Map<string, MatchJob>();
      keys.forEach((key, i) => {
        if (!known.has(key)) fresh.set(key, jobs[i]!);
      });
      const results = await runner.run([...fresh.values()]);
      [...fresh.keys()].forEach((key, i) => {
        known.set(key, results[i]!);
      });
      return keys.map((key) => known.get(key)!);
    },
  };
}
