// Questions on real workers in a real browser: whole maps, a worker that dies untold, stopping.
import { expect, test } from 'vitest';
import { openPoolAt } from './served-pool.ts';
import { browserHost, sharedBrowser } from './shared-browser.ts';

const open = await openPoolAt((await browserHost()).poolAddress, await sharedBrowser());

test('a map comes whole from two workers, with no complaint, and the same when one of them dies on the way', async () => {
  const whole = await open.page.evaluate(() => window.pool.map('modest', 5, true, 2));
  // Every cell, and the search for the edge that the curve shares.
  expect(whole.runs).toBeGreaterThanOrEqual(25);
  expect(whole.tooHotHours).toHaveLength(25);
  expect(whole.tooHotHours).not.toContain(null);
  expect(whole.firstPictureAt).toBeGreaterThan(0);
  expect(whole.firstPictureAt).toBeLessThan(whole.runs);
  const wounded = await open.page.evaluate(() => window.pool.map('modest', 5, true, 2, 6));
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
