// A choice with what it needs. Some choices cannot stand alone: a sunspace that is closed off needs a door, one that is
// left out takes its bed with it and leaves its glass upright in the wall. Page, questions and levers all choose through
// here, so that a house promised is the house drawn. A design, a path and a value in; the design out, with a sentence for
// each thing that came along. Sizes of doors: common practice, no source.

import type { Design } from './design.ts';
import { tooHotChoice } from './too-hot-criterion.ts';

export interface Chosen {
  readonly design: Design;
  /** what changed besides the choice itself, a sentence each */
  readonly carried: readonly string[];
}

/** A door that a person opens, where what is drawn is none or a missing wall [m²]. */
const USUAL_DOOR_M2 = 2;
const LARGEST_DOOR_M2 = 6;

/**
 * What a choice carries with it.
 *
 * @param before the design before the choice
 * @param after the same design with the one value replaced
 * @returns the design after, with what the choice needs; `after` itself where it needs nothing
 */
export function withCarried(before: Design, after: Design): Chosen {
  const carried: string[] = [];
  let design = after;
  if (after.sunspace.join !== before.sunspace.join) {
    if (after.sunspace.join === 'closed') {
      const doored = withDoor(after);
      if (doored !== after)
        carried.push('The sunspace is closed off by an ordinary door, opened when the rooms want its heat.');
      design = doored;
    }
    if (after.sunspace.join === 'none') {
      if (after.glass.tiltDeg < 90) {
        design = { ...design, glass: { ...design.glass, tiltDeg: 90 } };
        carried.push('Without a sunspace the glass stands upright in the house wall.');
      }
      if (after.plants.bedM2 > 0) {
        design = { ...design, plants: { ...design.plants, bedM2: 0 } };
        carried.push('The planted bed goes with the sunspace: it is not moved into the rooms.');
      }
    }
  }
  const criterion = tooHotChoice(before);
  if (after.comfort === before.comfort && tooHotChoice(design) !== criterion) {
    design = { ...design, comfort: { ...design.comfort, criterion } };
    carried.push('What counts as too hot stays as it was; choose another under the limits.');
  }
  return { design, carried };
}

function withDoor(design: Design): Design {
  const { doorM2, doorRule } = design.sunspace;
  const fits = doorM2 > 0 && doorM2 <= LARGEST_DOOR_M2;
  if (fits && doorRule !== 'open') return design;
  return {
    ...design,
    sunspace: {
      ...design.sunspace,
      doorM2: fits ? doorM2 : USUAL_DOOR_M2,
      doorRule: doorRule === 'open' ? 'by-need' : doorRule,
    },
  };
}
