// Lines for a batch, faults among them, and its answers by the id of their line.
import { expect } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';

export const BATCH_DESIGN = EXAMPLES[2]!.design;

export const BATCH_LINES = [
  JSON.stringify({ id: 'a', design: BATCH_DESIGN, climate: 'tucson' }),
  'not json',
  '',
  JSON.stringify({ id: 'b', design: { ...BATCH_DESIGN, house: { ...BATCH_DESIGN.house, storeys: 9 } } }),
  JSON.stringify({ id: 'c', design: BATCH_DESIGN, climate: 'atlantis' }),
  JSON.stringify({ id: 'd', design: BATCH_DESIGN, weather: 'x' }),
  JSON.stringify([BATCH_DESIGN]),
  JSON.stringify({ design: 'modest' }),
];

/** What a batch wrote of these lines: an answer each, but for the empty one. */
export function answersById(written: string): Map<unknown, Record<string, unknown>> {
  const rows = written
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
  expect(rows).toHaveLength(7);
  return new Map(rows.map((row) => [row.id, row]));
}
