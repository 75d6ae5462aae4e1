// What a person asked for stays asked for. A number that no longer fits (glass larger than its front, a sunspace longer
// than its wall) is built as large as fits, and what was asked is kept beside it; when there is room again, it is built
// as asked. In: a design, the notes of what does not fit in it, a change. Out: the changed design with its own notes.

import { withCarried } from '../../design/choice-carried.ts';
import type { Design } from '../../design/design.ts';
import { valueAt, withValueAt } from '../../design/design-path.ts';
import { type FitNote, type FittedDesign, fittedDesign } from './design-fit.ts';

/** One value changed, with what the choice needs; every other number is built as asked as far as it fits. */
export function changedAsAsked(
  design: Design,
  notes: readonly FitNote[],
  path: string,
  value: unknown,
): FittedDesign & { readonly carried: readonly string[] } {
  const asked = notes
    .filter((note) => note.path !== path)
    .reduce((next, note) => withValueAt(next, note.path, note.was), design);
  const chosen = withCarried(design, withValueAt(asked, path, value));
  return { ...fittedDesign(chosen.design), carried: chosen.carried };
}

/** Of the notes of a design, those that hold in another one too: what they depend on is the same there. */
export function stillAsked(from: Design, to: Design, notes: readonly FitNote[]): readonly FitNote[] {
  if (from.house !== to.house || from.sunspace !== to.sunspace) return [];
  return notes.filter(
    (note) => valueAt(to, note.path) === note.now && (note.path !== 'glass.value' || from.glass === to.glass),
  );
}
