// What a person makes stays: reload, link in a fresh profile, file and back, broken input, a weather file, versions
// side by side, and the page with the network gone.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { weatherKept } from './kept-in-browser.ts';
import { onePage } from './one-page.ts';
import { openPage, settledFigure } from './served-page.ts';
import { bytesOf, scratchFolder, sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sheet = onePage(served, { left: 'modest', permissions: ['clipboard-read', 'clipboard-write'] });
const folder = await scratchFolder();

const climateFile = (id: string) => readFileSync(new URL(`../../climates/${id}.txt`, import.meta.url));

test('a reload brings back design, versions and units', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.fill('input[data-path="glass.tiltDeg"]', '75');
  await page.fill('.version-keep input', 'steeper');
  await page.click('.version-keep button');
  await page.locator('label.chip', { hasText: /^US$/ }).click();
  const before = await settledFigure(page, 'house-overheated');
  await page.reload();
  expect(await settledFigure(page, 'house-overheated')).toBe(before);
  expect(await page.inputValue('input[data-path="glass.tiltDeg"]')).toBe('75');
  expect(await page.textContent('.version-list')).toContain('steeper');
  expect(await page.textContent('[data-figure="house-coldest"] .figure-unit')).toContain('°F');
  expect(complaints).toEqual([]);
});

test('a link holds the whole design and opens in a fresh profile', async () => {
  const first = await sheet();
  await first.page.fill('input[data-path="glass.tiltDeg"]', '72');
  const figure = await settledFigure(first.page, 'house-overheated');
  await first.page.click('text=Copy link');
  await first.page.waitForFunction(() => location.hash.startsWith('#design='));
  const link = first.page.url();
  expect(link.length).toBeLessThan(2000);
  const second = await openPage(served, { path: `#${link.split('#')[1]}` });
  await second.page.waitForSelector('text=from the link');
  expect(await settledFigure(second.page, 'house-overheated')).toBe(figure);
  expect(await second.page.inputValue('input[data-path="glass.tiltDeg"]')).toBe('72');
  expect(second.complaints).toEqual([]);
  await second.close();
  // The link leaves the address with the next change: a visit later it would bring the house of before.
  await first.page.fill('input[data-path="glass.tiltDeg"]', '71');
  await first.page.waitForFunction(() => location.hash === '');
  await settledFigure(first.page, 'house-overheated');
  await first.page.reload();
  await settledFigure(first.page, 'house-overheated');
  expect(await first.page.inputValue('input[data-path="glass.tiltDeg"]')).toBe('71');
});

test('a broken link and a broken file say what is wrong and change nothing', async () => {
  const { page, complaints } = await sheet();
  await page.evaluate(() => {
    location.hash = '#design=xxxx';
  });
  await page.waitForSelector('.notices .is-trouble');
  expect(await page.textContent('.notices')).toContain('The link is broken');
  const before = await page.inputValue('input[data-path="glass.tiltDeg"]');
  await page.setInputFiles('input[type="file"]', {
    name: 'bad.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"version": 1, "glass": {"tiltDeg": 400}}'),
  });
  await page.waitForSelector('text=bad.json');
  expect(await page.inputValue('input[data-path="glass.tiltDeg"]')).toBe(before);
  expect(complaints).toEqual([]);
});

test('a design goes to a file and comes back; a file that is none is named and changes nothing', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.fill('input[data-path="glass.tiltDeg"]', '81');
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('text=Save file')]);
  expect(download.suggestedFilename()).toBe('larkspur-bench-the-modest-one.daystone.json');
  const text = (await bytesOf(download)).toString('utf8');
  expect(JSON.parse(text)).toMatchObject({ version: 1, glass: { tiltDeg: 81 } });
  await page.fill('input[data-path="glass.tiltDeg"]', '60');
  const file = join(folder, 'again.json');
  writeFileSync(file, text);
  await page.setInputFiles('input[type="file"]', file);
  await page.waitForSelector('text=Opened');
  expect(await page.inputValue('input[data-path="glass.tiltDeg"]')).toBe('81');
  await page.setInputFiles('input[type="file"]', {
    name: 'notes.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('hello'),
  });
  await page.waitForSelector('.notices .is-trouble');
  expect(await page.textContent('.notices')).toContain('notes.txt');
  expect(await page.inputValue('input[data-path="glass.tiltDeg"]')).toBe('81');
  expect(complaints).toEqual([]);
});

test('a weather file dropped on the page becomes the place, and is there after a reload', async () => {
  const { page, complaints } = await sheet();
  const before = await settledFigure(page, 'house-overheated');
  const text = climateFile('tucson')
    .toString('utf8')
    .replace(/^id: tucson$/m, 'id: my-desert')
    .replace(/^name: .*$/m, 'name: My desert');
  await page.evaluate((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], 'desert.txt', { type: 'text/plain' }));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
  }, text);
  await page.waitForSelector('text=The design now stands in My desert');
  const after = await settledFigure(page, 'house-overheated');
  expect(after).toBeGreaterThan(before);
  await weatherKept(page);
  await page.reload();
  expect(await settledFigure(page, 'house-overheated')).toBe(after);
  expect(complaints).toEqual([]);
});

test('two versions stand side by side with the better figure marked', async () => {
  const { page, complaints } = await sheet();
  await page.selectOption('.head-example select', 'closed');
  await settledFigure(page, 'house-overheated');
  await page.click('.version-keep button');
  await page.selectOption('select[data-path="sunspace.join"]', 'none');
  await settledFigure(page, 'house-overheated');
  await page.click('.version-keep button');
  for (const box of await page.locator('.version-check input').all()) await box.check();
  await page.waitForSelector('.compare .is-best');
  expect(await page.locator('.compare .still-section').count()).toBe(2);
  expect(await page.locator('.compare .year-picture').count()).toBe(2);
  expect(await page.textContent('.compare')).toContain('Sunspace');
  const weeks = page.locator('.compare-weeks');
  const dashes = () =>
    weeks.locator('polyline').evaluateAll((all) => all.map((line) => line.getAttribute('stroke-dasharray')));
  expect(new Set(await dashes()).size).toBe(3); // two versions and the air outdoors, each with a dash of its own
  expect(await weeks.locator('polyline + line + text').allTextContents()).toEqual(['A', 'B', 'out']);
  await weeks.getByLabel('coldest week').check();
  expect(await weeks.locator('.chart-sentence').textContent()).toContain('The coldest week of');
  // The table is wider than a phone; it scrolls in itself and leaves the page as wide as the phone.
  await page.setViewportSize({ width: 390, height: 800 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.locator('.version-list button', { hasText: 'Go back' }).first().click();
  await settledFigure(page, 'sunspace-overheated');
  expect(complaints).toEqual([]);
});

test('with the network gone the page opens again, computes another place, and finds places once it has fetched their list', async () => {
  const { page, complaints, close } = await openPage(served, { left: 'modest', serviceWorkers: 'allow' });
  await settledFigure(page, 'house-overheated');
  await page.evaluate(async () => {
    const { serviceWorker } = navigator;
    await serviceWorker.ready;
    if (serviceWorker.controller === null)
      await new Promise((done) => serviceWorker.addEventListener('controllerchange', done, { once: true }));
  });
  const findPlace = async () => {
    await page.locator('#climate > summary').click();
    await page.fill('[data-place-search]', 'thimphu');
    await page.waitForSelector('.place-list [role="option"]:has-text("Bhutan")');
  };
  await findPlace();
  await page.waitForFunction(async () => {
    const kept = await (await caches.open('places')).keys();
    return kept.some(({ url }) => url.endsWith('.bin'));
  });
  // beside it, a list that only an older page knew
  const older = await page.evaluate(async () => {
    const lists = await caches.open('places');
    const [list] = await lists.keys();
    const address = new URL('places-older.bin', list!.url).href;
    await lists.put(address, new Response('older'));
    return address;
  });
  await page.context().setOffline(true);
  await page.reload();
  await page.waitForFunction(
    async (address) => (await (await caches.open('places')).match(address)) === undefined,
    older,
  );
  const before = await settledFigure(page, 'house-overheated');
  await findPlace();
  await page.selectOption('select[data-path="climate"]', 'helena');
  await page.waitForFunction(
    (old) =>
      document.querySelector('[data-figure="house-overheated"]')?.getAttribute('data-value') !== String(old),
    before,
  );
  expect(complaints).toEqual([]);
  await close();
});
