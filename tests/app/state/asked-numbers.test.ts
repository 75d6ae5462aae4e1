import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changedAsAsked, stillAsked } from '../../../src/app/state/asked-numbers.ts';
import { rebasedGlass } from '../../../src/app/state/design-basis.ts';
import type { FitNote } from '../../../src/app/state/design-fit.ts';
import type { Design } from '../../../src/design/design.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { LIMITS } from '../../../src/design/limits.ts';
import { parseDesign } from '../../../src/design/schema.ts';

const leaning = EXAMPLES.find(({ id }) => id === 'leaning')!.design;

/** A house changed number by number, with what does not fit at the end. */
function changed(design: Design, ...steps: readonly (readonly [path: string, value: unknown])[]) {
  return steps.reduce<{ design: Design; notes: readonly FitNote[] }>(
    (at, [path, value]) => changedAsAsked(at.design, at.notes, path, value),
    { design, notes: [] },
  );
}

test('a sunspace of one metre takes most of the glass away, and sixteen bring it back', () => {
  const short = changed(leaning, ['sunspace.lengthM', 1]);
  expect(short.notes).toMatchObject([{ path: 'glass.value', was: leaning.glass.value }]);
  expect(short.design.glass.value).toBeLessThan(leaning.glass.value / 2);
  const back = changed(leaning, ['sunspace.lengthM', 1], ['sunspace.lengthM', leaning.sunspace.lengthM]);
  expect(back.design).toEqual(leaning);
  expect(back.notes).toEqual([]);
});

test('a number asked for anew is what counts from then on', () => {
  const { design, notes } = changed(
    leaning,
    ['sunspace.lengthM', 3],
    ['glass.value', 5],
    ['sunspace.lengthM', leaning.sunspace.lengthM],
  );
  expect(design.glass.value).toBe(5);
  expect(notes).toEqual([]);
});

test('any one number changed and changed back leaves the house as it was, and every house on the way can be built', () => {
  const numbers = LIMITS.filter(({ absent, path }) => absent === undefined && path !== 'glass.value');
  fc.assert(
    fc.property(
      fc.constantFrom(...EXAMPLES),
      fc.constantFrom(...numbers),
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 4 }),
      ({ design }, { path, min, max, whole }, shares) => {
        const [head, key] = path.split('.') as [keyof Design, string];
        const first = (design[head] as unknown as Record<string, number>)[key]!;
        const values = shares.map((share) => min + share * (max - min));
        let at: { design: Design; notes: readonly FitNote[] } = { design, notes: [] };
        for (const value of [...values.map((v) => (whole ? Math.round(v) : v)), first]) {
          at = changedAsAsked(at.design, at.notes, path, value);
          expect(parseDesign(at.design)).toMatchObject({ ok: true });
        }
        expect(at).toMatchObject({ design, notes: [] });
      },
    ),
    { numRuns: 400 },
  );
});

test('what was asked outlives a change that does not touch it, and another house asks for nothing', () => {
  const { design, notes } = changed(leaning, ['house.ceilingHeightM', 2]);
  expect(stillAsked(design, { ...design, name: 'other' }, notes)).toEqual(notes);
  expect(stillAsked(design, leaning, notes)).toEqual([]);
});

test('glass that does not fit stays asked for when it is counted another way', () => {
  const { design, notes } = changed(leaning, ['house.ceilingHeightM', 2]);
  const other = rebasedGlass(design, 'share-of-floor', notes);
  expect(other.notes[0]!.was * leaning.house.floorAreaM2).toBeCloseTo(leaning.glass.value, 0);
});
