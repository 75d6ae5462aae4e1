// Mould in the corners and water on the glass. The mould index of VTT goes from 0 to 6; 3 is where growth shows
// to the eye and where ASHRAE 160 (2016) sets its limit (from memory, high confidence).

import { MOULD_INDEX_LIMIT } from '../../physics/mould-index.ts';
import type { Context } from '../context.ts';
import { finding, type Rule } from '../rule.ts';
import { hours, plain } from '../wording.ts';

const SOURCE = 'VTT mould index, class "sensitive"; limit of ASHRAE 160 (2016)';
/** Index below which nothing grows that a microscope would find. */
const CLEAN = 1;
/** Hours of wet glass a year worth planning for. House rule. */
const WET_HOURS = 200;

/** The pane whose inner face is wet for longest. */
function wettestPane({ year }: Context): { id: string; wetHours: number } {
  return year.panes.reduce((worst, pane) => (pane.wetHours > worst.wetHours ? pane : worst), {
    id: '',
    wetHours: 0,
  });
}

function indexText(index: number): string {
  return plain(index, 1);
}

export const MOULD_RULES: readonly Rule[] = [
  finding({
    id: 'mould-in-rooms',
    severity: ({ house }) => (house.mouldIndexMax >= MOULD_INDEX_LIMIT ? 'danger' : 'warning'),
    applies: ({ house }) => house.mouldIndexMax >= CLEAN,
    figures: ({ house }) => ({ index: house.mouldIndexMax, limit: MOULD_INDEX_LIMIT, source: SOURCE }),
    says: (f) =>
      f.index >= f.limit
        ? `Expect mould you can see in the coldest corners of the rooms. The mould index reaches ${indexText(f.index)}, and ${f.limit} is the limit. Look behind furniture and along the foot of outer walls. Less water in the air, warmer corners and steady airing stop it.`
        : `Mould can begin in the coldest corners of the rooms, though it would not show yet: the mould index reaches ${indexText(f.index)} of ${f.limit}. Keep furniture a hand's width from outer walls, and insulate the corners well.`,
  }),
  finding({
    id: 'mould-in-sunspace',
    severity: ({ sunspace }) => (sunspace!.mouldIndexMax >= MOULD_INDEX_LIMIT ? 'warning' : 'note'),
    applies: ({ sunspace }) => sunspace !== null && sunspace.mouldIndexMax >= CLEAN,
    figures: ({ sunspace }) => ({
      index: sunspace!.mouldIndexMax,
      limit: MOULD_INDEX_LIMIT,
      source: SOURCE,
    }),
    says: (f) =>
      `In the sunspace the mould index reaches ${indexText(f.index)}; mould shows from ${f.limit} up. Build it of things that do not feed mould: masonry, lime and metal, not board and bare softwood.`,
  }),
  finding({
    id: 'wet-glass',
    severity: 'note',
    applies: (context) => wettestPane(context).wetHours > WET_HOURS,
    figures: (context) => {
      const { house, sunspace } = context;
      return {
        wetHours: wettestPane(context).wetHours,
        condensationKg: house.condensationKg + (sunspace?.condensationKg ?? 0),
      };
    },
    says: (f, { words }) =>
      `Water stands on the inside of the glass for ${hours(f.wetHours)} a year, ${words.water(f.condensationKg)} in all. Give the sills a gutter with a drain, and use wood there only if it is well sealed.`,
  }),
  finding({
    id: 'clean-corners',
    severity: 'good',
    applies: ({ house }) => house.mouldIndexMax < CLEAN,
    figures: ({ house }) => ({ index: house.mouldIndexMax, limit: MOULD_INDEX_LIMIT, source: SOURCE }),
    says: (f) =>
      `The corners of the rooms stay dry enough that mould does not start (index ${indexText(f.index)}, limit ${f.limit}).`,
  }),
];
