// How hard the findings are to read: Flesch–Kincaid grade, by words, sentences and syllables. A daily paper is
// written for about grade 9 to 11 (common practice, no source). Numbers count as one word of one syllable and
// units are spelt as a reader says them, so that a figure does not make a sentence look learned.
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { contextOf } from '../../src/findings/context.ts';
import { RULES } from '../../src/findings/rules.ts';
import { leversOf } from '../../src/questions/levers.ts';
import { answerOf } from '../../src/report/answer.ts';
import { madeOpening } from '../outcomes/made-year.ts';
import { madeFigures } from '../questions/made-figures.ts';
import { madeRun } from './made-run.ts';
import { RULE_CASES } from './rule-cases.ts';

/** quantity → allowed, with the reason */
const ALLOWED = {
  /** mean of all rules: a popular daily paper */
  meanGrade: 8,
  /** any one finding: a serious daily paper */
  highestGrade: 11,
  /** longest sentence [words]: plain-language guides say 15 to 20 on the mean */
  longestSentence: 36,
} as const;

function plainText(text: string): string {
  return text
    .replaceAll(/\s?°C|\s?°F|°/g, ' degrees')
    .replaceAll('kWh', 'units')
    .replaceAll('m²', 'metres')
    .replaceAll('Bq/m³', 'units')
    .replaceAll('pCi/L', 'units')
    .replaceAll('%', 'percent')
    .replaceAll(/[−-]?\d+(?:\.\d+)?/g, 'ten');
}

function measured(text: string): { grade: number; longest: number } {
  const sentences = plainText(text)
    .split(/(?<=[.:;])\s+/)
    .filter((sentence) => /[a-z]/i.test(sentence));
  const wordsOf = (sentence: string) => sentence.match(/[A-Za-z’']+/g) ?? [];
  const words = sentences.flatMap(wordsOf);
  const syllables = words.reduce((sum, word) => sum + syllable(word), 0);
  return {
    grade: fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables }),
    longest: Math.max(...sentences.map((sentence) => wordsOf(sentence).length)),
  };
}

describe('the measure', () => {
  it('finds a nursery sentence easy and an official one hard', () => {
    expect(measured('The cat sat on the mat. It was warm.').grade).toBeLessThan(2);
    expect(
      measured(
        'Notwithstanding considerations of operational practicability, supplementary ventilation provisions necessitate authorisation.',
      ).grade,
    ).toBeGreaterThan(16);
  });
});

describe('the findings read like a daily paper', () => {
  const texts = RULES.map((rule) => ({
    id: rule.id,
    ...measured(rule.text(contextOf(madeRun(RULE_CASES[rule.id]!.speaks)))),
  }));

  for (const { id, grade, longest } of texts) {
    it(`${id} is within reach`, () => {
      expect(grade).toBeLessThanOrEqual(ALLOWED.highestGrade);
      expect(longest).toBeLessThanOrEqual(ALLOWED.longestSentence);
    });
  }

  it('on the mean of all rules too', () => {
    const mean = texts.reduce((sum, { grade }) => sum + grade, 0) / texts.length;
    expect(mean).toBeLessThanOrEqual(ALLOWED.meanGrade);
  });
});

describe('the answer in one paragraph', () => {
  it('reads like a daily paper where neither heat nor damp is worth a change', () => {
    const figures = madeFigures({ tooHotHours: 30, humidHours: 30, heatingKWh: 900, staleAirHours: 40 });
    const made = madeRun({
      house: { co2Ppm: 2200 },
      year: { openings: [madeOpening('vents', () => 6)] },
      outcome: { heating: { energyKWh: 500, peakW: 3000, shortHours: 0 } },
    });
    const pulled = leversOf(made.design).map((lever) => ({ lever, figures }));
    const text = answerOf(contextOf(made), { drawn: { ...figures, heatingKWh: 500 }, pulled, steps: [] });
    expect(text).toContain('Two other things are worth one.');
    const { grade, longest } = measured(text);
    expect(grade).toBeLessThan(ALLOWED.highestGrade);
    expect(longest).toBeLessThanOrEqual(ALLOWED.longestSentence);
  });

  it('reads like a daily paper, with every sentence it may have', () => {
    const figures = madeFigures({ tooHotHours: 900, humidHours: 30, heatingKWh: 2000 });
    const context = contextOf(
      madeRun({ house: { airC: (hour) => (hour < 2000 ? 30 : 20), relativeHumidity: 0.9 } }),
    );
    for (const example of EXAMPLES) {
      const pulled = leversOf(example.design).map((lever) => ({ lever, figures }));
      for (let i = 0; i < pulled.length; i++) {
        const help = { drawn: figures, pulled, steps: pulled.slice(i, i + 3) };
        const { grade, longest } = measured(answerOf(context, help));
        expect(grade, pulled[i]!.lever.words).toBeLessThan(ALLOWED.highestGrade);
        expect(longest, pulled[i]!.lever.words).toBeLessThanOrEqual(ALLOWED.longestSentence);
      }
    }
  });
});
