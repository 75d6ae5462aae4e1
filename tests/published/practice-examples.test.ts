// The three examples behave as the trade expects, in their own climate: common practice, no source. What is
// asserted is direction and size, never this program's own figures.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { OutcomeFigures } from '../../src/outcomes/outcome.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';
import { check } from './ledger.ts';

const year = bundledYear('denver');
const climate = bundledClimate('denver');
const exampleOf = (id: string) => EXAMPLES.find((example) => example.id === id)!.design;

function outcomeOf(design: Design): OutcomeFigures {
  const model = modelOf(design, year.site, climate.ground);
  return summarise(design, model, climate, simulate(model, climate));
}

const leaning = outcomeOf(exampleOf('leaning'));
const closed = outcomeOf(exampleOf('closed'));
const modest = outcomeOf(exampleOf('modest'));
const hot = (outcome: OutcomeFigures) => outcome.zones.house.overheatedHours;
const practice = (name: string, quantity: string, ours: number, referenceMin: number, unit: string) =>
  check({
    source: 'the three examples',
    case: name,
    quantity,
    kind: 'range',
    referenceMin,
    referenceMax: 8760,
    ours,
    allowed: 0,
    unit,
    mark: 'practice',
  });

test('the leaning, open house is too hot for hundreds of hours more than the modest one', () => {
  practice('leaning against modest', 'more hours above 26 °C', hot(leaning) - hot(modest), 200, 'h');
});

test('the leaning, open house is the dampest of the three', () => {
  const humid = (outcome: OutcomeFigures) => outcome.zones.house.humidHours;
  practice('leaning against closed', 'more humid hours', humid(leaning) - humid(closed), 200, 'h');
  practice('leaning against modest', 'more humid hours', humid(leaning) - humid(modest), 200, 'h');
  expect(leaning.zones.house.mouldIndexMax).toBeGreaterThan(closed.zones.house.mouldIndexMax);
});

const withGlass = (share: number): Design => {
  const design = exampleOf('modest');
  return { ...design, glass: { ...design.glass, value: share, overhangM: 0 } };
};

test('raising the glass from 12 % to 30 % of the floor raises overheated hours steeply at ordinary mass', () => {
  const [twelve, thirty] = [outcomeOf(withGlass(0.12)), outcomeOf(withGlass(0.3))];
  practice(
    'modest, 12 to 30 % of floor',
    'times as many hours above 26 °C',
    hot(thirty) / hot(twelve),
    2,
    '×',
  );
});

test('adding sunlit mass lowers overheated hours', () => {
  const withMass = (areaM2: number): Design => {
    const design = withGlass(0.2);
    return { ...design, mass: { ...design.mass, areaM2, place: 'sunlit' } };
  };
  const [none, some, much] = [0, 20, 60].map((areaM2) => hot(outcomeOf(withMass(areaM2)))) as [
    number,
    number,
    number,
  ];
  practice('modest, 20 % of floor', 'hours fewer with 60 m² of sunlit mass', none - much, 30, 'h');
  expect(some).toBeLessThan(none);
  expect(much).toBeLessThan(some);
});
