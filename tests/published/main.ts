// `npm run published`: runs every test of tests/published/ and prints one table of all outside checks, each with
// its source, what was allowed and the verdict. Exit code 1 when a check or any test around it fails. With
// `-- --write` also the files the page and the report read (src/report/checks.json, checks-listed.json,
// what-errors-do.json) and docs/checks.md, which is made from the same.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { readWeather } from '../../src/weather/reader.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';
import { checksMarkdown } from './checks-markdown.ts';
import { checksOf } from './checks-page.ts';
import { tableOf } from './table.ts';
import { judge, type Row } from './verdict.ts';
import { errorTable } from './what-errors-do.ts';

const ROOT = resolve(import.meta.dirname, '../..');

process.exitCode = await main();

async function main(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'daystone-published-'));
  const ledger = join(folder, 'ledger.jsonl');
  try {
    const run = spawnSync(
      process.execPath,
      [join(ROOT, 'node_modules/vitest/vitest.mjs'), 'run', '--project', 'unit', 'tests/published/'],
      { cwd: ROOT, encoding: 'utf8', env: { ...process.env, DAYSTONE_LEDGER: ledger, NO_COLOR: '1' } },
    );
    const rows = existsSync(ledger) ? rowsOf(readFileSync(ledger, 'utf8')) : [];
    const outside = rows.filter((row) => !row.own);
    const own = rows.filter((row) => row.own);
    const count = (verdict: string, among: readonly Row[] = rows) =>
      among.filter((row) => judge(row).verdict === verdict).length;
    const counts = (among: readonly Row[]) =>
      `${count('pass', among)} pass, ${count('note', among)} note, ${count('FAIL', among)} fail`;
    for (const line of tableOf(own)) console.log(line);
    console.log(`\n${own.length} comparisons of our own, no outside checks: ${counts(own)}\n`);
    for (const line of tableOf(outside)) console.log(line);
    console.log(`\n${outside.length} checks: ${counts(outside)}`);
    // A test file that does not load leaves no rows: what is missing must not be written down as all there is.
    const isWhole = run.status === 0 || count('FAIL') > 0;
    if (process.argv.includes('--write') && isWhole) await writePages(rows);
    if (run.status !== 0) console.error(`${run.stdout}\n${run.stderr}`);
    return run.status === 0 && rows.length > 0 && count('FAIL') === 0 ? 0 : 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function writePages(rows: readonly Row[]): Promise<void> {
  const { total, sources, listed } = checksOf(rows);
  const years = new Map<string, TypicalYear>();
  for (const { design } of EXAMPLES) {
    const text = readFileSync(join(ROOT, `climates/${design.climate}.txt`), 'utf8');
    const read = await readWeather(text);
    if (!read.ok) throw new Error(`climates/${design.climate}.txt does not read`);
    years.set(design.climate, read.year);
  }
  const errors = errorTable((id) => years.get(id)!);
  mkdirSync(join(ROOT, 'docs'), { recursive: true });
  const files = {
    'src/report/checks.json': asJson({ total, sources }),
    'src/report/checks-listed.json': asJson(listed),
    'src/report/what-errors-do.json': asJson(errors),
    'docs/checks.md': checksMarkdown({ total, sources }, listed, errors),
  };
  for (const [file, text] of Object.entries(files)) writeFileSync(join(ROOT, file), text);
  const biome = join(ROOT, 'node_modules/@biomejs/biome/bin/biome');
  spawnSync(process.execPath, [biome, 'format', '--write', ...Object.keys(files)], { cwd: ROOT });
}

function asJson(data: unknown): string {
  return `${JSON.stringify(data)}\n`;
}

/** Ledger lines; JSON writes NaN as null, which is turned back so that it fails. */
function rowsOf(text: string): readonly Row[] {
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line, (_, value: unknown) => (value === null ? Number.NaN : value)) as Row);
}
