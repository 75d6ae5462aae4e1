// The page for everyone: axe finds nothing against WCAG 2.2 AA in any of its states; keyboard, zoom, reduced motion.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { openPage, type ServedPage, servePage, settledFigure } from './served-page.ts';

let served: ServedPage;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

test.each([
  ['light', 1280],
  ['dark', 1280],
  ['light', 390],
  ['dark', 390],
] as const)('axe finds nothing, %s at %i px', async (colorScheme, width) => {
  const { page, close } = await openPage(served, { colorScheme, viewport: { width, height: 900 } });
  await settledFigure(page, 'house-overheated');
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  expect(await violations(page)).toEqual([]);
  await close();
});

test('axe finds nothing while an hour is shown and versions are compared', async () => {
  const { page, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  await page.click('.version-keep button');
  await page.fill('input[data-path="glass.tiltDeg"]', '70');
  await page.click('.version-keep button');
  for (const box of await page.locator('.version-check input').all()) await box.check();
  await page.waitForSelector('.compare .is-best');
  await page.click('text=Hottest hour');
  expect(await violations(page)).toEqual([]);
  await close();
});

test.each(['light', 'dark'] as const)('axe finds nothing in the report, %s', async (colorScheme) => {
  const { page, close } = await openPage(served, { colorScheme });
  await settledFigure(page, 'house-overheated');
  await page.click('.version-keep button');
  await page.selectOption('.head-example select', 'modest');
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.paper');
  expect(await violations(page)).toEqual([]);
  await page.setViewportSize({ width: 390, height: 800 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await close();
});

test('the keyboard alone reaches a number, a handle and an hour', async () => {
  const { page, close } = await openPage(served);
  const before = await settledFigure(page, 'house-overheated');
  await page.focus('input[data-path="glass.value"]');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('20');
  expect(await settledFigure(page, 'house-overheated')).not.toBe(before);
  await page.focus('.map-field');
  await page.keyboard.press('ArrowRight');
  expect(await page.textContent('.hour-words')).toContain('2 January');
  expect(await page.getAttribute('.map-field', 'aria-valuetext')).toContain('°C');
  await page.keyboard.press('Escape');
  expect(await page.textContent('.hour-words')).toContain('solstices');
  await close();
});

test('at 200 % zoom on a laptop nothing is wider than the screen', async () => {
  const { page, close } = await openPage(served, {
    viewport: { width: 640, height: 400 },
    deviceScaleFactor: 2,
  });
  await settledFigure(page, 'house-overheated');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(640);
  await close();
});

// WCAG 2.2, 1.4.10 Reflow: content stands in 320 CSS pixels without scrolling sideways.
test('at 320 px nothing is wider than the screen, with every fold open, and in the report', async () => {
  const { page, close } = await openPage(served, { viewport: { width: 320, height: 700 } });
  const width = () => page.evaluate(() => document.documentElement.scrollWidth);
  await settledFigure(page, 'house-overheated');
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  await page.waitForSelector('[data-hotter="shift"]');
  expect(await width()).toBe(320);
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper-what-we-tried td', { timeout: 60_000 });
  expect(await width()).toBe(320);
  expect(await violations(page)).toEqual([]);
  await close();
});

test('numbers change units both ways and stay the same house', async () => {
  const { page, close } = await openPage(served);
  const before = await settledFigure(page, 'house-overheated');
  await page.locator('label.chip', { hasText: /^US$/ }).click();
  expect(await page.inputValue('input[data-path="sunspace.depthM"]')).toBe('7.87');
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  await page.fill('input[data-path="sunspace.depthM"]', '10');
  await settledFigure(page, 'house-overheated');
  await page.locator('label.chip', { hasText: /^metric$/ }).click();
  // 10 ft = 3.048 m exactly.
  expect(await page.inputValue('input[data-path="sunspace.depthM"]')).toBe('3.05');
  await close();
});

test('in the south the sun is north and the seasons are turned', async () => {
  const { page, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  await page.selectOption('select[data-path="climate"]', 'southern-chile');
  await page.waitForSelector('.head-place small:has-text("S")');
  await settledFigure(page, 'house-overheated');
  const words = (await page.getAttribute('.section-drawing svg', 'aria-label'))!;
  expect(words).toContain('north to the right');
  expect(words).toMatch(/21 December the sun stands 7\d°/);
  expect(await page.textContent('.section-drawing')).toContain('north →');
  await close();
});
