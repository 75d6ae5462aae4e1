import { expect, test } from 'vitest';
import { createJointSearch, MOST_MOVES } from '../../src/network/water/joint-search.ts';

// A slope is measured over 50. At the edge of saturation one unknown may be off by as much on either side and never agree.
test.each([3, 5, 8, 12, 17])(
  'of %d unknowns, one of which never agrees, none is left where a slope was measured',
  (count) => {
    const search = createJointSearch(count);
    const at = new Float64Array(count);
    search.begin(count, count);
    for (let move = 0; move < MOST_MOVES; move++) {
      for (let i = 0; i < count; i++) search.off[i] = i === 0 ? (at[0]! < 1 ? 27 : -27) : 5 - at[i]! || 1e-6;
      search.next();
      for (let i = 0; i < count; i++) at[i]! += search.move[i]!;
    }
    for (const value of at.subarray(1)) expect(Math.abs(value - 5)).toBeLessThan(1);
  },
);
