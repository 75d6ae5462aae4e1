// The drawing as numbers: handles lead back to the number they stand for, the shape agrees with the design's geometry,
// and each example's marks are compared with a stored drawing (regression: nobody else draws our section).
import { expect, test } from 'vitest';
import { sectionHandles, snapped } from '../../../src/app/section/handles.ts';
import type { Mark } from '../../../src/app/section/mark.ts';
import { houseMarks } from '../../../src/app/section/StillSection.tsx';
import { sectionFrame } from '../../../src/app/section/section-frame.ts';
import { sectionShape } from '../../../src/app/section/section-shape.ts';
import { groundMarks, roomMarks } from '../../../src/app/section/shell-marks.ts';
import { lightMarks, noonLight, sunMarks } from '../../../src/app/section/sun-marks.ts';
import type { Design } from '../../../src/design/design.ts';
import { numberAt, withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { geometryOf } from '../../../src/design/geometry.ts';

const designs: readonly (readonly [string, Design])[] = [
  ...EXAMPLES.map(({ id, design }) => [id, design] as const),
  ['two storeys', withValueAt(EXAMPLES.find(({ id }) => id === 'modest')!.design, 'house.storeys', 2)],
  ['shallow and low', withValueAt(EXAMPLES[0]!.design, 'glass.tiltDeg', 35)],
];

test.each(designs)('the drawing of %s', async (name, design) => {
  const shape = sectionShape(design);
  const frame = sectionFrame(shape, 640);
  const lights = noonLight(shape, design, 39.8);
  const marks = [
    ...groundMarks(shape, frame),
    ...roomMarks(shape),
    ...lightMarks(lights),
    ...houseMarks(shape, design, frame.pxPerM),
    ...sunMarks(shape, lights, false, frame.pxPerM),
  ];
  await expect(marks.map(markLine).join('\n')).toMatchFileSnapshot(
    `./drawings/${name.replaceAll(' ', '-')}.txt`,
  );
});

test('words of suns that stand close together on a small drawing go to either side', () => {
  const shape = sectionShape(EXAMPLES[0]!.design);
  const lights = noonLight(shape, EXAMPLES[0]!.design, 39.8);
  const sides = (widthPx: number) =>
    sunMarks(shape, lights, true, sectionFrame(shape, widthPx).pxPerM).flatMap((mark) =>
      mark.kind === 'word' ? [mark.anchor] : [],
    );
  expect(sides(1000)).toEqual(['start', 'start', 'start']);
  expect(sides(366)).toEqual(['end', 'start', 'start']);
});

test.each(designs)('the glass drawn in %s is the glass of the design', (_, design) => {
  const shape = sectionShape(design);
  const { glassM2, frontLengthM } = geometryOf(design);
  const drawn = shape.rows.reduce((sum, { sill, head }) => {
    const upright = Math.max(0, shape.knee.y - sill.y);
    const from = upright > 0 ? shape.knee : sill;
    return sum + upright + Math.hypot(head.x - from.x, head.y - from.y);
  }, 0);
  expect(drawn * frontLengthM).toBeCloseTo(glassM2, 6);
});

test.each(designs)('in %s a handle that is not moved means the number it stands for', (_, design) => {
  const shape = sectionShape(design);
  const handles = sectionHandles(shape, design);
  expect(handles.length).toBeGreaterThanOrEqual(6);
  for (const handle of handles) {
    expect(handle.valueAt(handle.at), handle.id).toBeCloseTo(numberAt(design, handle.path), 6);
  }
});

test('values snap to what builders build, in their own units, and stay within limits', () => {
  const shape = sectionShape(EXAMPLES[0]!.design);
  const depth = sectionHandles(shape, EXAMPLES[0]!.design).find(({ id }) => id === 'sunspace.depthM')!;
  expect(snapped(2.433, depth, 'metric', false)).toBeCloseTo(2.45, 9);
  expect(snapped(2.433, depth, 'metric', true)).toBeCloseTo(2.43, 9);
  // 8 ft, to the four decimals a design keeps
  expect(snapped(2.433, depth, 'us', false)).toBeCloseTo(2.4384, 9);
  // 8 ft 1 in
  expect(snapped(2.46, depth, 'us', true)).toBeCloseTo(2.4638, 9);
  expect(snapped(-3, depth, 'metric', false)).toBe(depth.min);
  expect(snapped(99, depth, 'metric', false)).toBe(depth.max);
});

/** A mark on one line, numbers to the centimetre. */
function markLine(mark: Mark): string {
  const at = ({ x, y }: { x: number; y: number }) => `${hundredth(x)} ${hundredth(y)}`;
  switch (mark.kind) {
    case 'area':
    case 'line':
      return `${mark.kind} ${mark.role}: ${mark.points.map(at).join(', ')}`;
    case 'dot':
      return `dot ${mark.role}: ${at(mark.at)}`;
    case 'word':
      return `word ${mark.role}: ${at(mark.at)} ${mark.text}`;
  }
}

function hundredth(value: number): string {
  return (Math.round(value * 100) / 100 + 0).toString();
}
