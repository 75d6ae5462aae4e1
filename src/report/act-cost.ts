// What the acts of a house cost by a person's prices. Apart from the acts themselves, since it wants their bills.

import type { Design } from '../design/design.ts';
import { changeCost } from '../quantities/change.ts';
import type { Cost, PriceList } from '../quantities/prices.ts';
import type { Act } from './acts.ts';

/** What an act costs by a person's prices, on top of the acts before it; null without any. */
export function actCost(acts: readonly Act[], i: number, design: Design, prices: PriceList): Cost | null {
  const { onTopOf, apply } = acts[i]!;
  const before = onTopOf ? acts[onTopOf - 1]!.apply(design) : design;
  return changeCost(before, apply(design), prices);
}
