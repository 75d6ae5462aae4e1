// The built page on a free port of this machine, and a browser that opens it. Built once for all browser tests of a
// run; everything a test opens is closed with the page.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from './find-chromium.ts';

const ARGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface ServedPage {
  readonly address: string;
  readonly browser: Browser;
  /** folder the site was built into */
  readonly folder: string;
  close(): Promise<void>;
}

export interface OpenPage {
  readonly page: Page;
  /** what the console and uncaught errors said, warnings included */
  readonly complaints: string[];
  close(): Promise<void>;
}

/** Build the site into a folder of its own and serve it under a sub-path, as a static host would. */
export async function servePage(base = '/some/where/'): Promise<ServedPage> {
  const folder = mkdtempSync(join(tmpdir(), 'daystone-site-'));
  await build({ logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  const server = await preview({
    logLevel: 'error',
    base,
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0, strictPort: false, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('the preview server has no address');
  const browser = await chromium.launch({ executablePath: findChromium(), args: ARGS });
  return {
    address,
    browser,
    folder,
    async close() {
      await browser.close();
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Open a fresh profile and listen to everything it complains about. */
export async function openPage(
  served: ServedPage,
  options: BrowserContextOptions & { path?: string } = {},
): Promise<OpenPage> {
  const { path = '', ...contextOptions } = options;
  const context = await served.browser.newContext({
    viewport: { width: 1280, height: 900 },
    ...contextOptions,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(served.address + path);
  return { page, complaints, close: () => context.close() };
}

/** The value in SI of a headline figure, once the answer on screen belongs to the design on screen. */
export async function settledFigure(page: Page, id: string): Promise<number> {
  await page.waitForSelector('.figures[aria-busy="false"]', { timeout: 20_000 });
  const value = await page.getAttribute(`[data-figure="${id}"]`, 'data-value');
  if (value === null) throw new Error(`no figure '${id}' on the page`);
  return Number(value);
}
