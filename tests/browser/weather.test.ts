// Weather of the person's own on the page: the columns of a table confirmed, faults where they are, what was filled
// shown afterwards.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { warmTable } from './made-weather.ts';
import { type OpenPage, openPage, type ServedPage, servePage, settledFigure } from './served-page.ts';

let served: ServedPage;

beforeAll(async () => {
  served = await servePage();
});

afterAll(async () => {
  await served?.close();
});

async function giveFile({ page }: OpenPage, name: string, text: string): Promise<void> {
  await page.setInputFiles('input[type="file"]', { name, mimeType: 'text/csv', buffer: Buffer.from(text) });
}

/** The same hours with headers that say nothing. */
const dumbTable = () => warmTable().replace(/^[^\n]*/, 'day of year,clock,a,b,c,d,e');

test.each([
  ['light', 1280],
  ['dark', 390],
] as const)('columns are shown with reasons and changed by hand, %s at %i px', async (colorScheme, width) => {
  const opened = await openPage(served, { colorScheme, viewport: { width, height: 900 } });
  const { page, complaints, close } = opened;
  await settledFigure(page, 'house-overheated');
  await giveFile(opened, 'station.csv', warmTable());
  await page.waitForSelector('.table-question');
  expect(await page.textContent('.table-question')).toContain(
    'reads as air temperature, in °C as its header says',
  );
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('table-question-title');
  expect(await violations(page)).toEqual([]);
  expect(await page.isDisabled('text=Read the table')).toBe(true);
  await page.fill('[data-site="latitude"]', '35');
  await page.fill('[data-site="longitude"]', '-106');
  await page.selectOption('[data-unit="Dry-bulb (C)"]', '°F');
  await page.waitForSelector('text=in °F by choice');
  await page.selectOption('[data-column="Pressure (mbar)"]', '');
  await page.waitForSelector('text=left out by choice');
  await page.selectOption('[data-table="stamp"]', 'end');
  await page.click('text=Read the table');
  await page.waitForSelector('text=The design now stands in');
  const news = (await page.textContent('.notices'))!;
  expect(news).toContain('A stamp is taken as the end of what it covers');
  expect(news).toContain('The table has no pressure');
  expect(await page.locator('.table-question').count()).toBe(0);
  // 8 to 24 °F is far below freezing: no hour in the rooms is too hot.
  expect(await settledFigure(page, 'house-coldest')).toBeLessThan(25);
  expect(complaints).toEqual([]);
  await close();
});

test('a table nobody can guess is refused in place, mended, and then read', async () => {
  const opened = await openPage(served);
  const { page, complaints, close } = opened;
  await settledFigure(page, 'house-overheated');
  await giveFile(opened, 'dumb.csv', dumbTable());
  await page.waitForSelector('.table-question');
  await page.fill('[data-site="latitude"]', '35');
  await page.fill('[data-site="longitude"]', '-106');
  await page.fill('[data-site="name"]', 'Dumb hill');
  await page.click('text=Read the table');
  await page.waitForSelector('.table-question .fault-list');
  expect(await page.textContent('.fault-list')).toContain('a column of the air temperature');
  await page.selectOption('[data-column="day of year"]', 'date');
  await page.selectOption('[data-column="clock"]', 'clock');
  await page.selectOption('[data-column="a"]', 'dryBulb');
  await page.selectOption('[data-column="b"]', 'dewPoint');
  await page.selectOption('[data-column="e"]', 'global');
  // What was typed is still there.
  expect(await page.inputValue('[data-site="name"]')).toBe('Dumb hill');
  await page.click('text=Read the table');
  await page.waitForSelector('text=The design now stands in Dumb hill');
  expect(complaints).toEqual([]);
  await close();
});

test('what waits for an answer can be left, and nothing has changed', async () => {
  const opened = await openPage(served);
  const { page, close } = opened;
  const before = await settledFigure(page, 'house-overheated');
  await giveFile(opened, 'station.csv', warmTable());
  await page.click('text=Leave it');
  expect(await page.locator('.table-question').count()).toBe(0);
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  await close();
});
