// One run of a question: a design, the climate it stands in as a change of the site's own, and what to report
// beyond the outcome. Small plain data both ways, so that runs travel to workers and back; hourly rows stay there.

import { runYear } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import { climateOfDesign } from '../model/design-climate.ts';
import type { OutcomeFigures } from '../outcomes/outcome.ts';
import { type HeatWave, shiftedYear, withHeatWave } from '../weather/hotter-year.ts';
import { type PreparedClimate, prepareClimate } from '../weather/prepared/prepared-climate.ts';
import { otherDraw } from '../weather/synthetic/other-draws.ts';
import { type ColdSpell, coldSpellOf } from './cold-spell.ts';
import { type FrontGlass, frontGlassOf } from './front-glass.ts';

/** What differs from the year the design stands in; an empty object is that year itself. */
export interface ClimateChange {
  /** of a made year: another drawn from the same normals, 1 the next after its own */
  readonly draw?: number;
  /** warmer by month, January first [K] */
  readonly shiftK?: readonly number[];
  readonly wave?: HeatWave;
  /** ground reflectance times this, never above 0.9 */
  readonly albedoTimes?: number;
  /** deep ground warmer by this [K] */
  readonly groundK?: number;
}

export interface RunJob {
  readonly id: string;
  /** what a person calls this run */
  readonly label: string;
  readonly design: Design;
  readonly change?: ClimateChange;
  /** report sun and loss of the equator-facing glass by month */
  readonly frontGlass?: true;
  /** live through the coldest spell without heat and without power, too */
  readonly coldSpell?: true;
  /** where the run stands in its question: axis → place */
  readonly at: Readonly<Record<string, number | string>>;
}

export interface RunResult {
  readonly id: string;
  readonly outcome: OutcomeFigures;
  readonly frontGlass: FrontGlass | null;
  readonly coldSpell?: ColdSpell;
}

/** Changed climates kept beside the site's own; each takes about 1.5 MB. */
const MOST_KEPT = 12;
const MOST_ALBEDO = 0.9;

/**
 * A function that runs jobs in one climate, remembering the changed climates it has prepared.
 *
 * @param climate the site's typical year, prepared
 */
export function createJobRunner(climate: PreparedClimate): (job: RunJob) => RunResult {
  const kept = new Map<string, PreparedClimate>();
  const climateOf = ({ design, change = {} }: RunJob): PreparedClimate => {
    if (Object.keys(change).length === 0) return climateOfDesign(design, climate);
    const key = JSON.stringify([design.hotter ?? null, change]);
    const known = kept.get(key);
    if (known) return known;
    const { draw } = change;
    const site = draw === undefined ? climate : prepareClimate(otherDraw(climate.year, draw));
    const made = changedClimate(climateOfDesign(design, site), change);
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
    kept.set(key, made);
    return made;
  };
  return (job) => {
    const { model, climate: used, year, figures } = runYear(job.design, climateOf(job), { lend: true });
    const frontGlass = job.frontGlass ? frontGlassOf(model, used, year) : null;
    // Figures are of columns that the next run writes over.
    const result = { id: job.id, outcome: figures, frontGlass };
    return job.coldSpell ? { ...result, coldSpell: coldSpellOf(job.design, climateOf(job)) } : result;
  };
}

function changedClimate(climate: PreparedClimate, change: ClimateChange): PreparedClimate {
  let { year } = climate;
  if (change.shiftK) year = shiftedYear(year, change.shiftK);
  if (change.wave) year = withHeatWave(year, change.wave);
  let changed = year === climate.year ? climate : prepareClimate(year);
  const { albedoTimes, groundK } = change;
  if (albedoTimes !== undefined) {
    changed = {
      ...changed,
      albedo: changed.albedo.map((value) => Math.min(value * albedoTimes, MOST_ALBEDO)),
    };
  }
  if (groundK !== undefined) {
    changed = { ...changed, ground: { ...changed.ground, meanC: changed.ground.meanC + groundK } };
  }
  return changed;
}
