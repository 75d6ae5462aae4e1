// Questions on the built page: asked on real workers, as many as the machine has cores, answered in a sentence with curves,
// stopped, proposals taken and undone, the map's design moved by click.
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Page, Route } from 'playwright-core';
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
/** The page with the house of one zone, whose years take half the time of the others'. */
const openModest = onePage(served, {
  left: 'modest',
  cores: 'all',
  watch: (page) => void page.route(/\/question-engine-[^/]*\.js$/, giveSmallMaps),
});

/** The map of 9 by 9 cells in place of 21: what is drawn of it, and done with it, is the same after a third of the years. */
async function giveSmallMaps(route: Route): Promise<void> {
  const script = readFileSync(join(served.folder, 'assets', basename(route.request().url())), 'utf8');
  const small = script.replace('mapSide:21', 'mapSide:9');
  if (small === script) throw new Error('the script of the questions says nothing of a map of 21 cells');
  await route.fulfill({ contentType: 'text/javascript', body: small });
}

/** Open the panel if need be, ask, and wait for the whole answer. */
async function ask(page: Page, question: string): Promise<void> {
  if ((await page.locator('.ask-panel[open]').count()) === 0) await page.click('.ask-panel > summary');
  await page.selectOption('select[data-ask="question"]', question);
  await page.click('.ask-form button[type="submit"]');
  await page.waitForSelector('.ask-answer[data-answer="whole"]');
}

/** Axe finds nothing in the panel with its answer unfolded, dark and narrow, in light and wide nothing of colours, and the page fits. */
async function expectForEveryone(page: Page): Promise<void> {
  const folds = page.locator('.ask-answer details:not([open]) > summary');
  while ((await folds.count()) > 0) await folds.first().click();
  for (const [colorScheme, width, rules] of [
    ['dark', 390, 'all'],
    ['light', 1280, 'colours'],
  ] as const) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    expect(await violations(page, '.ask-panel', rules), `${colorScheme}, ${width} px`).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
}

test('a question can be stopped; how much glass? is answered in one sentence with its curve, and a proposal can be taken and undone', async () => {
  const { page, complaints } = await openModest();
  await page.click('.ask-panel > summary');
  await page.selectOption('select[data-ask="question"]', 'what-matters-most');
  await page.click('.ask-form button[type="submit"]');
  await page.click('.ask-form button:has-text("Stop")');
  expect(await page.locator('.ask-answer').count()).toBe(0);
  expect(await page.locator('.ask-progress').count()).toBe(0);
  await page.fill('input[data-path="glass.overhangM"]', '0.9');
  expect(await settledFigure(page, 'house-overheated')).toBeGreaterThan(0);
  await page.click('button:has-text("Undo")');
  await settledFigure(page, 'house-overheated');
  await ask(page, 'how-much-glass');
  await expectForEveryone(page);
  expect(await page.locator('.ask-finding').textContent()).toMatch(/\d/);
  expect(await page.locator('.answer-chart polyline').count()).toBeGreaterThanOrEqual(3);
  expect(await page.locator('.answer-chart').first().textContent()).toContain('12 %');
  const proposal = page.locator('button[data-ask="proposal"]');
  expect(await proposal.count()).toBe(1);
  const before = await page.inputValue('input[data-path="glass.value"]');
  await proposal.click();
  expect(await page.inputValue('input[data-path="glass.value"]')).not.toBe(before);
  expect(await page.locator('.ask-old').count()).toBe(1);
  await page.click('button:has-text("Undo")');
  expect(await page.inputValue('input[data-path="glass.value"]')).toBe(before);
  expect(complaints).toEqual([]);
});

test('the map of glass and mass shows lines of equal hours; a click and the keyboard move the design', async () => {
  const { page, complaints } = await openModest();
  await ask(page, 'glass-and-mass-map');
  await expectForEveryone(page);
  expect(await page.locator('.answer-level polyline').count()).toBeGreaterThan(0);
  expect(await page.locator('.answer-limit polyline').count()).toBeGreaterThan(0);
  expect(await page.locator('.answer-map-key').textContent()).toContain('262 h (the limit');
  const glass = () => page.inputValue('input[data-path="glass.value"]');
  const before = await glass();
  await page.locator('.answer-map-field').scrollIntoViewIfNeeded();
  const map = (await page.locator('.answer-map svg').boundingBox())!;
  await page.mouse.click(map.x + map.width * 0.3, map.y + map.height * 0.3);
  const clicked = await glass();
  expect(clicked).not.toBe(before);
  // The marker goes along with the design.
  const within = (await page.locator('.answer-map svg').boundingBox())!;
  const marker = (await page.locator('.answer-drawn circle').boundingBox())!;
  expect(Math.abs(marker.x + marker.width / 2 - within.x - within.width * 0.3)).toBeLessThan(4);
  expect(Math.abs(marker.y + marker.height / 2 - within.y - within.height * 0.3)).toBeLessThan(4);
  const field = page.locator('.answer-map-field');
  await field.focus();
  const said = await field.getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  const cell = (await field.getAttribute('aria-valuetext'))!;
  expect(cell).not.toBe(said);
  expect(await glass()).toBe(clicked);
  await page.keyboard.press('Enter');
  const [, glassM2, massM2] = cell.match(
    /^([\d.]+) m² of glass, ([\d.]+) m² of extra mass: \d+ hours too hot/,
  )!;
  expect(Math.abs(Number(await glass()) - Number(glassM2))).toBeLessThan(0.06);
  const mass = Number(await page.inputValue('input[data-path="mass.areaM2"]'));
  expect(Math.abs(mass - Number(massM2))).toBeLessThan(0.06);
  expect(complaints).toEqual([]);
});

// Of the questions answered by a table alone the one with the fewest runs.
test('who opens the vents is answered in a table, marked old when design, climate or year changes, and told in the units on screen', async () => {
  const { page, complaints } = await openModest();
  await ask(page, 'who-opens-the-vents');
  expect(await page.locator('.ask-finding').textContent()).toMatch(/\d/);
  await expectForEveryone(page);
  const answer = page.locator('.ask-answer');
  const old = page.locator('.ask-old');
  expect(await answer.textContent()).toMatch(/°C/);
  await page.locator('label.chip', { hasText: /^US$/ }).click();
  await page.waitForFunction(() => document.querySelector('.ask-answer')?.textContent?.includes('°F'));
  expect(await answer.textContent()).not.toMatch(/°C/);
  expect(await old.count()).toBe(0);
  await page.evaluate(() => {
    for (const details of document.querySelectorAll<HTMLDetailsElement>('details:not(.how-sure)'))
      details.open = true;
  });
  for (const change of [
    () => page.selectOption('select[data-path="climate"]', 'southern-chile'),
    () => page.selectOption('select[data-hotter="shift"]', { index: 1 }),
    () => page.fill('input[data-path="glass.tiltDeg"]', '70'),
  ]) {
    await change();
    await old.waitFor();
    await page.click('button:has-text("Undo")');
    await old.waitFor({ state: 'detached' });
  }
  expect(complaints).toEqual([]);
});

test('closing the sunspace off by hand gives the house that the answer promised, says what came along, and a row can be drawn', async () => {
  const { page, complaints } = await openModest();
  await page.selectOption('.head-example select', 'leaning');
  await settledFigure(page, 'house-humid');
  await page.selectOption('select[data-path="sunspace.join"]', 'closed');
  expect(await page.locator('.notices').textContent()).toContain('an ordinary door');
  const byHand = await settledFigure(page, 'house-humid');
  await page.click('button:has-text("Undo")');
  const open = await settledFigure(page, 'house-humid');
  expect(open).toBeGreaterThan(2 * byHand);
  await ask(page, 'open-or-closed');
  await expectForEveryone(page);
  const row = page.locator('.ask-answer tbody tr').first();
  expect((await row.locator('td').allTextContents()).map((text) => text.replaceAll(/\D/g, ''))).toContain(
    String(byHand),
  );
  await row.locator('button[data-ask="draw"]').click();
  expect(await settledFigure(page, 'house-humid')).toBe(byHand);
  expect(complaints).toEqual([]);
});
