// A runner for what is run beside the hand: when the design moves on, what waits is given up and threads stay. The next design's
// runs follow at once, and a thread that is ended takes longer to start anew than to end its years.

import type { Runner, StopSignal } from '../../questions/runner.ts';

/** The same runner, stopped by a signal; years under way are then run to their end. */
export function stoppedGently(runner: Runner, signal: StopSignal | undefined): Runner {
  return { run: (jobs, options) => runner.run(jobs, { ...options, signal, gentle: true }) };
}
