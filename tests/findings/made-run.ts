// Runs made by hand for the tests of rules: a design, a year made by formula, and the outcome of that year, with
// whatever a case wants changed. The base case is a calm house: comfortable, dry, clean, easy.
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Run } from '../../src/findings/context.ts';
import type { Year } from '../../src/network/year.ts';
import type { OutcomeFigures, ZoneOutcome } from '../../src/outcomes/outcome.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { type MadeClimate, madeClimate } from '../outcomes/made-climate.ts';
import { MADE_MODEL } from '../outcomes/made-model.ts';
import { hourly, type MadeZone, madePane, madeYear, madeZone } from '../outcomes/made-year.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;

type Sections = { readonly [S in keyof Design]?: Partial<Design[S]> };

export interface MadeRun {
  readonly design?: Sections;
  readonly climate?: MadeClimate;
  readonly house?: MadeZone;
  readonly sunspace?: MadeZone;
  readonly year?: Partial<Year>;
  /** figures of the outcome that the case sets outright */
  readonly houseOutcome?: Partial<ZoneOutcome>;
  readonly outcome?: Partial<OutcomeFigures>;
  readonly units?: 'metric' | 'us';
}

/** The modest example with sections changed. */
export function madeDesign(sections: Sections = {}): Design {
  const changed = Object.entries(sections).map(([key, value]) => [
    key,
    Array.isArray(value) ? value : { ...(MODEST[key as keyof Design] as object), ...(value as object) },
  ]);
  return { ...MODEST, ...Object.fromEntries(changed) };
}

/** The base case, made once for all who ask; nobody changes what they get. */
export const CALM: MadeRun = {};
let calm: Run | null = null;

export function madeRun(made: MadeRun = CALM): Run {
  if (made !== CALM) return freshRun(made);
  calm ??= freshRun(CALM);
  return calm;
}

function freshRun(made: MadeRun): Run {
  const design = madeDesign(made.design);
  const climate = madeClimate(made.climate);
  const zones = [madeZone('house', made.house)];
  if (design.sunspace.join !== 'none') zones.push(madeZone('sunspace', made.sunspace));
  const panes = [madePane('front', { transmittedW: hourly(200) })];
  const year = madeYear({ zones, panes, ...made.year });
  // A made year is that of a house in one; rules that read the plan read it of the design.
  const { rooms: _, ...whole } = design;
  const summed = summarise(whole, MADE_MODEL, climate, year);
  const outcome: OutcomeFigures = {
    ...summed,
    mass: { volumeM3: 20, heatCapacityKWhPerK: 10, kgPerM2Glass: 900 },
    ...made.outcome,
    zones: { ...summed.zones, house: { ...summed.zones.house, ...made.houseOutcome } },
  };
  return { design, climate, year, outcome, ...(made.units === undefined ? {} : { units: made.units }) };
}
