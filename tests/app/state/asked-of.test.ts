import { expect, test } from 'vitest';
import { isAskedOf } from '../../../src/app/state/asked-of.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { NO_CHANGE } from '../../../src/design/hotter.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';

// Only what it is matters here, not what is in it.
const year = () => ({}) as TypicalYear;
const [one, other] = [EXAMPLES[0]!.design, EXAMPLES[1]!.design];

test('an answer is old once design, climate or the climate’s file is another, and fresh again when undone', () => {
  const typical = year();
  const asked = { design: one, typical };
  const ready = (t: TypicalYear) => ({ state: 'ready', key: 'k', year: t, typical: t }) as const;
  expect(isAskedOf(asked, one, ready(typical))).toBe(true);
  expect(isAskedOf(asked, other, ready(typical))).toBe(false);
  expect(isAskedOf(asked, { ...one, hotter: { ...NO_CHANGE, summerK: 2 } }, ready(typical))).toBe(false);
  expect(isAskedOf(asked, one, ready(year()))).toBe(false);
  expect(isAskedOf(asked, one, { state: 'loading', key: 'k' })).toBe(false);
  // A hotter year keeps the climate as read.
  expect(isAskedOf(asked, one, { ...ready(typical), year: year() })).toBe(true);
});
