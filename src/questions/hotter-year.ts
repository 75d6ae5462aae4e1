// And in a hotter year? The design as drawn in its climate made warmer: all year by 1, 2 and 3 K, more in summer
// than in winter, and with a heat wave put into the hottest spell (weather/hotter-year.ts). The shifts are what-ifs
// to try a design against, not a forecast for the site.

import type { Design, Hotter } from '../design/design.ts';
import { NO_CHANGE, withHotter } from '../design/hotter.ts';
import { seasonalShift } from '../weather/hotter-year.ts';
import { hotInWords } from './criterion.ts';
import { houseOfRun } from './in-doubt.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence } from './question.ts';
import type { RunJob } from './run-job.ts';
import { runAt, runTable } from './run-table.ts';
import { countInWords, hoursInWords } from './words.ts';

const WAVE = { days: 10, extraK: 5 } as const;
const SEASONS_K = { winter: 1.5, summer: 3 } as const;

export const hotterYear: Question = {
  id: 'hotter-year',
  title: 'And in a hotter year?',
  asks: 'How does this design fare when its climate grows hotter, and in a heat wave?',
  plan: ({ design, site, words }) => {
    const made = (id: string, label: string, hotter: Partial<Hotter>, at: RunJob['at']): RunJob => ({
      id,
      label,
      ...madeHotter(design, { ...NO_CHANGE, ...hotter }, site.latitudeDeg),
      at,
    });
    const warmer = (shiftK: number) =>
      made(
        `plus ${shiftK} K`,
        `every month ${words.degrees(shiftK)} warmer`,
        { winterK: shiftK, summerK: shiftK },
        { shiftK },
      );
    const seasons = { winterK: SEASONS_K.winter, summerK: SEASONS_K.summer };
    const wave = { waveDays: WAVE.days, waveK: WAVE.extraK };
    return [
      { id: 'as it is', label: 'the typical year as it is', design, at: { shiftK: 0 } },
      warmer(2),
      made('wave', `a heat wave of ${WAVE.days} days, ${words.degrees(WAVE.extraK)} hotter`, wave, {
        wave: 'yes',
      }),
      warmer(1),
      warmer(3),
      made(
        'seasons',
        `${words.degrees(SEASONS_K.winter)} warmer in winter, ${words.degrees(SEASONS_K.summer)} in summer`,
        seasons,
        { seasons: 'yes' },
      ),
      made(
        'seasons and wave',
        'the same with the heat wave in it',
        { ...seasons, ...wave },
        {
          seasons: 'yes',
          wave: 'yes',
        },
      ),
    ];
  },
  doubt: (basis, runs) => {
    // In a year made hotter still the runs are no houses to draw.
    if (basis.design.hotter !== undefined) return null;
    return {
      houses: [houseOfRun('now', runAt(runs, 'as it is')), houseOfRun('worst', worstOf(runs))],
      // The years are what this question turns over itself.
      over: (unknown) => unknown !== 'hot-year' && unknown !== 'cold-year',
      advice: (figuresOf) =>
        figuresOf('worst').tooHotHours <= basis.criterion.hours
          ? 'it keeps to the limit in all those years'
          : figuresOf('now').tooHotHours <= basis.criterion.hours
            ? 'it keeps to the limit today, and not in the worst of those years'
            : 'it passes the limit already today',
      subject: 'Today the house',
    };
  },
  answer,
};

/** Of the hotter years the one with most hours too hot. */
function worstOf(runs: Runs): Run {
  return [...runs.values()]
    .filter(({ job }) => job.at.doubt === undefined)
    .reduce((worst, run) => (run.figures.tooHotHours > worst.figures.tooHotHours ? run : worst));
}

/** The house in a hotter year, as a design of its own; one that asks for a hotter year already is run in that year made hotter still. */
function madeHotter(design: Design, hotter: Hotter, latitudeDeg: number): Pick<RunJob, 'design' | 'change'> {
  if (design.hotter === undefined) return { design: withHotter(design, hotter) };
  const { winterK, summerK, waveDays, waveK } = hotter;
  return {
    design,
    change: {
      ...((winterK > 0 || summerK > 0) && { shiftK: seasonalShift(winterK, summerK, latitudeDeg) }),
      ...(waveK > 0 && { wave: { days: waveDays, extraK: waveK } }),
    },
  };
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const shifted = [...runs.values()]
    .filter(({ job }) => job.at.shiftK !== undefined)
    .sort((one, other) => Number(one.job.at.shiftK) - Number(other.job.at.shiftK));
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [
      {
        id: 'shift',
        title: 'The same house in warmer years',
        x: { label: 'every month warmer by', unit: 'K' },
        y: ['tooHotHours', 'warmestC', 'heatingKWh', 'humidHours'],
        curves: [
          {
            id: 'drawn',
            label: 'as drawn',
            points: shifted.map((run) => ({
              x: Number(run.job.at.shiftK),
              run: run.job.id,
              figures: run.figures,
            })),
          },
        ],
        marks: [],
      },
    ],
    tables: [
      runTable(
        'by-climate',
        'The house as drawn, by climate',
        'climate',
        ['tooHotHours', 'warmestC', 'sunspaceWarmestC', 'heatingKWh', 'coldestC', 'humidHours'],
        [...runs.values()],
      ),
    ],
    map: null,
    notes: [
      'These are trials, not a forecast for this site. Relative humidity is kept in a lasting shift, the dew point in a heat wave; sun, wind and cloud stay as in the typical year.',
      'Heat indoors harms the old, the ill and the very young first; plan one cool room, and follow the local heat warnings.',
    ],
    proposal: null,
  };
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { words, criterion } = basis;
  const of = (id: string) => runAt(runs, id).figures;
  const [now, two, wave, worst] = [of('as it is'), of('plus 2 K'), of('wave'), of('seasons and wave')];
  const figures = {
    nowHours: now.tooHotHours,
    plusTwoHours: two.tooHotHours,
    plusTwoHeatingKWh: two.heatingKWh,
    nowHeatingKWh: now.heatingKWh,
    nowWarmestC: now.warmestC,
    waveWarmestC: wave.warmestC,
    worstHours: worst.tooHotHours,
    worstWarmestC: worst.warmestC,
    limitHours: criterion.hours,
    limitC: criterion.aboveC,
  };
  const within = (hours: number) => hours <= criterion.hours;
  const verdict = within(worstOf(runs).figures.tooHotHours)
    ? 'It keeps to the limit in every hotter year we tried.'
    : within(figures.plusTwoHours)
      ? 'It keeps to the limit in the warmer years, but not in the worst of them.'
      : within(figures.nowHours)
        ? 'It keeps to the limit today and not then: plan the shade and the vents now, while they are cheap.'
        : 'It passes the limit already today; mend that first.';
  // People who live in a warmer year are used to more, by the limit that follows the weather.
  const fewer =
    criterion.limit.kind === 'adaptive' && two.tooHotHours < now.tooHotHours
      ? 'The limit follows the weather, so a warmer year can count fewer. '
      : '';
  return {
    figures,
    text:
      `Today the house is ${hotInWords(basis)} for ${hoursInWords(now.tooHotHours)} a year. ` +
      `With every month ${words.degrees(2)} warmer it is ${countInWords(two.tooHotHours)}, while back-up heat goes from ${words.energy(now.heatingKWh)} to ${words.energy(two.heatingKWh)}. ${fewer}` +
      `In a heat wave the rooms reach ${words.temperature(wave.warmestC, 1)}; hotter seasons with that wave give ${hoursInWords(worst.tooHotHours)}. ${verdict}`,
  };
}
