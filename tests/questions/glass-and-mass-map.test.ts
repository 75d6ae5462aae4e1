import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { ask } from '../../src/questions/ask.ts';
import { designAt, glassAndMassMap } from '../../src/questions/glass-and-mass-map.ts';
import { howMuchGlass } from '../../src/questions/how-much-glass.ts';
import { type Formula, madeBasis, madeRunner, plausible } from './made-runner.ts';

const MODEST = EXAMPLES[2]!.design;

async function mapped(everyCell: boolean) {
  const runner = madeRunner(plausible);
  const answer = await ask(glassAndMassMap, madeBasis(MODEST, { everyCell }), runner);
  // Besides the cells, the curves along the lowest and the highest row are searched for their limit.
  return { answer, map: answer.map!, ran: runner.ran.filter(({ at }) => at.row !== undefined) };
}

test('on asking, every one of 441 cells is run', async () => {
  const { map, ran } = await mapped(true);
  expect(ran).toHaveLength(21 * 21);
  expect(map.tooHotHours).not.toContain(null);
  expect(map.filled).toEqual(map.tooHotHours);
  expect(map.filledErrorHours).toBeNull();
});

test('otherwise about a third is run: every second cell each way and all beside the limit', async () => {
  const whole = await mapped(true);
  const { map, ran, answer } = await mapped(false);
  expect(ran.length).toBeGreaterThanOrEqual(121);
  expect(ran.length).toBeLessThan(200);
  const limit = answer.criterion.hours;
  map.filled!.forEach((value, i) => {
    const [column, row] = [i % 21, Math.floor(i / 21)];
    if (column % 2 === 0 && row % 2 === 0) expect(map.tooHotHours[i]).not.toBeNull();
    for (const [beside, fits] of [
      [i + 1, column < 20],
      [i + 21, row < 20],
    ] as const) {
      if (!fits || value <= limit === map.filled![beside]! <= limit) continue;
      expect(map.tooHotHours[i]).not.toBeNull();
      expect(map.tooHotHours[beside]).not.toBeNull();
    }
  });
  // What lies on which side of the limit, and what is said of it, is then as if every cell were run.
  expect(map.filled!.map((value) => value <= limit)).toEqual(
    whole.map.filled!.map((value) => value <= limit),
  );
  expect(answer.finding).toEqual(whole.answer.finding);
});

test('cells drawn through are off by no more than the map says', async () => {
  const whole = await mapped(true);
  const { map, answer, ran } = await mapped(false);
  const off = map.filled!.flatMap((value, i) =>
    map.tooHotHours[i] === null ? [value - whole.map.filled![i]!] : [],
  );
  expect(off).toHaveLength(441 - ran.length);
  const meanSquare = off.reduce((sum, value) => sum + value ** 2, 0) / off.length;
  expect(map.filledErrorHours).not.toBeNull();
  expect(Math.sqrt(meanSquare)).toBeLessThanOrEqual(map.filledErrorHours!);
  expect(answer.notes.join(' ')).toContain(`${ran.length} of the 441 cells are run`);
});

test('a place on the map is a design with that much glass and mass, and else as drawn', () => {
  const design = designAt(MODEST, 20, 45);
  expect(geometryOf(design).glassM2).toBeCloseTo(20, 12);
  expect(design.mass).toEqual({ ...MODEST.mass, areaM2: 45 });
  expect({ ...design, glass: MODEST.glass, mass: MODEST.mass }).toEqual(MODEST);
});

test('the design as drawn is marked where it stands', async () => {
  const { map } = await mapped(false);
  expect(map.drawn).toEqual({ glassM2: 0.12 * 110, massM2: 20 });
  expect(map.glassM2).toHaveLength(21);
  expect(map.massM2).toHaveLength(21);
  expect(map.lines.filter(({ kind }) => kind === 'limit')).toHaveLength(1);
});

test('the most glass it tells is the one that "how much glass" tells', async () => {
  const basis = madeBasis(MODEST);
  const { answer } = await mapped(false);
  const curves = await ask(howMuchGlass, basis, madeRunner(plausible));
  const limitOf = (mass: string) =>
    curves.charts[0]!.marks.find(({ id }) => id === `limit-${mass}`)?.x ?? null;
  const { mostGlassWithoutMassM2, mostGlassWithMostMassM2 } = answer.finding!.figures;
  expect(mostGlassWithoutMassM2).toBeGreaterThan(0);
  expect(mostGlassWithoutMassM2).toBe(limitOf('none'));
  expect(mostGlassWithMostMassM2).toBe(limitOf('plenty'));
});

test('where mass changes nothing that is said once, and where it does both ends are told', async () => {
  const told = async (formula: Formula) =>
    (await ask(glassAndMassMap, madeBasis(MODEST, { mapSide: 5 }), madeRunner(formula))).finding!.text;
  const whole = await told(() => ({ overheatedHours: 10 }));
  expect(whole).toMatch(
    /^Without extra mass as with 88 m² of it, the whole front may be glass: 35 m² of glass/,
  );
  expect(whole.match(/m² of glass/g)).toHaveLength(1);
  const none = await told(() => ({ overheatedHours: 900 }));
  expect(none).toMatch(/^No point of this map keeps to 262 hours a year too hot/);
  const some = await told((design) => ({
    overheatedHours: design.mass.areaM2 > 80 ? 10 * geometryOf(design).glassM2 : 900,
  }));
  expect(some).toMatch(
    /^Without extra mass no glass keeps to the limit\. With 88 m² of extra mass it carries/,
  );
});
