// In what order changes are told: the one that weighs least first, or the one that takes most off for each day of work or for
// its money. A change that makes the house worse comes last in any order; one that costs nothing, first.

import { burden, lightestFirst, type Weighed, type Weights } from './weights.ts';

export const CHANGE_ORDERS = ['weight', 'days', 'money'] as const;
export type ChangeOrder = (typeof CHANGE_ORDERS)[number];

export const ORDER_WORDS: Readonly<Record<ChangeOrder, string>> = {
  weight: 'the one that weighs least first',
  days: 'the one that does most for a day of work first',
  money: 'the one that does most for its money first',
};

export interface Costed {
  readonly figures: Weighed;
  /** of one person, once; below zero where it spares work */
  readonly days: number;
  /** in any currency; null where it is not known */
  readonly money: number | null;
}

/** What a change takes off what the house weighs, its own work left out [hours]. */
function takenOff(drawn: Weighed, { figures }: Pick<Costed, 'figures'>, weights: Weights): number {
  return burden(drawn, 0, weights) - burden(figures, 0, weights);
}

/**
 * What a change takes off for each day, or each unit of money [hours].
 *
 * @returns Infinity where it helps and asks for nothing; null where its money is not known
 */
export function takenOffFor(
  drawn: Weighed,
  change: Costed,
  by: 'days' | 'money',
  weights: Weights,
): number | null {
  const won = takenOff(drawn, change, weights);
  const asked = by === 'days' ? change.days : change.money;
  if (asked === null) return null;
  if (asked > 0) return won / asked;
  return won > 0 ? Number.POSITIVE_INFINITY : won;
}

/** Changes in an order; those alike by it stay as they stood. */
export function inOrder<T extends Costed>(
  changes: readonly T[],
  drawn: Weighed,
  order: ChangeOrder,
  weights: Weights,
): readonly T[] {
  if (order === 'weight') return lightestFirst(changes, weights);
  const ranked = changes.map((change) => {
    const won = takenOff(drawn, change, weights);
    const rate = takenOffFor(drawn, change, order, weights);
    // Helps at a known price; helps at a price not known; does not help.
    const class_ = won <= 0 ? 2 : rate === null ? 1 : 0;
    return { change, won, class_, rate: rate ?? 0 };
  });
  return ranked
    .sort((one, other) => {
      if (one.class_ !== other.class_) return one.class_ - other.class_;
      if (one.class_ === 0 && one.rate !== other.rate) return other.rate - one.rate;
      return other.won - one.won;
    })
    .map(({ change }) => change);
}
