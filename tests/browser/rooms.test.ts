// A new user's way with rooms: the leaning house is divided under its drawing, the table beside the plans tells which room is
// hot and which is damp, the question tells what helps, and the first page of the report holds it all. On one page, then
// looked at on a phone in the dark.
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { onePage } from './one-page.ts';
import { pdfPages, requirePdftotext } from './pdf-text.ts';
import { settledFigure } from './served-page.ts';
import { scratchFolder, sharedSite } from './shared-browser.ts';

requirePdftotext();
const served = await sharedSite('plain');
const sheet = onePage(served);
const folder = await scratchFolder();

test('divided in one act, a house tells which room is hot, which is damp, what helps each and what it costs, and prints it', async () => {
  const { page, complaints } = await sheet();
  await page.selectOption('.head-example select', 'leaning');
  const whole = await settledFigure(page, 'house-humid');
  await page.click('[data-act="divide"]');
  const damp = await settledFigure(page, 'house-humid');
  expect(damp).toBeGreaterThan(whole);
  const hot = await settledFigure(page, 'house-overheated');

  // The table marks the worst, with the figures of the head of the page.
  const marked = (column: number) => page.locator(`.room-table tr:has(td:nth-of-type(${column}) strong)`);
  const number = (text: string | null) => Number(text!.replace(/,(?=\d{3})/g, '').match(/\d+/)![0]);
  expect(await marked(1).locator('th').textContent()).toBe('Living room');
  expect(number(await marked(1).locator('td strong').first().textContent())).toBe(Math.round(hot));
  const dampest = marked(4);
  expect(await dampest.locator('th').textContent()).toBe('Bedroom');
  expect(number(await dampest.locator('td:nth-of-type(4)').textContent())).toBe(Math.round(damp));
  expect(await page.textContent('.verdict-line')).toMatch(/Too hot in "Living room".*damp in "Bedroom"/);

  // The hottest hour names each room, in the sentence and in the drawing, and no word lies on the glass.
  await page.click('.hour-tools >> text=Hottest hour');
  await page.waitForSelector('.section-drawing .zone-word');
  expect(await page.textContent('.hour-words')).toMatch(/Living room .*Bedroom .*sunspace/);
  const onGlass = await page.evaluate(() => {
    const glass = [...document.querySelectorAll<SVGPolylineElement>('.section-panel polyline.glass')].flatMap(
      (line) => Array.from({ length: 21 }, (_, i) => line.getPointAtLength((i / 20) * line.getTotalLength())),
    );
    return [...document.querySelectorAll<SVGTextElement>('.section-panel .section-drawing text')]
      .filter((text) => {
        const { x, y, width, height } = text.getBBox();
        return glass.some((at) => at.x > x && at.x < x + width && at.y > y && at.y < y + height);
      })
      .map(({ textContent }) => textContent);
  });
  expect(onGlass).toEqual([]);

  // A room is found by searching, and its card by its name in the table.
  await page.fill('[data-inputs="search"]', 'rooms');
  expect(await page.locator('[data-room="room-2"] summary').isVisible()).toBe(true);
  await page.fill('[data-inputs="search"]', '');
  await page.click('[aria-label="Change Bedroom"]');
  await page.waitForFunction(() => document.activeElement?.closest('[data-room="room-2"]'));

  // What helps, with its price, one click from being drawn.
  await page.click('[data-act="ask-rooms"]');
  await page.click('.ask-form button[type="submit"]');
  await page.waitForSelector('[data-answer="whole"]');
  const told = (await page.textContent('.ask-finding'))!;
  expect(told).toMatch(/hottest room is "Living room": too hot for \d+ hours/);
  expect(told).toMatch(/dampest room is "Bedroom": too damp for \d+ hours .* leaves \d+\. The price: /);
  const help = page.locator('.ask-answer tr', { hasText: 'too damp' });
  const left = number(await help.locator('td').nth(3).textContent());
  await help.locator('[data-ask="draw"]').click();
  await settledFigure(page, 'house-humid');
  expect(number(await page.locator('[data-room-row="room-2"] td').nth(3).textContent())).toBe(left);
  await page.click('.head-tools >> text=Undo');
  await settledFigure(page, 'house-humid');

  // On a phone in the dark nothing is wider than the screen, and what is written can be read.
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  expect(await violations(page, '.section-panel')).toEqual([]);
  await page.emulateMedia({ colorScheme: null });
  await page.setViewportSize({ width: 1280, height: 900 });

  // The first page of the report is enough; the answer to a question may run on to the second.
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper');
  const file = join(folder, 'rooms.pdf');
  await page.pdf({ path: file, format: 'A4', preferCSSPageSize: true });
  const [first, second] = pdfPages(file);
  expect(first).toMatch(/Too hot in "Living room".* damp in "Bedroom"/);
  expect(first).toMatch(/The plan of every storey/);
  expect(`${first} ${second}`).toMatch(/dampest room is "Bedroom".*The price: /);
  expect(complaints).toEqual([]);
});
