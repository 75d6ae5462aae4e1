// Shades and covers, and where the heat comes from, on the built page: one added in words takes away hot hours, its details change it, undo takes it off
// again, and a link carries it.
import { expect, test } from 'vitest';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sheet = onePage(served, { left: 'modest', permissions: ['clipboard-read', 'clipboard-write'] });

test('a blind is added in words, changed behind its fold, carried by a link and taken off by undo', async () => {
  const { page, complaints } = await sheet();
  await page.fill('input[data-path="glass.otherShareOfFloor"]', '15');
  const bare = await settledFigure(page, 'house-overheated');
  await page.locator('summary', { hasText: /^Shades and covers$/ }).click();
  await page.click('[data-action="add-cover"]');
  const summary = page.locator('[data-cover="0"] summary');
  expect(await summary.textContent()).toBe(
    'Outside slatted blinds on the east and west sides, drawn by whoever is home when it gets hot',
  );
  const shaded = await settledFigure(page, 'house-overheated');
  expect(shaded).toBeLessThan(bare);
  await summary.click();
  await page.locator('[data-cover-field="on"]').selectOption('all');
  await page.locator('[data-cover-field="habit"]').selectOption('automatic');
  expect(await summary.textContent()).toBe(
    'Outside slatted blinds on all windows, drawn by a motor when it gets hot',
  );
  expect(await settledFigure(page, 'house-overheated')).toBeLessThan(shaded);
  await page.fill('[data-cover-field="aboveC"]', '99');
  expect(await page.getAttribute('[data-cover-field="aboveC"]', 'aria-invalid')).toBe('true');
  await page.fill('[data-cover-field="aboveC"]', '23');
  const cooler = await settledFigure(page, 'house-overheated');
  await page.click('text=Copy link');
  await page.waitForFunction(() => location.hash.startsWith('#design='));
  const link = page.url();
  for (let step = 0; step < 4; step++) await page.click('text=Undo');
  expect(await settledFigure(page, 'house-overheated')).toBe(bare);
  expect(await page.locator('[data-cover]').count()).toBe(0);
  await page.evaluate((hash) => {
    location.hash = '';
    location.hash = hash;
  }, new URL(link).hash);
  await page.waitForSelector('text=from the link');
  expect(await settledFigure(page, 'house-overheated')).toBe(cooler);
  expect(await page.locator('[data-cover]').count()).toBe(1);
  expect(complaints).toEqual([]);
});

test('a wood stove is found by its name, chosen, told by its wood and undone in one step each', async () => {
  const { page, complaints } = await sheet();
  const drawn = await settledFigure(page, 'heating');
  await page.fill('[data-inputs="search"]', 'wood stove');
  await page.locator('[data-heat="kind"]').selectOption('stove');
  const light = await settledFigure(page, 'heating');
  expect(light).toBeGreaterThan(drawn);
  expect(await page.textContent('.figures')).toMatch(
    /kg of beech, [\d.]+ m³ stacked, in \d+ loads on \d+ days/,
  );
  await page.locator('[data-heat="stove"]').selectOption('masonry');
  expect(await settledFigure(page, 'heating')).toBeGreaterThan(light);
  for (let step = 0; step < 2; step++) await page.click('text=Undo');
  expect(await settledFigure(page, 'heating')).toBe(drawn);
  expect(await page.locator('[data-heat="stove"]').count()).toBe(0);
  expect(complaints).toEqual([]);
});
