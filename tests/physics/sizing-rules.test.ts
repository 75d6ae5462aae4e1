import { expect, test } from 'vitest';
import { SIZING_RULES } from '../../src/physics/sizing-rules.ts';

test('every rule has its own id, a range in order, a source and a mark', () => {
  expect(SIZING_RULES).toHaveLength(7);
  expect(new Set(SIZING_RULES.map((rule) => rule.id)).size).toBe(7);
  for (const { low, high, source, mark } of SIZING_RULES) {
    expect(low).toBeLessThanOrEqual(high);
    expect(source.length).toBeGreaterThan(8);
    expect(mark.length).toBeGreaterThan(5);
  }
});
