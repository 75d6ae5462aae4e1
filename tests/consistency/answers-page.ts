// docs/answers.md: what every question answers for the examples in the climates asked, a line each. Answers in, Markdown out.
import type { Answer } from '../../src/questions/question.ts';

/** What the page needs of an answer. */
export type ToldAnswer = Pick<Answer, 'question' | 'title' | 'finding' | 'sure'>;

export interface AnsweredFor {
  readonly climate: string;
  readonly house: string;
  readonly answer: ToldAnswer;
}

/** Sentences of an answer that are told here, counted from its start or, below zero, from its end. */
const TOLD: Readonly<Record<string, readonly number[]>> = {
  'who-opens-the-vents': [0, -2, -1],
  'hotter-year': [0, -1],
  'what-helps': [0, 1],
  'glass-and-mass-map': [0, 1],
  'do-without': [0, 1],
  'how-much-mass': [0, 1, 2],
  'upright-or-leaning': [0, 1, 2],
  'what-matters-most': [0, 1, 2],
  'which-room': [0, 1],
};

const HEAD = [
  '# What it answers',
  '',
  'Every question, asked of the sample houses in the climates named. Written by `npm run answers -- --write`; no figure here is typed by hand. Each line is the head of an answer: page and command line tell it whole, with its tables, its cautions and a house to draw for every figure. Hours are those of a year; damp are those above 70 % relative humidity; of a divided house the worst room counts.',
  '',
  'The range is that of the hours too hot, over what nobody can know: a year 1.5 °C hotter or colder, airtightness, habits, the ground, one at a time. "Holds" says in how many of those trials the advice stays the same. Where it turns, ask the question: it says what turns it.',
  '',
  'These are computed figures for made-up houses in typical years. They replace no engineer, no local code and no test for radon.',
];

/** The page. */
export function answersPage(all: readonly AnsweredFor[]): string {
  const houses = [...new Set(all.map(({ house }) => house))];
  return `${[
    ...HEAD,
    ...houses.flatMap((house) => {
      const ofHouse = all.filter((entry) => entry.house === house);
      const titles = [...new Set(ofHouse.map(({ answer }) => answer.title))];
      return ['', `## ${house}`, ...titles.flatMap((title) => questionLines(title, ofHouse))];
    }),
  ].join('\n')}\n`;
}

function questionLines(title: string, ofHouse: readonly AnsweredFor[]): readonly string[] {
  const rows = ofHouse.filter(({ answer }) => answer.title === title);
  return [
    '',
    `### ${title}`,
    '',
    '| climate | answer | hours too hot | holds |',
    '| --- | --- | --- | --- |',
    ...rows.map(({ climate, answer }) => `| ${[climate, toldOf(answer), ...sureOf(answer)].join(' | ')} |`),
  ];
}

/** The sentences that are told of an answer. */
export function toldOf({ question, finding }: ToldAnswer): string {
  const sentences = (finding?.text ?? '').split(/(?<=[.:])\s+(?=[A-Z])/);
  const told = (TOLD[question] ?? [0]).map((place) => sentences.at(place) ?? '');
  return [...new Set(told)].join(' ').replaceAll('|', '\\|');
}

function sureOf({ sure, finding }: ToldAnswer): readonly [string, string] {
  const figures = sure?.figures ?? finding?.figures ?? {};
  const count = (key: string) => {
    const value = figures[key];
    return typeof value === 'number' ? String(Math.round(value)) : '–';
  };
  const { trials, turnedTrials: turned } = figures;
  const holds =
    typeof trials === 'number' && typeof turned === 'number' ? `${trials - turned} of ${trials}` : '–';
  if (sure === null)
    return 'hoursLow' in figures
      ? [`${count('drawnHours')} (${count('hoursLow')} to ${count('hoursHigh')})`, holds]
      : ['–', holds];
  return [`${count('hours')} (${count('hoursLeast')} to ${count('hoursMost')})`, holds];
}
