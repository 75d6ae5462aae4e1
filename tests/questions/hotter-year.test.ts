import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { withChoiceKept } from '../../src/design/too-hot-criterion.ts';
import { ask } from '../../src/questions/ask.ts';
import { hotterYear } from '../../src/questions/hotter-year.ts';
import { type Formula, madeBasis, madeRunner } from './made-runner.ts';

const byWarmth =
  (perKelvin: number): Formula =>
  (_, { change }) => ({
    overheatedHours: 50 + perKelvin * (change?.shiftK?.[6] ?? 0) + (change?.wave ? 2 * perKelvin : 0),
  });

test('the design stays as drawn; only the climate changes, and the first run is the year as it is', async () => {
  const { design } = EXAMPLES[1]!;
  const runner = madeRunner(byWarmth(10));
  await ask(hotterYear, madeBasis(design), runner);
  // What it counts as too hot is written down, so that it stays that.
  for (const job of runner.ran) expect(job.design).toEqual(withChoiceKept(design));
  expect(runner.ran[0]!.change).toBeUndefined();
  expect(new Set(runner.ran.map(({ change }) => JSON.stringify(change ?? null))).size).toBe(7);
});

test('in the southern hemisphere January is warmed more than July', async () => {
  const runner = madeRunner(byWarmth(10));
  const site = { ...madeBasis().site, latitudeDeg: -38 };
  await ask(hotterYear, madeBasis(EXAMPLES[1]!.design, { site }), runner);
  const { shiftK } = runner.ran.find(({ id }) => id === 'seasons')!.change!;
  expect(shiftK![0]).toBeGreaterThan(shiftK![6]!);
});

test.each([
  [10, 'It keeps to the limit in all of them.'],
  [50, 'but not in the worst of them.'],
  [150, 'It keeps to the limit today and not then'],
])('with %i hours a kelvin it ends with: %s', async (perKelvin, words) => {
  const { finding } = await ask(hotterYear, madeBasis(), madeRunner(byWarmth(perKelvin)));
  expect(finding!.text).toContain(words);
});
