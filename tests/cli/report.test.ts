import { describe, expect, it } from 'vitest';
import { reportCommand } from '../../src/cli/report.ts';
import { faultsOf, outputOf } from './run-command.ts';

describe('the report on the command line', () => {
  it('sets three versions side by side, in the weather of the first, in tables whose rows are as wide as their heads, and the answers to questions into the first section', async () => {
    const text = await outputOf(
      reportCommand,
      'modest',
      'closed',
      'leaning',
      '--for',
      'The Quillens',
      '--date',
      '3 May',
      '--units',
      'us',
      '--ask',
      'who-opens-the-vents,hotter-year',
    );
    expect(text).toMatch(/^# Larkspur Bench, the modest one\n/);
    for (const title of [
      'In short',
      'The figures',
      'Beside other versions',
      'What matters most',
      'What else we find',
      'Take care of this too',
      'What we assumed',
    ]) {
      expect(text).toContain(`## ${title}`);
    }
    expect(text).toContain('| For | The Quillens |');
    expect(text).toContain('· 3 May ·');
    expect(text).not.toMatch(/undefined|NaN|null/);
    const tables = text
      .split('\n\n')
      .filter((block) => block.startsWith('|'))
      .map((block) => block.split('\n'));
    expect(tables.length).toBeGreaterThan(10);
    for (const rows of tables) {
      expect(new Set(rows.map((row) => row.split(/(?<!\\)\|/).length)).size, rows[0]).toBe(1);
    }
    const inShort = text.split('\n## ')[1]!;
    for (const question of ['What if nobody opens the vents', 'And in a hotter year'])
      expect(inShort).toMatch(new RegExp(`\\n\\n[^\\n]*${question}[^\\n]*\\?[^\\n]*\\d+ hours[^\\n]*\\n`));
  });

  it('refuses a question nobody knows', async () => {
    expect(await faultsOf(reportCommand, 'modest', '--ask', 'why-me')).toEqual([
      expect.stringMatching(/^--ask: why-me; allowed: how-much-glass, /),
    ]);
  });

  it('looks a place up by its name, unless a climate or a file is named beside it', async () => {
    for (const flag of ['--place', '--weather-place'])
      expect(await faultsOf(reportCommand, 'modest', flag, 'Nowhere at all')).toEqual([
        expect.stringMatching(new RegExp(`^${flag}: Nowhere at all; allowed: a place`)),
      ]);
    // Beside a climate it is looked for nowhere.
    const beside = ['--climate', 'gone', '--place', 'Nowhere at all'];
    expect((await faultsOf(reportCommand, 'modest', ...beside)).join()).toMatch(/^--climate: gone/);
  });

  it('refuses a fifth design and units nobody has', async () => {
    expect((await faultsOf(reportCommand, 'a', 'b', 'c', 'd', 'e'))[0]).toContain('allowed: report DESIGN');
    expect(await faultsOf(reportCommand, 'modest', '--units', 'cubits')).toEqual([
      '--units: cubits; allowed: metric, us, us-therms',
    ]);
    expect(await faultsOf(reportCommand, 'modest', 'gone')).toHaveLength(1);
  });
});
