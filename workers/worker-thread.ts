// A pool's thread out of a browser Worker that runs simulation.worker.ts.

import { wrap } from 'comlink';
import type { ServiceThread } from './run-pool.ts';
import type { SimulationService } from './service.ts';

/** A thread for the pool; an error that reaches the worker's top counts as its death. */
export function serviceThreadOf(worker: Worker): ServiceThread {
  const died = new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker failed')));
    worker.addEventListener('messageerror', () => reject(new Error('a message could not be read')));
  });
  died.catch(() => {});
  return { service: wrap<SimulationService>(worker), died, end: () => worker.terminate() };
}
