// The pool of simulation threads for questions on the command line: as many as there are cores, unless told.

import { availableParallelism } from 'node:os';
import { RunPool } from '../../workers/run-pool.ts';
import type { KeptRuns } from '../../workers/run-service.ts';
import { startThread } from './threads.ts';

const IDLE_MS = 10_000;

/** A pool of worker threads; close it when done, or the process waits for its rest. */
export function createThreadPool(threads: number = availableParallelism()): RunPool {
  return new RunPool({
    startThread: () => startThread<KeptRuns>(new URL('./simulation-thread.ts', import.meta.url)),
    threads,
    idleMs: IDLE_MS,
  });
}
