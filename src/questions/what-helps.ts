// What would help most: every lever pulled once, the best against heat, damp and back-up heat, and the best against heat
// and damp pulled together. In: a design and something that runs designs. Out: figures, drawn, pulled and joint.

import type { Design } from '../design/design.ts';
import type { Figures } from './figures.ts';
import { type BestLever, bestLever, type Lever, leversOf, type Pulled } from './levers.ts';

export interface Help {
  readonly drawn: Figures;
  readonly pulled: readonly Pulled[];
  /** null where no lever helps enough to be worth a word */
  readonly hot: BestLever | null;
  readonly damp: BestLever | null;
  readonly heat: BestLever | null;
  /** both levers pulled; null where there are not two */
  readonly both: { readonly levers: readonly Lever[]; readonly figures: Figures } | null;
}

/** Smallest moves worth a word: a tenth of the figure, and no less than these. House rules. */
const LEAST_HOURS = 20;
const LEAST_KWH = 100;

/**
 * Pull every lever of a design.
 *
 * @param run figures of a design in its climate; null when it was given up
 * @returns null when a run was given up
 */
export async function whatHelps(
  design: Design,
  run: (design: Design) => Promise<Figures | null>,
): Promise<Help | null> {
  const drawn = await run(design);
  if (drawn === null) return null;
  const pulled: Pulled[] = [];
  for (const lever of leversOf(design)) {
    const figures = await run(lever.apply(design));
    if (figures === null) return null;
    pulled.push({ lever, figures });
  }
  const best = (key: 'overheatedHours' | 'humidHours' | 'heatingKWh', least: number) =>
    bestLever(drawn, pulled, key, Math.max(least, drawn[key] / 10));
  const hot = best('overheatedHours', LEAST_HOURS);
  const damp = best('humidHours', LEAST_HOURS);
  const found = {
    drawn,
    pulled,
    hot,
    damp,
    heat: best('heatingKWh', LEAST_KWH),
  };
  if (hot === null || damp === null || hot.lever === damp.lever) return { ...found, both: null };
  const figures = await run(damp.lever.apply(hot.lever.apply(design)));
  return figures === null ? null : { ...found, both: { levers: [hot.lever, damp.lever], figures } };
}
