// The door of the built page: a policy that lets in nothing but its own files, no request to anyone else, no script in
// the page itself, and no package whose licence is not listed.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Request } from 'playwright-core';
import { expect, test } from 'vitest';
import { shippedPackages } from '../../src/cli/shipped-packages.ts';
import { openPage, settledFigure } from './served-page.ts';
import { browserHost, sharedSite } from './shared-browser.ts';

const served = await sharedSite('with offline copy');

const policyOf = (html: string) =>
  /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? '';

test('the site has a policy that names no one but itself, before anything is loaded, and no script inside', () => {
  const html = readFileSync(join(served.folder, 'index.html'), 'utf8');
  expect(policyOf(html)).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self'; /);
  expect(policyOf(html)).not.toMatch(/unsafe|\*|https?:/);
  expect(html.indexOf('http-equiv')).toBeLessThan(html.search(/<(script|link|style)/));
  for (const [, attributes, inside] of html.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)) {
    expect(attributes).toContain('src="./');
    expect(inside!.trim()).toBe('');
  }
  expect(html).not.toMatch(/<style|\son[a-z]+=|\sstyle=/);
});

test('in use the page asks for nothing but its own files, and the policy has nothing to forbid', async () => {
  const asked: string[] = [];
  const { page, complaints, close } = await openPage(served, {
    path: 'index.html?fresh',
    // The house whose years take least.
    left: 'modest',
    watch: (page) => page.context().on('request', (request: Request) => asked.push(request.url())),
    before: () => {
      const said: string[] = [];
      Object.assign(window, { forbidden: said });
      document.addEventListener('securitypolicyviolation', (event) => said.push(event.violatedDirective));
    },
  });
  await settledFigure(page, 'house-overheated');
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  for (const id of ['hot-week', 'cold-week', 'year']) {
    await page.locator(`#${id}`).evaluate((section) => section.scrollIntoView());
  }
  await page.fill('.version-keep input', 'first');
  await page.click('.version-keep button');
  await page.selectOption('select[data-path="climate"]', 'tucson');
  await settledFigure(page, 'house-overheated');
  await page.locator('.ask-panel summary').click();
  await page.selectOption('[data-ask="question"]', 'who-opens-the-vents');
  await page.click('.ask-form button[type="submit"]');
  // Its first runs have asked for all that the others would.
  await page.waitForFunction(() => {
    if (document.querySelector('.ask-answer') === null) return false;
    const buttons = [...document.querySelectorAll<HTMLButtonElement>('.ask-form button')];
    buttons.find(({ textContent }) => textContent === 'Stop')?.click();
    return true;
  });
  await page.waitForSelector('.ask-progress', { state: 'detached' });
  await page.setInputFiles('input[type="file"]', {
    name: 'note.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('http://example.invalid/'),
  });
  await page.waitForSelector('.notices .is-trouble');
  await Promise.all([page.waitForEvent('download'), page.click('text=Save file')]);
  await page.click('text=Copy link');
  await page.waitForFunction(() => location.hash.startsWith('#design='));
  for (const [view, settles] of [
    ['#report', '.report-view[aria-busy="false"] .paper'],
    ['#trust', '.trust-view .trust-source'],
    ['#sheet', '.figures[aria-busy="false"]'],
  ] as const) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, view);
    await page.waitForSelector(settles);
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
  }
  expect(asked.length).toBeGreaterThan(5);
  const foreign = asked.filter(
    (url) => !url.startsWith(served.address) && !url.startsWith('blob:http://127.0.0.1'),
  );
  expect(foreign).toEqual([]);
  expect(await page.evaluate(() => (window as unknown as { forbidden: string[] }).forbidden)).toEqual([]);
  expect(complaints).toEqual([]);
  await close();
});

test('what the policy forbids is forbidden: a foreign request, a script in the page, code from text', async () => {
  const { page, close } = await openPage(served, { left: 'modest', serviceWorkers: 'block' });
  const forbidden = await page.evaluate(async () => {
    const said: string[] = [];
    const allSaid = new Promise<void>((resolve) => {
      document.addEventListener('securitypolicyviolation', (event) => {
        said.push(event.effectiveDirective);
        if (new Set(said).size === 5) resolve();
      });
    });
    await fetch('http://127.0.0.1:9/').catch(() => {});
    const script = document.createElement('script');
    script.textContent = 'window.owned = 1';
    document.body.append(script);
    const image = document.createElement('img');
    image.src = 'http://127.0.0.1:9/x.png';
    document.body.append(image);
    document.body.insertAdjacentHTML('beforeend', '<b onclick="window.owned = 2" style="color: red"></b>');
    await allSaid;
    return { said, owned: (window as { owned?: number }).owned };
  });
  expect(new Set(forbidden.said)).toEqual(
    new Set(['connect-src', 'script-src-elem', 'img-src', 'script-src-attr', 'style-src-attr']),
  );
  expect(forbidden.owned).toBeUndefined();
  await close();
});

test('every package inside the built page is on the list of licences', async () => {
  const packages = new Set((await browserHost()).packages);
  // The offline copy is put together apart from the rest; its file names what it is made of.
  const offline = readdirSync(served.folder).find((name) => name.startsWith('workbox-'))!;
  for (const [, name] of readFileSync(join(served.folder, offline), 'utf8').matchAll(
    /"workbox:([a-z-]+):/g,
  )) {
    packages.add(`workbox-${name}`);
  }
  const listed = new Set(shippedPackages(join(import.meta.dirname, '../..')).map(({ name }) => name));
  expect(packages.size).toBeGreaterThan(10);
  expect([...packages].filter((name) => !listed.has(name))).toEqual([]);
  expect(readFileSync(join(served.folder, 'licences.txt'), 'utf8')).toContain('SIL OPEN FONT LICENSE');
});
