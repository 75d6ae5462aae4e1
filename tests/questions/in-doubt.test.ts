// What an answer says of how sure it is: its range, the cause of each end, and advice that turns. By a formula of the test's
// own, in which leakiness takes hours away and a hotter year adds them.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { ask } from '../../src/questions/ask.ts';
import { howSureOf, howSureSentences, rangeOf } from '../../src/questions/how-sure.ts';
import { questionById } from '../../src/questions/registry.ts';
import { unknownsOf, unknownsRule } from '../../src/questions/what-nobody-knows.ts';
import { METRIC_WORDS } from '../../src/questions/words.ts';
import { type Formula, madeBasis, madeRunner } from './made-runner.ts';

const { design } = EXAMPLES[1]!;
const base = design.air.ach50;

const formula: Formula = ({ hotter, air, sunspace }) => ({
  overheatedHours: 400 + 100 * (hotter?.summerK ?? 0) - 20 * (air.ach50 - base),
  heatingKWh: { none: 1000 + 2900 * (air.ach50 / base - 1), closed: 1200, open: 3000 }[sunspace.join],
  humidHours: 100,
});

test('every way a house may turn out is a design that can be drawn, and changes something', () => {
  for (const example of EXAMPLES) {
    const unknowns = unknownsOf(example.design, false);
    expect(unknowns.length).toBeGreaterThan(4);
    for (const { apply } of unknowns) expect(parseDesign(apply(example.design)).ok).toBe(true);
  }
});

test('a house held against a record is tried at the ends of what it allows, and not at those of house rules', () => {
  const found = [
    { id: 'airtightness', value: 1.4, low: 1.2, high: 1.6 },
    { id: 'sun', value: 0.7, low: 0.63, high: 0.77 },
    { id: 'insulation', value: 0.9, low: 0.8, high: 1.1 },
  ] as const;
  const days = { from: '2026-01-12', until: '2026-01-26', misfitK: 0.3, unseenMisfitK: 0.4 };
  const house = { ...design, asFound: { ...days, unknowns: found } };
  const tried = (id: string) => unknownsOf(house, false).find((one) => one.id === id)!;
  expect(tried('leaky').apply(house).air.ach50 / base).toBeCloseTo(1.6 / 1.4, 2);
  expect(tried('tight').apply(house).air.ach50 / base).toBeCloseTo(1.2 / 1.4, 2);
  expect(tried('leaky').when(METRIC_WORDS)).toContain('its record');
  const sun = (id: string) =>
    tried(id)
      .apply(house)
      .asFound!.unknowns.find((one) => one.id === 'sun')!.value;
  expect([sun('less-sun'), sun('more-sun')]).toEqual([0.63, 0.77]);
  const wall = (id: string) => tried(id).apply(house).envelope.wallResistance / house.envelope.wallResistance;
  expect(wall('good-walls')).toBeGreaterThan(1);
  expect(wall('poor-walls')).toBeLessThan(1);
  for (const { apply } of unknownsOf(house, false)) expect(parseDesign(apply(house)).ok).toBe(true);
  expect(unknownsRule(METRIC_WORDS, house, false)).not.toContain('twice as leaky');
  expect(unknownsRule(METRIC_WORDS, design, false)).toContain('twice as leaky');
});

test('a hotter design is tried hotter and colder still, and within limits', () => {
  const hot = { ...design, hotter: { winterK: 8, summerK: 2, waveDays: 10, waveK: 5 } };
  const [hotter, colder] = ['hot-year', 'cold-year'].map(
    (id) =>
      unknownsOf(hot, false)
        .find((unknown) => unknown.id === id)!
        .apply(hot).hotter,
  );
  expect(hotter).toEqual({ winterK: 8, summerK: 3.5, waveDays: 10, waveK: 5 });
  expect(colder).toEqual({ winterK: 6.5, summerK: 0.5, waveDays: 10, waveK: 5 });
});

test('a range has the cause of each end, and a figure that nothing moves says so', async () => {
  const sure = await howSureOf(design, madeRunner(formula), false);
  const hot = rangeOf('tooHotHours', sure);
  expect([hot.least, hot.leastBy?.id, hot.most, hot.mostBy?.id]).toEqual([250, 'cold-year', 550, 'hot-year']);
  expect(howSureSentences(sure, METRIC_WORDS).slice(0, 2)).toEqual([
    'Too hot for 400 hours: 250 in a year 1.5 °C colder, 550 in a year 1.5 °C hotter.',
    'Too damp for 100 hours: the same in all that we tried.',
  ]);
});

test('advice that turns within the range says so, with what turns it; every house behind it can be drawn', async () => {
  const answer = await ask(questionById('open-or-closed')!, madeBasis(design), madeRunner(formula));
  expect(answer.finding!.text).toContain('Leave the sunspace out');
  expect(answer.sure!.text).toContain('The advice turns in 1 of');
  expect(answer.sure!.text).toContain('If it is built twice as leaky, keep the sunspace closed off.');
  expect(answer.sure!.figures).toMatchObject({ hoursLeast: 250, hoursMost: 550, turnedTrials: 1 });
  const doubted = answer.proposals.filter(({ id }) => id.startsWith('in doubt'));
  expect(doubted.length).toBeGreaterThan(15);
  for (const house of doubted) expect(parseDesign(house.design).ok).toBe(true);
  const held = await ask(
    questionById('open-or-closed')!,
    madeBasis(design),
    madeRunner(() => ({ overheatedHours: 10, humidHours: 20, heatingKWh: 900 })),
  );
  expect(held.sure!.text).toContain('The advice holds in all');
});

test('in a made year other draws of it count, and an answer says that its range comes from several made years', async () => {
  // The runner knows one formula for all years: draws are told apart by what their jobs ask for.
  const asked: number[] = [];
  const runner = madeRunner(formula);
  const answer = await ask(questionById('open-or-closed')!, madeBasis(design, { isMade: true }), {
    run: (jobs, options) => {
      for (const { change } of jobs) if (change?.draw !== undefined) asked.push(change.draw);
      return runner.run(jobs, options);
    },
  });
  expect([...new Set(asked)]).toEqual([1, 2, 3, 4]);
  expect(answer.notes.at(-1)).toContain('4 other years made from the same normals');
  // No design asks for another draw, so none is proposed.
  expect(answer.proposals.some(({ id }) => id.includes('draw-'))).toBe(false);
  const sure = await howSureOf(design, madeRunner(formula), true);
  expect(howSureSentences(sure, METRIC_WORDS).at(-1)).toMatch(
    /^Days of a made year are drawn\. Drawn 5 times/,
  );
});
