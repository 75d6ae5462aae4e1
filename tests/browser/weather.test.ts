// Weather of the person's own on the page: the columns of a table confirmed, faults where they are, what was filled
// shown afterwards; the climate at a glance, in a hotter year, or made from monthly normals.
import { readFileSync } from 'node:fs';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { sheetKept, weatherKept } from './kept-in-browser.ts';
import { warmTable } from './made-weather.ts';
import { onePage } from './one-page.ts';
import { type OpenPage, settledFigure } from './served-page.ts';
import { bytesOf, sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
/** The page with the house whose years take least. */
const sheet = onePage(served, { left: 'modest', permissions: ['clipboard-read', 'clipboard-write'] });

async function giveFile({ page }: OpenPage, name: string, text: string): Promise<void> {
  await page.setInputFiles('input[type="file"]', { name, mimeType: 'text/csv', buffer: Buffer.from(text) });
}

/** The same hours with headers that say nothing. */
const dumbTable = () => warmTable().replace(/^[^\n]*/, 'day of year,clock,a,b,c,d,e');

/** On a wide screen in light, on a phone in dark. */
const LOOKS = [
  ['light', 1280],
  ['dark', 390],
] as const;

/** The page is no wider than its screen, and axe finds nothing in this part of it, in both looks. */
async function expectForEveryone(page: Page, part: string): Promise<void> {
  for (const [colorScheme, width] of LOOKS) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await violations(page, part), `${colorScheme}, ${width} px`).toEqual([]);
  }
}

test('a table can be left unread; its columns are shown with reasons and changed by hand, light and wide, dark and narrow', async () => {
  const opened = await sheet();
  const { page, complaints } = opened;
  const before = await settledFigure(page, 'house-overheated');
  await giveFile(opened, 'station.csv', warmTable());
  await page.click('button:text-is("Leave it")');
  expect(await page.locator('.table-question').count()).toBe(0);
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  await giveFile(opened, 'station.csv', warmTable());
  await page.waitForSelector('.table-question');
  expect(await page.textContent('.table-question')).toContain(
    'reads as air temperature, in °C as its header says',
  );
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('table-question-title');
  await expectForEveryone(page, '.table-question');
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
});

test('a table nobody can guess is refused in place, mended, and then read', async () => {
  const opened = await sheet();
  const { page, complaints } = opened;
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
});

/** A temperate hill, months down: high, low, humidity, sunshine, wind. */
const NORMALS = [4, 6, 10, 14, 18, 22, 25, 24, 20, 14, 8, 5]
  .map((high) => [high, high - 9, 70, (high / 3 + 1).toFixed(1), 3].join('\t'))
  .join('\n');

async function openClimate({ page }: OpenPage): Promise<void> {
  await page.click('.head-tools >> text=Climate');
  await page.waitForSelector('[data-glance]');
}

/** How far the page is scrolled once that no longer changes from frame to frame. */
async function restingScroll(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let [last, still] = [Number.NaN, 0];
    while (still < 20) {
      await new Promise(requestAnimationFrame);
      still = scrollY === last ? still + 1 : 0;
      last = scrollY;
    }
    return Math.round(last);
  });
}

async function pasteNormals({ page }: OpenPage, cell: string, text: string): Promise<void> {
  await page.locator(`[data-normal="${cell}"]`).evaluate((input, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    input.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, text);
}

/** What is scrolled to leaves room for the ring of the focus. */
const ROOM_FOR_RING_PX = 10;

test('the climate at a glance, open for everyone, light and wide, dark and narrow', async () => {
  const opened = await sheet();
  const { page, complaints } = opened;
  await settledFigure(page, 'house-overheated');
  await openClimate(opened);
  const panel = page.locator('.climate-panel');
  await expect
    .poll(() => panel.evaluate((part) => Math.abs(part.getBoundingClientRect().top)), { timeout: 60_000 })
    .toBeLessThan(ROOM_FOR_RING_PX);
  await page.evaluate(() => {
    for (const details of document.querySelectorAll<HTMLDetailsElement>('.climate-panel details'))
      details.open = true;
  });
  expect(await page.locator('.glance-charts svg').count()).toBe(2);
  expect(await page.textContent('.glance')).toContain('April is the cloudiest month');
  // Twelve months and the year, in fourteen rows.
  expect(await page.locator('.glance tbody td').count()).toBe(14 * 13);
  await expectForEveryone(page, '.climate-panel');
  await page.locator('label.chip', { hasText: /^US$/ }).click();
  expect(await page.textContent('.glance')).toContain('°F·d');
  expect(complaints).toEqual([]);
});

test('doubts and notes of a file are told in plain words', async () => {
  const opened = await sheet();
  const { page } = opened;
  await settledFigure(page, 'house-overheated');
  await giveFile(opened, 'station.csv', warmTable());
  await page.waitForSelector('.table-question');
  // At sea level the pressure of 850 hPa cannot be.
  await page.fill('[data-site="latitude"]', '35');
  await page.fill('[data-site="longitude"]', '-106');
  await page.fill('[data-site="elevation"]', '0');
  await page.click('text=Read the table');
  await page.waitForSelector('text=The design now stands in');
  await openClimate(opened);
  await page.waitForSelector('.glance:has-text("The elevation is given as 0 m")');
  const text = (await page.textContent('.glance'))!;
  expect(text).toContain('The elevation is given as 0 m, but the mean pressure of 850 hPa belongs to about');
  expect(text).toContain('Air density and venting are a few per cent off');
  expect(text).toContain('"Dry-bulb (C)" as air temperature in °C');
});

test('a hotter year is named beside every result, undone in one step, and kept in file, link and reload', async () => {
  const opened = await sheet();
  const { page, complaints } = opened;
  const before = await settledFigure(page, 'house-overheated');
  const heatBefore = await settledFigure(page, 'heating');
  await page.click('.version-keep button');
  await openClimate(opened);
  const scrolled = () => page.evaluate(() => Math.round(scrollY));
  await page.locator('[data-hotter="shift"]').scrollIntoViewIfNeeded();
  // The person moves on; the panel stops following what fills above it.
  await page.mouse.wheel(0, 1);
  const place = await restingScroll(page);
  await page.selectOption('[data-hotter="shift"]', 'two');
  await page.waitForSelector('.figures .hotter-mark');
  const hotter = await settledFigure(page, 'house-overheated');
  await page.waitForSelector('.glance[aria-busy="false"]');
  // The panel keeps its pictures meanwhile, so nothing jumps under the hand.
  expect(Math.abs((await scrolled()) - place)).toBeLessThan(150);
  // The limit of what is too hot follows the weather, so of hours there may be as many; heat is needed less.
  expect(hotter).toBeGreaterThanOrEqual(before);
  expect(await settledFigure(page, 'heating')).toBeLessThan(0.9 * heatBefore);
  await page.click('text=Undo');
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  expect(await page.locator('.hotter-mark').count()).toBe(0);
  await page.click('text=Redo');
  await page.check('[data-hotter="wave"]');
  await page.waitForSelector('.figures .hotter-mark:has-text("heat wave of 10 days")');
  const wave = await settledFigure(page, 'house-overheated');
  expect(wave).toBeGreaterThanOrEqual(hotter);
  expect(await page.textContent('.figures .hotter-mark')).toBe(
    'In a hotter year: 2 °C warmer all year, with a heat wave of 10 days, 5 °C hotter',
  );
  expect(await page.textContent('.head-place small')).toContain('hotter year');
  expect(await page.textContent('.sheet-foot')).toContain('hotter (+2.0 K all year; heat wave of 10 days');
  await page.locator('#findings').scrollIntoViewIfNeeded();
  await page.waitForSelector('#findings:has-text("These figures are for a hotter year")');
  await page.click('.version-keep button');
  for (const box of await page.locator('.version-check input').all()) await box.check();
  await page.waitForSelector('.compare .is-best');
  expect(await page.textContent('.compare')).toContain('typical year');
  expect(await page.locator('.compare th .hotter-mark').count()).toBe(1);
  expect(await violations(page)).toEqual([]);
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('text=Save file')]);
  const saved = JSON.parse((await bytesOf(download)).toString('utf8'));
  expect(saved.hotter).toEqual({ winterK: 2, summerK: 2, waveDays: 10, waveK: 5 });
  await page.click('text=Copy link');
  await page.waitForFunction(() => location.hash.startsWith('#design='));
  const hash = new URL(page.url()).hash;
  await sheetKept(page, '"waveK":5');
  await page.evaluate(() => history.replaceState(null, '', location.pathname));
  await page.reload();
  expect(await settledFigure(page, 'house-overheated')).toBe(wave);
  expect(complaints).toEqual([]);
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.paper');
  const paper = (await page.textContent('.paper'))!;
  for (const words of [
    'hotter (+2.0 K all year',
    'The figures of a hotter year',
    'Made hotter',
    'a hotter year, not',
  ])
    expect(paper).toContain(words);
  await page.click('text=Back to the sheet');
  while ((await page.textContent('.head-place small'))!.includes('hotter year'))
    await page.click('text=Undo');
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  await page.evaluate((link) => {
    location.hash = link;
  }, hash);
  await page.waitForSelector('.figures .hotter-mark');
  expect(await settledFigure(page, 'house-overheated')).toBe(wave);
});

test('numbers of one’s own take effect within their limits only', async () => {
  const opened = await sheet();
  const { page } = opened;
  const before = await settledFigure(page, 'house-overheated');
  await openClimate(opened);
  await page.click('text=Numbers of one’s own');
  await page.fill('[data-field="summerK"]', '40');
  expect(await page.getAttribute('[data-field="summerK"]', 'aria-invalid')).toBe('true');
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  await page.fill('[data-field="summerK"]', '4');
  await page.waitForSelector('.figures .hotter-mark:has-text("4 °C warmer in summer")');
  expect(await page.inputValue('[data-hotter="shift"]')).toBe('own');
});

test('twelve normals make a year: refused in their cells, kept while typed, then kept like a file', async () => {
  const opened = await sheet();
  const { page, complaints } = opened;
  await page.setViewportSize({ width: 390, height: 844 });
  await openClimate(opened);
  await page.click('.normals-form > summary');
  expect(await page.textContent('.normals-form')).toContain('heating in the made year came within 12 %');
  await pasteNormals(opened, 'meanDailyHighC 0', NORMALS);
  expect(await page.inputValue('[data-normal="windSpeed 11"]')).toBe('3');
  await page.fill('[data-normal="humidityPercent 4"]', '170');
  expect(await page.getAttribute('[data-normal="humidityPercent 4"]', 'aria-invalid')).toBe('true');
  await page.click('text=Make the year');
  await page.waitForSelector('text=1 cell has no number within the limits');
  await page.fill('[data-normal="humidityPercent 4"]', '70');
  // Too low a high is seen only by the maker.
  await page.fill('[data-normal="meanDailyHighC 6"]', '16.5');
  const form = page.locator('.normals-form');
  await form.locator('[data-site="latitude"]').fill('44');
  await form.locator('[data-site="longitude"]').fill('3');
  await form.locator('[data-site="elevation"]').fill('800');
  await form.locator('[data-site="name"]').fill('Hill farm');
  await page.click('text=Make the year');
  await page.waitForSelector('.normals-form .fault-list');
  expect(await page.textContent('.normals-form .fault-list')).toContain(
    'at least 1 K above the mean daily low',
  );
  expect(await page.getAttribute('[data-normal="meanDailyHighC 6"]', 'aria-invalid')).toBe('true');
  expect(await violations(page, '.climate-panel')).toEqual([]);
  await page.fill('[data-normal="meanDailyHighC 6"]', '25');
  await page.click('text=Make the year');
  await page.waitForSelector('text=The design now stands in Hill farm, made from its monthly normals');
  const made = await settledFigure(page, 'house-overheated');
  await page.waitForSelector('.glance h3:has-text("Hill farm")');
  expect(await page.textContent('.glance')).toContain('This year is made');
  await weatherKept(page);
  await page.reload();
  expect(await settledFigure(page, 'house-overheated')).toBe(made);
  await openClimate(opened);
  await page.click('.normals-form > summary');
  expect(await page.inputValue('[data-normal="meanDailyHighC 6"]')).toBe('25');
  expect(complaints).toEqual([]);
});

test('damaged, foreign and oversized files are each refused by name, and the page goes on', async () => {
  const opened = await sheet();
  const { page, complaints } = opened;
  const before = await settledFigure(page, 'house-overheated');
  const station = gunzipSync(readFileSync(new URL('../data/weather/723170TYA.CSV.gz', import.meta.url)));
  const lines = station.toString('latin1').split('\n');
  const bad: readonly (readonly [string, Buffer, string])[] = [
    ['empty.csv', Buffer.alloc(0), 'the file is empty'],
    ['cut.csv', station.subarray(0, station.length / 2), 'line'],
    ['turned.csv', Buffer.from([...lines.slice(0, 2), ...lines.slice(2).reverse()].join('\n')), 'line'],
    ['semicolons.csv', Buffer.from(lines.join('\n').replaceAll(',', ';')), 'expected'],
    ['binary.csv', Buffer.from(Array.from({ length: 50_000 }, (_, i) => (i * 37) % 256)), 'binary data'],
    ['half.csv.gz', gzipSync(station).subarray(0, 9000), 'damaged or cut-off gzip'],
    ['sheet.xlsx', Buffer.from([0x50, 0x4b, 3, 4, 0, 0]), 'zip archive or spreadsheet'],
  ];
  for (const [name, buffer, cause] of bad) {
    await page.setInputFiles('input[type="file"]', { name, mimeType: 'text/csv', buffer });
    await page.waitForSelector(`.notices .is-trouble:has-text("${name}")`);
    expect(await page.textContent(`.notices .is-trouble:has-text("${name}")`), name).toContain(cause);
  }
  // Made in the page: handed in from outside it would travel byte by byte.
  await page
    .locator('input[type="file"]')
    .first()
    .evaluate((input: HTMLInputElement) => {
      const chosen = new DataTransfer();
      chosen.items.add(new File([new Uint8Array(100_000_000)], 'huge.csv'));
      input.files = chosen.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    });
  await page.waitForSelector('.notices .is-trouble:has-text("huge.csv")');
  expect(await page.textContent('.notices')).toContain('too large');
  expect(await page.locator('.reading').count()).toBe(0);
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  // A mark of byte order and decimal commas are no damage.
  const commas = warmTable()
    .replaceAll(',', ';')
    .replace(/(\d)\.(\d)/g, '$1,$2');
  await giveFile(opened, 'commas.csv', `\uFEFF${commas}`);
  await page.waitForSelector('.table-question');
  expect(await page.textContent('.table-question')).toContain('decimals with a comma');
  expect(complaints).toEqual([]);
});
