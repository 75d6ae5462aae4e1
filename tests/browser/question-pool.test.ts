// Questions on real workers in a real browser: whole maps, a worker that dies untold, stopping; and whole years, which are
// the same in a browser and in Node.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readBundle } from '../../src/daystone.ts';
import { yearMarks } from './pool-page/year-marks.ts';
import { openPoolAt } from './served-pool.ts';
import { browserHost, sharedBrowser } from './shared-browser.ts';

const open = await openPoolAt((await browserHost()).poolAddress, await sharedBrowser());

test('a map comes whole from two workers, with no complaint, and the same when one of them dies on the way', async () => {
  const whole = await open.page.evaluate(() => window.pool.map('modest', 3, true, 2));
  // Every cell, and the search for the edge that the curve shares.
  expect(whole.runs).toBeGreaterThanOrEqual(9);
  expect(whole.tooHotHours).toHaveLength(9);
  expect(whole.tooHotHours).not.toContain(null);
  expect(whole.firstPictureAt).toBeGreaterThan(0);
  expect(whole.firstPictureAt).toBeLessThan(whole.runs);
  const wounded = await open.page.evaluate(() => window.pool.map('modest', 3, true, 2, 6));
  expect(wounded.tooHotHours).toEqual(whole.tooHotHours);
  expect(wounded.runs).toBe(whole.runs);
  expect(open.complaints).toEqual([]);
});

test('stopping leaves no run behind', async () => {
  expect(await open.page.evaluate(() => window.pool.stopped('modest'))).toEqual({
    after: 0,
    busy: 0,
    name: 'AbortError',
  });
});

test('a year is the same in a browser and in Node to the last bit, with a stove and without, climate and outcome too', async () => {
  const bundle = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
  if (!bundle.ok) throw new Error('climates/denver.txt does not read');
  const here = yearMarks(bundle.year);
  // A climate alone is some fifteen columns of 8760 hours, a zone as many again.
  expect(here.length).toBe(4);
  for (const { numbers } of here) expect(numbers).toBeGreaterThan(30 * 8760);
  expect(new Set(here.map(({ mark }) => mark)).size).toBe(here.length);
  expect(await open.page.evaluate(() => window.pool.marks())).toEqual(here);
});
