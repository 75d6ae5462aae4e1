// The first job of a newcomer, as docs/newcomer.md has it, on one page: by mouse and keys, in a counted number of acts.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { newcomer } from './newcomer-steps.ts';
import { openPage } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const WIDTHS = [320, 390, 768, 1024, 1280, 1440, 1920, 2560];

test('a newcomer has an own house, its year and its report in the acts that the docs count; every width shows figures with the drawing, and axe finds nothing', async () => {
  const { page, complaints, close } = await openPage(served, { inputs: 'first' });
  const wrong: string[] = [];
  const { acts, toFirstAnswer, verdict } = await newcomer(page, [], async (part) => {
    for (const [colorScheme, rules] of [
      ['dark', 'all'],
      ['light', 'colours'],
    ] as const) {
      await page.emulateMedia({ colorScheme });
      const found = await violations(page, 'html', rules);
      wrong.push(...found.map((line) => `${part}, ${colorScheme}: ${line}`));
    }
    if (part === 'first screen') {
      // A dozen inputs stand open, the rest behind "more".
      expect(await page.locator('.inputs-first [data-path]').count()).toBe(12);
      expect(await page.textContent('[data-inputs="more"]')).toMatch(/\d+ inputs, \d+ not as usual/);
      await page.fill('[data-inputs="search"]', 'draughty leaky');
      expect(await page.locator('.input-place').count()).toBe(0);
      expect(await page.textContent('.inputs-none')).toContain('No input has these words');
      await page.fill('[data-inputs="search"]', 'leaky');
      expect(
        await page
          .locator('.input-place [data-path]')
          .evaluateAll((all) => all.map((one) => one.dataset.path)),
      ).toEqual(['air.ach50']);
      await page.fill('[data-inputs="search"]', '');
      // A word of the trade is a number.
      await page.click('[data-word="envelope.wallResistance R-20"]');
      expect(await page.inputValue('[data-path="envelope.wallResistance"]')).toBe('3.52');
      await page.keyboard.press('Control+z');
    }
    if (part === 'own house') {
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        const place = await page.evaluate(() => {
          window.scrollTo(0, 0);
          const box = (selector: string) => document.querySelector(selector)!.getBoundingClientRect();
          return {
            wide: document.documentElement.scrollWidth,
            drawing: box('.section-drawing').bottom,
            figures: box('.figures').top,
            bar: getComputedStyle(document.querySelector('.figure-bar')!).display,
          };
        });
        expect(place.wide, `${width} px`).toBe(width);
        // Beside the drawing, or right under it with the bar in sight all the while.
        expect(place.figures - place.drawing, `${width} px`).toBeLessThan(700);
        expect(place.bar === 'none', `${width} px`).toBe(width >= 1180);
      }
      await page.setViewportSize({ width: 1280, height: 900 });
    }
  });
  expect(wrong).toEqual([]);
  expect(verdict).toMatch(/back-up heat/);
  expect(await page.textContent('.report-view')).toContain('My house');
  const told = readFileSync(new URL('../../docs/newcomer.md', import.meta.url), 'utf8');
  expect(told).toContain(`${toFirstAnswer} acts to the first answer`);
  for (const { what } of acts) expect(told).toContain(what);
  expect(complaints).toEqual([]);
  await close();
});
