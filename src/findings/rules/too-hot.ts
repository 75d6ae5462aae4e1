// Rooms that get too hot: how long, when, by what, and what takes the heat away. What counts and how many hours may is the
// design's criterion (design/too-hot-criterion.ts); beyond 10 % of the year, the limit of low-energy-house certification
// practice (from memory, high confidence), it is serious whatever counts. Nights by CIBSE TM59 (2017).

import { dailyMeans, hoursByMonth } from '../../outcomes/calendar.ts';
import type { ZoneOutcome } from '../../outcomes/outcome.ts';
import { isTooHot } from '../../outcomes/too-hot.ts';
import { runningMeans } from '../../physics/adaptive-comfort.ts';
import { judgeTm52, passesTm59Night, TM59_NIGHT } from '../../physics/overheating-criteria.ts';
import { HOURS, monthOfHour } from '../../weather/typical-year.ts';
import type { Context } from '../context.ts';
import { houseLimits } from '../hot-hours.ts';
import { hotMeaning, hotPhrase, whoseLimit } from '../hot-words.ts';
import { oncePer } from '../once-per.ts';
import { roomFigure } from '../room-words.ts';
import { finding, type Rule } from '../rule.ts';
import { during, hours, moment, months, percent, portion } from '../wording.ts';
import { monthsThatMatter, warmestMonths } from './season.ts';

/** Outdoor air this much cooler than the limit can carry the heat away [K]. House rule. */
const USEFUL_DIFFERENCE_K = 4;
const TEN_PER_CENT = 0.1 * HOURS;

interface HotHours {
  readonly byMonth: readonly number[];
  /** share of the hot hours with outdoor air at least USEFUL_DIFFERENCE_K below the limit */
  readonly coolOutsideShare: number;
  /** with outdoor air below the limit at all */
  readonly coolerOutsideShare: number;
  /** share of the hot hours outside the three warmest months */
  readonly offSeasonShare: number;
  /** share of the light that entered in hot hours that came through the equator-facing glass */
  readonly frontShare: number;
}

/** Several rules ask for them. */
const hotHours = oncePer(countHotHours);

function countHotHours(context: Context): HotHours {
  const { climate, year } = context;
  const { limitC } = houseLimits(context);
  const over = context.worst('hot').year.operativeC.map((value, hour) => value - limitC[hour]!);
  const byMonth = hoursByMonth(over, (value) => value > 0);
  const warmest = warmestMonths(climate);
  const panes = year.panes.filter(({ from }) => from === 'outdoors');
  let [all, cool, cooler, off, front, light] = [0, 0, 0, 0, 0, 0];
  for (let hour = 0; hour < HOURS; hour++) {
    if (over[hour]! <= 0) continue;
    all++;
    if (climate.year.dryBulbC[hour]! <= limitC[hour]! - USEFUL_DIFFERENCE_K) cool++;
    if (climate.year.dryBulbC[hour]! < limitC[hour]!) cooler++;
    if (!warmest[monthOfHour(hour)]) off++;
    for (const pane of panes) {
      light += pane.transmittedW[hour]!;
      if (pane.id.startsWith('front')) front += pane.transmittedW[hour]!;
    }
  }
  const share = (part: number, whole: number) => (whole > 0 ? part / whole : 0);
  return {
    byMonth,
    coolOutsideShare: share(cool, all),
    coolerOutsideShare: share(cooler, all),
    offSeasonShare: share(off, all),
    frontShare: share(front, light),
  };
}

export const TOO_HOT_RULES: readonly Rule[] = [
  finding({
    id: 'too-hot',
    severity: ({ house }) => (house.tooHot.hours > TEN_PER_CENT ? 'danger' : 'warning'),
    applies: ({ house }) => isTooHot(house),
    figures: (context) => {
      const { house } = context;
      const hot = hotHours(context);
      const mostly = monthsThatMatter(hot.byMonth);
      const place = context.worst('hot');
      const inThose = hot.byMonth.reduce((sum, count, month) => sum + (mostly[month] ? count : 0), 0);
      return {
        ...roomFigure(place),
        hours: house.tooHot.hours,
        ...limitFigures(house),
        months: during(mostly),
        monthShare: inThose / house.tooHot.hours,
        maxOperativeC: house.maxOperativeC,
        hottest: moment(house.hottestHour),
        coolOutsideShare: hot.coolOutsideShare,
        coolerOutsideShare: hot.coolerOutsideShare,
        usefulDifferenceK: USEFUL_DIFFERENCE_K,
        frontShare: hot.frontShare,
      };
    },
    says: (f, { house, words, worst }) => {
      const { atStart, verb } = worst('hot');
      const opening =
        `${atStart} ${verb('are', 'is')} ${hotPhrase(house.tooHot, words)} for ${hours(f.hours)} a year, ` +
        `${percent(f.monthShare)} of them ${f.months}; ${f.limitHours} are allowed. ` +
        hotMeaning(house.tooHot, words) +
        `The hottest hour reaches ${words.temperature(f.maxOperativeC, 1)}, on ${f.hottest}. `;
      const cause =
        f.coolOutsideShare > 0.5
          ? `In ${percent(f.coolOutsideShare)} of those hours the air outside is at least ${words.degrees(f.usefulDifferenceK)} cooler than that limit. So the sun does it, and ${percent(f.frontShare)} of the sun that gets in then comes through the equator-facing glass. Less glass to the sun, shade outside it or more air will cure it.`
          : f.coolerOutsideShare > 0.5
            ? `In ${percent(f.coolerOutsideShare)} of those hours the air outside is cooler than that limit, though not by much. Keep the sun off the glass from outside, open wide while it is cooler out, and let the night air through.`
            : `In most of those hours the air outside is warm too. Keep the sun off the glass from outside, close up by day, and let cool air through at night.`;
      return opening + cause;
    },
  }),
  finding({
    id: 'hot-out-of-season',
    severity: 'note',
    applies: (context) => isTooHot(context.house) && hotHours(context).offSeasonShare > 0.5,
    figures: (context) => ({
      offSeasonShare: hotHours(context).offSeasonShare,
      warmestMonths: months(warmestMonths(context.climate)),
      overhangM: context.design.glass.overhangM,
    }),
    says: (f) =>
      `${portion(f.offSeasonShare)} of the hot hours fall outside ${f.warmestMonths}, the warmest months. ` +
      'The sun is lower then and shines in under any overhang. Plan a blind or shutter outside the glass that you can move, or count on the vents.',
  }),
  finding({
    id: 'hot-nights',
    severity: 'warning',
    applies: ({ house }) => !passesTm59Night(house.hotNightHours),
    figures: ({ house, worst }) => ({
      ...roomFigure(worst('night')),
      nightHours: house.hotNightHours,
      limitC: TM59_NIGHT.limitC,
      allowedHours: Math.floor(TM59_NIGHT.share * TM59_NIGHT.nightHours),
      source: 'CIBSE TM59 (2017), bedrooms from 22:00 to 07:00',
    }),
    says: (f, { words, worst }) =>
      `The nights ${worst('night').room ? `in ${worst('night').the} ` : ''}are hot: ${hours(f.nightHours)} above ${words.temperature(f.limitC)} between ten in the evening and seven in the morning. ` +
      `A British guide for bedrooms, TM59, allows ${f.allowedHours}. People sleep badly in that, so give the bedrooms windows that can stay open at night.`,
  }),
  finding({
    id: 'fails-tm52',
    severity: 'note',
    applies: (context) => context.house.tooHot.criterion === 'tm59-open' && tm52Of(context).overheats,
    figures: (context) => {
      const { failed, hourShare, worstExcessK } = tm52Of(context);
      return {
        failed: failed.length,
        hourShare,
        worstExcessK,
        source: 'CIBSE TM52 (2013), all hours of the warm season counted as occupied',
      };
    },
    says: (f) =>
      `By the older British test TM52 this house overheats too: it fails ${f.failed === 3 ? 'all three' : 'two'} of its parts, and two are enough. ` +
      `It asks besides for how far the worst day and the worst hour pass the same limit, which ${percent(f.hourShare)} of the warm season does.`,
  }),
  finding({
    id: 'cool-enough',
    severity: 'good',
    applies: ({ house }) => !isTooHot(house),
    figures: ({ house, worst }) => ({
      ...roomFigure(worst('hot')),
      hours: house.tooHot.hours,
      ...limitFigures(house),
      maxOperativeC: house.maxOperativeC,
    }),
    says: (f, { house, words, worst }) =>
      f.hours === 0
        ? `The rooms are never ${hotPhrase(house.tooHot, words)}. ${hotMeaning(house.tooHot, words)}The hottest hour of the year is ${words.temperature(f.maxOperativeC, 1)}.`
        : `The rooms stay cool enough: ${worst('hot').room === null ? '' : `the warmest, "${worst('hot').room!.name}", is for `}${hours(f.hours)} a year ${hotPhrase(house.tooHot, words)}, and ${f.limitHours} are allowed. ${hotMeaning(house.tooHot, words)}The hottest hour is ${words.temperature(f.maxOperativeC, 1)}.`,
  }),
];

/** What the house is held to, for the figures behind a sentence. */
function limitFigures({ tooHot: { criterion, limitHours, lowestLimitC, highestLimitC } }: ZoneOutcome) {
  return { criterion, limitHours, lowestLimitC, highestLimitC, whose: whoseLimit(criterion) };
}

function tm52Of({ worst, climate }: Context): ReturnType<typeof judgeTm52> {
  const everybodyHome = new Float64Array(HOURS).fill(1);
  const means = runningMeans(dailyMeans(climate.year.dryBulbC));
  return judgeTm52(worst('hot').year.operativeC, means, everybodyHome, climate.year.site.latitudeDeg);
}
