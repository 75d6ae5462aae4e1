// Whether an answer still speaks of what is on screen: the same design in the same climate. A hotter year is part of
// the design; a climate read anew under its old key is another climate.

import type { Design } from '../../design/design.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import type { ClimateState } from './workspace.ts';

export interface AskedOf {
  readonly design: Design;
  /** the climate, as read */
  readonly typical: TypicalYear;
}

export function isAskedOf({ design, typical }: AskedOf, now: Design, climate: ClimateState): boolean {
  return design === now && climate.state === 'ready' && climate.typical === typical;
}
