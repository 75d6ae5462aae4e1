import { expect, test } from 'vitest';
import { answerText } from '../../src/cli/answer-text.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { ask } from '../../src/questions/ask.ts';
import { openOrClosed } from '../../src/questions/open-or-closed.ts';
import { type Formula, madeBasis, madeRunner, mainJobs } from './made-runner.ts';

const formula =
  (saving: number): Formula =>
  ({ sunspace }) => {
    if (sunspace.join === 'none') return { overheatedHours: 700, heatingKWh: 700, humidHours: 50 };
    if (sunspace.join === 'open') return { overheatedHours: 300, heatingKWh: 1500, humidHours: 900 };
    const shut = sunspace.doorRule === 'shut';
    return { overheatedHours: 60, heatingKWh: shut ? 1400 : 1400 - saving, humidHours: 100 };
  };

test('five ways are run: a door by need, open, always shut, left open, none', async () => {
  const runner = madeRunner(formula(200));
  await ask(openOrClosed, madeBasis(EXAMPLES[0]!.design), runner);
  const ways = mainJobs(runner).map(({ design: { sunspace, glass } }) => [
    sunspace.join,
    sunspace.join === 'closed' ? sunspace.doorRule : glass.tiltDeg,
  ]);
  expect(ways).toEqual([
    ['closed', 'by-need'],
    ['open', 60],
    ['closed', 'shut'],
    ['closed', 'open'],
    ['none', 90],
  ]);
  // The open side of the drawn design, 18 m², is no door that a person opens.
  expect(runner.ran[0]!.design.sunspace.doorM2).toBe(2);
});

test('left out, the sunspace takes its bed with it and moves none of it into the rooms', async () => {
  const runner = madeRunner(formula(200));
  await ask(openOrClosed, madeBasis(EXAMPLES[0]!.design), runner);
  expect(mainJobs(runner).map(({ design }) => design.plants.bedM2)).toEqual([16, 16, 16, 16, 0]);
});

test.each([
  [200, 'saves 200 kWh over leaving it shut'],
  [-300, 'costs 300 kWh more than leaving it shut'],
  [10, 'saves no more than one left shut'],
])('a door that saves %i kWh is told so', async (saving, words) => {
  const { finding } = await ask(openOrClosed, madeBasis(EXAMPLES[1]!.design), madeRunner(formula(saving)));
  expect(finding!.text).toContain(words);
  expect(finding!.text).toContain('Keep the sunspace closed off:');
});

test('where open is drier, it is told to stay open', async () => {
  const { finding } = await ask(
    openOrClosed,
    madeBasis(EXAMPLES[0]!.design),
    madeRunner(({ sunspace }) => ({
      overheatedHours: 10,
      humidHours: sunspace.join === 'open' ? 5 : 900,
    })),
  );
  expect(finding!.text).toContain('Leave the sunspace open');
});

test('damp that no way cures decides nothing: no sunspace is built for the damp of a wet climate', async () => {
  const { finding } = await ask(
    openOrClosed,
    madeBasis(EXAMPLES[2]!.design),
    madeRunner(({ sunspace }) => ({
      overheatedHours: 0,
      humidHours: sunspace.join === 'open' ? 620 : 1540,
      heatingKWh: sunspace.join === 'open' ? 8540 : 5590,
    })),
  );
  expect(finding!.text).toContain('Build no sunspace:');
  expect(finding!.text).toContain('All ways are too damp, and damp is cured where the water starts.');
});

test('the work of building one counts: a little less heat is no reason to', async () => {
  // 38 hours beyond the limit, against some weeks of building at three hours a day of work.
  const formula: Formula = ({ sunspace }) => ({
    overheatedHours: sunspace.join === 'none' ? 300 : 250,
    heatingKWh: 500,
  });
  const modest = await ask(openOrClosed, madeBasis(EXAMPLES[2]!.design), madeRunner(formula));
  expect(modest.finding!.text).toContain('Build no sunspace:');
  const drawn = await ask(openOrClosed, madeBasis(EXAMPLES[1]!.design), madeRunner(formula));
  expect(drawn.finding!.text).toContain('Leave the sunspace out:');
});

test('where one is worth building, smaller changes are named first; and what is allowed, where it is passed', async () => {
  const formula: Formula = ({ sunspace }) => ({
    overheatedHours: 700,
    heatingKWh: sunspace.join === 'none' ? 6000 : 500,
  });
  const { finding } = await ask(openOrClosed, madeBasis(EXAMPLES[2]!.design), madeRunner(formula));
  expect(finding!.text).toMatch(/^Build a sunspace/);
  expect(finding!.text).toContain(
    'Only 262 of those hours are allowed, so ask too how much glass it carries.',
  );
  expect(finding!.text).toContain('Before you build one, ask what helps most');
});

test('no sunspace is built against heat, which shade takes away for less', async () => {
  const formula: Formula = ({ sunspace }) => ({
    overheatedHours: sunspace.join === 'none' ? 1700 : 100,
    heatingKWh: 500,
  });
  const built = await ask(openOrClosed, madeBasis(EXAMPLES[2]!.design), madeRunner(formula));
  expect(built.finding!.text).toMatch(
    /^Build no sunspace: .* keeps sun from the rooms, and so does shade, for less work\./,
  );
  const drawn = await ask(openOrClosed, madeBasis(EXAMPLES[1]!.design), madeRunner(formula));
  expect(drawn.finding!.text).not.toMatch(/shade|Leave the sunspace out:/);
});

test('a door that saves nothing of nothing costs nothing', async () => {
  const formula: Formula = ({ sunspace }) => ({
    overheatedHours: 10,
    heatingKWh: sunspace.doorRule === 'shut' ? 0 : 0.3,
  });
  const { finding } = await ask(openOrClosed, madeBasis(EXAMPLES[1]!.design), madeRunner(formula));
  expect(finding!.text).toContain('saves no more than one left shut');
});

test('where it is best left out, it is told so, and so where all are alike', async () => {
  const answer = await ask(
    openOrClosed,
    madeBasis(EXAMPLES[1]!.design),
    madeRunner(() => ({ overheatedHours: 10, humidHours: 20, heatingKWh: 900 })),
  );
  expect(answer.finding!.text).toContain('Leave the sunspace out:');
  // The row that the sentence advises is marked, and no other.
  expect(answer.tables[0]!.advised).toBe('none');
  expect(answerText(answer).match(/^.*\(advised\).*$/gm)).toEqual([
    expect.stringMatching(/^no sunspace, the glass upright in the house wall \(advised\) /),
  ]);
});

test('a house without heat is told by its hours too cold', async () => {
  const { design } = EXAMPLES[1]!;
  const unheated = { ...design, heating: { ...design.heating, capacityKW: 0 } };
  const { finding } = await ask(
    openOrClosed,
    madeBasis(unheated),
    madeRunner(({ sunspace }) => ({
      overheatedHours: 0,
      underheatedHours: sunspace.join === 'closed' ? 900 : 3000,
    })),
  );
  expect(finding!.text).toMatch(/^Keep the sunspace closed off: .* damp for 100, and too cold for 900\./);
  expect(finding!.text).not.toContain('kWh');
});
