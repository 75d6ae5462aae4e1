// What the simulation worker does, as plain functions a test can call without any thread: keep climates,
// prepared once each, and run designs in them. In: climate texts or years and designs. Out: the year and its
// outcome. Climates stay here; only results travel.

import { type ProxyMarked, proxy } from 'comlink';
import { runYear } from '../src/daystone.ts';
import type { Design } from '../src/design/design.ts';
import type { Units } from '../src/findings/wording.ts';
import type { Year } from '../src/network/year.ts';
import type { Outcome } from '../src/outcomes/outcome.ts';
import { type ClimateSummary, summariseClimate } from '../src/weather/prepared/climate-summary.ts';
import { type Doubt, doubtsAbout } from '../src/weather/prepared/doubts.ts';
import { prepareClimate } from '../src/weather/prepared/prepared-climate.ts';
import type { ReadResult, SiteHints } from '../src/weather/read-result.ts';
import { lookAtWeather, type ReadStep, readWeather, type WeatherLook } from '../src/weather/reader.ts';
import type { TableChoices } from '../src/weather/table/hourly-table.ts';
import { HOURS, type TypicalYear } from '../src/weather/typical-year.ts';
import type { MatchDesk } from './match-desk.ts';
import { createRunService, type KeptRuns } from './run-service.ts';

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

/** A run the page asks for; its climate was kept before, under this key. */
export interface RunJob extends RunOptions {
  readonly design: Design;
  readonly climateKey: string;
}

/** A climate at a glance: its figures by month and what should make its user careful. */
export interface ClimateGlance {
  readonly summary: ClimateSummary;
  readonly doubts: readonly Doubt[];
}

export interface SimulationService extends KeptRuns {
  /** What a weather file is, and for a table what its columns are taken for; nothing is kept. */
  lookAtClimate(
    content: Uint8Array | string,
    choices?: TableChoices,
    fileName?: string,
  ): Promise<WeatherLook>;
  /**
   * Read a weather file in any known format; nothing is kept.
   *
   * @param onStep told what the reader is at; across a channel a proxy
   */
  readClimate(
    content: Uint8Array | string,
    hints?: SiteHints,
    choices?: TableChoices,
    onStep?: (step: ReadStep) => void,
  ): Promise<ReadResult>;
  /** Figures and doubts of a climate; nothing is kept. */
  glanceAt(climate: TypicalYear): ClimateGlance;
  /** Tell a listener whenever a year has been run and only its answer is left to put together: which, counted from 1. */
  whenSimulated(listener: (run: number) => void): void;
  /** A desk at which houses are held against their records. */
  matchDesk(): Promise<MatchDesk & ProxyMarked>;
  /** Run one year; throws RangeError when the climate is not kept. */
  run(design: Design, climateKey: string, options: RunOptions): RunAnswer;
}

/** A service with no climates yet. */
export function createSimulationService(): SimulationService {
  const { kept, ...runs } = createRunService();
  let count = 0;
  let simulated: (run: number) => void = () => {};
  return {
    ...runs,
    lookAtClimate(content, choices, fileName) {
      return lookAtWeather(content, choices, fileName);
    },
    readClimate(content, hints, choices, onStep) {
      return readWeather(content, hints, choices, onStep);
    },
    glanceAt(climate) {
      const prepared = prepareClimate(climate);
      return { summary: summariseClimate(prepared), doubts: doubtsAbout(prepared) };
    },
    whenSimulated(listener) {
      simulated = listener;
    },
    async matchDesk() {
      const { createMatchDesk } = await import('./match-desk.ts');
      return proxy(createMatchDesk());
    },
    run(design, climateKey, { history, units }) {
      const run = ++count;
      const start = performance.now();
      const done = runYear(design, kept(climateKey), { history, lend: true, units });
      const tookMs = performance.now() - start;
      simulated(run);
      return { outcome: done.outcome, year: inOneBlock({ ...done.year, panes: [] }), tookMs };
    },
  };
}

/**
 * A year whose hourly columns lie in one block of memory of its own: copied on the way out in one piece, not in thirty.
 * Not handed over: once an array's memory has left a thread, every array access of the thread is checked for it, and a
 * year takes a sixth longer.
 */
function inOneBlock(year: Year): Year {
  const isColumn = (value: unknown): value is Float64Array =>
    value instanceof Float64Array && value.length === HOURS;
  const records = [...year.zones, ...(year.rooms ?? []), ...year.openings];
  const count = records.reduce((sum, record) => sum + Object.values(record).filter(isColumn).length, 0);
  const block = new Float64Array(count * HOURS);
  let at = 0;
  const moved = <T extends object>(record: T): T => {
    const entries = Object.entries(record).map(([name, value]) => {
      if (!isColumn(value)) return [name, value];
      block.set(value, at);
      at += HOURS;
      return [name, block.subarray(at - HOURS, at)];
    });
    return Object.fromEntries(entries) as T;
  };
  return {
    ...year,
    zones: year.zones.map(moved),
    ...(year.rooms && { rooms: year.rooms.map(moved) }),
    openings: year.openings.map(moved),
  };
}
