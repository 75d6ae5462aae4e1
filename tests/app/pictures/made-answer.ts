// The newest answer as the page has it, made by the worker's own service without a thread: its panes are gone.
import { EXAMPLES } from '../../../src/design/examples.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { createSimulationService } from '../../../workers/service.ts';
import { bundledYear } from '../../weather/bundled-climates.ts';

export interface MadeAnswer {
  readonly answer: NumberedAnswer;
  readonly climate: TypicalYear;
}

const known = new Map<string, Promise<MadeAnswer>>();

/** An example run in its own climate, once for all who ask; nobody changes what they get. */
export function exampleAnswer(id: string, units: 'metric' | 'us' = 'metric'): Promise<MadeAnswer> {
  const key = `${id} in ${units}`;
  const answer = known.get(key) ?? freshAnswer(id, units);
  known.set(key, answer);
  return answer;
}

async function freshAnswer(id: string, units: 'metric' | 'us'): Promise<MadeAnswer> {
  const example = EXAMPLES.find((entry) => entry.id === id);
  if (!example) throw new RangeError(`example is '${id}'; allowed: one of the list`);
  const { design } = example;
  const climate = bundledYear(design.climate);
  const service = createSimulationService();
  service.keepClimate(design.climate, climate);
  const job = { design, climateKey: design.climate, history: false, units };
  return { answer: { ...service.run(design, design.climate, job), number: 1, job }, climate };
}
