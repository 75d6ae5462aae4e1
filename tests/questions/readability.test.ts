// How hard the closing words of the questions are to read: grade by Flesch and Kincaid, longest sentence. A daily
// paper is written for about grade 9 to 11 (common practice, no source). Numbers count as one short word.
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { ask } from '../../src/questions/ask.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { type Formula, madeBasis, madeRunner, plausible } from './made-runner.ts';

/** quantity → allowed, with the reason */
const ALLOWED = {
  /** any one answer: a serious daily paper */
  highestGrade: 11,
  /** longest sentence [words]; plain-language guides say 15 to 20 on the mean */
  longestSentence: 36,
} as const;

const cool: Formula = () => ({ overheatedHours: 40 });
const hot: Formula = () => ({ overheatedHours: 1900 });

function measured(text: string): { grade: number; longest: number } {
  const spoken = text
    .replaceAll(/\s?°C|°/g, ' degrees')
    .replaceAll('kWh', 'units')
    .replaceAll(/m²|m³/g, 'metres')
    .replaceAll(/\d+(?:\.\d+)?\s?mm/g, 'ten inches')
    .replaceAll('%', 'percent')
    .replaceAll(/[−-]?\d+(?:\.\d+)?/g, 'ten');
  const sentences = spoken.split(/(?<=[.:;])\s+/).filter((sentence) => /[a-z]/i.test(sentence));
  const counts = sentences.map((sentence) => (sentence.match(/[A-Za-z’']+/g) ?? []).length);
  const words = spoken.match(/[A-Za-z’']+/g) ?? [];
  return {
    grade: fleschKincaid({
      sentence: sentences.length,
      word: words.length,
      syllable: words.reduce((sum, word) => sum + syllable(word), 0),
    }),
    longest: Math.max(...counts),
  };
}

test.each(QUESTIONS.map((question) => [question.id, question] as const))(
  'the answer to %s reads like a daily paper, whatever it says',
  async (_, question) => {
    for (const formula of [plausible, cool, hot]) {
      for (const { design } of EXAMPLES) {
        const { finding } = await ask(question, madeBasis(design, { mapSide: 5 }), madeRunner(formula));
        const { grade, longest } = measured(finding!.text);
        expect(grade, finding!.text).toBeLessThanOrEqual(ALLOWED.highestGrade);
        expect(longest, finding!.text).toBeLessThanOrEqual(ALLOWED.longestSentence);
      }
    }
  },
);
