import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { ask } from '../../src/questions/ask.ts';
import { whoOpensTheVents } from '../../src/questions/who-opens-the-vents.ts';
import { type Formula, madeBasis, madeRunner, plausible } from './made-runner.ts';

test('five habits with half, drawn and twice the vents: the sunspace vents, or the windows where there is none', async () => {
  for (const [example, key, drawn] of [
    [1, 'sunspaceM2', 3],
    [2, 'houseM2', 2.5],
  ] as const) {
    const runner = madeRunner(plausible);
    await ask(whoOpensTheVents, madeBasis(EXAMPLES[example]!.design), runner);
    const pairs = runner.ran.map(({ design: { vents } }) => `${vents.habit} ${vents[key] / drawn}`);
    expect(new Set(pairs).size).toBe(15);
    for (const times of [0.5, 1, 2]) {
      for (const habit of ['automatic', 'attentive', 'away', 'forgetful', 'never']) {
        expect(pairs).toContain(`${habit} ${times}`);
      }
    }
  }
});

test.each([
  [100, 100, 'Unopened too it keeps to the 262 hours allowed.'],
  [0, 0, 'too hot for 0 hours a year. Unopened too it keeps'],
  [900, 100, 'fit an automatic opener'],
  [900, 800, 'take away glass or add shade'],
])('with %i hours when nobody opens and %i with an opener, it says so', async (never, automatic, words) => {
  const formula: Formula = ({ vents }) => ({
    overheatedHours: vents.habit === 'never' ? never : vents.habit === 'automatic' ? automatic : 90,
  });
  const { finding } = await ask(whoOpensTheVents, madeBasis(EXAMPLES[1]!.design), madeRunner(formula));
  expect(finding!.text).toContain(words);
  expect(finding!.figures).toMatchObject({ neverHours: never, automaticHours: automatic });
});

test('vents that bring no heat but damp when nobody opens them are told so', async () => {
  const formula: Formula = ({ vents }) => ({
    overheatedHours: 0,
    humidHours: vents.habit === 'never' ? 5000 : 800,
  });
  const { finding } = await ask(whoOpensTheVents, madeBasis(EXAMPLES[1]!.design), madeRunner(formula));
  expect(finding!.text).toContain('Unopened it is damp for 5000 hours, and with someone at home for 800.');
});
