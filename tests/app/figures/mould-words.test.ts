// Where mould is said to come, the person is sent to look there, and the figure on the page names the spot when it is
// worse than the corners.

import { expect, test } from 'vitest';
import { headlineFigures } from '../../../src/app/figures/headline-figures.ts';
import { findingsOf } from '../../../src/findings/findings.ts';
import { madeRun } from '../../findings/made-run.ts';

const FRAME = {
  spot: 'window frame' as const,
  factor: 0.5,
  mouldIndexMax: 4.5,
  dampHours: 3000,
  dampestMonthHumidity: 0.9,
  dewHours: 200,
  dewKgPerM2: 1,
  neededFactor: 0.6,
  criticalMonth: 0,
  passesMonthlyCheck: false,
};

test('mould on frames sends nobody behind the furniture, and stands beside the corners in the figure', () => {
  const run = madeRun({ houseOutcome: { mouldIndexMax: 1.7, dampSpots: [FRAME] } });
  const text = findingsOf(run).find(({ id }) => id === 'mould-in-rooms')!.text;
  expect(text).toContain('window frames');
  expect(text).toContain('sills');
  expect(text).not.toContain('furniture');
  const figure = headlineFigures(run.outcome, run.design, 'metric').find(({ id }) => id === 'house-mould')!;
  expect(figure.limit).toBe('of 6; seen by eye from 3; frames 4.5');
});

test('mould in corners sends people behind the furniture, and the figure needs no other spot', () => {
  const run = madeRun({ houseOutcome: { mouldIndexMax: 4, dampSpots: [{ ...FRAME, mouldIndexMax: 1 }] } });
  expect(findingsOf(run).find(({ id }) => id === 'mould-in-rooms')!.text).toContain('furniture');
  const figure = headlineFigures(run.outcome, run.design, 'metric').find(({ id }) => id === 'house-mould')!;
  expect(figure.limit).toBe('of 6; seen by eye from 3');
});
