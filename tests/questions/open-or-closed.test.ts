import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { ask } from '../../src/questions/ask.ts';
import { openOrClosed } from '../../src/questions/open-or-closed.ts';
import { type Formula, madeBasis, madeRunner } from './made-runner.ts';

const formula =
  (saving: number): Formula =>
  ({ sunspace }) => {
    if (sunspace.join === 'none') return { overheatedHours: 400, heatingKWh: 700, humidHours: 50 };
    if (sunspace.join === 'open') return { overheatedHours: 300, heatingKWh: 1500, humidHours: 900 };
    const shut = sunspace.doorRule === 'shut';
    return { overheatedHours: 60, heatingKWh: shut ? 1400 : 1400 - saving, humidHours: 100 };
  };

test('four ways are run: a door by need, open, always shut, none', async () => {
  const runner = madeRunner(formula(200));
  await ask(openOrClosed, madeBasis(EXAMPLES[0]!.design), runner);
  const ways = runner.ran.map(({ design: { sunspace, glass } }) => [
    sunspace.join,
    sunspace.join === 'none' ? glass.tiltDeg : sunspace.doorRule,
  ]);
  expect(ways).toEqual([
    ['closed', 'by-need'],
    ['open', 'open'],
    ['closed', 'shut'],
    ['none', 90],
  ]);
  // The open side of the drawn design, 18 m², is no door that a person opens.
  expect(runner.ran[0]!.design.sunspace.doorM2).toBe(2);
});

test.each([
  [200, 'saves 200 kWh over leaving it shut'],
  [-300, 'costs 300 kWh more than leaving it shut'],
  [10, 'saves no more than one left shut'],
])('a door that saves %i kWh is told so', async (saving, words) => {
  const { finding } = await ask(openOrClosed, madeBasis(EXAMPLES[1]!.design), madeRunner(formula(saving)));
  expect(finding!.text).toContain(words);
  expect(finding!.text).toContain('Close it off.');
});

test('where open is drier, it is not told to close', async () => {
  const { finding } = await ask(
    openOrClosed,
    madeBasis(EXAMPLES[1]!.design),
    madeRunner(({ sunspace }) => ({
      overheatedHours: 10,
      humidHours: sunspace.join === 'open' ? 5 : 500,
    })),
  );
  expect(finding!.text).toContain('weigh warmth against damp');
});
