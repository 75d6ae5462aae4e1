// The same worker carried inside the page's own file, for the one-file build: a page opened from disk may not
// load a second file.
import SimulationWorker from './simulation.worker.ts?worker&inline';

/** A fresh worker thread. */
export function startSimulationThread(): Worker {
  return new SimulationWorker();
}
