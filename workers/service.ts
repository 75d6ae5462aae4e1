// What the simulation worker does, as plain functions a test can call without any thread: keep climates,
// prepared once each, and run designs in them. In: climate texts or years and designs. Out: the year and its
// outcome. Climates stay here; only results travel.

import type { Design } from '../src/design/design.ts';
import { findingsOf } from '../src/findings/findings.ts';
import type { Units } from '../src/findings/wording.ts';
import { modelOf } from '../src/model/from-design.ts';
import { simulate } from '../src/network/simulate.ts';
import type { Year } from '../src/network/year.ts';
import type { Outcome } from '../src/outcomes/outcome.ts';
import { summarise } from '../src/outcomes/summarise.ts';
import { createJobRunner, type RunJob, type RunResult } from '../src/questions/run-job.ts';
import { type PreparedClimate, prepareClimate } from '../src/weather/prepared-climate.ts';
import type { ReadResult, SiteHints } from '../src/weather/read-result.ts';
import { readWeather } from '../src/weather/reader.ts';
import type { TypicalYear } from '../src/weather/typical-year.ts';

export interface RunAnswer {
  readonly outcome: Outcome;
  /** without its panes: they are half the bytes, and no picture shows them hour by hour */
  readonly year: Year;
  /** time the simulation itself took [ms] */
  readonly tookMs: number;
}

export interface RunOptions {
  /** keep node temperatures by hour */
  readonly history: boolean;
  /** units of the findings' sentences */
  readonly units: Units;
}

export interface SimulationService {
  /** Take a climate in under a key; an older one of the same key is dropped. */
  keepClimate(key: string, climate: TypicalYear): void;
  /** Read a weather file in any known format; nothing is kept. */
  readClimate(content: Uint8Array | string, hints?: SiteHints): Promise<ReadResult>;
  /** Run the years of a question; small results only. Throws RangeError when the climate is not kept. */
  runJobs(jobs: readonly RunJob[], climateKey: string): readonly RunResult[];
  /** Run one year; throws RangeError when the climate is not kept. */
  run(design: Design, climateKey: string, options: RunOptions): RunAnswer;
}

/** A service with no climates yet. */
export function createSimulationService(): SimulationService {
  const climates = new Map<string, PreparedClimate>();
  const runners = new Map<string, (job: RunJob) => RunResult>();
  const kept = (key: string): PreparedClimate => {
    const climate = climates.get(key);
    if (!climate) throw new RangeError(`climate is '${key}'; allowed: one given by keepClimate`);
    return climate;
  };
  return {
    keepClimate(key, climate) {
      climates.set(key, prepareClimate(climate));
      runners.delete(key);
    },
    readClimate(content, hints) {
      return readWeather(content, hints);
    },
    runJobs(jobs, climateKey) {
      const runJob = runners.get(climateKey) ?? createJobRunner(kept(climateKey));
      runners.set(climateKey, runJob);
      return jobs.map(runJob);
    },
    run(design, climateKey, { history, units }) {
      const climate = kept(climateKey);
      const start = performance.now();
      const model = modelOf(design, climate.year.site, climate.ground);
      const year = simulate(model, climate, { history });
      const tookMs = performance.now() - start;
      const outcome = summarise(design, model, climate, year);
      const findings = findingsOf({ design, climate, year, outcome, units });
      // Copied on the way out, not handed over: once an array's memory has left a thread, every array access of the
      // thread is checked for it, and a year takes a sixth longer; the copy takes a millisecond.
      return { outcome: { ...outcome, findings }, year: { ...year, panes: [] }, tookMs };
    },
  };
}
