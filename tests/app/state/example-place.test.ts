import { expect, test } from 'vitest';
import { exampleAt, exampleOf } from '../../../src/app/state/example-place.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { parseDesign } from '../../../src/design/schema.ts';

const [leaning, , modest] = EXAMPLES.map(({ design }) => design);

test('an example chosen in Helena stands in Helena, in the hotter year if one was asked for', () => {
  const hotter = { winterK: 1.5, summerK: 3, waveDays: 10, waveK: 5 };
  const placed = exampleAt(modest!, { ...leaning!, climate: 'helena', hotter });
  expect(placed).toEqual({ ...modest, climate: 'helena', hotter });
  expect(parseDesign(placed)).toMatchObject({ ok: true });
  expect(exampleAt(modest!, leaning!)).toBe(modest);
});

test('an example is known as itself in any place, and no longer once it is changed', () => {
  const placed = exampleAt(modest!, { ...leaning!, climate: 'helena' });
  expect(exampleOf(placed)?.id).toBe('modest');
  expect(exampleOf({ ...placed, house: { ...placed.house, floorAreaM2: 80 } })).toBeUndefined();
});
