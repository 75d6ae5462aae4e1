// Resistance of drawn covers: conductances of the faces behind them, as surface-films.ts has just written them, in; the
// same through as much resistance as is drawn, out. A cover inside stands between pane and room, one outside between pane
// and sky, air and ground; where it does not hang, the face is bare.

import { coveredPanes } from '../layout/covered-panes.ts';
import type { Layout } from '../layout/layout.ts';
import { endA, endB, slotOf } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';

interface Added {
  /** slot inside, or end outside */
  readonly at: number;
  readonly hand: number;
  readonly coverage: number;
  /** of the covered glass [K/W] */
  readonly resistance: number;
}

/** Resistance of covers onto a stepper; load() before use. */
export function createCoverFilms(
  stepper: Stepper,
  /** by hand, how far drawn, 0…1 */
  drawn: Float64Array,
) {
  let inside: readonly Added[] = [];
  let outside: readonly Added[] = [];

  function load(layout: Layout): void {
    const added = (place: 'inside' | 'outside') =>
      coveredPanes(layout).panes.flatMap(({ chain, glassM2, covers }) =>
        covers
          .filter(({ cover }) => cover.place === place && cover.resistance > 0)
          .map(
            ({ cover, hand }): Added => ({
              at: place === 'inside' ? slotOf(endB(chain.chain), 0) : endA(chain.chain),
              hand,
              coverage: cover.coverage,
              resistance: cover.resistance / glassM2,
            }),
          ),
      );
    inside = added('inside');
    outside = added('outside');
  }

  /** After the films of the hour are written, before ends are refreshed. */
  function renew(): void {
    const { endHubG, endBoundary } = stepper;
    for (let i = 0; i < inside.length; i++) {
      const { at, hand, coverage, resistance } = inside[i]!;
      const share = coverage * drawn[hand]!;
      const through = 1 - share + share / (1 + (endHubG[at]! + endHubG[at + 1]!) * resistance);
      endHubG[at]! *= through;
      endHubG[at + 1]! *= through;
    }
    for (let i = 0; i < outside.length; i++) {
      const { at, hand, coverage, resistance } = outside[i]!;
      const share = coverage * drawn[hand]!;
      endBoundary[at]! *= 1 - share + share / (1 + endBoundary[at]! * resistance);
    }
  }

  return { load, renew };
}
