// The short form of the soak of the page: sixty random acts. The long form is `npm run soak -- page`.
import { expect, test } from 'vitest';
import { soakPage } from '../soak/page-soak.ts';

test('sixty random acts leave the console silent, the figures whole and the sheet kept', async () => {
  const soak = await soakPage({ minutes: 1.5, acts: 60 }, 2026);
  expect(soak.faults).toEqual([]);
  expect(soak.looks).toBeGreaterThan(3);
  expect(Object.keys(soak.counts).length).toBeGreaterThan(10);
});
