// What `expect` makes of columns of numbers (equal-columns.ts) is what it makes of lists of them.
import { expect, test } from 'vitest';

const COLUMN = [0, Number.NaN, 1 / 3];

test.each([
  ['the same numbers', COLUMN, true],
  ['−0 for 0', [-0, Number.NaN, 1 / 3], false],
  ['a number for NaN', [0, 1, 1 / 3], false],
  ['one off in its last bit', [0, Number.NaN, 1 / 3 + 2 ** -54], false],
  ['one too few', COLUMN.slice(1), false],
  ['one too many', [...COLUMN, 0], false],
] as const)('a column beside %s', (_, numbers, isEqual) => {
  const [one, other] = [COLUMN, numbers].map((values) => ({ zones: [{ airC: Float64Array.from(values) }] }));
  const [plain, otherPlain] = [COLUMN, numbers].map((values) => ({ zones: [{ airC: values }] }));
  const isEqualTo = (a: unknown, b: unknown) => {
    try {
      expect(a).toEqual(b);
      return true;
    } catch {
      return false;
    }
  };
  expect([isEqualTo(one, other), isEqualTo(plain, otherPlain)]).toEqual([isEqual, isEqual]);
});

test('a column is no list', () => {
  expect(Float64Array.from(COLUMN)).not.toEqual(COLUMN);
});
