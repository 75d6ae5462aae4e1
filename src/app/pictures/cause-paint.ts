// Colour and texture of each cause of heat or water on paper: the hues of the screen, and a texture beside it so that
// neighbours in a stack differ in black and white too.

import { causeSlot } from '../parts/cause-colours.ts';
import { CAUSE } from '../parts/palette.ts';
import type { Texture } from './texture.ts';

const PAINT: Readonly<Record<string, Texture>> = {
  sun: { name: 'plain', colour: CAUSE.sun },
  people: { name: 'dots', colour: CAUSE.people },
  heating: { name: 'plain', colour: CAUSE.heating },
  cooling: { name: 'rising', colour: CAUSE.cooling },
  dew: { name: 'level', colour: CAUSE.dew },
  air: { name: 'rising', colour: CAUSE.air },
  glass: { name: 'level', colour: CAUSE.glass },
  walls: { name: 'falling', colour: CAUSE.walls },
  roof: { name: 'upright', colour: CAUSE.roof },
  ground: { name: 'cross', colour: CAUSE.ground },
  zones: { name: 'plain', colour: CAUSE.zones },
  plants: { name: 'rising', colour: CAUSE.plants },
};

/** Paint of a cause. */
export function causePaint(cause: string): Texture {
  return PAINT[causeSlot(cause)] ?? { name: 'dots', colour: CAUSE.other };
}
