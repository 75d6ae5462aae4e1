// What changes want that a design has not: to be priced beside its bill, so that the changes can be told in money.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { billOf } from '../quantities/bill.ts';
import { changeBetween } from '../quantities/change.ts';
import type { Item } from '../quantities/items.ts';
import { leversOf } from './levers.ts';

/** Items that some lever of the design would put on its bill, each once. */
export function wantedItems(drawn: Design): readonly Item[] {
  const design = withChoiceKept(drawn);
  const known = new Set(billOf(design).lines.map(({ item }) => item.id));
  const wanted = leversOf(design)
    .flatMap(({ apply }) => changeBetween(design, apply(design)).lines.map(({ item }) => item))
    .filter(({ id }) => !known.has(id));
  return [...new Map(wanted.map((item) => [item.id, item])).values()];
}
