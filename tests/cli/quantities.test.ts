import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { quantitiesCommand } from '../../src/cli/quantities.ts';
import { faultsOf, outputOf } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'daystone-prices-'));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

test('prices in, money out, in two currencies and either system', async () => {
  const blank = await outputOf(quantitiesCommand, 'modest', '--csv');
  const priced = blank
    .split('\n')
    .map((line) =>
      line
        .replace(/^adobe,Adobe,4,m³,,/, 'adobe,Adobe,4,m³,100,')
        .replace(/^currency,(.*),$/, 'currency,$1,EUR'),
    )
    .join('\n');
  const euro = JSON.parse(
    await outputOf(quantitiesCommand, 'modest', '--json', '--prices', file('eur.csv', priced)),
  );
  const adobe = euro.lines.find(({ item }: { item: string }) => item === 'adobe');
  expect(euro.currency).toBe('EUR');
  expect(adobe).toMatchObject({ quantity: 4, unit: 'm³', price: 100, cost: 400, pieces: 364 });
  expect(euro.cost.total).toBeNull();
  expect(euro.cost.missing).not.toContain('adobe');
  const dollars = file('usd.csv', 'item,unit,price\nadobe,yd³,50\ncurrency,,USD\n');
  const text = await outputOf(quantitiesCommand, 'modest', '--prices', dollars, '--units', 'us');
  // 4 m³ are 5.23 yd³
  expect(text).toMatch(/Adobe +5\.2 +yd³.* 262\n/);
  expect(text).toContain('In money: no price yet for');
});

test('a bad table of prices is named with its line', async () => {
  const bad = file('bad.csv', 'item,unit,price\nadobe,m³,much\n');
  expect(await faultsOf(quantitiesCommand, 'modest', '--prices', bad)).toEqual([
    `${bad}: line 2: price of adobe is much; allowed: a number from 0 to 1000000000`,
  ]);
  expect(await faultsOf(quantitiesCommand, 'modest', '--prices', join(folder, 'gone.csv'))).toEqual([
    `${join(folder, 'gone.csv')}: no such file; allowed: a table of prices`,
  ]);
  expect(await faultsOf(quantitiesCommand, 'modest', '--units', 'cubits')).toEqual([
    '--units: cubits; allowed: metric, us',
  ]);
});
