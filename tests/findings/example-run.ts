// The bundled examples run for real in their bundled climates, once a test file: simulating takes a tenth of a second.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { advise } from '../../src/findings/advise.ts';
import type { Run } from '../../src/findings/context.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { Finding } from '../../src/outcomes/outcome.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { readBundle } from '../../src/weather/bundle-form.ts';
import { prepareClimate } from '../../src/weather/prepared-climate.ts';

export interface ExampleRun {
  readonly run: Run;
  readonly findings: readonly Finding[];
}

export function runExample(id: string, climateId?: string): ExampleRun {
  const example = EXAMPLES.find((entry) => entry.id === id);
  if (example === undefined) throw new RangeError(`id is '${id}'; allowed: an example's`);
  const { design } = example;
  const path = join(import.meta.dirname, '../../climates', `${climateId ?? design.climate}.txt`);
  const read = readBundle(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(`${path} cannot be read`);
  const climate = prepareClimate(read.year);
  const model = modelOf(design, climate.year.site, climate.ground);
  const year = simulate(model, climate);
  const outcome = summarise(design, model, climate, year);
  return { run: { design, climate, year, outcome }, findings: advise(design, climate, year, outcome) };
}
