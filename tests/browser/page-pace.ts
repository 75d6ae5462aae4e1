// How fast the built page is, measured in Chromium: first figures, figures while a handle is dragged, longest task of
// the page's thread, verdict and acts of a changed house, and what has to be loaded before the first paint; then each
// question. Prints the figures; judging them is left to the reader. `questions`, with ids or without, measures the
// questions alone, `drag` the drag alone, `answers` first paint, verdict and acts alone.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { measureQuestions, questionLines } from './question-pace.ts';
import { type ServedPage, servePage } from './served-page.ts';

export interface PagePace {
  /** from opening the page to the first figures on screen, by visit, each the first of its profile, rising [ms] */
  readonly firstFiguresMs: readonly number[];
  /** from opening the page to its first words, by visit, rising [ms] */
  readonly firstPaintMs: readonly number[];
  /** from a change of the design to its verdict and the changes that help it most, by change, rising [ms] */
  readonly answeredMs: readonly number[];
  /** new figures a second while a handle is dragged, by drag, rising */
  readonly figuresPerSecond: readonly number[];
  /** what the page's thread did for one new set of figures while dragging, everything between them counted [ms] */
  readonly threadMs: ThreadMs;
  /** longest task of the page's thread while dragging [ms]; 0 when none passed 50 */
  readonly longestTaskMs: number;
  /** median time of one run in the worker while dragging [ms] */
  readonly runMs: number;
  /** script and worker, gzipped [kB] */
  readonly pageScriptKB: number;
  readonly workerScriptKB: number;
  readonly imports: readonly ImportPace[];
}

/** Time of the page's thread by what it did, as the browser counts it. */
interface ThreadMs {
  readonly all: number;
  readonly script: number;
  readonly style: number;
  readonly layout: number;
}

/** How long a weather file takes from being handed over to the first figures in its climate. */
export interface ImportPace {
  readonly name: string;
  readonly megabytes: number;
  /** until the page says that the design stands there [ms] */
  readonly readMs: number;
  /** longest task of the page's thread meanwhile [ms]; 0 when none passed 50 */
  readonly longestTaskMs: number;
  /** what the progress line said on the way */
  readonly steps: readonly string[];
}

interface Watch {
  firstFigures: number;
  runs: { at: number; took: number }[];
  longTasks: number[];
  longTaskStarts: number[];
  /** the last key */
  keyAt: number;
  /** the changes that help most stood there anew */
  answeredAt: number;
}

const OPENINGS = 7;
const DRAGS = 7;
const CHANGES = 7;
const DRAG_MS = 3000;
const MOVE_MS = 16;
/** One way, at an even pace [px/s]: some thirty designs a second, none of them met before. */
const DRAG_SPEED = 55;

/** Measure a served page. */
export async function measurePace(served: ServedPage): Promise<PagePace> {
  const answers = await measureAnswers(served);
  const drag = await measureDrag(served);
  const imports = [await measureImport(served, stationFile()), await measureImport(served, tableFile())];
  return { ...answers, ...drag, ...scriptSizes(served.folder), imports };
}

type AnswerPace = Pick<PagePace, 'firstPaintMs' | 'firstFiguresMs' | 'answeredMs'>;
type DragPace = Pick<PagePace, 'figuresPerSecond' | 'threadMs' | 'longestTaskMs' | 'runMs'>;

/** The page with its first figures, in a fresh profile, watched from the start. */
async function openWatched(served: ServedPage, ...more: (() => void)[]): Promise<Page> {
  const context = await served.browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  // A loaded machine is slow, and is measured all the same.
  page.setDefaultTimeout(600_000);
  for (const script of [watch, ...more]) await page.addInitScript(script);
  await page.goto(served.address);
  await page.waitForSelector('[data-figure]');
  return page;
}

/** Open the page in fresh profiles, one after another, and wait for its figures; in the last one change the house. */
async function measureAnswers(served: ServedPage): Promise<AnswerPace> {
  const paints: number[] = [];
  const figures: number[] = [];
  for (let visit = 0; visit < OPENINGS; visit++) {
    const page = await openWatched(served);
    await page.waitForTimeout(1000);
    const [paint, figure] = await page.evaluate(() => [
      performance.getEntriesByName('first-contentful-paint')[0]!.startTime,
      (globalThis as unknown as { watch: Watch }).watch.firstFigures,
    ]);
    paints.push(paint!);
    figures.push(figure!);
    await page.context().close();
  }
  return {
    firstPaintMs: paints.sort((a, b) => a - b),
    firstFiguresMs: figures.sort((a, b) => a - b),
    answeredMs: await measureChanges(served),
  };
}

/** Change the house by a key, a few times, and wait for its verdict and the changes that help it most. */
async function measureChanges(served: ServedPage): Promise<readonly number[]> {
  const page = await openWatched(served);
  await page.waitForSelector('.acts:not([data-made])');
  await page.focus('[data-handle="sunspace.depthM"]');
  const times: number[] = [];
  for (let change = 0; change < CHANGES; change++) {
    await page.keyboard.press('ArrowRight');
    const answered = await page.waitForFunction(() => {
      const { keyAt, answeredAt } = (globalThis as unknown as { watch: Watch }).watch;
      return answeredAt > keyAt ? answeredAt - keyAt : null;
    });
    times.push((await answered.jsonValue())!);
    await page.waitForTimeout(500);
  }
  await page.context().close();
  return times.sort((a, b) => a - b);
}

/**
 * Open the page, wait for its figures, drag the sunspace deeper, a few times, each time in another house: an answer that
 * the page remembers is no measure.
 */
async function measureDrag(served: ServedPage): Promise<DragPace> {
  const page = await openWatched(served);
  await page.waitForTimeout(1500);
  const seen = () => page.evaluate(() => (globalThis as unknown as { watch: Watch }).watch);
  const spent = await threadClock(page);
  const figures: number[] = [];
  const threads: ThreadMs[] = [];
  const took: number[] = [];
  const longTasks: number[] = [];
  for (let drag = 0; drag < DRAGS; drag++) {
    await page.evaluate(() => {
      const held = (globalThis as unknown as { watch: Watch }).watch;
      held.runs.length = 0;
      held.longTasks.length = 0;
    });
    const start = await spent();
    await dragHandle(page, 'sunspace.depthM', DRAG_MS);
    const end = await spent();
    const { runs, longTasks: long } = await seen();
    figures.push((runs.length / DRAG_MS) * 1000);
    const each = (part: keyof ThreadMs) => (end[part] - start[part]) / runs.length;
    threads.push({ all: each('all'), script: each('script'), style: each('style'), layout: each('layout') });
    took.push(...runs.map((run) => run.took));
    longTasks.push(...long);
    await page.keyboard.press('Control+z');
    await page.focus('[data-handle="floor.thicknessM"]');
    await page.keyboard.press('ArrowRight');
    await page.waitForTimeout(1000);
  }
  await page.context().close();
  return {
    figuresPerSecond: figures.sort((a, b) => a - b),
    threadMs: threads.sort((a, b) => a.all - b.all)[threads.length >> 1]!,
    longestTaskMs: Math.max(0, ...longTasks),
    runMs: took.sort((a, b) => a - b)[took.length >> 1] ?? Number.NaN,
  };
}

/** What the page's thread has done so far. */
async function threadClock(page: Page): Promise<() => Promise<ThreadMs>> {
  const wire = await page.context().newCDPSession(page);
  await wire.send('Performance.enable');
  return async () => {
    const { metrics } = await wire.send('Performance.getMetrics');
    const of = (name: string) => 1000 * (metrics.find((metric) => metric.name === name)?.value ?? Number.NaN);
    return {
      all: of('TaskDuration'),
      script: of('ScriptDuration'),
      style: of('RecalcStyleDuration'),
      layout: of('LayoutDuration'),
    };
  };
}

interface WeatherFile {
  readonly name: string;
  readonly bytes: Buffer;
}

/** A station's year as its maker publishes it. */
function stationFile(): WeatherFile {
  const folder = new URL('../data/weather/', import.meta.url);
  return { name: '725650TYA.CSV', bytes: gunzipSync(readFileSync(new URL('725650TYA.CSV.gz', folder))) };
}

/** The same year as a table of unknown origin: what is not needed stands in columns without a known name. */
function tableFile(): WeatherFile {
  const lines = stationFile()
    .bytes.toString('latin1')
    .split(/\r?\n/)
    .slice(2)
    .filter((line) => line !== '');
  const head = ['date', 'hour', 'temperature (C)', 'dew point (C)', 'GHI (W/m2)', 'wind speed (m/s)'];
  const width = lines[0]!.split(',').length;
  const extra = Array.from({ length: width }, (_, i) => `field ${i + 1}`);
  const rows = lines.map((line) => {
    const cells = line.split(',');
    const [month, day] = cells[0]!.split('/');
    const needed = [
      `${month}/${day}/2001`,
      Number.parseInt(cells[1]!, 10),
      cells[31],
      cells[34],
      cells[4],
      cells[46],
    ];
    return [...needed, ...cells.map((cell) => (cell === '' ? '0' : cell))].join(',');
  });
  const place = '# latitude: 39.833\n# longitude: -104.65\n# elevation: 1650\n';
  return {
    name: 'table.csv',
    bytes: Buffer.from(`${place}${[...head, ...extra].join(',')}\n${rows.join('\n')}`),
  };
}

/** Hand a weather file over and wait until the design stands in it; a table's columns are confirmed as guessed. */
async function measureImport(served: ServedPage, file: WeatherFile): Promise<ImportPace> {
  const page = await openWatched(served, watchImport);
  await page.waitForTimeout(1500);
  await page.setInputFiles('input[type="file"]', {
    name: file.name,
    mimeType: 'text/csv',
    buffer: file.bytes,
  });
  if (file.name.startsWith('table')) await page.click('text=Read the table');
  await page.waitForSelector('text=The design now stands in');
  const seen = await page.evaluate(() => (globalThis as unknown as { watch: Watch }).watch);
  const { ms, first, steps } = await page.evaluate(
    () =>
      (globalThis as unknown as { importWatch: { ms: number; first: number; steps: string[] } }).importWatch,
  );
  // Handing the bytes over through the test's own wire blocks the page before; that is none of its doing.
  const longTasks = seen.longTasks.filter((_, i) => seen.longTaskStarts[i]! >= first);
  await page.context().close();
  return {
    name: file.name,
    megabytes: file.bytes.length / 1e6,
    readMs: ms,
    longestTaskMs: Math.max(0, ...longTasks),
    steps,
  };
}

/** Runs in the page: adds up the time during which something is being read, waiting for the person left out. */
function watchImport(): void {
  const held = { ms: 0, first: 0, steps: [] as string[] };
  (globalThis as unknown as { importWatch: typeof held }).importWatch = held;
  let since = 0;
  new MutationObserver(() => {
    const line = document.querySelector('.reading');
    const words = line?.textContent ?? '';
    if (words !== '' && held.steps.at(-1) !== words) held.steps.push(words);
    if (line && since === 0) {
      since = performance.now();
      held.first ||= since;
    }
    if (!line && since > 0) {
      held.ms += performance.now() - since;
      since = 0;
    }
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

/** Runs in the page before anything else. */
function watch(): void {
  const held: Watch = {
    firstFigures: 0,
    runs: [],
    longTasks: [],
    longTaskStarts: [],
    keyAt: 0,
    answeredAt: 0,
  };
  (globalThis as unknown as { watch: Watch }).watch = held;
  let last = '';
  let isWaiting = false;
  addEventListener(
    'keydown',
    () => {
      held.keyAt = performance.now();
    },
    { capture: true },
  );
  new MutationObserver(() => {
    const waits = document.querySelector('.acts-box.is-waiting') !== null;
    if (isWaiting && !waits) held.answeredAt = performance.now();
    isWaiting = waits;
    const figures = document.querySelector<HTMLElement>('.figures:has([data-figure])');
    if (!figures) return;
    // Those of the sample were made with the page.
    if (held.firstFigures === 0) held.firstFigures = performance.now();
    if ((figures.dataset.run ?? last) === last) return;
    last = figures.dataset.run ?? '';
    held.runs.push({ at: performance.now(), took: Number(figures.dataset.took) });
  }).observe(document, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ['data-run', 'class'],
  });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      held.longTasks.push(entry.duration);
      held.longTaskStarts.push(entry.startTime);
    }
  }).observe({ type: 'longtask' });
}

/**
 * Drag a handle to the right for a while, a move a frame. A hand does not wait for the page to have seen its last move,
 * so nor does this. The moves go straight to the browser: sent as usual they take the driver a tenth of two cores.
 */
async function dragHandle(page: Page, id: string, ms: number): Promise<void> {
  const box = await page.locator(`[data-handle="${id}"] .handle-knob`).boundingBox();
  if (!box) throw new Error(`no handle '${id}' on the page`);
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  const wire = await page.context().newCDPSession(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  const start = Date.now();
  const moves: Promise<unknown>[] = [];
  for (let gone = 0; gone < ms; gone = Date.now() - start) {
    const at = { x: x + (gone / 1000) * DRAG_SPEED, y, button: 'left', buttons: 1 } as const;
    moves.push(wire.send('Input.dispatchMouseEvent', { type: 'mouseMoved', ...at }));
    await new Promise((resolve) => setTimeout(resolve, MOVE_MS));
  }
  await Promise.all(moves);
  await page.mouse.up();
  await wire.detach();
}

function scriptSizes(folder: string): { pageScriptKB: number; workerScriptKB: number } {
  const assets = join(folder, 'assets');
  const size = (test: RegExp) =>
    readdirSync(assets)
      .filter((name) => test.test(name))
      .reduce((sum, name) => sum + gzipSync(readFileSync(join(assets, name))).length, 0) / 1000;
  return { pageScriptKB: size(/^index-.*\.js$/), workerScriptKB: size(/\.worker-.*\.js$/) };
}

function importLine({ name, megabytes, readMs, longestTaskMs, steps }: ImportPace): string {
  const longest = longestTaskMs === 0 ? 'none over 50 ms' : `${longestTaskMs.toFixed(0)} ms`;
  return `weather file       ${name}, ${megabytes.toFixed(1)} MB: ${readMs.toFixed(0)} ms, longest task of the page ${longest}, ${steps.length} steps shown`;
}

function median(values: readonly number[], digits: number): string {
  return `${values[values.length >> 1]!.toFixed(digits)} (median of ${values.map((value) => value.toFixed(digits)).join(' ')})`;
}

function answerLines({ firstPaintMs, firstFiguresMs, answeredMs }: AnswerPace): readonly string[] {
  return [
    `first paint        ms after opening: ${median(firstPaintMs, 0)} (wanted: under 500)`,
    `first figures      ms after opening: ${median(firstFiguresMs, 0)}`,
    `changed house      ms to its verdict and what helps it most: ${median(answeredMs, 0)} (wanted: under 2000 on two cores)`,
  ];
}

function dragLines(pace: DragPace): readonly string[] {
  const { all, script, style, layout } = pace.threadMs;
  return [
    `while dragging     new figures a second: ${median(pace.figuresPerSecond, 1)} (wanted: 15)`,
    `page's thread      ${all.toFixed(1)} ms a new set of figures (wanted: at most 12): script ${script.toFixed(1)}, style ${style.toFixed(1)}, layout ${layout.toFixed(1)}, paint and the hand's moves the rest`,
    `one run            ${pace.runMs.toFixed(0)} ms in a worker (median)`,
    `longest task       ${pace.longestTaskMs === 0 ? 'none over 50 ms' : `${pace.longestTaskMs.toFixed(0)} ms`}`,
  ];
}

/** The figures as lines for a terminal. */
export function paceLines(pace: PagePace): readonly string[] {
  return [
    ...answerLines(pace),
    ...dragLines(pace),
    `before first paint ${pace.pageScriptKB.toFixed(1)} kB of script, gzipped; the worker's ${pace.workerScriptKB.toFixed(1)} kB load beside it`,
    ...pace.imports.map(importLine),
  ];
}

if (import.meta.url === `file://${process.argv[1]}`) {
  const [part, ...questions] = process.argv.slice(2);
  const served = await servePage();
  if (part === 'answers') console.log(answerLines(await measureAnswers(served)).join('\n'));
  else if (part === 'drag') console.log(dragLines(await measureDrag(served)).join('\n'));
  else {
    if (part !== 'questions') console.log(paceLines(await measurePace(served)).join('\n'));
    console.log(questionLines(await measureQuestions(served, questions)).join('\n'));
  }
  await served.close();
}
