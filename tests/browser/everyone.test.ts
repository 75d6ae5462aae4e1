// The page for everyone: axe finds nothing against WCAG 2.2 AA in any of its states; keyboard, zoom, reduced motion.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sheet = onePage(served);

/**
 * On a wide screen and as narrow as a laptop at 400 % zoom, in light and in dark: every rule in each width and each scheme,
 * in all four the colours.
 */
async function violationsOfAllLooks(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const [width, colorScheme, rules] of [
    [1280, 'light', 'all'],
    [1280, 'dark', 'colours'],
    [320, 'dark', 'all'],
    [320, 'light', 'colours'],
  ] as const) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    const lines = await violations(page, 'html', rules);
    found.push(...lines.map((line) => `${colorScheme}, ${width} px: ${line}`));
  }
  return found;
}

// WCAG 2.2, 1.4.10 Reflow: content stands in 320 CSS pixels without scrolling sideways. A laptop's screen at 200 % zoom
// is 640 pixels wide.
async function expectReflow(page: Page): Promise<void> {
  for (const width of [640, 390, 320]) {
    await page.setViewportSize({ width, height: 700 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  }
}

test('with every fold open axe finds nothing, light and dark, wide and narrow, and nothing is wider than the screen', async () => {
  const { page } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  await page.waitForSelector('[data-hotter="shift"]');
  await page.waitForSelector('.ask-form');
  // Left until somebody looks, and looked at now.
  await page.waitForSelector('[data-how-sure="new"]');
  expect(await page.locator('.how-sure li').count()).toBe(4);
  expect(await violationsOfAllLooks(page)).toEqual([]);
  await expectReflow(page);
});

test('axe finds nothing while an hour is shown and versions are compared', async () => {
  const { page } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.click('.version-keep button');
  await page.fill('input[data-path="glass.tiltDeg"]', '70');
  await page.click('.version-keep button');
  for (const box of await page.locator('.version-check input').all()) await box.check();
  await page.waitForSelector('.compare .is-best');
  await page.click('text=Hottest hour');
  expect(await violations(page)).toEqual([]);
});

test('in the report axe finds nothing, light and dark, wide and narrow, and nothing is wider than the screen', async () => {
  const { page } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.click('.version-keep button');
  await page.selectOption('.head-example select', 'modest');
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper-what-we-tried td');
  expect(await violationsOfAllLooks(page)).toEqual([]);
  await expectReflow(page);
});

test('on a phone in the dark nothing is wider than the screen', async () => {
  const { page, complaints } = await sheet();
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize({ width: 390, height: 844 });
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);
  expect(complaints).toEqual([]);
});

test('the keyboard alone reaches a number, a handle and an hour', async () => {
  const { page } = await sheet();
  const before = await settledFigure(page, 'house-overheated');
  await page.focus('input[data-path="glass.value"]');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('20');
  expect(await settledFigure(page, 'house-overheated')).not.toBe(before);
  await page.focus('.map-field');
  // Whatever hour was looked at before on this page.
  await page.keyboard.press('Escape');
  await page.keyboard.press('ArrowRight');
  expect(await page.textContent('.hour-words')).toContain('2 January');
  expect(await page.getAttribute('.map-field', 'aria-valuetext')).toContain('°C');
  await page.keyboard.press('Escape');
  expect(await page.textContent('.hour-words')).toContain('solstices');
});

/** What can have the focus and, given it, is not in sight with the whole ring around it. */
const cutRings = (page: Page) =>
  page.evaluate(() => {
    const bar = document.querySelector('.figure-bar')!;
    const all = document.querySelectorAll<HTMLElement>(
      'a[href], button:not(:disabled), input, select, summary, .map-field',
    );
    return [...all].flatMap((element) => {
      if (element.getClientRects().length === 0) return [];
      element.focus({ focusVisible: true } as FocusOptions);
      if (document.activeElement !== element) return [];
      // A chip's ring is around its words.
      const ringed = [element, element.nextElementSibling].find(
        (one) => one && getComputedStyle(one).outlineStyle !== 'none',
      );
      const name = `${element.tagName} ${element.ariaLabel ?? element.dataset.path ?? element.textContent}`;
      if (!ringed) return [`${name}: no ring`];
      const { outlineWidth, outlineOffset } = getComputedStyle(ringed);
      const wide = Number.parseFloat(outlineWidth) + Number.parseFloat(outlineOffset) - 0.5;
      const box = ringed.getBoundingClientRect();
      const isWithin = (left: number, top: number, right: number, bottom: number) =>
        box.left - wide >= left &&
        box.top - wide >= top &&
        box.right + wide <= right &&
        box.bottom + wide <= bottom;
      const foot = getComputedStyle(bar).display === 'none' ? innerHeight : bar.getBoundingClientRect().top;
      if (!isWithin(0, 0, innerWidth, foot)) return [`${name}: out of sight`];
      for (let at = ringed.parentElement; at && at !== document.body; at = at.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(at);
        if (overflowX === 'visible' && overflowY === 'visible') continue;
        const { left, top } = at.getBoundingClientRect();
        const [x, y] = [left + at.clientLeft, top + at.clientTop];
        if (!isWithin(x, y, x + at.clientWidth, y + at.clientHeight))
          return [`${name}: cut by ${at.className}`];
      }
      return [];
    });
  });

test('whatever has the focus is in sight with the whole ring around it', async () => {
  const { page } = await sheet();
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const [width, height] of [
    [1280, 800],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    expect(await cutRings(page), `${width} px`).toEqual([]);
  }
  await page.emulateMedia({ reducedMotion: null });
});

test('numbers change units both ways and stay the same house; lengths are told and taken in feet and inches', async () => {
  const { page } = await sheet();
  const DEPTH = 'input[data-path="sunspace.depthM"]';
  const before = await settledFigure(page, 'house-overheated');
  const inUnits = (words: RegExp) => page.locator('label.chip', { hasText: words }).click();
  const shows = (text: string) =>
    page.waitForFunction(
      ([field, wanted]) => document.querySelector<HTMLInputElement>(field!)!.value === wanted,
      [DEPTH, text],
    );
  const type = async (text: string) => {
    await page.focus(DEPTH);
    await page.keyboard.press('Control+A');
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };
  await inUnits(/^US$/);
  // 2.4 m = 94.488 in
  await shows('7 ft 10½ in');
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  // Typed as it stands there it is the number it was, and no step of undo.
  await type('7 ft 10½ in');
  expect(await page.locator('.head-tools >> text=Undo').isDisabled()).toBe(true);
  await inUnits(/^metric$/);
  await shows('2.4');
  await inUnits(/^US$/);
  await type('6\' 4"');
  await shows('6 ft 4 in');
  await page.keyboard.press('Alt+ArrowUp');
  await shows('6 ft 5 in');
  await type('10');
  await shows('10 ft');
  await settledFigure(page, 'house-overheated');
  await inUnits(/^metric$/);
  // 10 ft = 3.048 m exactly.
  await shows('3.05');
});

test('in the south the sun is north and the seasons are turned', async () => {
  const { page } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.selectOption('select[data-path="climate"]', 'southern-chile');
  await page.waitForSelector('.head-place small:has-text("S")');
  await settledFigure(page, 'house-overheated');
  const words = (await page.getAttribute('.section-drawing svg', 'aria-label'))!;
  expect(words).toContain('north to the right');
  expect(words).toMatch(/21 December the sun stands 7\d°/);
  expect(await page.textContent('.section-drawing')).toContain('north →');
});
