// The page of tests/browser/pool-page, opened: for the browser tests of the pool and for the bench.
import { type Browser, chromium, type Page } from 'playwright-core';
import { CHROMIUM_ARGS, servePoolPage } from './built-site.ts';
import { findChromium } from './find-chromium.ts';
import { complaintsOf } from './served-page.ts';

export interface OpenPool {
  readonly page: Page;
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

/** Build, serve and open the page in a browser of its own. */
export async function openPool(): Promise<OpenPool> {
  const served = await servePoolPage();
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_ARGS });
  const { page, complaints } = await openPoolAt(served.address, browser);
  return {
    page,
    complaints,
    async close() {
      await browser.close();
      await served.close();
    },
  };
}

/** Open the page where it is served. */
export async function openPoolAt(address: string, browser: Browser): Promise<OpenPool> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  await page.goto(address);
  await page.waitForFunction(() => 'pool' in window);
  return { page, complaints, close: () => context.close() };
}
