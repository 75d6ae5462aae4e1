// The first screen of the built page: what it is, whose house, one verdict, the changes that help most; and that nothing
// of an older year stands there as if it were of this one.
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');

test('above the drawing stand what this is, a verdict and the changes that help most; one is tried and taken back', async () => {
  const { page, complaints, close } = await openPage(served, { acts: 'open' });
  await settledFigure(page, 'house-overheated');
  // Of the houses that something helps the one with the fewest changes to try.
  await page.selectOption('.head-example select', 'closed');
  const hot = await settledFigure(page, 'house-overheated');
  const verdict = page.locator('.verdict');
  expect(await verdict.textContent()).toContain('a year in a house that the sun heats');
  expect(await verdict.textContent()).toContain('made-up sample house');
  const line = await page.textContent('.verdict-line');
  expect(line).toMatch(/back-up heat/);
  const bottom = (await verdict.boundingBox())!;
  const drawing = (await page.locator('div.section-drawing').boundingBox())!;
  expect(bottom.y + bottom.height).toBeLessThanOrEqual(drawing.y);
  await page.waitForFunction(
    (said) => document.querySelector('[data-live="verdict"]')?.textContent === said,
    line,
  );

  await page.waitForSelector('.acts li');
  const acts = await page.locator('.acts li b').allTextContents();
  expect(acts.length).toBeGreaterThan(0);
  expect(await violations(page)).toEqual([]);

  // A drag runs them anew; the drawing stays under the hand.
  const top = async () => (await page.locator('div.section-drawing').boundingBox())!.y;
  const before = await top();
  const knob = (await page.locator('[data-handle="glass.tiltDeg"] .handle-knob').boundingBox())!;
  await page.mouse.move(knob.x + 5, knob.y + 5);
  await page.mouse.down();
  await page.mouse.move(knob.x - 30, knob.y + 5, { steps: 4 });
  await page.waitForSelector('.acts-wait');
  expect(await top()).toBe(before);
  await page.mouse.up();
  await page.locator('button', { hasText: /^Undo$/ }).click();
  await page.waitForSelector('.acts li');
  const humid = await settledFigure(page, 'house-humid');
  await page.locator('button[data-act="try"]').last().click();
  const then = [await settledFigure(page, 'house-overheated'), await settledFigure(page, 'house-humid')];
  expect(then).not.toEqual([hot, humid]);
  expect(await page.textContent('.verdict')).not.toContain('sample house');
  await page.click('.notices >> text=Take it back');
  expect(await settledFigure(page, 'house-overheated')).toBe(hot);
  expect(await page.locator('.notices >> text=Take it back').count()).toBe(0);

  // The same changes stand in the report.
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper-what-we-tried td');
  const paper = (await page.textContent('.paper'))!.toLowerCase();
  for (const act of acts) expect(paper).toContain(act.replace(/^(Then|Or else:) /, '').toLowerCase());
  await page.click('text=Back to the sheet');

  // Another place: the verdict and figures of the old one are gone before the new ones come.
  const seen = await page.evaluate(async () => {
    const select = document.querySelector<HTMLSelectElement>('select[data-path="climate"]')!;
    const old = document.querySelector('.verdict-line')!.textContent;
    select.value = 'tucson';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    const lines: string[] = [];
    while (document.querySelector('.figures')!.getAttribute('aria-busy') !== 'false' || lines.length < 2) {
      await new Promise(requestAnimationFrame);
      lines.push(document.querySelector('.verdict-line')!.textContent!);
    }
    // The frame in which the choice is drawn comes first.
    return { old, lines: lines.slice(1) };
  });
  expect(seen.lines).not.toContain(seen.old);
  expect(seen.lines).toContain('Computing the year…');

  await page.selectOption('.head-example select', 'modest');
  await page.click('button[data-act="own"]');
  await page.waitForSelector('.start-view');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('five answers');
  expect(complaints).toEqual([]);
  await close();
});
