import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rebasedGlass } from '../../../src/app/state/design-basis.ts';
import { fittedDesign } from '../../../src/app/state/design-fit.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { geometryOf } from '../../../src/design/geometry.ts';
import { LIMITS } from '../../../src/design/limits.ts';
import { parseDesign } from '../../../src/design/schema.ts';

test('any single number within its limits leaves a design that the schema accepts', () => {
  const anyChange = fc.record({
    example: fc.constantFrom(...EXAMPLES),
    limit: fc.constantFrom(...LIMITS),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(anyChange, ({ example, limit, share }) => {
      const value = limit.min + share * (limit.max - limit.min);
      const { design } = fittedDesign(withValueAt(example.design, limit.path, value));
      expect(parseDesign(design)).toMatchObject({ ok: true });
    }),
    { numRuns: 600 },
  );
});

test('a whole number typed with a fraction is drawn to the next whole one and told', () => {
  const fitted = fittedDesign(withValueAt(EXAMPLES[0]!.design, 'air.shelter', 3.99));
  expect(fitted.design.air.shelter).toBe(4);
  expect(fitted.notes).toMatchObject([{ path: 'air.shelter', was: 3.99, now: 4 }]);
});

test('glass that no longer fits is drawn back and the reason is told', () => {
  const { design } = EXAMPLES.find(({ id }) => id === 'leaning')!;
  const fitted = fittedDesign(withValueAt(design, 'house.ceilingHeightM', 2));
  expect(fitted.notes).toMatchObject([{ path: 'glass.value', was: 38 }]);
  expect(geometryOf(fitted.design).glassM2).toBeLessThanOrEqual(geometryOf(fitted.design).largestGlassM2);
});

test('a design that fits is handed back untouched', () => {
  for (const { design } of EXAMPLES) expect(fittedDesign(design)).toEqual({ design, notes: [] });
});

test('counting the glass another way keeps the glass', () => {
  for (const { design } of EXAMPLES) {
    for (const basis of ['area', 'share-of-wall', 'share-of-floor'] as const) {
      const { design: other, notes } = rebasedGlass(design, basis);
      expect(parseDesign(other)).toMatchObject({ ok: true });
      if (basis === 'share-of-wall' && geometryOf(design).shareOfWall > 1) {
        // A share of the wall ends at the whole wall, though leaning glass may be more.
        expect(other.glass.value).toBe(1);
        expect(notes).toHaveLength(1);
        continue;
      }
      // Three decimals of a share are 0.1 % of wall or floor, at most 0.06 m² here.
      expect(Math.abs(geometryOf(other).glassM2 - geometryOf(design).glassM2)).toBeLessThan(0.06);
    }
  }
});
