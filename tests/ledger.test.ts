// The judge and the table behind `npm run published`: a check that is off must fail and must be seen.
import { expect, test } from 'vitest';
import { tableOf } from './published/table.ts';
import { judge, type Row } from './published/verdict.ts';

const BASE = { source: 'S', case: 'c', quantity: 'q', unit: 'K', mark: 'memory' } as const;

test('an absolute check passes up to what is allowed and fails beyond it and on NaN', () => {
  expect(judge({ ...BASE, reference: 1, ours: 1.25, allowed: 0.25 }).verdict).toBe('pass');
  expect(judge({ ...BASE, reference: 1, ours: 1.26, allowed: 0.25 }).verdict).toBe('FAIL');
  const missed = { ...BASE, reference: 1, allowed: 0.25, noteAllowed: 0.5 };
  expect(judge({ ...missed, ours: 1.4 }).verdict).toBe('note');
  expect(judge({ ...missed, ours: 1.6 }).verdict).toBe('FAIL');
  expect(judge({ ...BASE, reference: 1, ours: Number.NaN, allowed: 0.25 }).verdict).toBe('FAIL');
});

test('a relative check scales with the reference, negative ones too', () => {
  expect(judge({ ...BASE, kind: 'rel', reference: -200, ours: -201, allowed: 0.006 }).verdict).toBe('pass');
  expect(judge({ ...BASE, kind: 'rel', reference: -200, ours: -202, allowed: 0.006 }).verdict).toBe('FAIL');
});

test('a range passes inside, notes what lies close by if told to, and fails beyond', () => {
  const range = { ...BASE, kind: 'range', referenceMin: 2, referenceMax: 3, allowed: 0 } as const;
  expect(judge({ ...range, ours: 2 }).verdict).toBe('pass');
  expect(judge({ ...range, ours: 3.1 }).verdict).toBe('FAIL');
  expect(judge({ ...range, ours: 3.1, noteAllowed: 0.15 }).verdict).toBe('note');
  expect(judge({ ...range, ours: 3.2, noteAllowed: 0.15 }).verdict).toBe('FAIL');
  expect(judge({ ...range, ours: Number.NaN, noteAllowed: 0.15 }).verdict).toBe('FAIL');
});

test('a band of ours passes where it overlaps what was measured, and is printed whole', () => {
  const base = { ...BASE, kind: 'range', referenceMin: 2, referenceMax: 3, allowed: 0.5, ours: 5 } as const;
  const ours = (low: number, high: number): Row => ({ ...base, band: [low, high] as const });
  expect(judge(ours(3.5, 6.5)).verdict).toBe('pass');
  expect(judge(ours(1, 1.5)).verdict).toBe('pass');
  expect(judge(ours(4, 6)).verdict).toBe('FAIL');
  expect(judge(ours(Number.NaN, 2.5)).verdict).toBe('FAIL');
  const missed: Row = { ...base, band: [4, 6] as const, noteAllowed: 1 };
  expect(judge(missed)).toMatchObject({ verdict: 'note', deviation: 1 });
  expect(tableOf([missed])[1]).toContain('4 to 6 K');
  const measured: Row = { ...missed, mark: 'measured' };
  expect(tableOf([measured])[1]).toContain('2 to 3 ± 0.5 K');
  expect(tableOf([{ ...measured, told: 'over 2 K' }])[1]).toContain('over 2 K');
});

test('many rows fold into one line that shows the worst of them', () => {
  const rows: Row[] = Array.from({ length: 50 }, (_, i) => ({
    ...BASE,
    case: `row ${i}`,
    reference: 0,
    ours: i === 17 ? 0.5 : 0.01,
    allowed: 0.1,
  }));
  const lines = tableOf(rows);
  expect(lines).toHaveLength(2);
  expect(lines[1]).toContain('worst of 50: row 17');
  expect(lines[1]).toMatch(/FAIL$/);
});
