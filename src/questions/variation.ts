// Designs varied from a design: values replaced by their dotted paths, then drawn back to what can be built, so
// that every design a question runs is one the schema accepts. Nothing here knows which question asks.

import { withCarried } from '../design/choice-carried.ts';
import type { Design } from '../design/design.ts';
import { valueAt, withValueAt } from '../design/design-path.ts';
import { designThatFits } from '../design/design-that-fits.ts';
import { geometryOf } from '../design/geometry.ts';
import { LIMITS, limitOf } from '../design/limits.ts';

export type Changes = Readonly<Record<string, number | string | boolean>>;

/**
 * A design with values replaced, each choice with what it needs.
 *
 * @param changes dotted path → value; numbers are held to limits.ts
 * @returns the design, its sunspace no longer than its wall, its glass no larger than its front, its rooms as they fit;
 *   a divided house keeps its storeys
 */
export function varied(design: Design, changes: Changes): Design {
  let next = design;
  for (const [path, value] of Object.entries(changes)) {
    const mayBeAbsent = LIMITS.some((limit) => limit.path === path && limit.absent !== undefined);
    if (!mayBeAbsent && valueAt(next, path) === undefined)
      throw new RangeError(`path is '${path}'; allowed: one of a design`);
    next = withValueAt(next, path, held(path, value));
  }
  return designThatFits(withCarried(design, next).design);
}

/** The same design with its equator-facing glass given as an area where it may be one, so that other changes leave it alone. */
export function withGlassAsArea(design: Design): Design {
  const { glassM2 } = geometryOf(design);
  return { ...design, glass: glassOf(design, glassM2) };
}

/** The design with so much equator-facing glass [m²], or as much as fits its front. */
export function withGlassM2(design: Design, areaM2: number): Design {
  return designThatFits({ ...design, glass: glassOf(design, areaM2) });
}

/** The most equator-facing glass that can be drawn [m²]: what the front holds at the drawn tilt. */
export function largestGlassOf(design: Design): number {
  const { largestGlassM2, equatorWallM2 } = geometryOf(design);
  return Math.min(largestGlassM2, Math.max(limitOf('glass.value').max, equatorWallM2));
}

/** As an area; of a great hall more than an area may be is a share of the wall. */
function glassOf(design: Design, areaM2: number): Design['glass'] {
  return areaM2 <= limitOf('glass.value').max
    ? { ...design.glass, basis: 'area', value: areaM2 }
    : {
        ...design.glass,
        basis: 'share-of-wall',
        value: Math.min(1, areaM2 / geometryOf(design).equatorWallM2),
      };
}

function held(path: string, value: number | string | boolean): number | string | boolean {
  if (typeof value !== 'number') return value;
  const { min, max, whole } = limitOf(path);
  const inside = Math.min(Math.max(value, min), max);
  return whole ? Math.round(inside) : inside;
}
