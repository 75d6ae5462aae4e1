// Words of a diary as openings of a house, undivided and divided, and the house that they open.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/daystone.ts';
import { notUsedWords, openedBy, openedStretches } from '../../src/matching/diary-openings.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { NORTH, WAVE } from '../model/sites.ts';

const designOf = (id: string) => EXAMPLES.find((one) => one.id === id)!.design;
const idsOf = (id: string, what: string) => {
  const design = designOf(id);
  const { opened } = openedStretches(design, modelOf(design, NORTH, WAVE), [
    { fromMs: 0, untilMs: 1, what, share: 1 },
  ]);
  return opened.map(({ opening }) => opening);
};

test.each([
  ['closed', 'windows', ['house windows']],
  ['closed', 'vents', ['sunspace vents']],
  ['closed', 'vents of the greenhouse', ['sunspace vents']],
  ['closed', 'door', ['door']],
  ['modest', 'vents', ['house windows']],
  ['divided', 'Kitchen window', ['room-2 windows']],
  ['divided', 'upper bedroom', ['room-4 windows']],
  ['divided', 'Kitchen door', ['way room-2']],
  ['divided', 'door to the sunspace', ['door room-1']],
  ['divided', 'windows', ['room-1 windows', 'room-2 windows', 'room-3 windows', 'room-4 windows']],
])('%s: “%s”', (id, what, ids) => {
  expect(idsOf(id, what)).toEqual(ids);
});

test('what the house has not is named, not guessed', () => {
  expect(openedBy(designOf('modest'), 'sunspace vents')).toBe(null);
  expect(openedBy(designOf('modest'), 'front door')).toBe(null);
  expect(openedBy(designOf('leaning'), 'the fridge')).toBe(null);
  expect(openedBy(designOf('divided'), 'Kitchen stove')).toBe(null);
  expect(notUsedWords('Kitchen stove')).toContain('how much was burnt');
  expect(notUsedWords('front door')).toContain('not used. Write windows');
  const design = designOf('modest');
  const line = { fromMs: 0, untilMs: 1, what: 'roof hatch of the barn door', share: 1 };
  expect(openedStretches(design, modelOf(design, NORTH, WAVE), [line])).toEqual({
    opened: [],
    strange: [line.what],
  });
});
