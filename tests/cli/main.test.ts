// The command line as a process: exit codes, and what goes to which stream. The other tests run commands inside.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');

function daystone(...words: string[]) {
  return spawnSync(process.execPath, ['--import', 'tsx', join(ROOT, 'src/cli/main.ts'), ...words], {
    cwd: ROOT,
    encoding: 'utf8',
  });
}

describe('the command line as a process', () => {
  it('prints an outcome and leaves with 0', () => {
    const run = daystone('year', 'modest', '--json');
    expect(run.status).toBe(0);
    expect(run.stderr).toBe('');
    expect(JSON.parse(run.stdout)).toMatchObject({ daystone: expect.any(String), zones: { house: {} } });
  });

  it('prints nothing but the faults and leaves with 2 when the input is wrong', () => {
    for (const words of [['year', 'gone.json'], ['nonsense']]) {
      const run = daystone(...words);
      expect(run.status, words.join(' ')).toBe(2);
      expect(run.stdout).toBe('');
      expect(run.stderr).toMatch(/^[^\n]+; allowed: [^\n]+\n$/);
    }
  });

  it('tells how it is used when asked', () => {
    const run = daystone();
    expect(run.status).toBe(0);
    for (const command of ['year', 'climate', 'climates', 'examples', 'batch'])
      expect(run.stdout).toContain(command);
  });
});
