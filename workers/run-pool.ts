// Runs of questions on a pool of simulation threads. Each thread is given a climate once, with the first slice that
// needs it, and prepares it once. What a question sees of all this is a Runner.

import type { RunJob, RunResult } from '../src/questions/run-job.ts';
import type { Runner } from '../src/questions/runner.ts';
import type { TypicalYear } from '../src/weather/typical-year.ts';
import { type PoolThread, TaskPool, type TaskPoolOptions } from './task-pool.ts';

/** What the pool needs of the simulation service, near or far. */
export interface RunService {
  keepClimate(key: string, climate: TypicalYear): unknown;
  runJobs(jobs: readonly RunJob[], climateKey: string): Promise<readonly RunResult[]> | readonly RunResult[];
}

export interface ServiceThread {
  readonly service: RunService;
  readonly died: Promise<never>;
  end(): void;
}

interface RunTask {
  readonly job: RunJob;
  readonly climateKey: string;
}

export interface RunPoolOptions extends Pick<TaskPoolOptions<RunTask, RunResult>, 'threads' | 'idleMs'> {
  readonly startThread: () => ServiceThread;
  /** a thread silent on a few years for this long counts as dead [ms]; a minute unless said */
  readonly silentMs?: number;
}

/** A slice of years takes a second on a slow machine; a minute leaves room for one that was put to sleep. */
const SILENT_MS = 60_000;

export class RunPool {
  readonly #climates = new Map<string, TypicalYear>();
  readonly #pool: TaskPool<RunTask, RunResult>;

  constructor({ startThread, threads, idleMs, silentMs = SILENT_MS }: RunPoolOptions) {
    this.#pool = new TaskPool({
      startThread: () => this.#fitted(startThread()),
      threads,
      idleMs,
      silentMs,
    });
  }

  /** Threads alive and, of these, at work. */
  get state(): TaskPool<RunTask, RunResult>['state'] {
    return this.#pool.state;
  }

  /** Remember a climate; another one under the same key reaches every thread before its next slice. */
  keepClimate(key: string, climate: TypicalYear): void {
    this.#climates.set(key, climate);
  }

  /** A runner in one of the climates kept. */
  runner(climateKey: string): Runner {
    return {
      run: (jobs, options = {}) =>
        this.#pool.perform(
          jobs.map((job) => ({ job, climateKey })),
          options,
        ),
    };
  }

  /** End every thread. */
  close(): void {
    this.#pool.close();
  }

  #fitted({ service, died, end }: ServiceThread): PoolThread<RunTask, RunResult> {
    const given = new Map<string, TypicalYear>();
    return {
      died,
      end,
      perform: async (slice) => {
        // A slice is cut from one list, and a list stands in one climate.
        const { climateKey } = slice[0]!;
        const climate = this.#climates.get(climateKey);
        if (!climate) throw new RangeError(`climate is '${climateKey}'; allowed: one given by keepClimate`);
        if (given.get(climateKey) !== climate) {
          await service.keepClimate(climateKey, climate);
          given.set(climateKey, climate);
        }
        return service.runJobs(
          slice.map(({ job }) => job),
          climateKey,
        );
      },
    };
  }
}
