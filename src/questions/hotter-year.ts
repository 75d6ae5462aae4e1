// And in a hotter year? The design as drawn in its climate made warmer: all year by 1, 2 and 3 K, more in summer
// than in winter, and with a heat wave put into the hottest spell (weather/hotter-year.ts). The shifts are what-ifs
// to try a design against, not a forecast for the site.

import { seasonalShift, uniformShift } from '../weather/hotter-year.ts';
import { hotInWords } from './criterion.ts';
import type { AnswerBody, Basis, Question, Runs, Sentence } from './question.ts';
import type { ClimateChange, RunJob } from './run-job.ts';
import { runAt, runTable } from './run-table.ts';
import { countInWords, hoursInWords } from './words.ts';

const WAVE = { days: 10, extraK: 5 } as const;
const SEASONS_K = { winter: 1.5, summer: 3 } as const;

export const hotterYear: Question = {
  id: 'hotter-year',
  title: 'And in a hotter year?',
  asks: 'How does this design fare when its climate grows hotter, and in a heat wave?',
  plan: ({ design, site, words }) => {
    const warmer = (shiftK: number): RunJob => ({
      id: `plus ${shiftK} K`,
      label: `every month ${words.degrees(shiftK)} warmer`,
      design,
      change: { shiftK: uniformShift(shiftK) },
      at: { shiftK },
    });
    const seasons: ClimateChange = {
      shiftK: seasonalShift(SEASONS_K.winter, SEASONS_K.summer, site.latitudeDeg),
    };
    return [
      { id: 'as it is', label: 'the typical year as it is', design, at: { shiftK: 0 } },
      warmer(2),
      {
        id: 'wave',
        label: `a heat wave of ${WAVE.days} days, ${words.degrees(WAVE.extraK)} hotter`,
        design,
        change: { wave: WAVE },
        at: { wave: 'yes' },
      },
      warmer(1),
      warmer(3),
      {
        id: 'seasons',
        label: `${words.degrees(SEASONS_K.winter)} warmer in winter, ${words.degrees(SEASONS_K.summer)} in summer`,
        design,
        change: seasons,
        at: { seasons: 'yes' },
      },
      {
        id: 'seasons and wave',
        label: 'the same with the heat wave in it',
        design,
        change: { ...seasons, wave: WAVE },
        at: { seasons: 'yes', wave: 'yes' },
      },
    ];
  },
  answer,
};

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
  const verdict = within(figures.worstHours)
    ? 'It keeps to the limit in all of them.'
    : within(figures.plusTwoHours)
      ? 'It keeps to the limit in the warmer years, but not in the worst of them.'
      : within(figures.nowHours)
        ? 'It keeps to the limit today and not then: plan the shade and the vents now, while they are cheap.'
        : 'It passes the limit already today; mend that first.';
  return {
    figures,
    text:
      `Today the house is ${hotInWords(basis)} for ${hoursInWords(now.tooHotHours)} a year. ` +
      `With every month ${words.degrees(2)} warmer it is ${countInWords(two.tooHotHours)}, while back-up heat goes from ${words.energy(now.heatingKWh)} to ${words.energy(two.heatingKWh)}. ` +
      `In a heat wave the rooms reach ${words.temperature(wave.warmestC, 1)}; hotter seasons with that wave give ${hoursInWords(worst.tooHotHours)}. ${verdict}`,
  };
}
