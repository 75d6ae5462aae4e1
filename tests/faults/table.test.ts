// docs/faults.md names a test for each of its rows; a row whose test is gone proves nothing.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');
const rows = readFileSync(join(ROOT, 'docs/faults.md'), 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| ') && !/^\| (fault|---)/.test(line))
  .map((line) => line.split('|').slice(1, -1));

test('every row of docs/faults.md names what proves it, and every file named is there', () => {
  expect(rows.length).toBeGreaterThan(35);
  for (const cells of rows) {
    const proof = cells.at(-1)!;
    const files = [...proof.matchAll(/`([^`]+)`/g)].map(([, name]) =>
      name!.includes('/') ? name! : `tests/faults/${name}.test.ts`,
    );
    if (files.length === 0) expect(proof, cells[0]).toMatch(/row above|the soak/);
    for (const file of files) expect(existsSync(join(ROOT, file)), `${cells[0]}: ${file}`).toBe(true);
  }
});
