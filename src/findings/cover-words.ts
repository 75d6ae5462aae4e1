// Shades and covers in words, for findings, the list of inputs and the page: "Outside slatted blinds on the east and west
// windows, drawn by whoever is home when it gets hot".

import { coverKindById } from '../design/cover-catalogue.ts';
import type { Cover, CoverSeason, CoverSide, Design, DrawnBy, Habit } from '../design/design.ts';

export const SIDE_WORDS: Readonly<Record<CoverSide, string>> = {
  front: 'on the equator side',
  sunspace: 'on the sunspace',
  east: 'on the east side',
  west: 'on the west side',
  'east-and-west': 'on the east and west sides',
  pole: 'on the shaded side',
  all: 'on all windows',
};

export const DRAWN_BY_WORDS: Readonly<Record<DrawnBy, string>> = {
  sun: 'when the sun is on the glass',
  heat: 'when it gets hot',
  night: 'for the night',
  season: 'for the season',
};

export const SEASON_WORDS: Readonly<Record<CoverSeason, string>> = {
  year: 'all year',
  warm: 'in the warm half of the year',
  cold: 'in the cold half of the year',
};

export const COVER_HABIT_WORDS: Readonly<Record<Habit, string>> = {
  automatic: 'by a motor',
  attentive: 'by whoever is home',
  away: 'by people away on workdays',
  forgetful: 'by people who forget now and then',
  never: 'by nobody',
};

/** Hangs where the equator-facing glass is. */
export function isOnFront({ on }: Cover): boolean {
  return on === 'front' || on === 'sunspace' || on === 'all';
}

/** One cover as a sentence without its stop. */
export function coverWords(cover: Cover, { vents }: Pick<Design, 'vents'>): string {
  const { name, leaf } = coverKindById(cover.kind);
  const where = `${name} ${SIDE_WORDS[cover.on]}`;
  if (leaf !== undefined) return `${where}, in leaf in summer and bare in winter`;
  const who = COVER_HABIT_WORDS[cover.habit ?? vents.habit];
  const season = SEASON_WORDS[cover.season];
  if (cover.drawnBy === 'season') return `${where}, drawn ${who} and left so ${season}`;
  const when = DRAWN_BY_WORDS[cover.drawnBy];
  return `${where}, drawn ${who} ${when}${cover.season === 'year' ? '' : `, ${season}`}`;
}
