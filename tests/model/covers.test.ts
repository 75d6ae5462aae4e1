// Covers of a design on the panes of its model: which pane carries which, in which months, drawn by whom.
import { expect, test } from 'vitest';
import { COVER_KINDS } from '../../src/design/cover-catalogue.ts';
import type { Cover, Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Model } from '../../src/model/model.ts';
import { NORTH, SOUTH, WAVE } from './sites.ts';

const example = (id: string) => EXAMPLES.find((entry) => entry.id === id)!.design;
const BLIND: Cover = { kind: 'outside-blind', on: 'east', drawnBy: 'heat', season: 'year' };
const withCovers = (design: Design, ...covers: Cover[]): Design => ({ ...design, covers });
const handsOf = (model: Model) =>
  Object.fromEntries(model.panes.map(({ id, covers = [] }) => [id, covers.map(({ hand }) => hand)]));
const coveredIn = (design: Design, on: Cover['on']) => {
  const model = modelOf(withCovers(design, { ...BLIND, on }), NORTH, WAVE);
  return model.panes.filter(({ covers = [] }) => covers.length > 0).map(({ id }) => id);
};

test('a cover hangs on the windows of its side and on no other', () => {
  expect(coveredIn(example('modest'), 'east')).toEqual(['east']);
  expect(coveredIn(example('modest'), 'east-and-west')).toEqual(['east', 'west']);
  expect(coveredIn(example('modest'), 'pole')).toEqual(['pole']);
  expect(coveredIn(example('modest'), 'front')).toEqual(['front']);
  expect(coveredIn(example('modest'), 'sunspace')).toEqual([]);
  expect(coveredIn(example('modest'), 'all')).toEqual(['front', 'pole', 'east', 'west']);
  expect(coveredIn(example('leaning'), 'sunspace')).toEqual(['front', 'end-east', 'end-west']);
  // The windows within the common wall have no side of their own.
  expect(coveredIn(example('closed'), 'all')).not.toContain('common');
});

test('each side has its own hand, and several covers stand from outside in', () => {
  const curtain: Cover = { kind: 'curtain', on: 'all', drawnBy: 'night', season: 'cold' };
  const model = modelOf(withCovers(example('modest'), curtain, BLIND), NORTH, WAVE);
  expect(handsOf(model)).toEqual({
    front: ['Curtains, front (1)'],
    pole: ['Curtains, pole (1)'],
    east: ['Outside slatted blinds, east (2)', 'Curtains, east (1)'],
    west: ['Curtains, west (1)'],
  });
});

test('seasons and leaves turn with the hemisphere, and leaves need no hand', () => {
  const leaves: Cover = { kind: 'leaves', on: 'front', drawnBy: 'season', season: 'year' };
  const summer: Cover = { kind: 'awning', on: 'east', drawnBy: 'season', season: 'warm' };
  const nobody = { ...example('modest').vents, habit: 'never' as const };
  const design = { ...withCovers(example('modest'), leaves, summer), vents: nobody };
  const rulesIn = (site: typeof NORTH) =>
    modelOf(design, site, WAVE).panes.flatMap(({ covers = [] }) => covers);
  const [vine, awning] = rulesIn(NORTH);
  const [southVine, southAwning] = rulesIn(SOUTH);
  expect(vine!.control).toBe('automatic');
  expect(awning!.control).toBe('never');
  expect(vine!.rule.months[6]).toBe(1);
  expect(vine!.rule.months[0]).toBeLessThan(0.5);
  expect(southVine!.rule.months).toEqual([...vine!.rule.months.slice(6), ...vine!.rule.months.slice(0, 6)]);
  expect(southAwning!.rule.months).toEqual(awning!.rule.months.map((share) => 1 - share));
});

test('a shade against heat waits until the room is well above what it is heated to', () => {
  const eager = withCovers(example('modest'), { ...BLIND, aboveC: 15 });
  const [cover] = modelOf(eager, NORTH, WAVE).panes.flatMap(({ covers = [] }) => covers);
  expect(cover!.rule.aboveC).toBe(eager.heating.dayC + 2);
});

test('every kind is held by the schema to what can draw it, and a file without covers stays as it was', () => {
  for (const { id, drawnBy } of COVER_KINDS) {
    for (const by of ['sun', 'heat', 'night', 'season'] as const) {
      const result = parseDesign(withCovers(example('modest'), { ...BLIND, kind: id, drawnBy: by }));
      expect(result.ok, `${id} by ${by}`).toBe(drawnBy.includes(by));
      if (result.ok) continue;
      expect(result.faults[0]).toMatchObject({ path: 'covers.0.drawnBy', value: by });
    }
  }
  const old = parseDesign(JSON.parse(JSON.stringify(example('modest'))));
  expect(old.ok && 'covers' in old.design).toBe(false);
});

test('a cover with a wrong field, and too many covers, are refused by name', () => {
  const faultOf = (covers: unknown) => {
    const result = parseDesign({ ...example('modest'), covers });
    return result.ok ? null : result.faults[0];
  };
  expect(faultOf([{ ...BLIND, kind: 'tarpaulin' }])).toMatchObject({ path: 'covers.0.kind' });
  expect(faultOf([{ ...BLIND, sunW: 5000 }])).toMatchObject({ path: 'covers.0.sunW', value: '5000' });
  expect(faultOf([{ ...BLIND, colour: 'red' }])).toMatchObject({ allowed: 'no such key' });
  expect(faultOf(new Array(9).fill(BLIND))!.allowed).toBe('a list of at most 8 covers');
});
