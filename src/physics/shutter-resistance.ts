// What a drawn shutter adds to the resistance of a window: its own resistance and how freely air passes round it in,
// the sum with the air behind it out. Source: ISO 10077-1:2017, from memory, high confidence.

import { requireRange } from './require-range.ts';

/** How freely air passes the edges of a shutter, the five classes of the standard. */
export type AirPermeability = 'very high' | 'high' | 'average' | 'low' | 'very low';

/** Factor on the shutter's own resistance and what the air behind it adds [m²K/W]. */
const CLASSES: Readonly<Record<AirPermeability, readonly [factor: number, added: number]>> = {
  'very high': [0, 0.08],
  high: [0.25, 0.09],
  average: [0.55, 0.11],
  low: [0.8, 0.14],
  'very low': [0.95, 0.17],
};

/**
 * Added resistance of a drawn shutter.
 *
 * @param ownResistance of its panel [m²K/W]; 0…3
 * @param permeability of its edges
 * @returns [m²K/W]
 */
export function shutterResistance(ownResistance: number, permeability: AirPermeability): number {
  requireRange('ownResistance', ownResistance, 0, 3, 'm²K/W');
  const [factor, added] = CLASSES[permeability];
  return factor * ownResistance + added;
}
