// The questions, in the order in which a client asks them. A new question is a new file and a line here.

import { glassAndMassMap } from './glass-and-mass-map.ts';
import { howMuchGlass } from './how-much-glass.ts';
import type { Question } from './question.ts';

export const QUESTIONS: readonly Question[] = [howMuchGlass, glassAndMassMap];

/** A question by its id; undefined where there is none. */
export function questionById(id: string): Question | undefined {
  return QUESTIONS.find((question) => question.id === id);
}
