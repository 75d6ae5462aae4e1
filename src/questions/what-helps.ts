// What would help most: every lever pulled alone; then, as an adviser would, the best first, and on top of it the next.
// Best is what leaves the fewest hours too hot or too damp. In: a design and something that runs designs. Out: the
// figures of each lever, and the steps with what stands after each.

import type { Design } from '../design/design.ts';
import type { Figures } from './figures.ts';
import { type Lever, leversOf, type Pulled } from './levers.ts';

/** Runs a design in its climate; null when it was given up. */
export type FiguresRunner = (design: Design) => Promise<Figures | null>;

export interface PulledLevers {
  readonly drawn: Figures;
  readonly pulled: readonly Pulled[];
}

export interface Help extends PulledLevers {
  /** each on top of those before it, with the figures then */
  readonly steps: readonly Pulled[];
}

/** Steps told; more is a list nobody keeps. */
const MOST_STEPS = 3;
/** A step is worth a word when it takes away a tenth of the hours, and no less than these. House rules. */
const LEAST_HOURS = 40;
const LEAST_SHARE = 0.1;
/** Hours a year that nobody minds: 1 % too hot, 5 % too damp, as the findings have it. */
export const CALM_HOT_HOURS = 0.01 * 8760;
export const CALM_DAMP_HOURS = 0.05 * 8760;

/** Hours of discomfort beyond those that nobody minds. */
function trouble({ overheatedHours, humidHours }: Figures): number {
  return Math.max(0, overheatedHours - CALM_HOT_HOURS) + Math.max(0, humidHours - CALM_DAMP_HOURS);
}

/** Pull every lever of a design alone; null when a run was given up. */
export async function pullLevers(design: Design, run: FiguresRunner): Promise<PulledLevers | null> {
  const drawn = await run(design);
  const pulled = drawn === null ? null : await pullEach(leversOf(design), design, run);
  return drawn === null || pulled === null ? null : { drawn, pulled };
}

/** The steps that help most, one on top of the other; null when a run was given up. */
export async function helpFor(
  design: Design,
  { drawn, pulled }: PulledLevers,
  run: FiguresRunner,
): Promise<Help | null> {
  const steps: Pulled[] = [];
  let [at, figures, tried] = [design, drawn, pulled];
  while (steps.length < MOST_STEPS && trouble(figures) > 0) {
    const best = bestOf(tried);
    const before = trouble(figures);
    const won = best === null ? 0 : before - trouble(best.figures);
    if (best === null || won < Math.max(Math.min(LEAST_HOURS, before), LEAST_SHARE * before)) break;
    steps.push(best);
    at = best.lever.apply(at);
    figures = best.figures;
    if (steps.length === MOST_STEPS || trouble(figures) === 0) break;
    const taken = new Set(steps.map(({ lever }) => lever.id));
    const next = await pullEach(
      leversOf(at).filter(({ id }) => !taken.has(id)),
      at,
      run,
    );
    if (next === null) return null;
    tried = next;
  }
  return { drawn, pulled, steps };
}

async function pullEach(
  levers: readonly Lever[],
  design: Design,
  run: FiguresRunner,
): Promise<readonly Pulled[] | null> {
  const pulled: Pulled[] = [];
  for (const lever of levers) {
    const figures = await run(lever.apply(design));
    if (figures === null) return null;
    pulled.push({ lever, figures });
  }
  return pulled;
}

/** The lever that leaves the least trouble; of equals the first. */
function bestOf(pulled: readonly Pulled[]): Pulled | null {
  return pulled.reduce<Pulled | null>(
    (best, entry) => (best === null || trouble(entry.figures) < trouble(best.figures) ? entry : best),
    null,
  );
}
