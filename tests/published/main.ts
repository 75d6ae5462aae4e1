// `npm run published`: runs every test of tests/published/ and prints one table of all outside checks, each with
// its source, what was allowed and the verdict. Exit code 1 when a check or any test around it fails. With
// `-- --write` also docs/checks.md and the checks by source that the report prints (src/findings/checks.json).
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { checksMarkdown, checksOf } from './checks-page.ts';
import { tableOf } from './table.ts';
import { judge, type Row } from './verdict.ts';

const ROOT = resolve(import.meta.dirname, '../..');

process.exitCode = main();

function main(): number {
  const folder = mkdtempSync(join(tmpdir(), 'daystone-published-'));
  const ledger = join(folder, 'ledger.jsonl');
  try {
    const run = spawnSync(
      process.execPath,
      [join(ROOT, 'node_modules/vitest/vitest.mjs'), 'run', '--project', 'published'],
      { cwd: ROOT, encoding: 'utf8', env: { ...process.env, DAYSTONE_LEDGER: ledger, NO_COLOR: '1' } },
    );
    const rows = existsSync(ledger) ? rowsOf(readFileSync(ledger, 'utf8')) : [];
    for (const line of tableOf(rows)) console.log(line);
    const count = (verdict: string) => rows.filter((row) => judge(row).verdict === verdict).length;
    console.log(
      `\n${rows.length} checks: ${count('pass')} pass, ${count('note')} note, ${count('FAIL')} fail`,
    );
    if (process.argv.includes('--write') && rows.length > 0) writePages(rows);
    if (run.status !== 0) console.error(`${run.stdout}\n${run.stderr}`);
    return run.status === 0 && rows.length > 0 && count('FAIL') === 0 ? 0 : 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function writePages(rows: readonly Row[]): void {
  const checks = checksOf(rows);
  mkdirSync(join(ROOT, 'docs'), { recursive: true });
  writeFileSync(join(ROOT, 'docs/checks.md'), checksMarkdown(checks));
  const { total, sources } = checks;
  writeFileSync(join(ROOT, 'src/findings/checks.json'), `${JSON.stringify({ total, sources }, null, 2)}\n`);
  const biome = join(ROOT, 'node_modules/@biomejs/biome/bin/biome');
  spawnSync(process.execPath, [biome, 'format', '--write', 'docs/checks.md', 'src/findings/checks.json'], {
    cwd: ROOT,
  });
}

/** Ledger lines; JSON writes NaN as null, which is turned back so that it fails. */
function rowsOf(text: string): readonly Row[] {
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line, (_, value: unknown) => (value === null ? Number.NaN : value)) as Row);
}
