// Climates kept under keys, each prepared once, and the runs of questions in them: what a thread of the pool is asked
// for. All that a thread of the command line does; in the page it is a part of the simulation service. What matches need is
// loaded with the first of them.

import type { HouseRecord, MatchJob, MatchResult } from '../src/matching/house-record.ts';
import { createJobRunner, type RunJob, type RunResult } from '../src/questions/run-job.ts';
import { type PreparedClimate, prepareClimate } from '../src/weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../src/weather/typical-year.ts';

export interface KeptRuns {
  /** Take a climate in under a key; an older one of the same key is dropped. */
  keepClimate(key: string, climate: TypicalYear): void;
  /** Run the years of a question; small results only. Throws RangeError when the climate is not kept. */
  runJobs(jobs: readonly RunJob[], climateKey: string): readonly RunResult[];
  /** Take a house's record in; the one before is dropped. */
  keepRecord(record: HouseRecord): void;
  /** Run the record's days, once for each job. Throws RangeError when no record is kept. */
  runMatches(jobs: readonly MatchJob[]): Promise<readonly MatchResult[]>;
}

export interface KeptClimates extends KeptRuns {
  /** The climate of a key; throws RangeError when it is not kept. */
  kept(key: string): PreparedClimate;
}

/** A service with no climates yet. */
export function createRunService(): KeptClimates {
  const climates = new Map<string, PreparedClimate>();
  const runners = new Map<string, (job: RunJob) => RunResult>();
  let house: HouseRecord | null = null;
  const kept = (key: string): PreparedClimate => {
    const climate = climates.get(key);
    if (!climate) throw new RangeError(`climate is '${key}'; allowed: one given by keepClimate`);
    return climate;
  };
  return {
    kept,
    keepClimate(key, climate) {
      climates.set(key, prepareClimate(climate));
      runners.delete(key);
    },
    runJobs(jobs, climateKey) {
      const runJob = runners.get(climateKey) ?? createJobRunner(kept(climateKey));
      runners.set(climateKey, runJob);
      return jobs.map(runJob);
    },
    keepRecord(record) {
      house = record;
    },
    async runMatches(jobs) {
      if (house === null) throw new RangeError('record is none; allowed: one given by keepRecord');
      const record = house;
      const { runMatch } = await import('../src/matching/house-record.ts');
      return jobs.map((job) => runMatch(record, job));
    },
  };
}
