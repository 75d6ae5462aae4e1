import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { climateCommand } from '../../src/cli/climate.ts';
import { climatesCommand } from '../../src/cli/climates.ts';
import { examplesCommand } from '../../src/cli/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { faultsOf, outputOf } from './run-command.ts';

describe('what is bundled', () => {
  it('lists the bundled climates, an id and a line each', async () => {
    const lines = (await outputOf(climatesCommand)).split('\n');
    expect(lines).toHaveLength(14);
    for (const line of lines) expect(line).toMatch(/^[a-z-]+ {2,}\S/);
  });

  it('lists the examples and prints each as a design that passes its own check', async () => {
    const ids = (await outputOf(examplesCommand)).split('\n').map((line) => line.split(' ')[0]!);
    expect(ids).toEqual([
      'leaning',
      'closed',
      'modest',
      'divided',
      'leaning-stove',
      'closed-stove',
      'modest-stove',
    ]);
    for (const id of ids) {
      const data: unknown = JSON.parse(await outputOf(examplesCommand, id));
      expect(parseDesign(data).ok).toBe(true);
    }
  });

  it('names the examples there are when asked for another', async () => {
    expect(await faultsOf(examplesCommand, 'palace')).toEqual([
      'examples: no example palace; allowed: leaning, closed, modest, divided, leaning-stove, closed-stove, modest-stove',
    ]);
  });
});

describe('a climate at a glance', () => {
  it('prints twelve months and the year of a bundled climate', async () => {
    const output = await outputOf(climateCommand, 'denver');
    for (const month of ['January', 'June', 'December']) expect(output).toContain(`\n${month}`);
    expect(output).toMatch(/\nYear +\d/);
  });

  it('gives the same as JSON, every month with its sums', async () => {
    const data = JSON.parse(await outputOf(climateCommand, 'southern-chile', '--json'));
    expect(data.site.latitudeDeg).toBeLessThan(0);
    expect(data.months).toHaveLength(12);
    expect(data.months[6].meanC).toBeLessThan(data.months[0].meanC);
    expect(data.year.globalKWh).toBeGreaterThan(0);
  });

  it('refuses what is neither a file nor a climate, and hints out of range', async () => {
    expect((await faultsOf(climateCommand, 'atlantis'))[0]).toContain('denver, alamosa');
    const readable = import.meta.filename;
    expect(await faultsOf(climateCommand, readable, '--latitude', '95')).toEqual([
      '--latitude: 95; allowed: -90 to 90 degrees',
    ]);
  });

  it('refuses a file that holds no weather', async () => {
    expect((await faultsOf(climateCommand, import.meta.filename))[0]).toContain('expected');
  });
});

describe('doubts about a weather file', () => {
  it('warns of the file whose clock is an hour out, in words and in JSON, and says what it does to the answer', async () => {
    const file = join(import.meta.dirname, '../data/weather/702610TYA.CSV.gz');
    const text = await outputOf(climateCommand, file);
    expect(text).toContain('Do not use it yet:');
    expect(text).toContain('60 minutes');
    const { doubts } = JSON.parse(await outputOf(climateCommand, file, '--json'));
    expect(
      doubts.some(({ id, weight }: { id: string; weight: string }) => id === 'clock' && weight === 'wrong'),
    ).toBe(true);
  });

  it('has none that weigh about a good file', async () => {
    const { doubts } = JSON.parse(await outputOf(climateCommand, 'santa-fe', '--json'));
    expect(doubts.filter(({ weight }: { weight: string }) => weight !== 'look')).toEqual([]);
  });
});
