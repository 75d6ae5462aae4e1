// Mould in the corners and water on the glass. The mould index of VTT goes from 0 to 6; 3 is where growth shows
// to the eye and where ASHRAE 160 (2016) sets its limit (from memory, high confidence).

import type { DampSpot } from '../../outcomes/damp-spots.ts';
import type { ZoneOutcome } from '../../outcomes/outcome.ts';
import { worstDampSpot } from '../../outcomes/worst-damp-spot.ts';
import { MOULD_INDEX_LIMIT } from '../../physics/mould-index.ts';
import type { Context } from '../context.ts';
import { roomFigure } from '../room-words.ts';
import { finding, type Rule } from '../rule.ts';
import { hours, plain } from '../wording.ts';

const SOURCE = 'VTT mould index, class "sensitive"; limit of ASHRAE 160 (2016)';
/** Index below which nothing grows that a microscope would find. */
export const CLEAN = 1;
/** Hours of wet glass a year worth planning for. House rule. */
const WET_HOURS = 200;

type Place = DampSpot['spot'];

const PLACE_WORDS: Readonly<Record<Place, string>> = {
  'coldest corner': 'in the coldest corners',
  'behind the planting': 'on the wall behind the plants',
  'window frame': 'on the window frames',
};

const LOOK_THERE: Readonly<Record<string, string>> = {
  [PLACE_WORDS['coldest corner']]: 'Look behind furniture and along the foot of outer walls.',
  [PLACE_WORDS['behind the planting']]: 'Look behind the leaves, and leave a gap to the wall.',
  [PLACE_WORDS['window frame']]: 'Look along the sills and seals, and wipe off the dew on cold mornings.',
};

/** Where in a zone mould grows furthest. */
function worstSpot(zone: ZoneOutcome): { index: number; place: string } {
  const { index, spot } = worstDampSpot(zone);
  return { index, place: PLACE_WORDS[spot] };
}

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
    severity: ({ house }) => (worstSpot(house).index >= MOULD_INDEX_LIMIT ? 'danger' : 'warning'),
    applies: ({ house }) => worstSpot(house).index >= CLEAN,
    figures: ({ house, worst }) => ({
      ...roomFigure(worst('mould')),
      ...worstSpot(house),
      limit: MOULD_INDEX_LIMIT,
      source: SOURCE,
    }),
    says: (f, { worst }) =>
      f.index >= f.limit
        ? `Expect mould you can see ${f.place} of ${worst('mould').the}. The mould index reaches ${indexText(f.index)}, and ${f.limit} is the limit. ${LOOK_THERE[f.place]} Less water in the air, ${f.place === PLACE_WORDS['window frame'] ? 'warmer frames' : 'warmer corners'} and steady airing stop it.`
        : `Mould can begin ${f.place} of ${worst('mould').the}, though it would not show yet: the mould index reaches ${indexText(f.index)} of ${f.limit}. Keep furniture a hand's width from outer walls, and insulate corners and frames well.`,
  }),
  finding({
    id: 'mould-in-sunspace',
    severity: ({ sunspace }) => (worstSpot(sunspace!).index >= MOULD_INDEX_LIMIT ? 'warning' : 'note'),
    applies: ({ sunspace }) => sunspace !== null && worstSpot(sunspace).index >= CLEAN,
    figures: ({ sunspace }) => ({
      ...worstSpot(sunspace!),
      limit: MOULD_INDEX_LIMIT,
      source: SOURCE,
    }),
    says: (f) =>
      `In the sunspace the mould index reaches ${indexText(f.index)} ${f.place}; mould shows from ${f.limit} up. Build it of things that do not feed mould: masonry, lime and metal, not board and bare softwood.`,
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
        frostHours: Math.max(house.frostHours, sunspace?.frostHours ?? 0),
      };
    },
    says: (f, { words }) =>
      `Water stands on the inside of the glass for ${hours(f.wetHours)} a year, ${words.water(f.condensationKg)} in all.${f.frostHours > 0 ? ` For ${hours(f.frostHours)} it freezes there.` : ''} Give the sills a gutter with a drain, and use wood there only if it is well sealed.`,
  }),
  finding({
    id: 'clean-corners',
    severity: 'good',
    applies: ({ house }) => worstSpot(house).index < CLEAN,
    figures: ({ house }) => ({ index: worstSpot(house).index, limit: MOULD_INDEX_LIMIT, source: SOURCE }),
    says: (f) =>
      `The corners and window frames of the rooms stay dry enough that mould does not start (index ${indexText(f.index)}, limit ${f.limit}).`,
  }),
];
