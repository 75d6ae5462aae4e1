// How each part of the section looks on paper, by its role: fill, texture, line. Light through the glass is drawn for
// the shortest day alone, so that the drawing stays calm without colour.

import type { Texture } from './texture.ts';

export interface Paint {
  readonly fill?: Texture;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: string;
  readonly opacity?: number;
}

const plain = (colour: string): Texture => ({ name: 'plain', colour });
const INK = '#1d2022';

const PAINTS: Readonly<Record<string, Paint>> = {
  soil: { fill: { name: 'falling', colour: '#f4eee1' } },
  grade: { stroke: INK, width: 2 },
  footing: { fill: plain('#e0d3bb') },
  room: { fill: plain('#ffffff') },
  sunspace: { fill: plain('#f1f4ee') },
  slab: { fill: plain('#c3ab8d'), stroke: INK, width: 1 },
  lining: { fill: plain('#dccbb0'), stroke: INK, width: 1 },
  'common-wall': { fill: plain('#c3ab8d'), stroke: INK, width: 1 },
  mass: { fill: { name: 'upright', colour: '#c3ab8d' }, stroke: INK, width: 1 },
  insulation: { fill: { name: 'dots', colour: '#f7f3ea' }, stroke: '#8b8371', width: 1 },
  'upper-floor': { fill: plain('#e6decd'), stroke: INK, width: 1 },
  outline: { stroke: INK, width: 1.6 },
  'glass-body': { stroke: '#cfe3ea', width: 7 },
  glass: { stroke: '#2f7396', width: 1.4 },
  overhang: { fill: plain(INK) },
  door: { stroke: '#5a5c58', width: 1, dash: '4 4' },
  person: { fill: plain('#77797a') },
  bed: { fill: { name: 'cross', colour: '#d2bda1' }, stroke: INK, width: 1 },
  leaf: { stroke: '#4c6a35', width: 1.6 },
  vent: { stroke: INK, width: 2.6 },
  'vent-hinge': { fill: plain(INK) },
  'light light-low': { fill: plain('#f3dfae'), opacity: 0.6 },
  'patch patch-low': { stroke: '#c9821f', width: 3.5 },
  dimension: { stroke: INK, width: 0.8 },
};

/** Paint of a role; null for what paper leaves out. */
export function sectionPaint(role: string): Paint | null {
  return PAINTS[role] ?? null;
}
