// Amounts of extra mass that questions compare, as face areas, and the words for them. The design's own amount is
// always among them. Which amounts are worth showing is a house rule, not a standard's.

import type { Design } from '../design/design.ts';
import { materialById } from '../design/materials.ts';
import type { Words } from './words.ts';

export interface MassAmount {
  readonly id: 'none' | 'drawn' | 'some' | 'plenty';
  readonly areaM2: number;
}

/** Face area that counts as some mass, and as plenty, for each m² of floor. House rule. */
const SOME_PER_FLOOR = 0.3;
const PLENTY_PER_FLOOR = 0.8;

/** None, as drawn (or some, where none is drawn), and plenty. */
export function massAmounts({ mass, house }: Design): readonly MassAmount[] {
  const middle: MassAmount =
    mass.areaM2 > 0
      ? { id: 'drawn', areaM2: mass.areaM2 }
      : { id: 'some', areaM2: SOME_PER_FLOOR * house.floorAreaM2 };
  const plenty = Math.max(2 * middle.areaM2, PLENTY_PER_FLOOR * house.floorAreaM2);
  return [{ id: 'none', areaM2: 0 }, middle, { id: 'plenty', areaM2: plenty }];
}

/** The amount that stands for the design as drawn. */
export function drawnAmount({ mass }: Design): MassAmount['id'] {
  return mass.areaM2 > 0 ? 'drawn' : 'none';
}

/** "no extra mass", "20 m² of adobe, 200 mm thick, as drawn". */
export function massInWords({ id, areaM2 }: MassAmount, { mass }: Design, words: Words): string {
  if (id === 'none') return 'no extra mass';
  const name = materialById(mass.material).name.toLowerCase();
  const size = `${words.area(areaM2)} of ${name}, ${words.thickness(mass.thicknessM)} thick`;
  return id === 'drawn' ? `${size}, as drawn` : size;
}
