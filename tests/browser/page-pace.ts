// How fast the built page is, measured in Chromium: first figures, figures while a handle is dragged, longest task of
// the page's thread, and what has to be loaded before the first paint. Prints the figures; judging them is left to
// the reader and to pace.test.ts.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { type ServedPage, servePage } from './served-page.ts';

export interface PagePace {
  /** from opening the page to the first figures on screen [ms] */
  readonly firstFiguresMs: number;
  /** new figures a second while a handle is dragged */
  readonly figuresPerSecond: number;
  /** longest task of the page's thread while dragging [ms]; 0 when none passed 50 */
  readonly longestTaskMs: number;
  /** median time of one run in the worker while dragging [ms] */
  readonly runMs: number;
  /** script and worker, gzipped [kB] */
  readonly pageScriptKB: number;
  readonly workerScriptKB: number;
}

interface Watch {
  firstFigures: number;
  runs: { at: number; took: number }[];
  longTasks: number[];
}

const DRAG_MS = 3000;
const MOVE_MS = 16;

/** Measure a served page. */
export async function measurePace(served: ServedPage): Promise<PagePace> {
  const context = await served.browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(watch);
  await page.goto(served.address);
  await page.waitForSelector('[data-figure]');
  await page.waitForTimeout(1500);
  await page.evaluate(() => {
    const held = (globalThis as unknown as { watch: Watch }).watch;
    held.runs.length = 0;
    held.longTasks.length = 0;
  });
  await dragHandle(page, 'sunspace.depthM', DRAG_MS);
  const seen = await page.evaluate(() => (globalThis as unknown as { watch: Watch }).watch);
  await context.close();
  const took = seen.runs.map((run) => run.took).sort((a, b) => a - b);
  return {
    firstFiguresMs: seen.firstFigures,
    figuresPerSecond: (seen.runs.length / DRAG_MS) * 1000,
    longestTaskMs: Math.max(0, ...seen.longTasks),
    runMs: took[Math.floor(took.length / 2)] ?? Number.NaN,
    ...scriptSizes(served.folder),
  };
}

/** Runs in the page before anything else. */
function watch(): void {
  const held: Watch = { firstFigures: 0, runs: [], longTasks: [] };
  (globalThis as unknown as { watch: Watch }).watch = held;
  let last = '';
  new MutationObserver(() => {
    const figures = document.querySelector<HTMLElement>('.figures[data-run]');
    if (!figures || figures.dataset.run === last) return;
    last = figures.dataset.run ?? '';
    if (held.firstFigures === 0) held.firstFigures = performance.now();
    held.runs.push({ at: performance.now(), took: Number(figures.dataset.took) });
  }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['data-run'] });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) held.longTasks.push(entry.duration);
  }).observe({ type: 'longtask' });
}

/** Drag a handle to and fro for a while, a move a frame. */
async function dragHandle(page: Page, id: string, ms: number): Promise<void> {
  const box = await page.locator(`[data-handle="${id}"] .handle-knob`).boundingBox();
  if (!box) throw new Error(`no handle '${id}' on the page`);
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  const start = Date.now();
  while (Date.now() - start < ms) {
    await page.mouse.move(x + 40 * Math.sin((Date.now() - start) / 400), y);
    await page.waitForTimeout(MOVE_MS);
  }
  await page.mouse.up();
}

function scriptSizes(folder: string): { pageScriptKB: number; workerScriptKB: number } {
  const assets = join(folder, 'assets');
  const size = (test: RegExp) =>
    readdirSync(assets)
      .filter((name) => test.test(name))
      .reduce((sum, name) => sum + gzipSync(readFileSync(join(assets, name))).length, 0) / 1000;
  return { pageScriptKB: size(/^index-.*\.js$/), workerScriptKB: size(/\.worker-.*\.js$/) };
}

/** The figures as lines for a terminal. */
export function paceLines(pace: PagePace): readonly string[] {
  return [
    `first figures      ${pace.firstFiguresMs.toFixed(0)} ms after opening`,
    `while dragging     ${pace.figuresPerSecond.toFixed(1)} new figures a second`,
    `one run            ${pace.runMs.toFixed(0)} ms in the worker (median)`,
    `longest task       ${pace.longestTaskMs === 0 ? 'none over 50 ms' : `${pace.longestTaskMs.toFixed(0)} ms`}`,
    `before first paint ${pace.pageScriptKB.toFixed(1)} kB of script, gzipped; the worker's ${pace.workerScriptKB.toFixed(1)} kB load beside it`,
  ];
}

if (import.meta.url === `file://${process.argv[1]}`) {
  const served = await servePage();
  console.log(paceLines(await measurePace(served)).join('\n'));
  await served.close();
}
