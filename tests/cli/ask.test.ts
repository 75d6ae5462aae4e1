import { expect, test } from 'vitest';
import { askCommand } from '../../src/cli/ask.ts';
import { questionsCommand } from '../../src/cli/questions.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { faultsOf, outputOf } from './run-command.ts';

test('questions are listed, a line each, and as JSON', async () => {
  const lines = (await outputOf(questionsCommand)).split('\n');
  expect(lines).toHaveLength(QUESTIONS.length);
  expect(lines[0]).toContain('how-much-glass');
  const list = JSON.parse(await outputOf(questionsCommand, '--json'));
  expect(list.map(({ id }: { id: string }) => id)).toEqual(QUESTIONS.map(({ id }) => id));
});

test('an answer as text opens with its finding and closes with its limit, which can be set', async () => {
  const limit = ['--above', '28', '--hours', '50', '--workers', '1'];
  const text = await outputOf(askCommand, 'who-opens-the-vents', 'modest', ...limit);
  expect(text).toContain('above 28 °C');
  expect(text.trimEnd().split('\n').at(-1)).toContain('at most 50 hours above 28 °C');
});

test('what is wrong with the words is said, with what is allowed', async () => {
  expect(await faultsOf(askCommand, 'how-much-gold', 'modest')).toEqual([
    expect.stringContaining('how-much-gold; allowed: how-much-glass, how-much-mass'),
  ]);
  for (const [flag, value, allowed] of [
    ['--above', '99', '22 to 35 °C'],
    ['--hours', '-1', '0 to 8760'],
    ['--criterion', 'mine', 'tm59-3-percent'],
    ['--samples', '3', '64 to 256'],
    ['--map-side', '100', '5 to 41'],
    ['--workers', '0', '1 to 64'],
  ] as const) {
    expect(await faultsOf(askCommand, 'hotter-year', 'modest', `${flag}=${value}`)).toEqual([
      expect.stringMatching(new RegExp(`${flag}: ${value}; allowed: .*${allowed}`)),
    ]);
  }
});
