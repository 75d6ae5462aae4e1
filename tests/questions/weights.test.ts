import { expect, test } from 'vitest';
import { burden, parseWeights, USUAL_WEIGHTS, weightsInWords } from '../../src/questions/weights.ts';
import { bestOf } from '../../src/questions/what-helps.ts';
import { madeFigures } from './made-figures.ts';

const house = madeFigures({
  tooHotHours: 300,
  tooHotLimitHours: 262,
  humidHours: 538,
  worstMouldIndex: 3,
  heatingKWh: 1000,
});

test('what a house weighs is its hours beyond those allowed, mould that shows, heat and work', () => {
  // 38 hours, 100 hours, two points of the index at 100, 1000 kWh at a tenth, two days at 3.
  expect(burden(house, 2, USUAL_WEIGHTS)).toBeCloseTo(38 + 100 + 200 + 100 + 6, 9);
  expect(burden(house, 2, { hot: 2, damp: 0, cold: 0, mould: 0, heat: 0, labour: 0 })).toBeCloseTo(76, 9);
});

test('cold weighs where the heat does not do, and where there is none; a thermostat that does is not touched', () => {
  const cold = (figures: object) => burden({ ...house, ...figures }, 0, USUAL_WEIGHTS);
  const before = cold({});
  // One in fifty of 4745 hours is minded by nobody; a room that no one heats may be as cold as it likes.
  expect(cold({ shortHours: 95, underheatedHours: 900 })).toBe(before);
  expect(cold({ shortHours: 195, underheatedHours: 0 })).toBeCloseTo(before + 100, 9);
  expect(cold({ shortHours: null, underheatedHours: 118 })).toBeCloseTo(before + 100, 9);
  expect(burden({ ...house, shortHours: 1000 }, 0, { ...USUAL_WEIGHTS, cold: 0 })).toBe(before);
});

test('weights are read by name, and what is wrong is said', () => {
  expect(parseWeights('')).toEqual(USUAL_WEIGHTS);
  expect(parseWeights('heat=3, labour=0')).toEqual({ ...USUAL_WEIGHTS, heat: 3, labour: 0 });
  expect(parseWeights('money=1')).toBe(
    'money=1; allowed: hot, damp, cold, mould, heat, labour, each =0 to 10',
  );
  expect(parseWeights('heat=-1')).toContain('allowed');
  expect(parseWeights('heat')).toContain('allowed');
  expect(weightsInWords({ ...USUAL_WEIGHTS, heat: 3 })).toContain('You weigh otherwise: heat 3 times.');
});

test('moved weights choose another change', () => {
  const lever = (id: string) => ({ id, words: id, apply: <T>(to: T) => to });
  const cool = { lever: lever('cool'), figures: { ...house, tooHotHours: 0, heatingKWh: 1200 }, days: 4 };
  const warm = { lever: lever('warm'), figures: { ...house, heatingKWh: 900 }, days: 0 };
  expect(bestOf([cool, warm])!.lever.id).toBe('warm');
  expect(bestOf([cool, warm], { ...USUAL_WEIGHTS, hot: 3 })!.lever.id).toBe('cool');
});
