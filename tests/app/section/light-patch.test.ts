import { expect, test } from 'vitest';
import { lightPatch } from '../../../src/app/section/light-patch.ts';
import { sectionShape } from '../../../src/app/section/section-shape.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';

const modest = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const closed = EXAMPLES.find(({ id }) => id === 'closed')!.design;
const bare = withValueAt(modest, 'glass.overhangM', 0);

test('upright glass throws its height over the tangent of the sun', () => {
  const shape = sectionShape(bare);
  for (const angle of [20, 27, 45, 60]) {
    const patch = lightPatch(shape, angle, 0)!;
    const tangent = Math.tan((angle * Math.PI) / 180);
    const reach = shape.foot.x - shape.head.y / tangent;
    expect(patch.floor!.x0).toBeCloseTo(Math.max(0, reach), 9);
    expect(patch.floor!.x1).toBeCloseTo(shape.foot.x - shape.sill.y / tangent, 9);
  }
});

test('an overhang shades the glass down to its depth times the tangent of the sun', () => {
  const shape = sectionShape(modest);
  const { overhangM, overhangGapM } = modest.glass;
  for (const angle of [30, 50, 65]) {
    const shadow = overhangM * Math.tan((angle * Math.PI) / 180) - overhangGapM;
    const height = shape.head.y - shape.sill.y;
    const lit = Math.min(1, Math.max(0, (height - Math.max(0, shadow)) / height));
    const patch = lightPatch(shape, angle, 0);
    expect(patch?.litShare ?? 0).toBeCloseTo(lit, 9);
  }
});

test('a closed common wall stops the light', () => {
  const shape = sectionShape(closed);
  const patch = lightPatch(shape, 27, shape.wallOuterX)!;
  expect(patch.endTo.x).toBeCloseTo(shape.wallOuterX, 9);
  expect(patch.endTo.y).toBeGreaterThan(0.2);
});

test('no sun from behind, below, or with no glass', () => {
  const shape = sectionShape(bare);
  expect(lightPatch(shape, 95, 0)).toBe(null);
  expect(lightPatch(shape, -5, 0)).toBe(null);
  expect(lightPatch(sectionShape(withValueAt(bare, 'glass.value', 0)), 30, 0)).toBe(null);
});
