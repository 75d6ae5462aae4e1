// Two engines for one process: that of today's sources and that of commit d823da3, both as one minified file, so that
// neither gains by the way it is loaded. Each brings its own examples and prepares its own climates.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Design } from '../../src/design/design.ts';
import type { ZoneYear } from '../../src/network/year.ts';
import { buildEngine, type Engine } from '../same/build-engine.ts';

export interface Options {
  readonly stepsPerHour?: number;
  readonly warmUpDays?: number;
  readonly lend?: boolean;
}

/** What a bench asks of a year. */
export interface Ran {
  readonly zones: readonly Pick<ZoneYear, 'airC'>[];
  readonly heatKWh: () => number;
}

export interface BenchEngine {
  readonly examples: readonly { readonly id: string; readonly design: Design }[];
  /** a bundled climate of this id, prepared by this engine */
  prepare(id: string): Promise<unknown>;
  run(design: Design, climate: unknown, options?: Options): Ran;
}

/** As built from commit d823da3; its designs, climates and models are its own, so they are handed round unlooked at. */
interface BuiltBefore {
  readonly EXAMPLES: BenchEngine['examples'];
  readBundle(text: string): { readonly ok: boolean; readonly year?: unknown };
  prepareClimate(year: unknown): unknown;
  runYear(
    design: Design,
    climate: unknown,
    options?: Options,
  ): {
    readonly year: { readonly zones: Ran['zones'] };
    figures(): { readonly heating: { readonly energyKWh: number } };
  };
}

const BEFORE = join(import.meta.dirname, 'before/engine.mjs');
const climateText = (id: string) =>
  readFileSync(join(import.meta.dirname, '../../climates', `${id}.txt`), 'utf8');

/** The engine of commit d823da3. */
export async function engineBefore(): Promise<BenchEngine> {
  const { EXAMPLES, readBundle, prepareClimate, runYear }: BuiltBefore = await import(
    pathToFileURL(BEFORE).href
  );
  return {
    examples: EXAMPLES,
    prepare: async (id) => {
      const read = readBundle(climateText(id));
      if (!read.ok) throw new Error(`climates/${id}.txt does not read`);
      return prepareClimate(read.year);
    },
    run: (design, climate, options) => {
      const { year, figures } = runYear(design, climate, options);
      return { zones: year.zones, heatKWh: () => figures().heating.energyKWh };
    },
  };
}

/** The engine of these sources, built into a file of this folder. */
export async function engineToday(folder: string): Promise<BenchEngine> {
  const file = join(folder, 'today.mjs');
  await buildEngine(join(import.meta.dirname, '../..'), file, true);
  const { EXAMPLES, readWeather, prepareClimate, runYear }: Engine = await import(pathToFileURL(file).href);
  type Climate = ReturnType<typeof prepareClimate>;
  return {
    examples: EXAMPLES,
    prepare: async (id) => {
      const read = await readWeather(climateText(id));
      if (!read.ok) throw new Error(`climates/${id}.txt does not read`);
      return prepareClimate(read.year);
    },
    run: (design, climate, options) => {
      const ran = runYear(design, climate as Climate, options);
      return { zones: ran.year.zones, heatKWh: () => ran.figures.heating.energyKWh };
    },
  };
}
