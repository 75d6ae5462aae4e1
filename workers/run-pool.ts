// Runs of questions on a pool of simulation threads. Each thread is given a climate once, before anything is asked or
// with the first slice that needs it, and prepares it once. What a question sees of all this is a Runner.

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
  /** what makes each thread alive ready */
  readonly #warmers = new Set<(climateKey: string, job: RunJob) => Promise<unknown>>();

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

  /**
   * Start every thread, give it a climate, and have a fresh one run a year that nobody waits for, since a thread's
   * first year takes several times as long as those after it. Threads that are ready are left alone.
   *
   * @param job any in this climate; its result is dropped
   * @returns settles when all are ready
   */
  async warm(climateKey: string, job: RunJob): Promise<void> {
    this.#pool.startAll();
    await Promise.allSettled([...this.#warmers].map((warm) => warm(climateKey, job)));
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
    const given = new Map<string, { readonly climate: TypicalYear; readonly taken: Promise<unknown> }>();
    const give = (climateKey: string): Promise<unknown> => {
      const climate = this.#climates.get(climateKey);
      if (!climate) {
        return Promise.reject(
          new RangeError(`climate is '${climateKey}'; allowed: one given by keepClimate`),
        );
      }
      const known = given.get(climateKey);
      if (known?.climate === climate) return known.taken;
      const taken = (async () => service.keepClimate(climateKey, climate))();
      given.set(climateKey, { climate, taken });
      // Whoever waits for it is told; the next slice tries again.
      taken.catch(() => given.delete(climateKey));
      return taken;
    };
    let hasRun = false;
    const warm = async (climateKey: string, job: RunJob) => {
      await give(climateKey);
      if (hasRun) return;
      hasRun = true;
      await service.runJobs([job], climateKey);
    };
    this.#warmers.add(warm);
    return {
      died,
      end: () => {
        this.#warmers.delete(warm);
        end();
      },
      perform: async (slice) => {
        // A slice is cut from one list, and a list stands in one climate.
        const { climateKey } = slice[0]!;
        await give(climateKey);
        hasRun = true;
        return service.runJobs(
          slice.map(({ job }) => job),
          climateKey,
        );
      },
    };
  }
}
