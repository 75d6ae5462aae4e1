// Questions on the built page: asked on real workers, answered in a sentence with curves, stopped, proposals taken
// and undone, the map's design moved by click.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPage, type ServedPage, servePage, settledFigure } from './served-page.ts';

let served: ServedPage;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

test('how much glass? is answered in one sentence with its curve, and a proposal can be taken and undone', async () => {
  const { page, complaints, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  await page.click('.ask-panel > summary');
  await page.selectOption('select[data-ask="question"]', 'how-much-glass');
  await page.click('.ask-form button[type="submit"]');
  await page.waitForSelector('.ask-answer[data-answer="whole"]', { timeout: 100_000 });
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
  await close();
});

test('a question can be stopped, and the page goes on', async () => {
  const { page, complaints, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  await page.click('.ask-panel > summary');
  await page.selectOption('select[data-ask="question"]', 'what-matters-most');
  await page.click('.ask-form button[type="submit"]');
  await page.click('.ask-form button:has-text("Stop")');
  expect(await page.locator('.ask-answer').count()).toBe(0);
  expect(await page.locator('.ask-progress').count()).toBe(0);
  await page.fill('input[data-path="glass.tiltDeg"]', '70');
  expect(await settledFigure(page, 'house-overheated')).toBeGreaterThan(0);
  expect(complaints).toEqual([]);
  await close();
});

test('the map of glass and mass shows lines of equal hours, and a click moves the design', async () => {
  const { page, complaints, close } = await openPage(served);
  await settledFigure(page, 'house-overheated');
  await page.click('.ask-panel > summary');
  await page.selectOption('select[data-ask="question"]', 'glass-and-mass-map');
  await page.click('.ask-form button[type="submit"]');
  await page.waitForSelector('.ask-answer[data-answer="whole"]', { timeout: 110_000 });
  expect(await page.locator('.answer-level polyline').count()).toBeGreaterThan(0);
  const before = await page.inputValue('input[data-path="glass.value"]');
  const map = (await page.locator('.answer-map svg').boundingBox())!;
  await page.mouse.click(map.x + map.width * 0.3, map.y + map.height * 0.3);
  expect(await page.inputValue('input[data-path="glass.value"]')).not.toBe(before);
  expect(complaints).toEqual([]);
  await close();
});
