// Where beam sun falls in the section: the lit part of the glass under the overhang, and the patch it throws on the
// floor and on the wall behind. In: a section shape and a profile angle. Out: points in metres, or nothing when the
// sun does not reach the inside of the glass.

import type { Point, SectionShape } from './section-shape.ts';

export interface LightPatch {
  /** lit part of the glass */
  readonly glassFrom: Point;
  readonly glassTo: Point;
  /** where the lowest and highest ray end */
  readonly endFrom: Point;
  readonly endTo: Point;
  /** floor lit from x0 to x1; null when the light falls on the wall only */
  readonly floor: { readonly x0: number; readonly x1: number } | null;
  /** the strip of light as a closed outline */
  readonly outline: readonly Point[];
  /** share of the glass's length in the sun, 0…1 */
  readonly litShare: number;
}

const DEG = Math.PI / 180;

/**
 * Light of one sun through the front.
 *
 * @param shape section in metres
 * @param profileDeg sun's angle in the plane of the section [°], 0…180
 * @param backX light goes on to here at most [m]: the pole-facing wall of an open house, or a closed common wall
 */
export function lightPatch(shape: SectionShape, profileDeg: number, backX: number): LightPatch | null {
  const ray = { x: -Math.cos(profileDeg * DEG), y: -Math.sin(profileDeg * DEG) };
  const normal = { x: shape.slope.y, y: -shape.slope.x };
  const facing = -(ray.x * normal.x + ray.y * normal.y);
  if (profileDeg <= 0.5 || facing <= 0.01) return null;
  const lit = litGlass(shape, ray);
  if (lit === null) return null;
  const { from, to, litShare } = lit;
  const endFrom = rayEnd(from, ray, backX);
  const endTo = rayEnd(to, ray, backX);
  const corner = endTo.y > 0 && endFrom.y <= 0 ? [{ x: backX, y: 0 }] : [];
  const onFloor = endFrom.y <= 1e-9;
  return {
    glassFrom: from,
    glassTo: to,
    endFrom,
    endTo,
    floor: onFloor
      ? { x0: endTo.y <= 1e-9 ? Math.min(endTo.x, endFrom.x) : backX, x1: Math.max(endFrom.x, endTo.x) }
      : null,
    outline: [from, to, endTo, ...corner, endFrom],
    litShare,
  };
}

/** The glass below the overhang's shadow. */
function litGlass(shape: SectionShape, ray: Point): { from: Point; to: Point; litShare: number } | null {
  const { sill, head, overhangTip } = shape;
  const along = { x: head.x - sill.x, y: head.y - sill.y };
  const length = Math.hypot(along.x, along.y);
  if (length < 1e-6) return null;
  let share = 1;
  if (overhangTip.x > shape.overhangFrom.x) {
    // Solve sill + s·along = tip + t·ray for s.
    const det = along.x * -ray.y + ray.x * along.y;
    const dx = overhangTip.x - sill.x;
    const dy = overhangTip.y - sill.y;
    const s = (dx * -ray.y + ray.x * dy) / det;
    if (Number.isFinite(s)) share = Math.min(1, Math.max(0, s));
  }
  if (share < 1e-3) return null;
  return {
    from: sill,
    to: { x: sill.x + along.x * share, y: sill.y + along.y * share },
    litShare: share,
  };
}

function rayEnd(start: Point, ray: Point, backX: number): Point {
  const toFloor = ray.y < 0 ? -start.y / ray.y : Number.POSITIVE_INFINITY;
  const toBack = ray.x < 0 ? (backX - start.x) / ray.x : Number.POSITIVE_INFINITY;
  const t = Math.max(0, Math.min(toFloor, toBack));
  return { x: start.x + ray.x * t, y: start.y + ray.y * t };
}
