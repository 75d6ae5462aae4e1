import { describe, expect, it } from 'vitest';
import { parseArguments } from '../../src/cli/arguments.ts';
import type { Command } from '../../src/cli/command.ts';
import { textTable } from '../../src/cli/text-table.ts';

const COMMAND: Command = {
  name: 'cook',
  usage: 'cook DISH [--heat N] [--slow]',
  line: '',
  valued: ['heat'],
  switches: ['slow'],
  positionals: [1, 1],
  run: async () => ({ ok: true, output: '' }),
};

function parsed(...words: string[]) {
  const result = parseArguments(words, COMMAND);
  if (!result.ok) throw new Error(result.faults.join('\n'));
  return result.args;
}
function faults(...words: string[]) {
  const result = parseArguments(words, COMMAND);
  return result.ok ? [] : result.faults;
}

describe('the words of a command line', () => {
  it('takes values after a space or an equals sign, in any order', () => {
    for (const words of [
      ['soup', '--heat', '3', '--slow'],
      ['--slow', '--heat=3', 'soup'],
    ]) {
      const args = parsed(...words);
      expect(args.positionals).toEqual(['soup']);
      expect(args.values.get('heat')).toBe('3');
      expect(args.switches.has('slow')).toBe(true);
    }
  });

  it('takes a negative number as a value and words after -- as they are', () => {
    expect(parsed('soup', '--heat', '-3').values.get('heat')).toBe('-3');
    expect(parsed('--', '--soup').positionals).toEqual(['--soup']);
  });

  it('refuses unknown flags with what is allowed', () => {
    expect(faults('soup', '--fast')).toEqual(['cook: unknown flag --fast; allowed: --heat VALUE, --slow']);
    expect(faults('soup', '-s')[0]).toContain('unknown flag -s');
    expect(faults('soup', '--slow=yes')[0]).toContain('unknown flag --slow=yes');
  });

  it('refuses a flag without value or given twice', () => {
    expect(faults('soup', '--heat')[0]).toContain('--heat has no value');
    expect(faults('soup', '--heat', '--slow')[0]).toContain('--heat has no value');
    expect(faults('soup', '--heat', '1', '--heat', '2')[0]).toContain('given twice');
  });

  it('refuses too few and too many arguments', () => {
    expect(faults()).toEqual(['cook: nothing given; allowed: cook DISH [--heat N] [--slow]']);
    expect(faults('soup', 'stew')[0]).toContain('soup stew given');
  });
});

describe('a table for a terminal', () => {
  it('sets numbers to the right under their heading and words to the left', () => {
    const table = textTable([
      ['', 'heat'],
      ['soup', 3],
      ['long stew', 12.34],
    ]);
    expect(table).toBe('           heat\nsoup          3\nlong stew  12.3');
  });
});
