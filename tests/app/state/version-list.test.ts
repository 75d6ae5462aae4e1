import { expect, test } from 'vitest';
import { createVersionList } from '../../../src/app/state/version-list.ts';
import { designDifferences } from '../../../src/app/versions/design-differences.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { dividedBy, ROOM_PRESETS } from '../../../src/design/room-presets.ts';

const [leaning, closed, modest] = EXAMPLES.map(({ design }) => design) as [
  (typeof EXAMPLES)[0]['design'],
  (typeof EXAMPLES)[0]['design'],
  (typeof EXAMPLES)[0]['design'],
];

test('versions are kept, renamed and removed, and ids are never used twice at once', () => {
  const list = createVersionList([]);
  const one = list.keep('first', leaning);
  const two = list.keep('  ', closed);
  expect(two.name).toBe('version 2');
  list.rename(one.id, 'the dream');
  list.rename(one.id, ' ');
  expect(list.versions.value.map(({ name }) => name)).toEqual(['the dream', 'version 2']);
  list.remove(one.id);
  const three = list.keep('third', modest);
  expect(new Set(list.versions.value.map(({ id }) => id)).size).toBe(2);
  expect(three.id).not.toBe(two.id);
});

test('two to four are compared; a fifth is not taken in, and a removed one drops out', () => {
  const list = createVersionList([]);
  const ids = [1, 2, 3, 4, 5].map((n) => list.keep(`v${n}`, leaning).id);
  for (const id of ids) list.toggle(id);
  expect(list.compared.value).toEqual(ids.slice(0, 4));
  list.remove(ids[1]!);
  expect(list.comparedVersions.value.map(({ name }) => name)).toEqual(['v1', 'v3', 'v4']);
  list.toggle(ids[0]!);
  expect(list.compared.value).toEqual([ids[2], ids[3]]);
});

test('versions that differ in their rooms only say how', () => {
  const divided = dividedBy(closed, ROOM_PRESETS.find(({ id }) => id === 'front-and-back')!);
  const list = divided.rooms!.list.map((room, i) => (i === 1 ? { ...room, door: 'shut' as const } : room));
  const shut = { ...divided, rooms: { ...divided.rooms!, list } };
  const [row, ...more] = designDifferences([divided, shut], (id) => id, 'metric');
  expect([row!.label, more.length]).toEqual(['Bedroom', 0]);
  expect(row!.values[0]).toContain('door: open by day, shut by night');
  expect(row!.values[1]).toContain('door: shut');
  const rows = designDifferences([closed, divided], (id) => id, 'us');
  expect(rows.find(({ label }) => label === 'Rooms')!.values).toEqual(['one room', 'Living room, Bedroom']);
  expect(rows.find(({ label }) => label === 'Depth of the front row')!.values[1]).toMatch(/ ft \d+ in$/);
});

test('differences name what differs and nothing else', () => {
  const other = withValueAt(withValueAt(leaning, 'glass.tiltDeg', 75), 'vents.habit', 'away');
  const rows = designDifferences([leaning, other], (id) => id, 'metric');
  expect(rows).toEqual([
    { path: 'glass.tiltDeg', label: 'Tilt of the glass', values: ['60°', '75°'] },
    {
      path: 'vents.habit',
      label: 'Vents are moved',
      values: ['by forgetful people', 'by people away on workdays'],
    },
  ]);
  expect(designDifferences([leaning, leaning], (id) => id, 'us')).toEqual([]);
});

test('a number without meaning for a design shows a dash', () => {
  const rows = designDifferences([closed, modest], (id) => id, 'metric');
  expect(rows.find(({ path }) => path === 'sunspace.depthM')!.values).toEqual(['2.2\u202fm', '–']);
});
