import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import listed from '../src/report/checks-listed.json' with { type: 'json' };
import { CHECKS, checksInShort, type ListedChecks } from '../src/report/trust.ts';
import errors from '../src/report/what-errors-do.json' with { type: 'json' };
import { checksMarkdown } from './published/checks-markdown.ts';
import { checksOf } from './published/checks-page.ts';
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
      { source: 'Alpha', checks: 3, pass: 2, note: 0, fail: 1, marks: 'memory, document', use: 'a run' },
      { source: 'Beta', checks: 1, pass: 1, note: 0, fail: 0, marks: 'document', use: 'a run' },
    ]);
  });

  const none = { says: '', figures: [], houses: [] };

  it('lists what is no plain pass, and hides no failure', () => {
    expect(checks.listed.odd).toHaveLength(1);
    const markdown = (made: typeof checks) => checksMarkdown(made, made.listed, none);
    expect(markdown(checks)).toContain('| Alpha | part two: c | q | 1 m | 2 m | FAIL |');
    expect(markdown(checksOf([row('Beta', 1)]))).toContain('None.');
    expect(checksInShort(checks)).toContain('1 fail');
  });

  it('lists few rows each, and many by the one nearest to its limit', () => {
    const many = checksOf(Array.from({ length: 20 }, (_, i) => row('Gamma', 1 + i / 250)));
    expect(many.listed.sources[0]!.lines).toEqual([['c', 'q', '1 m', '1.076 m', 'pass', 20]]);
    const few = checksOf(Array.from({ length: 8 }, () => row('Gamma', 1)));
    expect(few.listed.sources[0]!.lines).toHaveLength(8);
    const missed = checksOf([...Array.from({ length: 20 }, () => row('Gamma', 1.09)), row('Gamma', 3)]);
    expect(missed.listed.sources[0]!.lines[0]).toEqual(['c', 'q', '1 m', '3 m', 'FAIL', 21]);
  });
});

describe('what does not count as an outside check', () => {
  const checks = checksOf([
    row('Alpha', 1),
    row('Beta', 1, { use: 'reference only' }),
    row('Gamma', 1, { mark: 'practice' }),
    row('Ours', 1, { own: true }),
  ]);

  it('keeps our own comparisons in a table of their own', () => {
    expect(checks.total).toBe(3);
    expect(checks.sources.map(({ source }) => source)).toEqual(['Alpha', 'Beta', 'Gamma']);
    expect(checks.listed.own).toHaveLength(1);
    const markdown = checksMarkdown(checks, checks.listed, { says: '', figures: [], houses: [] });
    expect(markdown).toContain('| Ours | c | q | 1 m | 1 m | pass |');
  });

  it('says what no run uses and what has no source', () => {
    expect(checksInShort(checks)).toContain('2 outside sources');
    expect(checksInShort(checks)).toContain('1 check a formula that no run uses yet. 1 more are held');
    expect(checks.sources.map(({ use }) => use)).toEqual(['a run', 'reference only', 'a run']);
  });
});

describe('docs/checks.md', () => {
  const LISTED = listed as unknown as ListedChecks;

  it('is what the page shows: both are made from the same files', () => {
    // The formatter lines up the columns of tables and escapes what Markdown would read as markup.
    const bare = (text: string) =>
      text
        .replace(/\\(?=[*_|<[])/g, '')
        .replace(/\s+/g, ' ')
        .replace(/-{3,}/g, '---');
    const page = readFileSync(new URL('../docs/checks.md', import.meta.url), 'utf8');
    expect(bare(page)).toBe(bare(checksMarkdown(CHECKS, LISTED, errors)));
  });

  it('stands for every row there is', () => {
    for (const { source, checks } of CHECKS.sources) {
      const lines = LISTED.sources.find((entry) => entry.source === source)!.lines;
      expect(
        lines.reduce((sum, line) => sum + line[5], 0),
        source,
      ).toBe(checks);
    }
  });
});
