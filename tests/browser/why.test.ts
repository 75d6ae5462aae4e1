// A click on a headline figure leads to its reasons: the hours behind it, the flows in them, the change that moves it.
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');

test('every headline figure has its reasons, and one change that was run', async () => {
  const { page, complaints, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  const figures = await page
    .locator('[data-figure]')
    .evaluateAll((all) => all.map((element) => element.getAttribute('data-figure')!));
  expect(figures).toHaveLength(10);
  for (const figure of figures) {
    await page.click(`[data-figure="${figure}"]`);
    await page.waitForFunction(
      (label) => document.querySelector('#why-title')?.textContent?.includes(label),
      (await page.textContent(`[data-figure="${figure}"] .figure-label`))!,
    );
    await page.waitForSelector('[data-why="told"]');
    const text = (await page.textContent('.why-note'))!;
    expect(text, figure).toMatch(/Behind it stands?|No hour of the year/);
    expect(text, figure).toMatch(/single changes that were run|run for the rooms only/);
    expect(text, figure).not.toMatch(/undefined|NaN/);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('why-title');
  }
  await page.click('[data-figure="house-overheated"]');
  await page.waitForSelector('text=hours above the limit');
  await page.waitForSelector('[data-why="told"]');
  // The leaning example: the adviser's own remedies are among the changes, and one of them takes most hours away.
  const best = (await page.textContent('.why-note'))!.match(
    /one moves it most: .+ That takes it from (\d+) hours to (no|\d+) hours/,
  );
  const [from, to] = best!.slice(1).map((said) => (said === 'no' ? 0 : Number(said))) as [number, number];
  const shown = Number(
    (await page.textContent('[data-figure="house-overheated"] .figure-number'))!.replace(/\D/g, ''),
  );
  expect(Math.abs(from - shown)).toBeLessThanOrEqual(25); // hours above a thousand are said to the next fifty
  expect(to).toBeLessThan(from / 2);
  expect(await violations(page)).toEqual([]);
  await page.click('.why-note button');
  expect(await page.locator('.why-note').count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-figure'))).toBe(
    'house-overheated',
  );
  expect(complaints).toEqual([]);
  await close();
});
