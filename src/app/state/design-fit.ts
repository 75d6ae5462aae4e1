// Keeps a design changed by hand buildable, and says so: whole numbers are made whole, and where one number makes another
// impossible (a shorter wall, glass that no longer fits) the dependent one is drawn back. In: any design whose single numbers
// are within limits. Out: a design the schema accepts, and a sentence for each number that was moved.

import type { Design } from '../../design/design.ts';
import { numberAt, withValueAt } from '../../design/design-path.ts';
import { designThatFits } from '../../design/design-that-fits.ts';
import { LIMITS } from '../../design/limits.ts';

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

/** Why a number hangs on others, by its path, in the order they are told. */
const REASONS = {
  'house.storeys': 'Its rooms stand on so many storeys. Make it one room again to change that.',
  'sunspace.lengthM': 'The sunspace is no longer than the wall it leans on.',
  'glass.value': 'The glass fills its front; no more fits.',
} as const;

/** Draw whole numbers to whole ones and dependent numbers back to what fits. */
export function fittedDesign(asked: Design): FittedDesign {
  const notes: FitNote[] = [];
  let rounded = asked;
  for (const { path } of WHOLE) {
    const was = numberAt(asked, path);
    if (Number.isInteger(was)) continue;
    const now = Math.round(was);
    rounded = withValueAt(rounded, path, now);
    notes.push({ path, was, now, reason: 'This is a whole number.' });
  }
  const design = designThatFits(rounded);
  for (const [path, reason] of Object.entries(REASONS)) {
    const [was, now] = [numberAt(rounded, path), numberAt(design, path)];
    if (now !== was) notes.push({ path, was, now, reason });
  }
  return { design, notes };
}
