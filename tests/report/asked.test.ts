// What changes ask for, as the report tells it: days always, money where a person's prices stand.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import type { PriceList } from '../../src/quantities/prices.ts';
import { leversOf } from '../../src/questions/levers.ts';
import type { Help } from '../../src/questions/what-helps.ts';
import { actCost } from '../../src/report/act-cost.ts';
import { actsOf, asksInWords } from '../../src/report/acts.ts';
import { reportOf } from '../../src/report/report.ts';
import { madeFigures } from '../questions/made-figures.ts';
import { order, RUNS } from './report-order.ts';

const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
const lever = (id: string) => leversOf(design).find((entry) => entry.id === id)!;
const hot = (tooHotHours: number) => madeFigures({ tooHotHours, tooHotLimitHours: 262 });
const help: Help = {
  drawn: hot(2000),
  pulled: [],
  steps: [
    { lever: lever('shade'), figures: hot(1000), days: 2 },
    { lever: lever('purge'), figures: hot(300), days: 3 },
  ],
};
const prices: PriceList = {
  currency: 'CHF',
  wage: null,
  prices: { 'summer-shade': { amount: 50, per: 'm²' } },
};

test('a step asks for what it adds to those before it', () => {
  const acts = actsOf(help, wordingOf('metric'));
  expect(acts.map(({ days }) => days)).toEqual([2, 1]);
  // 12 % of 110 m² are 13.2 m² of shade at 50 a square metre; the fan has no price.
  const asked = acts.map((act, i) => asksInWords(act, actCost(acts, i, design, prices), prices));
  expect(asked).toEqual(['2 days of work, CHF 660.', '1 day of work, no price yet for fans for night air.']);
});

test('the report tells days always, and money only where prices stand', () => {
  const texts = (given?: PriceList) =>
    JSON.stringify(
      reportOf({ ...order({ run: RUNS.modest, help }), ...(given && { prices: given }) }).sections,
    );
  const without = texts();
  expect(without).toContain('2 days of work.');
  expect(without).toContain('goes by your own prices, of which none are given');
  expect(without).not.toContain('CHF');
  const priced = texts(prices);
  expect(priced).toContain('CHF 660');
  expect(priced).toContain('Cost, CHF');
  expect(priced).not.toContain('of which none are given');
});
