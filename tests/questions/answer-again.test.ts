// An answer told again in other words, from the runs that are in.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import { answerAgain, ask } from '../../src/questions/ask.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import type { RunResult } from '../../src/questions/run-job.ts';
import { madeBasis, madeRunner, plausible } from './made-runner.ts';

const METRIC_ONLY = /\d\s?(°C|m²|mm|m³|kg|tonnes|m\b(?!²|³))/;

test.each(QUESTIONS.map((question) => [question.id, question] as const))(
  '%s: the same words give the same answer, US words no metric one, and the figures stay',
  async (_, question) => {
    const basis = { ...madeBasis(EXAMPLES[0]!.design), mapSide: 5 };
    const results = new Map<string, RunResult>();
    const runner = madeRunner(plausible);
    const answer = await ask(question, basis, {
      run: (jobs, options = {}) =>
        runner.run(jobs, {
          ...options,
          onResult: (result) => {
            results.set(result.id, result);
            options.onResult?.(result);
          },
        }),
    });
    const runs = runner.ran.length;
    expect(answerAgain(question, basis, results)).toEqual(answer);
    const us = answerAgain(question, { ...basis, words: wordingOf('us') }, results);
    expect(runner.ran).toHaveLength(runs);
    expect(us.finding!.figures).toEqual(answer.finding!.figures);
    expect(us.finding!.text).not.toMatch(METRIC_ONLY);
    const words = [
      ...us.charts.flatMap(({ title, curves, marks }) => [
        title,
        ...[...curves, ...marks].map(({ label }) => label),
      ]),
      ...us.tables.flatMap(({ title, rows }) => [
        title,
        ...rows.flat().filter((cell) => typeof cell === 'string'),
      ]),
      ...us.notes,
      us.proposal?.text ?? '',
    ];
    for (const said of words) expect(said).not.toMatch(METRIC_ONLY);
    results.delete([...results.keys()].at(-1)!);
    expect(() => answerAgain(question, basis, results)).toThrow(/is not in/);
  },
);
