// Questions on real workers in a real browser: whole maps, a worker that dies untold, stopping.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenPool, openPool } from './served-pool.ts';

let open: OpenPool;
beforeAll(async () => {
  open = await openPool();
});
afterAll(() => open.close());

test('a map comes whole from two workers, with no complaint, and the same when one of them dies on the way', async () => {
  const whole = await open.page.evaluate(() => window.pool.map('modest', 5, true, 2));
  expect(whole.runs).toBe(25);
  expect(whole.overheatedHours).not.toContain(null);
  expect(whole.firstMs).toBeGreaterThan(0);
  expect(whole.firstMs).toBeLessThan(whole.allMs);
  const wounded = await open.page.evaluate(() => window.pool.map('modest', 5, true, 2, 6));
  expect(wounded.overheatedHours).toEqual(whole.overheatedHours);
  expect(wounded.runs).toBe(25);
  expect(open.complaints).toEqual([]);
});

test('stopping leaves no run behind', async () => {
  expect(await open.page.evaluate(() => window.pool.stopped('modest'))).toEqual({
    after: 0,
    busy: 0,
    name: 'AbortError',
  });
});
