import { describe, expect, it } from 'vitest';
import { checksMarkdown, checksOf } from './published/checks-page.ts';
import type { Row } from './published/verdict.ts';

const row = (source: string, ours: number, changes: Partial<Row> = {}): Row =>
  ({
    source,
    case: 'c',
    quantity: 'q',
    reference: 1,
    ours,
    allowed: 0.1,
    unit: 'm',
    mark: 'document',
    ...changes,
  }) as Row;

describe('the checks in short', () => {
  const checks = checksOf([
    row('Beta', 1),
    row('Alpha, part one', 1.05),
    row('Alpha, part two', 2, { mark: 'memory' }),
    row('Alpha, part two', 1, { mark: 'memory' }),
  ]);

  it('counts by source and tells parts of one source as one', () => {
    expect(checks.total).toBe(4);
    expect(checks.sources).toEqual([
      { source: 'Alpha', checks: 3, pass: 2, note: 0, fail: 1, marks: 'memory, document' },
      { source: 'Beta', checks: 1, pass: 1, note: 0, fail: 0, marks: 'document' },
    ]);
  });

  it('lists what is no plain pass, and hides no failure', () => {
    expect(checks.odd).toHaveLength(1);
    expect(checksMarkdown(checks)).toContain('| Alpha, part two | c | q | 1 m | 2 m | FAIL |');
    expect(checksMarkdown(checksOf([row('Beta', 1)]))).toContain('None.');
  });
});
