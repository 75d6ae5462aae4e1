// What a person takes along: each file by its button, by keyboard too.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, settledFigure } from './served-page.ts';
import { bytesOf, sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');

async function taken(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.click(`.take-list button[aria-label="${button}"]`),
  ]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

test('hours, months, outcome, design and pictures come as files', async () => {
  const { page, complaints, close } = await openPage(served);
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
  await close();
});
