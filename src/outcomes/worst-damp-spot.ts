// Where in a zone mould grows furthest: the coldest corner, behind the planting or the window frames. A zone's outcome
// in, the place and its index out.

import type { DampSpot } from './damp-spots.ts';
import type { ZoneOutcome } from './outcome.ts';

export interface WorstSpot {
  readonly spot: DampSpot['spot'];
  /** VTT mould index, 0…6 */
  readonly index: number;
}

/** The worst spot of a zone; of equals the corner. */
export function worstDampSpot({
  mouldIndexMax,
  dampSpots,
}: Pick<ZoneOutcome, 'mouldIndexMax' | 'dampSpots'>): WorstSpot {
  return dampSpots.reduce<WorstSpot>(
    (worst, { spot, mouldIndexMax: index }) => (index > worst.index ? { spot, index } : worst),
    { spot: 'coldest corner', index: mouldIndexMax },
  );
}
