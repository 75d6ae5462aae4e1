// Runs of a house's record on a pool of simulation threads. Each thread is given the record once, with its first slice.

import type { HouseRecord, MatchJob, MatchResult, MatchRunner } from '../src/matching/house-record.ts';
import type { StopSignal } from '../src/questions/runner.ts';
import { TaskPool } from './task-pool.ts';

/** What the pool needs of a thread's service, near or far. */
export interface MatchService {
  keepRecord(record: HouseRecord): unknown;
  runMatches(jobs: readonly MatchJob[]): Promise<readonly MatchResult[]>;
}

export interface MatchThread {
  readonly service: MatchService;
  readonly died: Promise<never>;
  end(): void;
}

export interface MatchPool extends MatchRunner {
  close(): void;
}

const IDLE_MS = 10_000;
/** A slice of fortnights takes a second on a slow machine; a minute leaves room for one that was put to sleep. */
const SILENT_MS = 60_000;

/**
 * A runner of one record; close it when done.
 *
 * @param onRun told after each run
 */
export function createMatchPool(
  record: HouseRecord,
  startThread: () => MatchThread,
  threads: number,
  { signal, onRun }: { readonly signal?: StopSignal; readonly onRun?: () => void } = {},
): MatchPool {
  const pool = new TaskPool<MatchJob, MatchResult>({
    threads,
    idleMs: IDLE_MS,
    silentMs: SILENT_MS,
    startThread: () => {
      const { service, died, end } = startThread();
      let taken: Promise<unknown> | null = null;
      return {
        died,
        end,
        perform: async (slice) => {
          taken ??= (async () => service.keepRecord(record))();
          await taken;
          return service.runMatches(slice);
        },
      };
    },
  });
  return { run: (jobs) => pool.perform(jobs, { signal, onResult: onRun }), close: () => pool.close() };
}
