// What night insulation and drawn covers inside leave of the way that vapour has to a pane: their resistance stands before the
// glass for water as it does for heat, so that a colder pane behind them does not take the more dew for it. A layout and how
// far covers are drawn in; by place of panes a share, 0…1, out. Method: the share of heat that a tight cover of that
// resistance lets through at the room's surface resistance of ISO 6946, 1 − s + s/(1 + R/0.13); that vapour finds its way
// round the edges as warm air does is common practice, no source.

import { coveredPanes } from '../layout/covered-panes.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { Layout } from '../layout/layout.ts';

/** ISO 6946, horizontal flow [m²K/W]. */
const SURFACE_RESISTANCE = 0.13;

interface Cover {
  readonly resistance: number;
  readonly coverage: number;
  /** by whom it is drawn; −1 from dusk to dawn */
  readonly hand: number;
}

/** Shares by place of panes, with room for so many; load() before use. */
export function createHeldVapour(capacity: EngineCapacity, drawn: Float64Array) {
  const share = new Float64Array(capacity.panes);
  let covered: { readonly place: number; readonly covers: readonly Cover[] }[] = [];

  function load(layout: Layout): void {
    share.fill(1);
    const { panes } = coveredPanes(layout);
    covered = layout.panes.flatMap(({ pane }, place) => {
      const covers: Cover[] = [];
      if (pane.nightResistance > 0) covers.push({ resistance: pane.nightResistance, coverage: 1, hand: -1 });
      for (const one of panes) {
        if (one.place !== place) continue;
        for (const { cover, hand } of one.covers) {
          const { resistance, coverage } = cover;
          if (cover.place === 'inside' && resistance > 0) covers.push({ resistance, coverage, hand });
        }
      }
      return covers.length > 0 ? [{ place, covers }] : [];
    });
  }

  /** @param darkShare of the hour, 0…1 */
  function renew(darkShare: number): void {
    for (let i = 0; i < covered.length; i++) {
      const { place, covers } = covered[i]!;
      let left = 1;
      for (let k = 0; k < covers.length; k++) {
        const { resistance, coverage, hand } = covers[k]!;
        const hung = coverage * (hand < 0 ? darkShare : drawn[hand]!);
        left *= 1 - hung + hung / (1 + resistance / SURFACE_RESISTANCE);
      }
      share[place] = left;
    }
  }

  return { share, load, renew };
}
