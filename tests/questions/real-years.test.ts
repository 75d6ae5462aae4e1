// Questions against brute force with real years: the limit of glass against a plain sweep, the ranking against
// designs changed by hand and run on their own. Few years, since each takes a tenth of a second.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { ask } from '../../src/questions/ask.ts';
import { figuresOf } from '../../src/questions/figures.ts';
import { howMuchGlass } from '../../src/questions/how-much-glass.ts';
import type { Question, Run } from '../../src/questions/question.ts';
import { createPlainRunner } from '../../src/questions/runner.ts';
import { withGlassAsArea } from '../../src/questions/variation.ts';
import { effectsOf, ranked, whatMattersMost } from '../../src/questions/what-matters-most.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';
import { madeBasis } from './made-runner.ts';

const climate = bundledClimate('santa-fe');
const { site } = bundledYear('santa-fe');
const runner = createPlainRunner(climate);
const MODEST = withGlassAsArea(EXAMPLES[2]!.design);

/** One year, by the shortest way there is. */
function runAlone(design: Design) {
  const model = modelOf(design, site, climate.ground);
  return summarise(design, model, climate, simulate(model, climate));
}

test('the most glass is within one step of what a plain sweep finds', async () => {
  const basis = madeBasis(MODEST, { site });
  const onlyDrawn: Question = {
    ...howMuchGlass,
    plan: (of) => howMuchGlass.plan(of).filter(({ at }) => at.mass === 'drawn'),
    refine: (of, runs) => howMuchGlass.refine!(of, runs).filter(({ at }) => at.mass === 'drawn'),
    doubt: () => null,
  };
  const answer = await ask(onlyDrawn, basis, runner);
  const found = answer.finding!.figures.limitM2 as number;
  const most = geometryOf(MODEST).largestGlassM2;
  const steps = 12;
  let kept = 0;
  for (let step = 0; step <= steps; step++) {
    const value = (most * step) / steps;
    const { tooHot } = runAlone({ ...MODEST, glass: { ...MODEST.glass, value } }).zones.house;
    if (tooHot.hours > basis.criterion.hours) break;
    kept = value;
  }
  expect(kept).toBeGreaterThan(0);
  expect(kept).toBeLessThan(most);
  expect(Math.abs(found - kept)).toBeLessThanOrEqual(most / steps);
});

test('effects are the differences of designs changed by hand, and rank as they do', async () => {
  const basis = madeBasis(MODEST, { site });
  const paths = ['vents.opensAboveC', 'people.count', 'envelope.roofResistance'];
  const jobs = whatMattersMost
    .plan(basis)
    .filter(({ id, at }) => id === 'as drawn' || paths.includes(String(at.path)));
  const results = await runner.run(jobs);
  const runs = new Map<string, Run>(
    jobs.map((job, i) => [job.id, { job, result: results[i]!, figures: figuresOf(results[i]!.outcome) }]),
  );
  const { vents, people, envelope } = MODEST;
  const drawn = runAlone(MODEST);
  const byHand: readonly (readonly [string, readonly Design[]])[] = [
    ['vents.opensAboveC', [22, 28].map((opensAboveC) => ({ ...MODEST, vents: { ...vents, opensAboveC } }))],
    ['people.count', [1, 6].map((count) => ({ ...MODEST, people: { ...people, count } }))],
    [
      'envelope.roofResistance',
      [3, 12].map((roofResistance) => ({ ...MODEST, envelope: { ...envelope, roofResistance } })),
    ],
  ];
  const spans = byHand.map(([path, designs]) => {
    const hours = [drawn, ...designs.map(runAlone)].map(({ zones }) => zones.house.tooHot.hours);
    return [path, Math.max(...hours) - Math.min(...hours)] as const;
  });
  const effects = ranked(effectsOf(basis, runs), 'tooHotHours');
  const told = effects.map(({ span }) => span.tooHotHours);
  expect(told[0]).toBeGreaterThan(100);
  expect(told).toEqual([...told].sort((one, other) => other - one));
  expect(new Map(effects.map(({ input, span }) => [input.path, span.tooHotHours]))).toEqual(new Map(spans));
});
