// A search for temperatures that overshoots, in the long steps before a year's start of a divided house, stays where air can
// be, and the run with it.
import { expect, test } from 'vitest';
import { EXAMPLES, runPeriod } from '../../src/daystone.ts';
import { modelWith } from '../../src/model/unknowns.ts';
import { weatherOf } from '../matching/twin-records.ts';
import { bundledYear } from '../weather/bundled-climates.ts';

test('no temperature is lost on the way to one', () => {
  const { design } = EXAMPLES.find(({ id }) => id === 'divided')!;
  const weather = weatherOf(bundledYear('denver'), '2021-01-15', 14);
  const values = {
    airtightness: 1.195221399744126,
    sun: 0.8064700076624771,
    insulation: 2.2327292971833375,
    stove: -0.5263945158874656,
    wind: 1.0638166418047645,
  };
  const { zones, outcome } = runPeriod(design, weather, {
    until: weather.startMs + 24 * 3_600_000,
    warmUpDays: 0,
    model: (drawn) => modelWith(drawn, values),
  });
  for (const { airC } of zones) for (const air of airC) expect(air > 0 && air < 40).toBe(true);
  expect(outcome.hours).toBe(24);
});
