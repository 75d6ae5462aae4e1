// A lever: one change an adviser would try first, as it is said and as it is made; and one that was pulled, with what it gave.

import type { Design } from '../design/design.ts';
import type { Figures } from './figures.ts';
import type { Words } from './words.ts';

export interface Lever {
  readonly id: string;
  /** as said to a person: "stand the glass upright" */
  readonly words: string;
  /** how much was tried: "to 9.2 m²"; absent where the words say it */
  readonly size?: (words: Words) => string;
  readonly apply: (design: Design) => Design;
  /** id of the lever of which this is the milder form: told beside it, never chosen before it */
  readonly milderThan?: string;
}

export interface Pulled {
  readonly lever: Lever;
  readonly figures: Figures;
  /** work of it and of those it stands on, once [days of one person]; below zero where it spares work; none where absent */
  readonly days?: number;
}

/** A lever as it is said, with how much of it was tried. */
export function leverWords({ words: said, size }: Lever, words: Words): string {
  return size === undefined ? said : `${said} (${size(words)})`;
}
