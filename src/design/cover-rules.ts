// What a list of covers may hold: how many, the limits of the numbers of a cover, and what does not go together. House
// rules. A design in, faults out.

import { coverKindById } from './cover-catalogue.ts';
import type { Design } from './design.ts';
import type { DesignFault } from './design-fault.ts';

export const MOST_COVERS = 8;

export interface CoverLimit {
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export const COVER_LIMITS: Readonly<Record<'sunW' | 'aboveC', CoverLimit>> = {
  sunW: { label: 'Drawn above, sun on the window', min: 25, max: 800, step: 25 },
  aboveC: { label: 'Drawn above, in the room', min: 15, max: 40, step: 0.5 },
};

/** Covers drawn by what they cannot be drawn by. */
export function coverFaults({ covers = [] }: Design): DesignFault[] {
  return covers.flatMap(({ kind, drawnBy }, i): DesignFault[] => {
    const { drawnBy: possible, name } = coverKindById(kind);
    if (!possible.includes(drawnBy)) {
      const allowed = `${possible.join(', ')} for ${name.toLowerCase()}`;
      return [{ path: `covers.${i}.drawnBy`, value: drawnBy, allowed }];
    }
    return [];
  });
}
