// The built page as a first visitor meets it: an example with its year computed, nothing in the console, and figures
// that follow the numbers.
import { expect, test } from 'vitest';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('with offline copy');

test('the page opens on an example with its year computed and nothing in the console, and counts the serious cautions', async () => {
  const { page, complaints, close } = await openPage(served);
  expect(await settledFigure(page, 'house-overheated')).toBeGreaterThan(0);
  expect(await page.locator('.map-field canvas').count()).toBe(1);
  // Charts are drawn when they come into sight.
  for (const id of ['hot-week', 'cold-week']) {
    await page.locator(`#${id}`).evaluate((section) => section.scrollIntoView());
    await page.waitForSelector(`#${id} .week-chart canvas`);
  }
  expect(await page.locator('.section-drawing svg polygon').count()).toBeGreaterThan(10);
  expect(complaints).toEqual([]);
  const fold = page.locator('#findings details', { hasText: 'Before you build' });
  const serious = await fold.locator('.is-danger').count();
  expect(serious).toBeGreaterThan(0);
  expect(await fold.locator('summary').textContent()).toContain(
    `for this design, ${serious} of them serious`,
  );
  await page.selectOption('.head-example select', 'modest');
  await settledFigure(page, 'house-overheated');
  const calm = await fold.locator('.is-danger').count();
  expect(await fold.locator('summary').textContent()).toMatch(
    calm === 0 ? /for this design$/ : new RegExp(`${calm} of them serious`),
  );
  await close();
});

test('raising the glazing share raises the overheated hours', async () => {
  const { page, complaints, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  await page.selectOption('select[data-path="sunspace.join"]', 'none');
  await page.selectOption('select[data-path="glass.basis"]', 'share-of-floor');
  await page.fill('input[data-path="glass.value"]', '10');
  const few = await settledFigure(page, 'house-overheated');
  await page.fill('input[data-path="glass.value"]', '30');
  const many = await settledFigure(page, 'house-overheated');
  expect(many).toBeGreaterThan(few + 50);
  expect(complaints).toEqual([]);
  await close();
});

test('on a phone in the dark nothing is wider than the screen', async () => {
  const { page, complaints, close } = await openPage(served, {
    viewport: { width: 390, height: 844 },
    colorScheme: 'dark',
  });
  await settledFigure(page, 'house-overheated');
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);
  expect(complaints).toEqual([]);
  await close();
});
