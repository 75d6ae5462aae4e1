// Any place by its name on the page: nothing is fetched before it is asked for; keys choose; the normals say what they rest
// on, take a correction by hand and make a year that carries their credits.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { weatherKept } from './kept-in-browser.ts';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');

test('a place is searched, looked up, corrected and stood in', async () => {
  const { page, complaints, close } = await openPage(served, {
    left: 'modest',
    viewport: { width: 390, height: 844 },
    ranges: 'by itself',
  });
  const fetched: string[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('.bin')) fetched.push(request.url().replace(/^.*\//, '').replace(/-.*$/, ''));
  });
  await settledFigure(page, 'house-overheated');
  await page.click('#climate > summary');
  const field = page.locator('[data-place-search]');
  await field.waitFor();
  await page.waitForSelector('.world-map .world-land');
  expect(fetched).toEqual([]);

  // by keys: the second of one name
  await field.fill('santa fe');
  await page.waitForSelector('.place-list [role="option"]:has-text("New Mexico")');
  await field.press('ArrowDown');
  await field.press('ArrowUp');
  await field.press('Escape');
  expect(await page.locator('.place-list').isVisible()).toBe(false);
  expect(fetched).toEqual(['places']);
  await field.fill('95, 10');
  await page.waitForSelector('.place-words:has-text("−90 to 90")');
  await field.fill('དཀར་ཆག');
  await page.waitForSelector('.place-words:has-text("No such place")');
  expect(fetched).toEqual(['places', 'scripts']);
  // a climate that comes with the page lies near and is offered with its distance
  await field.fill('boulder, colorado');
  await page.waitForSelector('.place-list [role="option"]:has-text("measured climate of the page")');
  expect(await violations(page)).toEqual([]);
  await field.fill('thimphu');
  await page.waitForSelector('.place-list [role="option"]:has-text("Bhutan")');
  await field.press('Enter');

  // what it rests on, and what is asked
  const form = page.locator('.normals-form');
  await form.locator('.place-ground h4:has-text("looked up, not measured there")').waitFor();
  expect(fetched).toEqual(['places', 'scripts', 'normals']);
  expect(await form.locator('.place-stations tbody tr').count()).toBe(8);
  expect(await form.textContent()).toContain('too far to trust');
  await form.locator('[data-exposure]').selectOption('sheltered');
  await page.waitForFunction(
    () => document.querySelector<HTMLInputElement>('[data-normal="windSpeed 0"]')?.value === '2',
  );
  expect(await violations(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.fill('[data-normal="meanDailyHighC 6"]', '25');
  await page.click('text=Make the year');
  await page.waitForSelector('.glance h3:has-text("Thimphu")');
  const foot = await page.textContent('.sheet-foot');
  for (const words of [
    'not measured there',
    'corrected by hand',
    'Deutscher Wetterdienst',
    'NASA',
    'GeoNames',
  ])
    expect(foot).toContain(words);
  await weatherKept(page);

  // its days are drawn: how sure the figures are comes from several made years
  await page.waitForSelector('[data-how-sure="new"]', { state: 'attached' });
  expect(await page.textContent('[data-how-sure]')).toContain('Drawn 5 times from the same normals');
  await page.click('.how-sure summary');
  await page.uncheck('[data-how-sure-when]');
  await page.click('.how-sure summary');

  // what is kept here is offered again, and touch chooses it
  await field.fill('paro, bhutan');
  await page.waitForSelector('.place-list [role="option"]:has-text("file kept here")');
  await field.blur();
  expect(await page.locator('.place-list').isVisible()).toBe(false);
  await field.click();
  await page.locator('.place-list [role="option"]:has-text("file kept here")').first().click();
  await page.waitForSelector('.sheet-foot:has-text("Thimphu")');

  // in US units nothing of the place is told in kilometres, and heat may be told in therms
  await page.locator('label.chip', { hasText: /^US, therms$/ }).click();
  await field.fill('boulder, colorado');
  await page.waitForSelector('.place-list [role="option"]:has-text("miles")');
  await field.press('Enter');
  await form.locator('.place-ground h4:has-text("Boulder")').waitFor();
  expect(await form.locator('.place-ground').textContent()).not.toMatch(/\d\s(km|m|m\/s|K)\b/);
  expect(await page.textContent('[data-figure="heating"]')).toMatch(/therms.*kBtu\/ft².*kBtu\/h/);

  // several files of actual years at once, and in how many of them the house stays within what is allowed
  await page.setInputFiles(
    '.keep-tools input[type="file"]',
    [2015, 2018].map((year) => ({
      name: `denver-${year}.txt`,
      mimeType: 'text/plain',
      buffer: Buffer.from(stamped(year)),
    })),
  );
  await page.waitForSelector('[data-actual-years="2"]');
  await page.click('[data-act="actual-years"]');
  await page.waitForSelector('[data-actual-years] .chart-sentence:has-text("the rooms stay")');
  expect(await page.locator('[data-actual-years] tbody th').allTextContents()).toEqual(['2015', '2018']);
  expect(await page.textContent('[data-actual-years] .chart-sentence')).toMatch(
    /In [012] of 2 years .* Back-up heat is \d+ therms/,
  );
  expect(await violations(page, '[data-actual-years]')).toEqual([]);

  // among the five answers a place that is named is stood in with no further act
  await page.evaluate(() => {
    location.hash = '#own';
  });
  const own = page.locator('.start-view [data-place-search]');
  await own.fill('santa fe, new mexico');
  // the key may come before the list does
  await own.press('Enter');
  await page.waitForSelector('[data-looked-up]:has-text("Santa Fe")');
  expect(await violations(page, '.start-view')).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.click('[data-start="go"]');
  await page.waitForSelector('.sheet:not([hidden])');
  await page.waitForSelector('.sheet-foot:has-text("Santa Fe")');
  await settledFigure(page, 'heating');
  expect(complaints).toEqual([]);
  await close();
});

/** Denver's hours stamped with one calendar year; the id is that of another file. */
function stamped(year: number): string {
  return readFileSync(resolve(import.meta.dirname, '../../climates/denver.txt'), 'utf8')
    .replace(/^month years: .*$/m, `month years: ${new Array(12).fill(year).join(' ')}`)
    .replace(/^id: .*$/m, `id: denver-${year}`);
}
