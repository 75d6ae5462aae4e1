import fc from 'fast-check';
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { ask } from '../../src/questions/ask.ts';
import { howMuchGlass } from '../../src/questions/how-much-glass.ts';
import { type Formula, madeBasis, madeRunner, plausible } from './made-runner.ts';

const MODEST = EXAMPLES[2]!.design;
const { largestGlassM2 } = geometryOf(MODEST);

const hoursPerM2 =
  (slope: number): Formula =>
  (design) => ({ overheatedHours: Math.round(slope * geometryOf(design).glassM2) });

test('the most glass is within one step of the true limit, and on the safe side', async () => {
  await fc.assert(
    fc.asyncProperty(fc.double({ min: 8, max: 900, noNaN: true }), async (slope) => {
      const basis = madeBasis(MODEST);
      const answer = await ask(howMuchGlass, basis, madeRunner(hoursPerM2(slope)));
      const limitM2 = answer.finding!.figures.limitM2 as number;
      const truth = (basis.criterion.hours + 0.5) / slope;
      expect(limitM2).toBeLessThanOrEqual(truth);
      expect(truth - limitM2).toBeLessThanOrEqual(largestGlassM2 / 64 + 1e-9);
    }),
    { numRuns: 50 },
  );
});

test('a house that never overheats may be all glass, and one that always does may have none', async () => {
  const all = await ask(howMuchGlass, madeBasis(MODEST), madeRunner(hoursPerM2(0.1)));
  expect(all.finding!.text).toContain('the whole front may be glass');
  expect(all.proposal).toBeNull();
  const none = await ask(
    howMuchGlass,
    madeBasis(MODEST),
    madeRunner(() => ({ overheatedHours: 800 })),
  );
  expect(none.finding!.figures.limitM2).toBeNull();
  expect(none.finding!.text).toContain('no amount of glass keeps to');
  expect(none.finding!.text).toContain('800 hours');
});

test('a front of which the least glass passes the limit carries none', async () => {
  const answer = await ask(howMuchGlass, madeBasis(MODEST), madeRunner(hoursPerM2(10_000)));
  expect(answer.finding!.text).toContain('this front carries no glass');
  expect(answer.proposal).toBeNull();
});

test('curves stand for three amounts of mass, the drawn one among them, each from none to the whole front', async () => {
  const answer = await ask(howMuchGlass, madeBasis(MODEST), madeRunner(plausible));
  const [chart] = answer.charts;
  expect(chart!.curves.map(({ id }) => id)).toEqual(['none', 'drawn', 'plenty']);
  for (const { points } of chart!.curves) {
    const xs = points.map(({ x }) => x);
    expect(xs[0]).toBe(0);
    expect(xs.at(-1)).toBeCloseTo(largestGlassM2, 9);
    expect([...xs].sort((one, other) => one - other)).toEqual(xs);
    expect(xs.length).toBeGreaterThanOrEqual(9);
  }
});

test('handbook marks stand at 7, 12 and 20 % of the floor with their source', async () => {
  // US passive-solar guideline series, about 1989–1995: 7 % read in a document, 12 and 20 % from memory, high.
  const answer = await ask(howMuchGlass, madeBasis(MODEST), madeRunner(plausible));
  const marks = answer.charts[0]!.marks.filter(({ kind }) => kind === 'handbook');
  const shares = marks.map(({ x }) => x / MODEST.house.floorAreaM2);
  expect(shares).toHaveLength(3);
  [0.07, 0.12, 0.2].forEach((share, i) => {
    expect(shares[i]).toBeCloseTo(share, 12);
  });
  for (const { source } of marks) expect(source).toContain('guideline series');
});

test('both reference areas are told, floor and wall', async () => {
  const { finding } = await ask(howMuchGlass, madeBasis(MODEST), madeRunner(plausible));
  const { limitM2, shareOfFloor, shareOfWall } = finding!.figures as Record<string, number>;
  expect(shareOfFloor).toBeCloseTo(limitM2! / 110, 12);
  expect(shareOfWall).toBeCloseTo(limitM2! / (13.5 * 2.6), 12);
  expect(finding!.text).toMatch(/of the floor, .* of the equator-facing wall/);
});

test('more mass carries more glass', async () => {
  const answer = await ask(howMuchGlass, madeBasis(MODEST), madeRunner(plausible));
  const limits = answer.charts[0]!.marks.filter(({ kind }) => kind === 'limit').map(({ x }) => x);
  expect(limits).toHaveLength(3);
  expect([...limits].sort((one, other) => one - other)).toEqual(limits);
});

test('an answer on heat says so where the rooms are damp at that glass, and only there', async () => {
  const told = async (humidHours: number) => {
    const runner = madeRunner((design) => ({ ...hoursPerM2(20)(design, {} as never), humidHours }));
    return (await ask(howMuchGlass, madeBasis(MODEST), runner)).finding!;
  };
  const damp = await told(3000);
  expect(damp.figures.humidHours).toBe(3000);
  expect(damp.text).toContain(
    'This judges hours too hot alone: the rooms are then also above 70 % humidity for 3000 hours a year.',
  );
  expect((await told(300)).text).not.toContain('humidity');
});

test('less glass that asks for plainly less heat is told, and nothing where the most glass asks for the least', async () => {
  const told = async (kWhPerM2: number) =>
    (
      await ask(
        howMuchGlass,
        madeBasis(),
        madeRunner((design) => ({
          overheatedHours: 0,
          heatingKWh: 5000 + kWhPerM2 * geometryOf(design).glassM2,
        })),
      )
    ).finding!.text;
  // 35.1 m² in a wall of 13.5 m by 2.6 m.
  expect(await told(100)).toContain(
    'The least back-up heat is that of none at all: 5000 kWh a year, and 8510 kWh with the most.',
  );
  expect(await told(-100)).not.toContain('back-up heat');
});
