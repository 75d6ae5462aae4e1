// What about a design is not as it is usually built: each input held against the usual house of the same size, glass,
// sunspace and walls (design/usual-house.ts). A design in; paths, and the usual house, out.

import type { Design } from '../../design/design.ts';
import { valueAt } from '../../design/design-path.ts';
import { geometryOf } from '../../design/geometry.ts';
import { ANSWERED, usualLike } from '../../design/usual-house.ts';
import { INPUT_GROUPS } from './input-groups.ts';

/** Numbers within this share of each other are alike. */
const ALIKE = 0.02;

const known = new WeakMap<Design, Design>();

/** The usual house like a design. */
export function usualOf(design: Design): Design {
  const found = known.get(design);
  if (found) return found;
  const made = usualLike(design, geometryOf(design).glassM2);
  known.set(design, made);
  return made;
}

/** Whether an input is as usual, or is one the usual house has been asked for. */
export function isUsual(path: string, design: Design, usual: Design): boolean {
  if (ANSWERED.includes(path)) return true;
  const [one, other] = [valueAt(design, path), valueAt(usual, path)];
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  return Math.abs(one - other) <= ALIKE * Math.max(Math.abs(one), Math.abs(other));
}

/** Paths of all inputs that mean something in the design and are not as usual. */
export function unusualPaths(design: Design): readonly string[] {
  const usual = usualOf(design);
  return INPUT_GROUPS.flatMap(({ entries }) => entries)
    .filter(({ path, when }) => (!when || when(design)) && !isUsual(path, design, usual))
    .map(({ path }) => path);
}
