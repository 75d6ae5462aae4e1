// How each part of the section looks on paper, by its role: fill, texture, line. Light through the glass is drawn for
// the shortest day alone, so that the drawing stays calm without colour.

import { SECTION, SHARED, SHEET } from '../parts/palette.ts';
import type { Texture } from './texture.ts';

export interface Paint {
  readonly fill?: Texture;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: string;
  readonly opacity?: number;
}

const plain = (colour: string): Texture => ({ name: 'plain', colour });

const PAINTS: Readonly<Record<string, Paint>> = {
  soil: { fill: { name: 'falling', colour: SECTION.soil } },
  grade: { stroke: SHEET.ink, width: 2 },
  footing: { fill: plain(SECTION.footing) },
  room: { fill: plain(SHEET.ground) },
  sunspace: { fill: plain(SECTION.sunspace) },
  slab: { fill: plain(SECTION.masonry), stroke: SHEET.ink, width: 1 },
  lining: { fill: plain(SECTION.lining), stroke: SHEET.ink, width: 1 },
  'common-wall': { fill: plain(SECTION.masonry), stroke: SHEET.ink, width: 1 },
  mass: { fill: { name: 'upright', colour: SECTION.masonry }, stroke: SHEET.ink, width: 1 },
  insulation: { fill: { name: 'dots', colour: SECTION.insulation }, stroke: SHARED.ruleStrong, width: 1 },
  'upper-floor': { fill: plain(SECTION.timber), stroke: SHEET.ink, width: 1 },
  partition: { fill: plain(SECTION.lining), stroke: SHEET.ink, width: 1 },
  stairs: { fill: { name: 'upright', colour: SECTION.timber } },
  'stair-flight': { stroke: SHARED.inkSoft, width: 1, dash: '3 3' },
  outline: { stroke: SHEET.ink, width: 1.6 },
  'glass-body': { stroke: SHARED.glassFill, width: 7 },
  glass: { stroke: SHARED.glass, width: 1.4 },
  overhang: { fill: plain(SHEET.ink) },
  door: { stroke: SHARED.inkSoft, width: 1, dash: '4 4' },
  person: { fill: plain(SECTION.person) },
  bed: { fill: { name: 'cross', colour: SECTION.bed }, stroke: SHEET.ink, width: 1 },
  leaf: { stroke: SHARED.moss, width: 1.6 },
  vent: { stroke: SHEET.ink, width: 2.6 },
  'vent-hinge': { fill: plain(SHEET.ink) },
  'light light-low': { fill: plain(SECTION.sunlight), opacity: 0.6 },
  'patch patch-low': { stroke: SHARED.sun, width: 3.5 },
  dimension: { stroke: SHEET.ink, width: 0.8 },
};

/** Paint of a role; null for what paper leaves out. */
export function sectionPaint(role: string): Paint | null {
  return PAINTS[role] ?? null;
}
