// A design put into a hotter year by flags: the years differ as they should, and the result names it.
import { expect, it } from 'vitest';
import { yearCommand } from '../../src/cli/year.ts';
import { EXAMPLES, runYear } from '../../src/daystone.ts';
import type { Outcome } from '../../src/outcomes/outcome.ts';
import { bundledYear } from '../weather/bundled-climates.ts';
import { faultsOf, outputOf } from './run-command.ts';

const outcomeOf = async (...words: string[]) =>
  JSON.parse(await outputOf(yearCommand, 'modest', ...words, '--json')) as Outcome;

it('warms the year, names it in the site and among the findings', async () => {
  const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
  const plain = runYear(design, bundledYear(design.climate)).outcome;
  const hotter = await outcomeOf('--hotter', '1.5,3', '--heat-wave', '10,5');
  expect(hotter.zones.house.maxOperativeC).toBeGreaterThan(plain.zones.house.maxOperativeC);
  expect(hotter.heating.energyKWh).toBeLessThan(plain.heating.energyKWh);
  expect(hotter.site.name).toContain('hotter (+1.5 K to');
  expect(hotter.findings.map(({ id }) => id)).toContain('hotter-year');
  expect(plain.findings.map(({ id }) => id)).not.toContain('hotter-year');
  const same = { ...(await outcomeOf('--hotter', '0')), howSure: undefined };
  expect(same).toEqual(JSON.parse(JSON.stringify(plain)));
});

it('refuses what is out of limits by name', async () => {
  expect(await faultsOf(yearCommand, 'modest', '--hotter', '20')).toEqual([
    '--hotter: 20; allowed: warmer in winter -3 to 8 K',
    '--hotter: 20; allowed: warmer in summer -3 to 8 K',
  ]);
  expect(await faultsOf(yearCommand, 'modest', '--hotter', '1,2,3', '--heat-wave', '2.5,4')).toEqual([
    '--hotter: 1,2,3; allowed: K, or WINTER,SUMMER',
    '--heat-wave: 2.5,4; allowed: days of the heat wave 3 to 30, whole',
  ]);
  expect((await faultsOf(yearCommand, 'modest', '--heat-wave', 'long'))[0]).toBe(
    '--heat-wave: long; allowed: DAYS,K',
  );
});
