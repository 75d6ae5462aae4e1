// Random houses through whole years, to see whether heater and windows ever work against each other. Designs in; those in
// which a heater ran for longer than anybody needs to notice while something stood open to cool out. What forgetful or
// absent people leave open is theirs, and what nobody ever opens is shut.
import fc from 'fast-check';
import { runYear } from '../../src/daystone.ts';
import type { Habit } from '../../src/design/design.ts';
import { ImpossibleYear } from '../../src/outcomes/impossible-year.ts';
import { anyPlausibleDesign } from '../model/any-design.ts';
import { climateOf, PLACES } from './scan.ts';

/** An opener takes its time to shut: less than this in a year is no fight [h]. */
const FIGHT_HOURS = 1;
const MINDFUL: readonly Habit[] = ['attentive', 'automatic'];

export interface Fights {
  readonly runs: number;
  readonly openedAtAll: number;
  readonly heatedAtAll: number;
  /** hours with the heater on and something open to cool, of houses that have an hour of it in the year */
  readonly faults: readonly string[];
}

/**
 * Run random designs, in the places by turn, with attentive hands and openers by turn.
 *
 * @param seed the same seed gives the same designs
 */
export function findFights(count: number, seed: number): Fights {
  const faults: string[] = [];
  let runs = 0;
  let openedAtAll = 0;
  let heatedAtAll = 0;
  fc.sample(anyPlausibleDesign, { numRuns: count, seed }).forEach((design, n) => {
    const habit = MINDFUL[n % 2]!;
    const place = PLACES[Math.floor(n / 2) % PLACES.length]!;
    try {
      const { figures, year } = runYear({ ...design, vents: { ...design.vents, habit } }, climateOf(place), {
        lend: true,
      });
      runs++;
      const { heatedWhileOpenHours, heatedWhileOpenKWh } = figures.vents;
      if (year.openings.some(({ kind, open }) => kind === 'vent' && open.some((share) => share > 0.2)))
        openedAtAll++;
      if (figures.heating.energyKWh > 1) heatedAtAll++;
      if (heatedWhileOpenHours >= FIGHT_HOURS)
        faults.push(
          `design ${n} (seed ${seed}), ${place}, ${habit}: ${heatedWhileOpenHours.toFixed(2)} h, ${heatedWhileOpenKWh.toFixed(1)} of ${figures.heating.energyKWh.toFixed(0)} kWh`,
        );
    } catch (error) {
      if (!(error instanceof ImpossibleYear)) throw error;
    }
  });
  return { runs, openedAtAll, heatedAtAll, faults };
}
