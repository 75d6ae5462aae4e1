// The only thing a question knows of machinery: something that runs many designs and hands back their outcomes,
// as they come, until told to stop. Here also the plainest one, which runs them one after the other in place.

import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { createJobRunner, type RunJob, type RunResult } from './run-job.ts';

/** What a runner needs of an AbortSignal; one is. */
export interface StopSignal {
  readonly aborted: boolean;
  addEventListener(type: 'abort', listener: () => void): void;
  removeEventListener(type: 'abort', listener: () => void): void;
}

export interface RunOptions {
  readonly signal?: StopSignal | undefined;
  /** when stopped, a year under way is run to its end, so that no thread has to start anew; for lists often stopped */
  readonly gentle?: boolean | undefined;
  /** called once for each result, in the order in which they come in */
  readonly onResult?: ((result: RunResult) => void) | undefined;
}

export interface Runner {
  /**
   * Run all jobs.
   *
   * @returns results in the order of the jobs; rejects with an AbortError when stopped, with the cause when a run fails
   */
  run(jobs: readonly RunJob[], options?: RunOptions): Promise<readonly RunResult[]>;
}

/** The error of something stopped on purpose, told by its name. */
export function stopped(): Error {
  const error = new Error('stopped before it was done');
  error.name = 'AbortError';
  return error;
}

/** Runs jobs one after the other where it is called. */
export function createPlainRunner(climate: PreparedClimate): Runner {
  const runJob = createJobRunner(climate);
  return {
    async run(jobs, { signal, onResult } = {}) {
      const results: RunResult[] = [];
      for (const job of jobs) {
        if (signal?.aborted) throw stopped();
        const result = runJob(job);
        results.push(result);
        onResult?.(result);
        await null;
      }
      return results;
    },
  };
}
