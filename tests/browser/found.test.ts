// The house as it is, as somebody new to it: loggers' files and weather of a house that differs from its drawing brought,
// days painted, held against the drawing, stopped and held again, kept as a version; what is wrong with a file said on its
// card. The record is made up: a house with known changes run through a week, read with a logger's noise.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { readBundle } from '../../src/daystone.ts';
import { TWIN_CASES } from '../matching/twin-cases.ts';
import { twinOf } from '../matching/twin-records.ts';
import { violations } from './axe-violations.ts';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const thePage = onePage(served, { left: 'modest', cores: 'all' });
const HOUR = 3_600_000;
const DAYS = 7;
const files = {
  weather: '',
  station: '',
  room: '',
  lastYear: '',
  letter: 'Dear neighbour,\nthe house is too cold.',
  empty: '',
  wood: 'time,wood [kg]\n2021-01-16 17:30,8\n2021-01-17 18:00,4',
  diary:
    'from,until,what\n2021-01-16 07:10,07:25,windows\n2021-01-17 12:00,12:10,roof hatch of the barn door',
};

beforeAll(() => {
  const read = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
  if (!read.ok) throw new Error('the climate does not read');
  const [made] = TWIN_CASES['winter, stove, shut, air']!;
  const { record } = twinOf({ ...made, days: DAYS }, read.year, 7);
  const { year, firstRow, startMs, hours } = record.weather;
  const stamp = (ms: number) =>
    new Date(ms + year.site.utcOffsetH * HOUR).toISOString().slice(0, 16).replace('T', ' ');
  files.weather = [
    'Time,Air temperature [°C],Dew point [°C],Wind speed [m/s],Global radiation [W/m²],Diffuse radiation [W/m²]',
    ...Array.from({ length: hours }, (_, hour) =>
      [year.dryBulbC, year.dewPointC, year.windSpeed, year.globalHorizontal, year.diffuseHorizontal].reduce(
        (line, column) => `${line},${column[(firstRow + hour) % 8760]!.toFixed(1)}`,
        stamp(startMs + hour * HOUR),
      ),
    ),
  ].join('\n');
  files.station = files.weather;
  const logged = (from: number) =>
    [
      'Time,Temperature [°C]',
      ...Array.from({ length: 24 * DAYS * 3 }, (_, i) => {
        const airC = record.targets[0]!.measured[Math.floor(i / 3)]!;
        return `${stamp(from + (i * 20 + 10) * 60_000)},${airC.toFixed(1)}`;
      }),
    ].join('\n');
  files.room = logged(record.startMs);
  files.lastYear = logged(record.startMs - 365 * 24 * HOUR);
});

async function bring(page: Page, ...names: (keyof typeof files)[]): Promise<void> {
  await page.setInputFiles(
    '.found-drop input',
    names.map((name) => ({ name: `${name}.csv`, mimeType: 'text/csv', buffer: Buffer.from(files[name]) })),
  );
  for (const name of names) await page.waitForSelector(`[data-file="${name}.csv"]:not([data-kind="read"])`);
}

const kindOf = (page: Page, name: string) => page.getAttribute(`[data-file="${name}.csv"]`, 'data-kind');
const toldDays = (page: Page) =>
  page.$$eval('.day-cell', (cells) =>
    cells.map((cell) => cell.getAttribute('data-told')!.charAt(0)).join(''),
  );

test('from files to a version kept, by keyboard where it matters', async () => {
  const { page, complaints } = await thePage();
  const drawn = await page.inputValue('.head-name input');
  await page.focus('a[href="#found"]');
  await page.keyboard.press('Enter');
  await page.waitForSelector('.found-drop');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('The house as it is');

  // A letter is no logger, a logger of another year shares no day; each is said, and nothing else is lost.
  await bring(page, 'letter', 'empty', 'lastYear', 'weather');
  expect(await kindOf(page, 'letter')).toBe('refused');
  expect(await page.textContent('[data-file="letter.csv"] [role="alert"]')).toContain('column names');
  expect(await page.textContent('[data-file="empty.csv"] [role="alert"]')).toContain('the file is empty');
  expect(await kindOf(page, 'weather')).toBe('weather');
  expect(await page.textContent('.found-lacks')).toMatch(/share 0 whole days.*2020.*Is a year wrong/);
  expect(await page.locator('.day-cell').count()).toBe(0);
  await page.selectOption('[data-place="lastYear.csv: Temperature [°C]"]', '');
  await bring(page, 'room', 'diary');
  expect(await kindOf(page, 'diary')).toBe('diary');
  expect(await page.textContent('[data-file="diary.csv"]')).toMatch(/2 openings.*roof hatch.*not used/);
  // A table of wood is told by its column; it is taken away again, for this house was heated by its heater.
  await bring(page, 'wood');
  expect(await kindOf(page, 'wood')).toBe('diary');
  expect(await page.textContent('[data-file="wood.csv"]')).toMatch(
    /2 lines of heat \(12 kg of wood\).*nothing else is taken to heat/,
  );
  await page.click('[data-file="wood.csv"] header button');
  expect(await page.inputValue('[data-place="room.csv: Temperature [°C]"]')).toBe('house');
  await page.waitForSelector('.day-cell');
  expect(await page.locator('.found-lacks').count()).toBe(0);

  // By keyboard: one day, on to the third, the last; by mouse a stroke back over two of them; then all.
  await page.focus('[data-day="0"]');
  await page.keyboard.press('Space');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  expect(await toldDays(page)).toBe('sssuuus');
  await page.focus('[data-brush="away"]');
  await page.keyboard.press('Space');
  await page.$eval('.day-cells', (cells) => cells.scrollIntoView({ block: 'center', behavior: 'instant' }));
  const [first, second] = await Promise.all(
    [1, 2].map(async (day) => (await page.locator(`[data-day="${day}"]`).boundingBox())!),
  );
  await page.mouse.move(second!.x + 20, second!.y + 20);
  await page.mouse.down();
  await page.mouse.move(first!.x + 20, first!.y + 20, { steps: 4 });
  await page.mouse.up();
  expect(await toldDays(page)).toBe('saauuus');
  await page.focus('[data-brush="shut"]');
  await page.keyboard.press('Space');
  await page.click('[data-days="all"]');
  expect(await toldDays(page)).toBe('sssssss');
  expect(await violations(page, '.found-view')).toEqual([]);

  // Stopped, everything is still there; held again, the picture fills and the house is judged.
  await page.click('[data-found="hold"]');
  await page.click('[data-found="stop"]');
  expect(await page.locator('.found-verdict, .found-fault').count()).toBe(0);
  expect(await toldDays(page)).toBe('sssssss');
  await page.click('[data-found="hold"]');
  await page.waitForSelector('.found-picture svg[data-filled="yes"]');
  await page.waitForSelector('.found-verdict');
  expect(await page.getAttribute('.found-verdict', 'data-verdict')).toMatch(/matches|roughly/);
  expect(await page.textContent('.found-says')).toMatch(/not seen.*As drawn it missed by/);
  expect(await page.textContent('.found-verdict .found-list')).toMatch(
    /^Heat lost by walls, roof and draughts together/,
  );
  expect(await page.locator('[data-unknown]').count()).toBeGreaterThan(3);

  // On a phone, in the dark: nothing wider than the page.
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize({ width: 390, height: 800 });
  await page.waitForFunction(() => document.documentElement.scrollWidth <= 390);
  expect(await violations(page, '.found-view', 'colours')).toEqual([]);

  await page.click('[data-found="keep"]');
  await page.click('.found-view a[href="#sheet"]');
  await settledFigure(page, 'heating');
  expect(await page.inputValue('.head-name input')).toBe(`${drawn}, as found`);
  expect(await page.textContent('.version-list')).toContain(`${drawn}, as found`);
  // Nothing that was brought is lost by a look at the sheet.
  await page.click('a[href="#found"]');
  await page.waitForSelector('.found-verdict');
  expect(await toldDays(page)).toBe('sssssss');
  // Nor by a reload: files and days are kept in this browser.
  await page.waitForFunction(
    () =>
      new Promise((resolve) => {
        const asking = indexedDB.open('daystone-desk');
        asking.onsuccess = () => {
          const kept = asking.result.transaction('found').objectStore('found').get('desk');
          kept.onsuccess = () => {
            asking.result.close();
            resolve(kept.result?.files.length === 6 && kept.result.told.length === 7);
          };
        };
      }),
  );
  await page.reload();
  await page.waitForSelector('.day-cell');
  expect(await toldDays(page)).toBe('sssssss');
  expect(await page.inputValue('[data-place="lastYear.csv: Temperature [°C]"]')).toBe('');
  // Files that could not be used are there with their reasons, not only those that could.
  expect(await page.textContent('[data-file="letter.csv"] [role="alert"]')).toContain('column names');
  expect(await page.textContent('[data-file="empty.csv"] [role="alert"]')).toContain('the file is empty');
  expect(await kindOf(page, 'diary')).toBe('diary');
  expect(complaints).toEqual([]);
});

test('a sun meter on a wall is said on the card of the weather, and taken back', async () => {
  const { page, complaints } = await thePage();
  await page.click('a[href="#found"]');
  await page.waitForSelector('.found-drop');
  await bring(page, 'station');
  const card = '[data-file="station.csv"]';
  const notesSay = (words: string) => page.waitForSelector(`${card} .found-notes:has-text("${words}")`);
  await page.selectOption(`${card} [data-choice="plane"]`, 'Global radiation [W/m²]');
  await page.waitForSelector(`${card} [data-plane="tilt"]`);
  await page.fill(`${card} [data-plane="tilt"]`, '60');
  await page.press(`${card} [data-plane="tilt"]`, 'Enter');
  await notesSay('as sun on a plane');
  expect(await page.inputValue(`${card} [data-plane="tilt"]`)).toBe('60');
  expect(await page.inputValue(`${card} [data-plane="azimuth"]`)).toBe('180');
  expect(await violations(page, '.found-view')).toEqual([]);
  await page.selectOption(`${card} [data-choice="plane"]`, '');
  await notesSay('as global');
  await page.click(`${card} header button`);
  expect(complaints).toEqual([]);
});

test('the page for the people of the house is there to print', async () => {
  const { page, complaints } = await thePage();
  await page.click('a[href="#found"]');
  await page.click('a[href="#protocol"]');
  await page.waitForSelector('.protocol-paper');
  expect(await page.textContent('.protocol-paper')).toMatch(/carbon monoxide.*mould.*radon/);
  expect(await violations(page, '.protocol-view')).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  expect(await page.isVisible('.protocol-tools')).toBe(false);
  expect(complaints).toEqual([]);
});
