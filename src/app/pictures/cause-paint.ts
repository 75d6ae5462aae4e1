// Colour and texture of each cause of heat or water on paper: the hues of the screen, and a texture beside it so that
// neighbours in a stack differ in black and white too.

import { causeSlot } from '../parts/cause-colours.ts';
import type { Texture } from './texture.ts';

const PAINT: Readonly<Record<string, Texture>> = {
  sun: { name: 'plain', colour: '#e2ab3f' },
  people: { name: 'dots', colour: '#f0d9b8' },
  heating: { name: 'plain', colour: '#8f3413' },
  cooling: { name: 'rising', colour: '#1d4f73' },
  dew: { name: 'level', colour: '#c4dbe4' },
  air: { name: 'rising', colour: '#9dbdd2' },
  glass: { name: 'level', colour: '#1f506e' },
  walls: { name: 'falling', colour: '#d3c3ab' },
  roof: { name: 'upright', colour: '#b9ad9f' },
  ground: { name: 'cross', colour: '#c8ab8c' },
  zones: { name: 'plain', colour: '#e4e1d6' },
  plants: { name: 'rising', colour: '#a9c192' },
};

/** Paint of a cause. */
export function causePaint(cause: string): Texture {
  return PAINT[causeSlot(cause)] ?? { name: 'dots', colour: '#d8d6cd' };
}
