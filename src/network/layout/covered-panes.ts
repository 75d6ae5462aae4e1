// Panes that carry covers, and the hands that draw these: a laid-out model in; for each covered pane its place, and for
// each of its covers the index of the hand, out. Covers of one hand that face one zone are drawn together.

import type { PaneCover } from '../../model/model.ts';
import type { Layout, PaneChain } from './layout.ts';

export interface CoveredPane {
  readonly chain: PaneChain;
  /** index among the layout's places of panes, and among the place's members */
  readonly place: number;
  readonly member: number;
  /** glass without frame [m²] */
  readonly glassM2: number;
  /** outermost first, with the hand that draws each */
  readonly covers: readonly { readonly cover: PaneCover; readonly hand: number }[];
}

export interface CoverHand {
  readonly id: string;
  /** by its first pane */
  readonly cover: PaneCover;
  readonly zone: number;
  /** the pane whose sun it is drawn by, among the covered ones */
  readonly pane: number;
}

/** Covered panes and hands of a laid-out model, in its order. */
export function coveredPanes(layout: Layout): {
  readonly panes: readonly CoveredPane[];
  readonly hands: readonly CoverHand[];
} {
  const hands: CoverHand[] = [];
  const panes: CoveredPane[] = [];
  layout.panes.forEach((chain, place) => {
    chain.members.forEach(({ pane, glassM2 }, member) => {
      const own = pane.covers ?? [];
      if (own.length === 0) return;
      const covers = own.map((cover) => {
        const zone = chain.zoneTo;
        const known = hands.findIndex(({ id, zone: other }) => id === cover.hand && other === zone);
        if (known >= 0) return { cover, hand: known };
        hands.push({ id: cover.hand, cover, zone, pane: panes.length });
        return { cover, hand: hands.length - 1 };
      });
      panes.push({ chain, place, member, glassM2, covers });
    });
  });
  return { panes, hands };
}
