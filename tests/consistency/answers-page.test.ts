// docs/answers.md as it is made: every question, house and climate has its line, short enough to be read and in plain words.
// Grade by Flesch and Kincaid; a daily paper is written for about 9 to 11 (common practice, no source). Figures by formula.
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { ask } from '../../src/questions/ask.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { madeBasis, madeRunner, plausible } from '../questions/made-runner.ts';
import { type AnsweredFor, answersPage, toldOf } from './answers-page.ts';

/** A line is the head of an answer; longer ones are read by nobody [words]. */
const LONGEST_LINE = 75;
const HIGHEST_GRADE = 11;

const wordsOf = (text: string) => text.match(/[A-Za-z’']+/g) ?? [];

function gradeOf(text: string): number {
  const spoken = text.replaceAll(/m²|m³|kWh|°C|°/g, ' units').replaceAll(/[−-]?\d+(?:\.\d+)?/g, 'ten');
  const words = wordsOf(spoken);
  return fleschKincaid({
    sentence: spoken.split(/(?<=[.:;])\s+/).length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}

test('every answer has a line of its own, of readable length and grade', async () => {
  const all: AnsweredFor[] = [];
  for (const { design } of EXAMPLES)
    for (const question of QUESTIONS)
      for (const climate of ['here', 'there']) {
        const answer = await ask(question, madeBasis(design, { mapSide: 5 }), madeRunner(plausible));
        all.push({ climate, house: design.name, answer });
      }
  const page = answersPage(all);
  expect(page.match(/^\| (here|there) \|/gm)).toHaveLength(2 * EXAMPLES.length * QUESTIONS.length);
  expect(page).not.toMatch(/undefined|NaN|null/);
  expect(page.match(/^## /gm)).toHaveLength(EXAMPLES.length);
  for (const { answer } of all) {
    const told = toldOf(answer);
    expect(told, answer.question).not.toBe('');
    expect(wordsOf(told).length, told).toBeLessThanOrEqual(LONGEST_LINE);
    expect(gradeOf(told), told).toBeLessThanOrEqual(HIGHEST_GRADE);
  }
});
