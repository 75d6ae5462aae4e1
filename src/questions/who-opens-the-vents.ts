// What if nobody opens the vents? Five habits and three sizes of vent: what each gives, and what it asks of the
// people who live there. The vents are the sunspace's, or the house windows where there is no sunspace.

import type { Habit } from '../design/design.ts';
import { valueAt } from '../design/design-path.ts';
import { limitOf } from '../design/limits.ts';
import { hotInWords } from './criterion.ts';
import type { Figures } from './figures.ts';
import { houseOfRun } from './in-doubt.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence } from './question.ts';
import { runAt, runTable } from './run-table.ts';
import { varied } from './variation.ts';
import { countInWords, hoursInWords } from './words.ts';

const HABITS: readonly Habit[] = ['attentive', 'never', 'automatic', 'away', 'forgetful'];
const TIMES = [1, 0.5, 2] as const;
/** Vents tried where none are drawn [m²]. */
const USUAL_VENT_M2 = 2;

/** So many damp hours more, and such a share of them, are worth a sentence. House rules. */
const DAMPER_HOURS = 100;
const DAMPER_SHARE = 0.1;

const HABIT_WORDS: Readonly<Record<Habit, string>> = {
  automatic: 'an automatic opener',
  attentive: 'someone at home who looks every hour',
  away: 'the same person, away on workdays',
  forgetful: 'someone who thinks of it three times a day',
  never: 'nobody',
};

export const whoOpensTheVents: Question = {
  id: 'who-opens-the-vents',
  title: 'What if nobody opens the vents?',
  asks: 'How does the house fare with each habit of opening the vents, and with smaller or larger vents?',
  plan: (basis) =>
    TIMES.flatMap((times) =>
      HABITS.map((habit) => ({
        id: idOf(habit, times),
        label: `${basis.words.area(drawnVent(basis) * times)}, ${HABIT_WORDS[habit]}`,
        design: varied(basis.design, {
          'vents.habit': habit,
          [ventPath(basis)]: drawnVent(basis) * times,
        }),
        at: { habit, ventM2: drawnVent(basis) * times },
      })),
    ),
  doubt: (basis, runs) => {
    const of = (habit: Habit) => houseOfRun(habit, runAt(runs, idOf(habit, 1)));
    return {
      houses: [of('automatic'), of('never')],
      // Who opens them is what this question turns over itself.
      over: (unknown) => unknown !== 'careless' && unknown !== 'careful',
      advice: (figuresOf) =>
        verdictOf(figuresOf('never').tooHotHours, figuresOf('automatic').tooHotHours, basis).turned,
      subject: 'With an automatic opener the house',
    };
  },
  answer,
};

function idOf(habit: Habit, times: number): string {
  return `${habit}, ${times} times`;
}

function ventPath({ design }: Basis): 'vents.sunspaceM2' | 'vents.houseM2' {
  return design.sunspace.join === 'none' ? 'vents.houseM2' : 'vents.sunspaceM2';
}

function drawnVent(basis: Basis): number {
  const drawn = valueAt(basis.design, ventPath(basis)) as number;
  return drawn > 0 ? drawn : USUAL_VENT_M2;
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const all = [...runs.values()].sort((one, other) => ventOf(one) - ventOf(other));
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [
      {
        id: 'vents',
        title: 'Vents help only when somebody opens them',
        x: { label: `${limitOf(ventPath(basis)).label.toLowerCase()}, open area`, unit: 'm²' },
        y: ['tooHotHours', 'heatingKWh', 'humidHours', 'ventMovesPerDay'],
        curves: HABITS.map((habit) => ({
          id: habit,
          label: HABIT_WORDS[habit],
          points: all
            .filter(({ job }) => job.at.habit === habit)
            .map((run) => ({ x: ventOf(run), run: run.job.id, figures: run.figures })),
        })),
        marks: [
          {
            id: 'drawn',
            kind: 'drawn',
            x: drawnVent(basis),
            label: 'as drawn',
            curve: null,
            source: 'the design',
          },
        ],
      },
    ],
    tables: [
      runTable(
        'by-habit',
        'The house by vent and habit',
        'vent, habit',
        ['tooHotHours', 'heatingKWh', 'humidHours', 'warmestC', 'ventMovesPerDay', 'neglectedShare'],
        all,
      ),
    ],
    map: null,
    notes: [
      'Waking hours are 7 to 22, away 8 to 17 on workdays (common practice, no source); an automatic opener costs nobody a move.',
      'A shut sunspace can pass temperatures that harm plants, small children and pets: an automatic opener is the safe one.',
    ],
    proposal: null,
  };
}

function ventOf({ job }: Run): number {
  return Number(job.at.ventM2);
}

/** As it is told, and as it is told where it turns. */
function verdictOf(never: number, automatic: number, { criterion }: Basis) {
  if (never <= criterion.hours)
    return {
      verdict: `Unopened too it keeps to the ${hoursInWords(criterion.hours)} allowed.`,
      turned: 'it keeps to the limit with its vents unopened',
    };
  if (automatic <= criterion.hours)
    return {
      verdict: 'If nobody will open them every day, fit an automatic opener.',
      turned: 'it wants an automatic opener or a faithful hand',
    };
  return {
    verdict: 'Vents alone do not bring it within the limit; take away glass or add shade.',
    turned: 'vents alone are not enough',
  };
}

function sameCount(one: Figures, other: Figures): boolean {
  return countInWords(one.tooHotHours) === countInWords(other.tooHotHours);
}

/** Shut windows keep in what people and plants breathe out: told where a house is plainly damper for it. */
function dampInWords(never: Figures, attentive: Figures): string {
  return never.humidHours - attentive.humidHours < Math.max(DAMPER_HOURS, DAMPER_SHARE * never.humidHours)
    ? ''
    : `Unopened it is damp for ${hoursInWords(never.humidHours)}, and with someone at home for ${countInWords(attentive.humidHours)}. `;
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { criterion } = basis;
  const of = (habit: Habit, times = 1) => runAt(runs, idOf(habit, times)).figures;
  const [attentive, away, never, automatic] = [of('attentive'), of('away'), of('never'), of('automatic')];
  const twice = of('automatic', 2);
  const figures = {
    ventM2: drawnVent(basis),
    attentiveHours: attentive.tooHotHours,
    attentiveMovesPerDay: attentive.ventMovesPerDay,
    awayHours: away.tooHotHours,
    neverHours: never.tooHotHours,
    automaticHours: automatic.tooHotHours,
    twiceAutomaticHours: twice.tooHotHours,
    limitHours: criterion.hours,
    limitC: criterion.aboveC,
    neverHumidHours: never.humidHours,
    attentiveHumidHours: attentive.humidHours,
  };
  const { verdict } = verdictOf(never.tooHotHours, automatic.tooHotHours, basis);
  return {
    figures,
    text:
      `If nobody opens the vents, the house is ${hotInWords(basis)} for ${hoursInWords(never.tooHotHours)} a year. ` +
      (never.tooHotHours === 0
        ? ''
        : `Someone at home who looks every hour brings that to ${countInWords(attentive.tooHotHours)}, at ${Math.round(attentive.ventMovesPerDay)} moves a day in the busiest month. ` +
          `Away on workdays it is ${countInWords(away.tooHotHours)}. An automatic opener gives ${countInWords(automatic.tooHotHours)}${sameCount(automatic, twice) ? '' : `, and ${countInWords(twice.tooHotHours)} with twice the area`}. `) +
      `${dampInWords(never, attentive)}${verdict}`,
  };
}
