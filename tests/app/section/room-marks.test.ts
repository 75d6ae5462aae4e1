import { expect, test } from 'vitest';
import { planMarks, planWords } from '../../../src/app/section/plan-marks.ts';
import { cutRooms, floorStretches, partitionMarks } from '../../../src/app/section/room-marks.ts';
import { sectionShape } from '../../../src/app/section/section-shape.ts';
import { dividedBy, ROOM_PRESETS } from '../../../src/design/room-presets.ts';
import { parseDesign } from '../../../src/design/schema.ts';
import { example, fourRooms } from '../../design/divided.ts';

test('every preset divides every undivided example into a design that stands, once and again', () => {
  for (const id of ['leaning', 'closed', 'modest']) {
    for (const preset of ROOM_PRESETS) {
      const divided = dividedBy(example(id), preset);
      expect(parseDesign(divided), `${id}, ${preset.id}`).toMatchObject({ ok: true });
      expect(dividedBy(divided, preset).rooms).toEqual(divided.rooms);
    }
  }
});

test('the section cuts front and back on each storey, with a partition and the stairs between', () => {
  const design = fourRooms();
  const cut = cutRooms(design, null);
  expect(cut.map(({ name, storey, x0, x1 }) => [name, storey, x0, x1])).toEqual([
    ['Kitchen', 0, 0, 2.5],
    ['Living room', 0, 2.5, 5.5],
    ['Back bedroom', 1, 0, 2.5],
    ['Front bedroom', 1, 2.5, 5.5],
  ]);
  const roles = partitionMarks(design, cut).map(({ role }) => role);
  expect(roles.filter((role) => role === 'partition')).toHaveLength(2);
  expect(roles.filter((role) => role === 'stairs')).toHaveLength(1);
  expect(cutRooms(example('closed'), null)).toEqual([]);
});

test('no floor is drawn through a two-storey space', () => {
  const gallery = dividedBy(example('closed'), ROOM_PRESETS.find(({ id }) => id === 'gallery')!);
  const shape = sectionShape(gallery);
  const back = shape.houseDepthM - gallery.rooms!.frontDepthM;
  const [[from, to] = [0, 0], ...more] = floorStretches(gallery, shape, shape.upperFloors[0]!, null);
  expect([from, more.length]).toEqual([0, 0]);
  expect(to).toBeCloseTo(back, 9);
});

test('the plan has the sun below, and east on the right of a northern house', () => {
  const design = dividedBy(example('modest'), ROOM_PRESETS.find(({ id }) => id === 'row-of-three')!);
  const nameX = (isNorth: boolean) =>
    planMarks(design, 0, isNorth, {}, null).flatMap((mark) =>
      mark.kind === 'word' ? [[mark.text, Math.round(mark.at.x)]] : [],
    );
  expect(nameX(true)).toEqual([
    ['Living room', 11],
    ['Kitchen', 6],
    ['Bedroom', 2],
  ]);
  expect(nameX(false)[0]).toEqual(['Living room', 3]);
  const words = planWords(design, (m2) => `${Math.round(m2)} m²`);
  expect(words).toContain('Living room, a living room of 44 m² in front');
  expect(words).toContain('Bedroom, a bedroom of 39 m²');
  expect(words).toContain('its door leads to Kitchen, open by day, shut by night.');
});
