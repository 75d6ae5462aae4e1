import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { withHotter } from '../../src/design/hotter.ts';
import { withChoiceKept } from '../../src/design/too-hot-criterion.ts';
import { ask } from '../../src/questions/ask.ts';
import { hotterYear } from '../../src/questions/hotter-year.ts';
import { type Formula, madeBasis, madeRunner, mainJobs } from './made-runner.ts';

const byWarmth =
  (perKelvin: number): Formula =>
  ({ hotter }) => ({
    overheatedHours: 50 + perKelvin * (hotter?.summerK ?? 0) + (hotter?.waveK ? 2 * perKelvin : 0),
  });

test('the house stays as drawn; only its year changes, and the first run is the year as it is', async () => {
  const { design } = EXAMPLES[1]!;
  const runner = madeRunner(byWarmth(10));
  await ask(hotterYear, madeBasis(design), runner);
  // What it counts as too hot is written down, so that it stays that.
  for (const job of mainJobs(runner)) {
    expect(withHotter(job.design, undefined)).toEqual(withChoiceKept(design));
    expect(job.change).toBeUndefined();
  }
  expect(runner.ran[0]!.design.hotter).toBeUndefined();
  expect(new Set(mainJobs(runner).map((job) => JSON.stringify(job.design.hotter ?? null))).size).toBe(7);
});

test('a design that asks for a hotter year already is tried in that year made hotter still', async () => {
  const hotter = { winterK: 1, summerK: 2, waveDays: 10, waveK: 0 };
  const runner = madeRunner(byWarmth(10));
  const site = { ...madeBasis().site, latitudeDeg: -38 };
  const answer = await ask(hotterYear, madeBasis(withHotter(EXAMPLES[1]!.design, hotter), { site }), runner);
  for (const job of runner.ran) expect(job.design.hotter).toEqual(hotter);
  expect(new Set(runner.ran.map(({ change }) => JSON.stringify(change ?? null))).size).toBe(7);
  // In the southern hemisphere January is warmed more than July.
  const { shiftK } = runner.ran.find(({ id }) => id === 'seasons')!.change!;
  expect(shiftK![0]).toBeGreaterThan(shiftK![6]!);
  // No design says such a year, so none is proposed.
  expect(answer.proposals).toEqual([]);
});

test('it keeps to the limit in every year only where the worst of all does, whichever that is', async () => {
  const formula: Formula = ({ hotter }) => ({ overheatedHours: hotter?.winterK === 3 ? 300 : 50 });
  const { finding } = await ask(hotterYear, madeBasis(), madeRunner(formula));
  expect(finding!.text).toContain('but not in the worst of them.');
});

test('fewer hours too hot in a warmer year are explained by the limit that follows the weather', async () => {
  const formula: Formula = ({ hotter }) => ({ overheatedHours: 51 - 5 * (hotter?.summerK ?? 0) });
  const { finding } = await ask(hotterYear, madeBasis(), madeRunner(formula));
  expect(finding!.text).toContain('The limit follows the weather, so a warmer year can count fewer.');
});

test.each([
  [10, 'It keeps to the limit in every hotter year we tried.'],
  [50, 'but not in the worst of them.'],
  [150, 'It keeps to the limit today and not then'],
])('with %i hours a kelvin it ends with: %s', async (perKelvin, words) => {
  const { finding } = await ask(hotterYear, madeBasis(), madeRunner(byWarmth(perKelvin)));
  expect(finding!.text).toContain(words);
});
