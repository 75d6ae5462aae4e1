// The page's one pool for many runs: the questions and the changes that are tried share it.

import { createPagePool } from '../../../workers/page-pool.ts';
import type { RunPool } from '../../../workers/run-pool.ts';
import { startSimulationThread } from '../../../workers/simulation-thread.ts';
import type { Design } from '../../design/design.ts';
import type { Runner } from '../../questions/runner.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { withKnownRuns } from './known-runs.ts';

let pool: RunPool | null = null;

/** Make the workers ready for a design's climate before anything is asked. */
export function warmRunner(design: Design, climateKey: string, year: TypicalYear): void {
  pageRunner(climateKey, year);
  void pool?.warm(climateKey, { id: 'warm', label: 'as drawn', design, at: {} });
}

/** A runner in a climate, on every core the machine has; what was run before is known. */
export function pageRunner(climateKey: string, year: TypicalYear): Runner {
  pool ??= createPagePool(startSimulationThread);
  pool.keepClimate(climateKey, year);
  return withKnownRuns(pool.runner(climateKey), year);
}
