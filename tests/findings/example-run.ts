// The bundled examples run for real in their bundled climates, each once for all who ask; nobody changes what they get.
import { runYear } from '../../src/daystone.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Run } from '../../src/findings/context.ts';
import type { Finding } from '../../src/outcomes/outcome.ts';
import { bundledYear } from '../weather/bundled-climates.ts';

export interface ExampleRun {
  readonly run: Run;
  readonly findings: readonly Finding[];
}

const known = new Map<string, ExampleRun>();

export function runExample(id: string, climateId?: string): ExampleRun {
  const key = `${id} in ${climateId}`;
  const run = known.get(key) ?? freshRun(id, climateId);
  known.set(key, run);
  return run;
}

function freshRun(id: string, climateId?: string): ExampleRun {
  const example = EXAMPLES.find((entry) => entry.id === id);
  if (example === undefined) throw new RangeError(`id is '${id}'; allowed: an example's`);
  const { design } = example;
  const { climate, year, outcome } = runYear(design, bundledYear(climateId ?? design.climate));
  return { run: { design, climate, year, outcome }, findings: outcome.findings };
}
