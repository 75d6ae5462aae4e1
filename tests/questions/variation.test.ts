import fc from 'fast-check';
import { expect, test } from 'vitest';
import { valueAt } from '../../src/design/design-path.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { LIMITS } from '../../src/design/limits.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { withChoiceKept } from '../../src/design/too-hot-criterion.ts';
import { movedInputs } from '../../src/questions/inputs-moved.ts';
import { quantile, sampled } from '../../src/questions/unknowns.ts';
import { varied, withGlassAsArea, withGlassM2 } from '../../src/questions/variation.ts';

const anyExample = fc.constantFrom(...EXAMPLES.map(({ design }) => design));

test('whatever number is put in, the varied design is one the schema accepts', () => {
  fc.assert(
    fc.property(
      anyExample,
      fc.array(fc.tuple(fc.constantFrom(...LIMITS), fc.double({ min: -10, max: 3000, noNaN: true })), {
        minLength: 1,
        maxLength: 6,
      }),
      (design, changes) => {
        const made = varied(
          withGlassAsArea(design),
          Object.fromEntries(changes.map(([{ path }, value]) => [path, value])),
        );
        expect(parseDesign(made)).toEqual({ ok: true, design: made });
      },
    ),
    { numRuns: 300 },
  );
});

test('a change leaves the old design alone and touches nothing else', () => {
  const { design } = EXAMPLES[1]!;
  const before = JSON.stringify(design);
  const made = varied(design, { 'vents.habit': 'never' });
  expect(JSON.stringify(design)).toBe(before);
  // What counts as too hot hangs on who opens the windows; it is kept, so that hours compare.
  expect({ ...made, vents: { ...made.vents, habit: design.vents.habit } }).toEqual(withChoiceKept(design));
  expect({ ...varied(design, { 'vents.stackM': 1 }), vents: design.vents }).toEqual(design);
});

test('a sunspace closed off gets a door, and one left out takes its bed and its lean with it', () => {
  const { design } = EXAMPLES[0]!;
  const closed = varied(design, { 'sunspace.join': 'closed' });
  expect(closed.sunspace).toEqual({ ...design.sunspace, join: 'closed', doorM2: 2, doorRule: 'by-need' });
  const none = varied(design, { 'sunspace.join': 'none' });
  expect([none.glass.tiltDeg, none.plants.bedM2]).toEqual([90, 0]);
  // A door somebody drew on a closed sunspace is theirs.
  const drawn = { ...closed, sunspace: { ...closed.sunspace, doorM2: 4, doorRule: 'open' as const } };
  expect(varied(drawn, { 'vents.stackM': 1 }).sunspace).toEqual(drawn.sunspace);
});

test('a path that no design has is refused', () => {
  expect(() => varied(EXAMPLES[0]!.design, { 'glass.colour': 'red' })).toThrow('glass.colour');
});

test('glass asked for is what the design then holds, up to its front', () => {
  fc.assert(
    fc.property(anyExample, fc.double({ min: 0, max: 100, noNaN: true }), (design, areaM2) => {
      const { glassM2, largestGlassM2 } = geometryOf(withGlassM2(design, areaM2));
      // What is too much is drawn back to three decimals that fit, as on the page.
      const most = Math.floor(1000 * largestGlassM2 + 1e-9) / 1000;
      expect(glassM2).toBeCloseTo(areaM2 > largestGlassM2 ? most : areaM2, 6);
    }),
  );
});

test('inputs that a design does not use are not moved, and no input is tried at its drawn value', () => {
  const modest = withGlassAsArea(EXAMPLES[2]!.design);
  const closed = withGlassAsArea(EXAMPLES[1]!.design);
  const paths = (design: typeof modest) => movedInputs(design).map(({ path }) => path);
  expect(paths(modest).filter((path) => path.startsWith('sunspace.'))).toEqual([]);
  expect(paths(modest)).not.toContain('plants.leafAreaIndex');
  expect(paths(closed)).toEqual(expect.arrayContaining(['sunspace.commonWallM', 'plants.leafAreaIndex']));
  expect(paths(closed).filter((path) => path.startsWith('comfort.'))).toEqual([]);
  for (const { path, values } of movedInputs(closed)) {
    expect(values).not.toContain(valueAt(closed, path));
    expect(values.length).toBeGreaterThan(0);
  }
});

test('samples are the same when drawn again, and each is a design the schema accepts', () => {
  const { design } = EXAMPLES[0]!;
  const samples = sampled(design, 64);
  expect(samples).toEqual(sampled(design, 64));
  expect(samples).toHaveLength(64);
  for (const sample of samples) expect(parseDesign(sample.design).ok).toBe(true);
});

test('a Latin hypercube puts one sample in each stratum of airtightness', () => {
  const { design } = EXAMPLES[2]!;
  // Strata of the logarithm from 0.7 to 2 times as drawn.
  const strata = sampled(design, 64).map(({ design: made }) =>
    Math.floor((64 * Math.log(made.air.ach50 / design.air.ach50 / 0.7)) / Math.log(2 / 0.7)),
  );
  expect([...strata].sort((one, other) => one - other)).toEqual(Array.from({ length: 64 }, (_, i) => i));
});

test('every pair of year, land and ground is met equally often by nine samples', () => {
  const changes = sampled(EXAMPLES[2]!.design, 9).map(({ change }) => [
    change.shiftK![0],
    change.albedoTimes,
    change.groundK,
  ]);
  for (const [one, other] of [
    [0, 1],
    [0, 2],
    [1, 2],
  ] as const) {
    expect(new Set(changes.map((row) => `${row[one]} ${row[other]}`)).size).toBe(9);
  }
});

test('quantiles of 0 to 10 are ten times their share', () => {
  const values = [7, 0, 10, 3, 1, 9, 4, 2, 8, 6, 5];
  for (const share of [0, 0.1, 0.25, 0.5, 0.9, 1])
    expect(quantile(values, share)).toBeCloseTo(10 * share, 12);
  expect(() => quantile([], 0.5)).toThrow('values has 0 entries');
});
