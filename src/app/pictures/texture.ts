// Textures that tell areas apart without colour: a coloured ground under lines or dots in ink. In: a name and a colour.
// Out: a pattern to be put among a picture's definitions, and the fill that uses it.

import { SHEET } from '../parts/palette.ts';
import { type Shape, shape } from './picture.ts';

export type TextureName = 'plain' | 'rising' | 'falling' | 'cross' | 'dots' | 'level' | 'upright';

export interface Texture {
  readonly name: TextureName;
  readonly colour: string;
}

const SIZE = 6;

/** Lines of one tile, by texture; they run over its edges so that no seam shows. */
const LINES: Readonly<Record<TextureName, string>> = {
  plain: '',
  rising: 'M-1 7L7 -1M-1 1L1 -1M5 7L7 5',
  falling: 'M-1 -1L7 7M5 -1L7 1M-1 5L1 7',
  cross: 'M-1 7L7 -1M-1 -1L7 7M-1 1L1 -1M5 7L7 5M5 -1L7 1M-1 5L1 7',
  dots: '',
  level: 'M0 3L6 3',
  upright: 'M3 0L3 6',
};

/** The pattern of a texture; none for a plain one. */
export function texturePattern(id: string, { name, colour }: Texture): readonly Shape[] {
  if (name === 'plain') return [];
  const stroke = isDark(colour) ? SHEET.ground : SHEET.ink;
  const drawn =
    name === 'dots'
      ? shape('circle', { cx: 3, cy: 3, r: 0.9, fill: stroke })
      : shape('path', { d: LINES[name], stroke, 'stroke-width': 0.8, fill: 'none' });
  return [
    shape('pattern', { id, width: SIZE, height: SIZE, patternUnits: 'userSpaceOnUse' }, [
      shape('rect', { width: SIZE, height: SIZE, fill: colour }),
      drawn,
    ]),
  ];
}

/** What to write as fill. */
export function textureFill(id: string, { name, colour }: Texture): string {
  return name === 'plain' ? colour : `url(#${id})`;
}

/** By the mean of the channels; colours are '#rrggbb' or 'rgb(r g b)'. */
function isDark(colour: string): boolean {
  const channels = colour.startsWith('#')
    ? [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16))
    : (colour.match(/\d+/g) ?? []).map(Number);
  return channels.reduce((sum, channel) => sum + channel, 0) / 3 < 110;
}
