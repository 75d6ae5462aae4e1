// From metres to pixels. In: a section shape and the width there is. Out: scale, size and the two mappings. The
// frame grows only in whole half metres, so that the drawing does not jump while a handle is dragged.

import type { Point, SectionShape } from './section-shape.ts';

export interface SectionFrame {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerM: number;
  /** extents [m] */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly sky: number;
  toPx(at: Point): Point;
  toMetres(px: Point): Point;
}

/** Radius of the sun's arc around the middle of the glass [m]. */
export const SUN_ARC_M = 3.2;

/** Room kept right of the suns for their words [px]. */
const WORDS_PX = 96;
const BRIEF_WORDS_PX = 62;
const NARROW_PX = 480;

/** Berm and soil shown behind the pole-facing wall [m]; the rest runs off the sheet. */
const BEHIND_M = 1.6;

const SOIL_BELOW_M = 1.5;

/**
 * A frame that holds the section, its sky and some soil.
 *
 * @param withSun leaves room for the sun's arc and its words
 */
export function sectionFrame(shape: SectionShape, widthPx: number, withSun = true): SectionFrame {
  const left = -halfMetresUp(shape.poleWallM + BEHIND_M);
  const middle = (shape.sill.x + shape.head.x) / 2;
  const drawnRight = halfMetresUp(
    Math.max(shape.foot.x + 1, shape.overhangTip.x + 0.5, withSun ? middle + SUN_ARC_M + 0.2 : 0),
  );
  const bottom = -halfMetresUp(SOIL_BELOW_M + shape.slabM + shape.slabInsulationM - 0.4);
  const sky = halfMetresUp(
    Math.max(shape.heightM + 1.2, withSun ? (shape.sill.y + shape.head.y) / 2 + SUN_ARC_M + 0.5 : 0),
  );
  const wordsPx = !withSun ? 0 : widthPx < NARROW_PX ? BRIEF_WORDS_PX : WORDS_PX;
  const pxPerM = (widthPx - wordsPx) / (drawnRight - left);
  const right = left + widthPx / pxPerM;
  return {
    widthPx,
    heightPx: Math.round((sky - bottom) * pxPerM),
    pxPerM,
    left,
    right,
    bottom,
    sky,
    toPx: (at) => ({ x: (at.x - left) * pxPerM, y: (sky - at.y) * pxPerM }),
    toMetres: (px) => ({ x: px.x / pxPerM + left, y: sky - px.y / pxPerM }),
  };
}

function halfMetresUp(metres: number): number {
  return Math.ceil(metres * 2 - 1e-9) / 2;
}
