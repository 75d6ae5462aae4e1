// What the best change is said to bring when it makes something else worse. By a formula of the test's own.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { ask } from '../../src/questions/ask.ts';
import { whatHelpsMost } from '../../src/questions/what-helps-most.ts';
import { type Formula, madeBasis, madeRunner } from './made-runner.ts';

const told = async (formula: Formula) =>
  (await ask(whatHelpsMost, madeBasis(EXAMPLES[0]!.design), madeRunner(formula))).finding!.text;

test('a change against damp that makes the rooms hotter than is allowed says so', async () => {
  const bare =
    (hotter: number): Formula =>
    ({ plants }) => ({
      overheatedHours: plants.bedM2 > 0 ? 300 : 300 + hotter,
      humidHours: 100 + 300 * plants.bedM2,
    });
  const text = await told(bare(400));
  expect(text).toMatch(/^Plant nothing indoors\. That alone gives 700 hours too hot/);
  expect(text).toContain(
    ' By itself it makes the rooms hotter than is allowed: ask too how much glass they carry.',
  );
  expect(await told(bare(-250))).not.toContain('By itself');
});
