// The rules of a number field, by the clock: what is typed is a draft until it is confirmed, left or at rest. Keys and
// results as in the fields people know from other work: Enter and leaving take, Escape brings back.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createDraftKeeper } from '../../../src/app/state/draft-keeper.ts';
import { createNumberDraft, REST_MS } from '../../../src/app/state/number-draft.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A field for whole numbers within limits, and all it ever took. */
function field(least: number, most: number) {
  const taken: number[] = [];
  const gestures: string[] = [];
  const cancelled: string[] = [];
  const keeper = createDraftKeeper();
  const draft = createNumberDraft<number>('n', keeper, () => ({
    read(text) {
      const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
      return value >= least && value <= most ? value : null;
    },
    take(value, gesture) {
      taken.push(value);
      gestures.push(gesture);
    },
    cancel: (gesture) => cancelled.push(gesture),
  }));
  const type = (text: string) => {
    for (let i = 1; i <= text.length; i++) {
      draft.type(text.slice(0, i));
      vi.advanceTimersByTime(REST_MS / 4);
    }
  };
  return { draft, keeper, taken, gestures, cancelled, type };
}

test('digits on their way to a number are not taken, whether they are within limits or not', () => {
  for (const least of [1, 10]) {
    const { draft, taken, type } = field(least, 60);
    type('16');
    expect(taken).toEqual([]);
    draft.leave();
    expect(taken).toEqual([16]);
    expect(draft.text.value).toBeNull();
    vi.runAllTimers();
    expect(taken).toEqual([16]);
  }
});

test('a draft that rests is taken once, and the text stays as typed until the field is left', () => {
  const { draft, keeper, taken, type } = field(1, 60);
  type('16');
  expect(keeper.waiting.value).toBe(1);
  vi.advanceTimersByTime(REST_MS);
  expect(taken).toEqual([16]);
  expect(keeper.waiting.value).toBe(0);
  expect(draft.text.value).toBe('16');
  draft.leave();
  expect(taken).toEqual([16]);
  expect(draft.text.value).toBeNull();
});

test('a draft out of limits is never taken: 60 where 10 is the most leaves no 6 behind', () => {
  const { draft, keeper, taken, type } = field(1, 10);
  type('60');
  expect(draft.refused.value).toBe(false);
  vi.advanceTimersByTime(REST_MS);
  expect(draft.refused.value).toBe(true);
  draft.leave();
  expect(draft.text.value).toBe('60');
  expect(keeper.waiting.value).toBe(0);
  keeper.takeAll();
  expect(taken).toEqual([]);
  draft.restore();
  expect(draft.text.value).toBeNull();
  expect(draft.refused.value).toBe(false);
});

test('an emptied field that is left shows its number again', () => {
  const { draft, taken } = field(1, 10);
  draft.type('');
  draft.leave();
  expect(draft.text.value).toBeNull();
  expect(taken).toEqual([]);
});

test('escape takes back what a rest has taken since the field was entered, not what was confirmed', () => {
  const { draft, gestures, cancelled, type } = field(1, 60);
  draft.enter();
  type('16');
  vi.advanceTimersByTime(REST_MS);
  type('18');
  draft.restore();
  expect(cancelled).toEqual([gestures[0]]);
  type('20');
  expect(draft.confirm()).toBe(true);
  draft.restore();
  expect(cancelled.at(-1)).not.toBe(gestures.at(-1));
});

test('enter refuses what cannot be taken and says so at once', () => {
  const { draft, taken } = field(1, 10);
  draft.type('60');
  expect(draft.confirm()).toBe(false);
  expect(draft.refused.value).toBe(true);
  expect(taken).toEqual([]);
});

test('whoever takes the design away takes a sound draft first', () => {
  const { keeper, taken, type } = field(1, 60);
  type('16');
  keeper.takeAll();
  expect(taken).toEqual([16]);
  vi.runAllTimers();
  expect(taken).toEqual([16]);
});
