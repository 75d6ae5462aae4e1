// A thread of the bridge or the pool out of a browser Worker that runs simulation.worker.ts.

import { proxy, type Remote, wrap } from 'comlink';
import type { SimulationService } from './service.ts';

export interface WorkerThread {
  readonly service: Remote<SimulationService>;
  /** rejects when the worker dies of itself; a death that the browser tells nobody stays unseen here */
  readonly died: Promise<never>;
  whenSimulated(listener: (run: number) => void): void;
  end(): void;
}

/** A thread out of a Worker; an error that reaches the worker's top counts as its death. */
export function serviceThreadOf(worker: Worker): WorkerThread {
  const died = new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker failed')));
    worker.addEventListener('messageerror', () => reject(new Error('a message could not be read')));
  });
  died.catch(() => {});
  const service = wrap<SimulationService>(worker);
  return {
    service,
    died,
    // A thread that dies before it has heard is told of by `died`.
    whenSimulated: (listener) => void service.whenSimulated(proxy(listener)).catch(() => {}),
    end: () => worker.terminate(),
  };
}
