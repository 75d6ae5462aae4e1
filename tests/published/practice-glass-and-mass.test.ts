// What practice says of glass and mass, against the whole model: common practice, no source. About 12 % of the floor
// is comfortable with ordinary mass in a cold sunny climate; well above 20 % is not without much more mass; each
// further square metre of mass, and each further centimetre beyond a day's depth, does less.
// Comfortable is taken as the default limit of the questions, at most 3 % of hours above 26 °C (CIBSE TM59). Practice
// names no limit, no summer and no hand at the windows, so up to twice the limit, and down to half of it, is a note and
// not a failure.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { criterionOfChoice } from '../../src/design/too-hot-criterion.ts';
import type { ZoneOutcome } from '../../src/outcomes/outcome.ts';
import { usefulThicknessOf } from '../../src/questions/how-much-mass.ts';
import { createJobRunner } from '../../src/questions/run-job.ts';
import { varied, withGlassM2 } from '../../src/questions/variation.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';
import { check } from './ledger.ts';

const LIMIT = criterionOfChoice('tm59-3-percent', 26, 40).hours;
const HOURS = 8760;
const COLD_AND_SUNNY = ['alamosa', 'santa-fe', 'helena', 'denver'] as const;
/** Upright double glass with an overhang, a tiled slab and 20 m² of adobe in the sun, windows opened by hand. */
const ORDINARY = EXAMPLES[2]!.design;

function runnerIn(climate: string): (design: Design) => ZoneOutcome {
  const runJob = createJobRunner(bundledClimate(climate));
  return (design) => runJob({ id: '', label: '', design, at: {} }).outcome.zones.house;
}

function withShare(share: number): Design {
  return withGlassM2(ORDINARY, share * ORDINARY.house.floorAreaM2);
}

test.each(COLD_AND_SUNNY)(
  'in %s an eighth of the floor is comfortable with ordinary mass and over a quarter is not',
  (climate) => {
    const run = runnerIn(climate);
    const row = {
      kind: 'range',
      source: 'Builders’ practice',
      quantity: 'hours above 26 °C',
      unit: 'h',
      mark: 'practice',
      allowed: 0,
    } as const;
    check({
      ...row,
      case: `${climate}, 12 % of floor, ordinary mass`,
      referenceMin: 0,
      referenceMax: LIMIT,
      noteAllowed: LIMIT,
      ours: run(withShare(0.12)).overheatedHours,
    });
    check({
      ...row,
      case: `${climate}, 28 % of floor, ordinary mass`,
      referenceMin: LIMIT + 1,
      referenceMax: HOURS,
      noteAllowed: LIMIT / 2,
      ours: run(withShare(0.28)).overheatedHours,
    });
  },
);

test('mass has diminishing returns: of four equal helpings each steadies the rooms less than the one before', () => {
  const run = runnerIn('santa-fe');
  // An automatic opener: a person's whole-hour decisions would blur differences of a twentieth of a kelvin.
  const swings = [0, 40, 80, 120, 160].map(
    (areaM2) =>
      run(varied(withShare(0.12), { 'mass.areaM2': areaM2, 'vents.habit': 'automatic' })).meanDailySwingK,
  );
  const helps = swings.slice(1).map((swing, i) => swings[i]! - swing);
  expect(helps).toHaveLength(4);
  expect(Math.min(...helps)).toBeGreaterThan(0);
  expect([...helps].sort((one, other) => other - one)).toEqual(helps);
});

test('thickness beyond the depth that a day reaches steadies the day no further', () => {
  // Best thickness of an insulated adobe slab for 24 h: 137 mm (diurnal heat capacity method of 1983).
  const run = runnerIn('santa-fe');
  const best = usefulThicknessOf('adobe')!;
  const swing = (thicknessM: number) =>
    run(varied(withShare(0.12), { 'mass.areaM2': 60, 'mass.thicknessM': thicknessM })).meanDailySwingK;
  const [none, thin, useful, thick] = [0.01, best / 2, best, 3 * best].map(swing) as [
    number,
    number,
    number,
    number,
  ];
  expect(none).toBeGreaterThan(thin);
  expect(thin).toBeGreaterThan(useful);
  // Three times as thick: less than a tenth of what the first useful depth gave, either way.
  expect(Math.abs(useful - thick)).toBeLessThan(0.1 * (none - useful));
});
