// What a person reaches from the sheet, on one page: the reasons of a figure (a click leads to the hours behind it, the flows in
// them, the change that moves it), "how far to trust it" with every source and its rows, and each file to take along.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import checks from '../../src/report/checks.json' with { type: 'json' };
import listed from '../../src/report/checks-listed.json' with { type: 'json' };
import { CHECKS, checksInShort } from '../../src/report/trust.ts';
import { violations } from './axe-violations.ts';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { bytesOf, sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sheet = onePage(served);

test('every headline figure has its reasons, and one change that was run', async () => {
  const { page, complaints } = await sheet();
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
});

test('every source is listed with its rows, and the way back leads to the sheet', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.click('.sheet-foot a[href="#trust"]');
  await page.waitForSelector('.trust-view');
  expect(await page.locator('.trust-source').count()).toBe(checks.sources.length);
  expect(await page.textContent('.trust-view')).toContain(checksInShort(CHECKS));
  const rows = listed.sources.reduce(
    (sum, { lines }) => sum + lines.length,
    listed.odd.length + listed.own.length,
  );
  expect(await page.locator('.check-table tbody tr').count()).toBe(rows);
  await page.locator('.trust-source summary', { hasText: 'EN 673' }).click();
  await page.waitForSelector('.trust-source[open] td');
  expect(await violations(page, 'html', 'every')).toEqual([]);
  await page.setViewportSize({ width: 390, height: 800 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.goBack();
  await page.waitForSelector('.trust-view', { state: 'detached' });
  expect(await page.isVisible('.section-drawing')).toBe(true);
  expect(complaints).toEqual([]);
});

async function taken(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.click(`.take-list button[aria-label="${button}"]`),
  ]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

test('hours, months, outcome, design and pictures come as files', async () => {
  const { page, complaints } = await sheet();
  const hot = await settledFigure(page, 'house-overheated');
  await page.focus('.take-panel > summary');
  await page.keyboard.press('Enter');
  await page.waitForSelector('.take-list');

  const hours = await taken(page, 'Every hour of the year: CSV');
  expect(hours.name).toBe('larkspur-bench-the-leaning-one.hourly.csv');
  const lines = hours.bytes.toString('utf8').trimEnd().split('\n');
  expect(lines).toHaveLength(8761);
  expect(lines[0]).toContain('hour,month,day,hourOfDay,outdoorC,globalWm2,houseAirC');
  const column = lines[0]!.split(',').indexOf('houseOperativeC');
  const counted = lines.slice(1).filter((line) => Number(line.split(',')[column]) > 26).length;

  const months = await taken(page, 'Heat and water by month and cause: CSV');
  expect(months.bytes.toString('utf8')).toContain('design,zone,what,cause,unit,January');

  const outcome = JSON.parse((await taken(page, 'The outcome: JSON')).bytes.toString('utf8'));
  expect(outcome.zones.house.tooHot.hours).toBe(hot);
  // The file is rounded to thousandths of a degree.
  expect(Math.abs(counted - outcome.zones.house.overheatedHours)).toBeLessThanOrEqual(3);
  for (const key of [
    'daystone',
    'design',
    'site',
    'equatorGlass',
    'mass',
    'zones',
    'heating',
    'vents',
    'books',
  ])
    expect(outcome).toHaveProperty(key);
  expect(outcome.findings.length).toBeGreaterThan(5);

  const design = JSON.parse((await taken(page, 'The design: JSON')).bytes.toString('utf8'));
  expect(design.glass.tiltDeg).toBe(60);

  // A browser stops a page that hands out more than ten files at once; the rest is drawn in tests/app/take/.
  expect(await page.locator('.take-list h3 + ul li').count()).toBe(13);
  for (const title of [
    'The section, with its dimensions',
    'The year, hour by hour: rooms',
    'The hottest week',
  ]) {
    const svg = (await taken(page, `${title}: SVG`)).bytes.toString('utf8');
    const root = await page.evaluate((text) => {
      const read = new DOMParser().parseFromString(text, 'image/svg+xml');
      return read.querySelector('parsererror') ? 'broken' : read.documentElement.tagName;
    }, svg);
    expect(root, title).toBe('svg');
  }
  const png = await taken(page, 'The section, with its dimensions: PNG');
  expect(png.name).toBe('larkspur-bench-the-leaning-one.section.png');
  // The signature of a PNG (ISO/IEC 15948, 5.2), then a width of some two thousand dots.
  expect([...png.bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect(png.bytes.readUInt32BE(16)).toBeGreaterThan(1800);
  expect(png.bytes.length).toBeGreaterThan(20_000);
  expect(complaints).toEqual([]);
});
