// Keeps a changed design buildable: when one number makes another impossible (a shorter wall, glass that no longer
// fits), the dependent one is drawn back to what fits and the person is told. In: any design whose single numbers
// are within limits. Out: a design the schema accepts, and a sentence for each number drawn back.

import type { Design } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import { LIMITS, limitOf } from '../../design/limits.ts';
import { numberAt, withValueAt } from './design-path.ts';

export interface FittedDesign {
  readonly design: Design;
  readonly notes: readonly FitNote[];
}

export interface FitNote {
  readonly path: string;
  readonly was: number;
  readonly now: number;
  readonly reason: string;
}

const WHOLE = LIMITS.filter(({ whole }) => whole);

/** Draw dependent numbers back to what fits. */
export function fittedDesign(design: Design): FittedDesign {
  const notes: FitNote[] = [];
  let fitted = design;
  for (const { path } of WHOLE) {
    const was = numberAt(design, path);
    if (Number.isInteger(was)) continue;
    const now = Math.round(was);
    fitted = withValueAt(fitted, path, now);
    notes.push({ path, was, now, reason: 'This is a whole number.' });
  }
  const { house, sunspace } = design;
  if (sunspace.join !== 'none' && sunspace.lengthM > house.equatorWallM) {
    fitted = { ...fitted, sunspace: { ...sunspace, lengthM: house.equatorWallM } };
    notes.push({
      path: 'sunspace.lengthM',
      was: sunspace.lengthM,
      now: house.equatorWallM,
      reason: 'The sunspace is no longer than the wall it leans on.',
    });
  }
  const { glassM2, largestGlassM2 } = geometryOf(fitted);
  const { min } = limitOf('glass.value');
  const overFull = fitted.glass.basis !== 'area' && fitted.glass.value > 1;
  if (glassM2 > largestGlassM2 || overFull) {
    const { value } = fitted.glass;
    const share = overFull ? Math.min(1 / value, largestGlassM2 / glassM2) : largestGlassM2 / glassM2;
    const now = Math.max(min, roundedDown(value * share));
    fitted = { ...fitted, glass: { ...fitted.glass, value: now } };
    notes.push({ path: 'glass.value', was: value, now, reason: 'The glass fills its front; no more fits.' });
  }
  return { design: fitted, notes };
}

/** Three significant decimals, never above the value. */
function roundedDown(value: number): number {
  return Math.floor(value * 1000 + 1e-9) / 1000;
}
