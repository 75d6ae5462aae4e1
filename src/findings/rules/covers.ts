// What shades and covers ask of the people living there, and the dangers that come with them. That three in four covers
// stay as they are all day: US survey of 2013 (from memory, medium confidence). Local codes and makers decide.

import { coverKindById } from '../../design/cover-catalogue.ts';
import type { Cover, DrawnBy } from '../../design/design.ts';
import type { Context } from '../context.ts';
import { isOnFront } from '../cover-words.ts';
import { caution, finding, type Rule } from '../rule.ts';
import { hours, isUs, percent, plain } from '../wording.ts';

/** Moves a day that fit a household's day, a morning and an evening of two sides. House rule. */
const EASY_MOVES_PER_DAY = 4;
/** Share of the year a cover may hang wrong before it is worth a word. House rule. */
const LITTLE_NEGLECT = 0.05;
const HOURS_A_YEAR = 8760;

const coversOf = ({ design }: Context): readonly Cover[] => design.covers ?? [];
const has = (context: Context, ...kinds: readonly string[]) =>
  coversOf(context).some(({ kind }) => kinds.includes(kind));

export const COVER_RULES: readonly Rule[] = [
  finding({
    id: 'covers-ask-much',
    severity: 'warning',
    applies: ({ outcome }) => (outcome.covers?.movesPerDayInBusiestMonth ?? 0) > EASY_MOVES_PER_DAY,
    figures: ({ outcome }) => ({
      moves: outcome.covers!.moves,
      movesPerDay: outcome.covers!.movesPerDayInBusiestMonth,
      movesOnBusiestDay: outcome.covers!.movesOnBusiestDay,
      stayShare: 0.75,
      source:
        'covers that stay as they are all day: US survey of homes, 2013 (from memory, medium confidence)',
    }),
    says: (f) =>
      `The shades and covers want a hand ${f.moves} times a year: ${plain(f.movesPerDay, 1)} times a day in the busiest month, and ${f.movesOnBusiestDay} on the busiest day. ` +
      `In most homes about ${percent(f.stayShare)} of them stay as they are all day. A motor with a sun sensor would do it for you. Or hang what may stay up all summer.`,
  }),
  finding({
    id: 'covers-neglected',
    severity: 'note',
    applies: ({ outcome }) => (outcome.covers?.neglectedShare ?? 0) > LITTLE_NEGLECT,
    figures: ({ outcome, house }) => ({
      neglectedHours: outcome.covers!.neglectedShare * HOURS_A_YEAR,
      tooHotHours: house.tooHot.hours,
    }),
    says: (f) =>
      `For ${hours(f.neglectedHours)} a year a shade or cover hangs as it should not, for nobody is there or nobody thinks of it.`,
  }),
  finding({
    id: 'leaves-in-winter',
    severity: 'note',
    applies: (context) => coversOf(context).some((cover) => cover.kind === 'leaves' && isOnFront(cover)),
    figures: () => {
      const { leaf, transmittance } = coverKindById('leaves');
      return {
        bareShare: Math.min(...leaf!) * (1 - transmittance),
        source: 'bare shoots of a vine on wires: common practice, no source',
      };
    },
    says: (f) =>
      `A vine before the sunny glass costs heat as well. Its bare shoots and wires keep off about ${percent(f.bareShare)} of the winter sun. Cut it back hard each autumn, or grow it on the east and west sides.`,
  }),
];

/** Drawn while the sun shines, by its rule. */
const BY_DAY: readonly DrawnBy[] = ['sun', 'heat', 'season'];

export const COVER_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-escape-window',
    severity: 'danger',
    applies: (context) =>
      has(context, 'shutter', 'insulated-shutter', 'outside-blind', 'outside-screen') &&
      coversOf(context).some(({ on }) => on !== 'sunspace'),
    figures: () => ({
      source: 'International Residential Code, section R310 (from memory, high confidence)',
    }),
    says: () =>
      'A shutter or outside blind must not shut people in. A window meant for escape must open from inside with the cover drawn: by hand, with no key, tool or power. Ask your building office which windows those are, and keep a hand crank beside any motor.',
  }),
  caution({
    id: 'caution-cords',
    severity: 'danger',
    applies: (context) =>
      has(
        context,
        'inside-blind',
        'honeycomb',
        'curtain',
        'sealed-curtain',
        'outside-blind',
        'outside-screen',
      ),
    figures: () => ({ source: 'EN 13120 and US consumer safety advice (from memory, high confidence)' }),
    says: () =>
      'Loops and cords of blinds have strangled small children. Buy blinds without cords, or with the cords held taut out of reach, and move cots and beds away from them.',
  }),
  caution({
    id: 'caution-awning-wind',
    severity: 'warning',
    applies: (context) => has(context, 'awning', 'outside-blind', 'outside-screen'),
    figures: (context) => ({
      windKmH: Math.round(
        3.6 *
          Math.min(
            ...coversOf(context)
              .filter(({ kind }) => ['awning', 'outside-blind', 'outside-screen'].includes(kind))
              .map(({ kind }) => coverKindById(kind).mostWind),
          ),
      ),
      source: 'wind classes of EN 13561 and EN 13659 (from memory, high confidence)',
    }),
    says: (f, { units }) =>
      `Wind tears awnings and outside blinds off their walls. The run takes them in above ${isUs(units) ? `${Math.round(f.windKmH / 1.609)} miles` : `${f.windKmH} km`} an hour. Nobody may be there to do that: fit a wind sensor, take them in before storms and snow, and have the brackets fixed by someone who knows your wall.`,
  }),
  caution({
    id: 'caution-hot-glass',
    severity: 'warning',
    applies: (context) =>
      coversOf(context).some(({ kind, drawnBy, habit }) => {
        const { place } = coverKindById(kind);
        return place !== 'outside' && BY_DAY.includes(drawnBy) && habit !== 'never';
      }),
    figures: () => ({
      source: "glass makers' advice on thermal stress (from memory, medium confidence)",
    }),
    says: () =>
      'A cover close behind sunlit glass heats the pane, and the edge in the frame stays cool. That can crack glass that is not toughened. Leave a hand of air behind the pane, open at top and bottom, and ask your glazier before you hang tight or dark covers, or insulated ones that stay shut by day.',
  }),
];
