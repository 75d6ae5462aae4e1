// The short form of the soak of the page: thirty random acts. The long form is `npm run soak -- page`.
import { expect, test } from 'vitest';
import { soakPage } from '../soak/page-soak.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');

test('thirty random acts leave the console silent, the figures whole and the sheet kept', async () => {
  const soak = await soakPage(served, { acts: 30 }, 2026);
  expect(soak.faults).toEqual([]);
  expect(soak.looks).toBe(3);
  expect(Object.keys(soak.counts).length).toBeGreaterThan(10);
});
