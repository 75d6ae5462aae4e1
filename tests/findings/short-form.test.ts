// The short form: three findings and every serious caution, each of two sentences and an act, and nothing lost on the way.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { shortForm } from '../../src/findings/short-form.ts';
import { runExample } from './example-run.ts';

test.each(EXAMPLES.map(({ id }) => id))(
  '%s: three findings in short, every serious caution with them',
  (id) => {
    const { findings } = runExample(id);
    const { first, serious, moreFindings, moreCautions } = shortForm(findings);
    expect(first).toHaveLength(3);
    const told = [...first, ...serious, ...moreFindings, ...moreCautions].map(({ id }) => id);
    expect(told.toSorted()).toEqual(findings.map(({ id }) => id).toSorted());
    expect(moreCautions.filter(({ severity }) => severity === 'danger')).toEqual([]);
    for (const { id, text } of [...first, ...serious]) {
      const whole = findings.find((finding) => finding.id === id)!.text;
      const sentences = text.split(/(?<=[.?]) (?=[A-Z\d])/);
      expect(sentences.length, text).toBeLessThanOrEqual(3);
      for (const sentence of sentences) expect(whole).toContain(sentence);
      expect(whole.endsWith(sentences.at(-1)!)).toBe(true);
    }
  },
);
