// The questions, in the order in which a client asks them. A new question is a new file and a line here.

import { doWithout } from './do-without.ts';
import { glassAndMassMap } from './glass-and-mass-map.ts';
import { hotterYear } from './hotter-year.ts';
import { howBigAStove } from './how-big-a-stove.ts';
import { howMuchGlass } from './how-much-glass.ts';
import { howMuchMass } from './how-much-mass.ts';
import { openOrClosed } from './open-or-closed.ts';
import type { Question } from './question.ts';
import { uprightOrLeaning } from './upright-or-leaning.ts';
import { whatHelpsMost } from './what-helps-most.ts';
import { whatMattersMost } from './what-matters-most.ts';
import { whichRoom } from './which-room.ts';
import { whoOpensTheVents } from './who-opens-the-vents.ts';

export const QUESTIONS: readonly Question[] = [
  howMuchGlass,
  howMuchMass,
  uprightOrLeaning,
  openOrClosed,
  whoOpensTheVents,
  doWithout,
  howBigAStove,
  whatHelpsMost,
  whichRoom,
  whatMattersMost,
  hotterYear,
  glassAndMassMap,
];

/** A question by its id; undefined where there is none. */
export function questionById(id: string): Question | undefined {
  return QUESTIONS.find((question) => question.id === id);
}
