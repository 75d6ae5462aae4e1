// Keeps a changed design buildable: when one number makes another impossible (a shorter wall, glass that no longer
// fits), the dependent one is drawn back to what fits and the person is told. In: any design whose single numbers
// are within limits. Out: a design the schema accepts, and a sentence for each number drawn back.

import type { Design } from '../../design/design.ts';
import { LIMITS } from '../../design/limits.ts';
import { glassThatFits, lengthThatFits } from '../../design/numbers-that-fit.ts';
import { roomsThatFit, storeysThatFit } from '../../design/room-fit.ts';
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
  const storeys = storeysThatFit(fitted);
  if (storeys !== fitted.house.storeys) {
    notes.push({
      path: 'house.storeys',
      was: fitted.house.storeys,
      now: storeys,
      reason: 'Its rooms stand on so many storeys. Make it one room again to change that.',
    });
    fitted = { ...fitted, house: { ...fitted.house, storeys } };
  }
  const { sunspace } = design;
  const lengthM = lengthThatFits(design);
  if (lengthM !== sunspace.lengthM) {
    fitted = { ...fitted, sunspace: { ...sunspace, lengthM } };
    notes.push({
      path: 'sunspace.lengthM',
      was: sunspace.lengthM,
      now: lengthM,
      reason: 'The sunspace is no longer than the wall it leans on.',
    });
  }
  const was = fitted.glass.value;
  const now = glassThatFits(fitted);
  if (now !== was) {
    fitted = { ...fitted, glass: { ...fitted.glass, value: now } };
    notes.push({ path: 'glass.value', was, now, reason: 'The glass fills its front; no more fits.' });
  }
  const rooms = roomsThatFit(fitted);
  if (rooms !== fitted.rooms) fitted = { ...fitted, rooms: rooms! };
  return { design: fitted, notes };
}
