// What goes wrong around the page, on the built page in a real browser: storage denied or full, two tabs, a worker or
// the whole tab killed, the network gone halfway, a clock set back, names that are HTML. Nothing made is lost.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { serveFolder } from './built-site.ts';
import { sheetKept } from './kept-in-browser.ts';
import { onePage } from './one-page.ts';
import { openPage, settledFigure } from './served-page.ts';
import { bytesOf, scratchFolder, sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
/** What goes wrong is the same in every house; this one's years take least. */
const house = { left: 'modest' } as const;
const sheet = onePage(served, house);

const HOSTILE = join(import.meta.dirname, '../data/hostile');
const TILT = 'input[data-path="glass.tiltDeg"]';
const VERSIONS = '.version-list';

/** In the page, before any script of its own: a window whose stores are all denied. */
function keepNothing(): void {
  for (const name of ['localStorage', 'sessionStorage', 'indexedDB']) {
    Object.defineProperty(window, name, {
      get() {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  }
}

async function settled(page: Page): Promise<number> {
  return settledFigure(page, 'house-overheated');
}

async function nextTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.address);
  await settled(page);
  return page;
}

const openDesign = (page: Page, name: string, buffer: Buffer) =>
  page.setInputFiles('input[type="file"]', { name, mimeType: 'application/json', buffer });

test('HTML in every text is read as characters, on the page and on paper', async () => {
  const { page, complaints } = await sheet();
  await settled(page);
  const bytes = readFileSync(join(HOSTILE, 'html-in-texts.json'));
  const { name } = JSON.parse(bytes.toString('utf8')) as { name: string };
  await openDesign(page, '<i>mean</i>.json', bytes);
  await page.waitForSelector('text=Opened');
  await settled(page);
  await page.fill('.version-keep input', '<img src=x onerror="window.owned=9">');
  await page.click('.version-keep button');
  const weather = readFileSync(new URL('../../climates/tucson.txt', import.meta.url), 'utf8')
    .replace(/^id: .*$/m, 'id: <script>window.owned=7</script>')
    .replace(/^name: .*$/m, 'name: <u>Mean</u> meadow');
  await page.setInputFiles('input[type="file"]', {
    name: 'mean.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(weather),
  });
  await page.waitForSelector('.notices >> text=<u>Mean</u> meadow');
  await settled(page);
  for (const box of await page.locator('.version-check input').all()) await box.check();
  expect(await page.inputValue('.head-name input')).toBe(name);
  expect(await page.textContent(VERSIONS)).toContain('<img src=x');
  await page.evaluate(() => {
    location.hash = '#report';
  });
  for (const field of ['client', 'place', 'adviser', 'question']) {
    await page.fill(`[data-report="${field}"]`, `<img src=x onerror="window.owned=1">${field}`);
  }
  await page.emulateMedia({ media: 'print' });
  for (const field of ['client', 'place', 'question']) {
    await page.waitForSelector(`.paper >> text=<img src=x onerror="window.owned=1">${field}`);
  }
  expect(await page.locator('img[src="x"], u, i, .sheet script').count()).toBe(0);
  expect(await page.evaluate(() => (window as { owned?: number }).owned)).toBeUndefined();
  expect(complaints).toEqual([]);
});

test('a window that keeps nothing still computes, takes a weather file, and says that nothing is kept', async () => {
  const { page, complaints, close } = await openPage(served, {
    before: keepNothing,
  });
  const before = await settled(page);
  await page.waitForSelector('text=This browser keeps nothing for this page; save the design as a file.');
  await page.setInputFiles('input[type="file"]', join(import.meta.dirname, '../../climates/tucson.txt'));
  await page.waitForSelector('text=This browser would not keep the weather');
  expect(await settled(page)).toBeGreaterThan(before);
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('text=Save file')]);
  expect(JSON.parse((await bytesOf(download)).toString('utf8'))).toMatchObject({ version: 1 });
  // What the report tries takes least time in this house.
  await page.selectOption('.head-example select', 'modest');
  await page.evaluate(() => {
    location.hash = '#report';
  });
  await page.fill('[data-report="client"]', 'The Quillens');
  await page.waitForSelector('.paper >> text=The Quillens');
  expect(complaints).toEqual([]);
  await close();
});

test('with the storage full the page says so once, works on, and loses nothing kept before', async () => {
  const { page, complaints } = await sheet();
  await settled(page);
  await page.fill(TILT, '72');
  await sheetKept(page, '"tiltDeg":72');
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.fill(TILT, '81');
  await page.waitForSelector('text=This browser keeps nothing for this page');
  await page.fill(TILT, '82');
  await settled(page);
  expect(await page.locator('.notices p', { hasText: 'keeps nothing' }).count()).toBe(1);
  await page.reload();
  await settled(page);
  expect(await page.inputValue(TILT)).toBe('72');
  expect(complaints).toEqual([]);
});

test('two tabs: each keeps its sheet, versions are shared, and a tab that is gone leaves its sheet as a version', async () => {
  const { page: one, complaints, close } = await openPage(served, house);
  await settled(one);
  const two = await nextTab(one.context());
  await one.fill(TILT, '50');
  await two.waitForSelector('text=This page is open in another tab too');
  await two.fill(TILT, '80');
  await one.waitForSelector('text=This page is open in another tab too');
  await one.fill('.version-keep input', 'kept in the first');
  await one.click('.version-keep button');
  await two.waitForSelector(`${VERSIONS} >> text=kept in the first`);
  await two.fill('.version-keep input', 'kept in the second');
  await two.click('.version-keep button');
  await one.waitForSelector(`${VERSIONS} >> text=kept in the second`);
  await one.fill(TILT, '51');
  await sheetKept(one, '"tiltDeg":51');
  for (const [page, tilt] of [
    [one, '51'],
    [two, '80'],
  ] as const) {
    await page.reload();
    await settled(page);
    expect(await page.inputValue(TILT)).toBe(tilt);
    expect(await page.textContent(VERSIONS)).toContain('kept in the first');
    expect(await page.textContent(VERSIONS)).toContain('kept in the second');
  }
  await two.fill(TILT, '79');
  await two.close({ runBeforeUnload: false });
  await one.fill(TILT, '52');
  await sheetKept(one, '"tiltDeg":52');
  const three = await nextTab(one.context());
  expect(await three.inputValue(TILT)).toBe('52');
  expect(await three.textContent(VERSIONS)).toContain('from another tab');
  expect(complaints).toEqual([]);
  await close();
});

test('a link opened beside a sheet leaves the sheet as a version of the next visit', async () => {
  const { page, close } = await openPage(served, {
    ...house,
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  await settled(page);
  await page.click('text=Copy link');
  await page.waitForFunction(() => location.hash.startsWith('#design='));
  const link = page.url();
  const linked = (await page.inputValue(TILT))!;
  await page.fill(TILT, '77');
  await sheetKept(page, '"tiltDeg":77');
  const context = page.context();
  await page.close();
  const guest = await context.newPage();
  await guest.goto(link);
  await guest.waitForSelector('text=from the link');
  await sheetKept(guest, `"tiltDeg":${linked}`);
  await guest.close();
  const next = await nextTab(context);
  const kept = await next.evaluate(() => localStorage.getItem('daystone.sheet'));
  expect(kept).toContain('"tiltDeg":77');
  await close();
});

test('a worker that is killed is replaced: told at once, and when it dies without a word', async () => {
  const { page, close } = await openPage(served, house);
  await page.clock.install();
  const before = await settled(page);
  const ended = page.workers()[0]!.waitForEvent('close');
  await page.workers()[0]!.evaluate(() => {
    setTimeout(() => {
      throw new Error('killed');
    }, 0);
  });
  await ended;
  await page.selectOption('select[data-path="climate"]', 'tucson');
  const after = await settled(page);
  expect(after).not.toBe(before);
  await page
    .workers()[0]!
    .evaluate(() => self.close())
    .catch(() => {});
  await page.fill(TILT, '45');
  await page.press(TILT, 'Enter');
  await page.waitForSelector('.figures[aria-busy="true"]');
  await page.clock.fastForward(31_000);
  expect(await settled(page)).not.toBe(after);
  expect(await page.inputValue(TILT)).toBe('45');
  await close();
});

test('a tab that dies comes back with its design and its steps of undo', async () => {
  const { page, close } = await openPage(served, house);
  await settled(page);
  const first = await page.inputValue(TILT);
  await page.fill(TILT, '66');
  await sheetKept(page, '"tiltDeg":66');
  const context = page.context();
  const died = page.waitForEvent('crash');
  page.goto('chrome://crash').catch(() => {});
  await died;
  const again = await nextTab(context);
  expect(await again.inputValue(TILT)).toBe('66');
  await again.click('text=Undo');
  expect(await again.inputValue(TILT)).toBe(first);
  await close();
});

test('a fraction typed where a whole number belongs is not taken, and what is kept can be read back', async () => {
  const { page, complaints } = await sheet();
  await settled(page);
  await page
    .locator('details.input-group')
    .evaluateAll((groups) => groups.map((group) => group.setAttribute('open', '')));
  const shelter = page.locator('input[data-path="air.shelter"]');
  const before = await shelter.inputValue();
  await shelter.fill('3.99');
  await page.waitForSelector('text=Give a whole number from 1 to 5');
  await page.reload();
  await settled(page);
  expect(await page.inputValue('input[data-path="air.shelter"]')).toBe(before);
  expect(await page.locator('.notices .is-trouble').count()).toBe(0);
  expect(complaints).toEqual([]);
});

test('a tab sent to the background has kept the last change already', async () => {
  const { page } = await sheet();
  await settled(page);
  await page.fill(TILT, '68');
  const kept = await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
    document.dispatchEvent(new Event('visibilitychange'));
    return localStorage.getItem('daystone.sheet');
  });
  expect(kept).toContain('"tiltDeg":68');
});

test('a clock set back by years, or ahead, changes nothing', async () => {
  const { page, complaints, close } = await openPage(served, house);
  await page.clock.install();
  await settled(page);
  const first = await page.inputValue(TILT);
  for (const [date, tilt] of [
    ['1970-01-01', '55'],
    ['2106-02-07', '57'],
    ['2026-03-29T01:59:59', '59'],
  ] as const) {
    await page.clock.setFixedTime(new Date(date));
    await page.fill(TILT, tilt);
    await settled(page);
  }
  await page.clock.resume();
  await page.clock.fastForward(1000);
  await page.reload();
  await settled(page);
  expect(await page.inputValue(TILT)).toBe('59');
  // Typing in one field is one step.
  await page.click('text=Undo');
  expect(await page.inputValue(TILT)).toBe(first);
  expect(complaints).toEqual([]);
  await close();
});

test('a climate lost on the way is told, and had by another try; so are the questions', async () => {
  const { page } = await sheet();
  await settled(page);
  await page.route(/tucson.*\.txt|question-engine/, (route) => route.abort('connectionreset'));
  await page.selectOption('select[data-path="climate"]', 'tucson');
  await page.waitForSelector("text=The climate 'tucson' could not be loaded. Is the network gone?");
  expect(await page.inputValue('select[data-path="climate"]')).toBe('tucson');
  await page.locator('.ask-panel summary').click();
  await page.waitForSelector('text=The questions could not be fetched.');
  await page.unroute(/tucson.*\.txt|question-engine/);
  await page.click('text=Try again');
  await settled(page);
  expect(await page.textContent('.notices')).not.toContain('could not be loaded');
  await page.locator('.ask-panel summary').click();
  await page.locator('.ask-panel summary').click();
  await page.waitForSelector('.ask-form');
});

test('a design of a newer page, in a climate this one lacks, keeps its place and computes in another', async () => {
  const { page, complaints } = await sheet();
  await settled(page);
  const design = { ...EXAMPLES[1]!.design, name: 'From later', climate: 'atlantis' };
  await openDesign(page, 'later.json', Buffer.from(JSON.stringify(design)));
  await page.waitForSelector("text=There is no climate 'atlantis' with this page.");
  expect(await page.inputValue('select[data-path="climate"]')).toBe('atlantis');
  await sheetKept(page, '"climate":"atlantis"');
  await page.reload();
  await page.waitForSelector("text=There is no climate 'atlantis' with this page.");
  expect(await page.inputValue('.head-name input')).toBe('From later');
  await page.selectOption('select[data-path="climate"]', 'belfast');
  await settled(page);
  expect(complaints).toEqual([]);
});

test('a page kept from an earlier visit says that a newer one is ready, and takes the sheet along', async () => {
  const folder = join(await scratchFolder(), 'site');
  cpSync(served.folder, folder, { recursive: true });
  const site = await serveFolder(folder);
  const { page, complaints, close } = await openPage(
    { ...site, browser: served.browser, options: { serviceWorkers: 'allow' } },
    house,
  );
  await settled(page);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await settled(page);
  await page.fill(TILT, '69');
  const script = join(folder, 'sw.js');
  writeFileSync(script, `${readFileSync(script, 'utf8')}\n// newer`);
  await page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())?.update()));
  await page.waitForSelector('text=A newer version of this page is ready. Your sheet is kept.');
  expect(await page.inputValue(TILT)).toBe('69');
  await Promise.all([page.waitForEvent('load'), page.click('text=Change to it')]);
  await settled(page);
  expect(await page.inputValue(TILT)).toBe('69');
  expect(complaints).toEqual([]);
  await close();
  await site.close();
});
