// The limit a question is asked against, as it is said and as its runs are counted. It is the design's own
// (design/too-hot-criterion.ts) unless somebody asked by another, and one limit holds for all runs of a question.

import type { Design } from '../design/design.ts';
import type { TooHotCriterion } from '../design/too-hot-criterion.ts';
import { hotPhrase } from '../findings/hot-words.ts';
import type { Words } from './words.ts';

/** Between "the rooms are" and "for so many hours": "above 26 °C", or "too hot". */
export function hotInWords({
  criterion,
  design,
  words,
}: {
  readonly criterion: TooHotCriterion;
  readonly design: Design;
  readonly words: Words;
}): string {
  const hasFans = (design.comfort.airSpeedMs ?? 0) > 0;
  return hotPhrase(hasFans || criterion.aboveC === null ? {} : { limitC: criterion.aboveC }, words);
}

/** The design counted by a limit, whatever it would count by itself. */
export function countedBy(design: Design, { id, aboveC }: TooHotCriterion): Design {
  const { comfort } = design;
  return {
    ...design,
    comfort: {
      ...comfort,
      criterion: id === 'own' ? 'fixed' : id,
      overheatC: aboveC ?? comfort.overheatC,
    },
  };
}
