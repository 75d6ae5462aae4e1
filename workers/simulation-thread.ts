// Starts the simulation worker as a module beside the page.

/** A fresh worker thread. */
export function startSimulationThread(): Worker {
  return new Worker(new URL('./simulation.worker.ts', import.meta.url), { type: 'module' });
}
