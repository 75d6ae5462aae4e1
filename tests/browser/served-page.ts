// The built page in a browser. Every test file connects to the one browser of the run; programs outside the tests bring
// their own.
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { EXAMPLES } from '../../src/design/examples.ts';
import { CHROMIUM_ARGS, type Served, serveSite } from './built-site.ts';
import { findChromium } from './find-chromium.ts';

export interface ServedPage extends Served {
  readonly browser: Browser;
}

export interface OpenPage {
  readonly page: Page;
  /** what the console and uncaught errors said, warnings included */
  readonly complaints: string[];
  close(): Promise<void>;
}

/** What never comes is given up after this [ms]: a loaded machine is no reason to fail. */
const PATIENCE_MS = 100_000;

/** Build and serve the site and start a browser, for a program of its own. */
export async function servePage(): Promise<ServedPage> {
  const site = await serveSite();
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_ARGS });
  return {
    ...site,
    browser,
    async close() {
      await browser.close();
      await site.close();
    },
  };
}

export interface PageOptions extends BrowserContextOptions {
  readonly path?: string;
  readonly acts?: 'folded' | 'open';
  readonly ranges?: 'when asked' | 'by itself';
  readonly inputs?: 'all' | 'first';
  readonly cores?: 1 | 'all';
  /** the example that somebody left here who comes back; absent for the first visit, which opens on the sample */
  readonly left?: string;
  readonly before?: () => void;
  readonly watch?: (page: Page) => void;
}

/** Open a fresh profile and listen to everything it complains about; `before` is done before anything is loaded. */
export async function openPage(
  served: Pick<ServedPage, 'address' | 'browser'> & { readonly options?: BrowserContextOptions },
  options: PageOptions = {},
): Promise<OpenPage> {
  const {
    path = '',
    acts = 'folded',
    ranges = 'when asked',
    inputs = 'all',
    cores = 1,
    left,
    before,
    watch,
    ...contextOptions
  } = options;
  const context = await served.browser.newContext({
    viewport: { width: 1280, height: 900 },
    ...served.options,
    ...contextOptions,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  if (acts === 'folded') await context.addInitScript(foldActs);
  if (ranges === 'when asked') await context.addInitScript(leaveRanges);
  if (cores === 1) await context.addInitScript(haveOneCore);
  if (inputs === 'all') await context.addInitScript(showAllInputs);
  if (left !== undefined) await context.addInitScript(leaveSheet, keptSheet(left));
  if (before) await context.addInitScript(before);
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  watch?.(page);
  await page.goto(served.address + path);
  return { page, complaints, close: () => context.close() };
}

/** The changes that help most are dozens of years of work at every rest of the design; few tests are about them. */
function foldActs(): void {
  try {
    if (localStorage.getItem('daystone-acts') === null) localStorage.setItem('daystone-acts', 'folded');
  } catch {
    // A window that keeps nothing runs them.
  }
}

/** How far figures may lie from those told is a dozen years, in three climates, whenever a design has rested; one test is about it. */
function leaveRanges(): void {
  try {
    if (localStorage.getItem('daystone-ranges') === null)
      localStorage.setItem('daystone-ranges', 'when asked');
  } catch {
    // A window that keeps nothing runs them.
  }
}

/**
 * Test files share the machine's cores, and a page takes each of them for a thread of its own, which runs a year slowly before
 * it runs them fast.
 */
function haveOneCore(): void {
  Object.defineProperty(navigator, 'hardwareConcurrency', { value: 1 });
}

/** Most tests type into inputs that stand behind "more". */
function showAllInputs(): void {
  try {
    if (localStorage.getItem('daystone-more') === null) localStorage.setItem('daystone-more', 'open');
  } catch {
    // A window that keeps nothing has them folded.
  }
}

/** A year of the sample takes twice the time of the house without a sunspace, and few tests are about the first visit. */
function leaveSheet(kept: string): void {
  if (localStorage.getItem('daystone.sheet') === null) localStorage.setItem('daystone.sheet', kept);
}

/** What a tab that is gone leaves behind of an example. */
function keptSheet(example: string): string {
  const { design } = EXAMPLES.find(({ id }) => id === example)!;
  return JSON.stringify({ tab: 'gone', stamp: 'gone', design, earlier: [], others: [], versions: [] });
}

/** What a page's console and uncaught errors say from now on. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.text() === 'Service Worker registration blocked by Playwright') return;
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return complaints;
}

/** The value in SI of a headline figure, once the answer on screen belongs to the design on screen. */
export async function settledFigure(page: Page, id: string): Promise<number> {
  await page.waitForSelector('.figures[aria-busy="false"]');
  const value = await page.getAttribute(`[data-figure="${id}"]`, 'data-value');
  if (value === null) throw new Error(`no figure '${id}' on the page`);
  return Number(value);
}
