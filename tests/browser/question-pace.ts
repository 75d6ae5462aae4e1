// How the built page stands while a question runs: each question asked of the example on screen with every worker the
// machine has, in a fresh page. Printed by page-pace.ts; no test depends on a time.
import type { ServedPage } from './served-page.ts';

export interface QuestionPace {
  readonly question: string;
  readonly runs: number;
  /** from the click to the first curve, map or table [ms] */
  readonly firstPictureMs: number;
  /** from the click to the whole answer [ms] */
  readonly wholeMs: number;
  /** tasks of the page's thread meanwhile that passed 50 ms, longest first [ms] */
  readonly longTasks: readonly number[];
}

interface AskWatch {
  asked: number;
  firstPicture: number;
  whole: number;
  longTasks: { start: number; ms: number }[];
}

/** The page is given this long to come to rest before it is asked [ms]: first figures, reading the offline copy. */
const REST_MS = 2500;

/** Measure every question, or those whose ids are given. */
export async function measureQuestions(served: ServedPage, only: readonly string[] = []) {
  const paces: QuestionPace[] = [];
  const ids = only.length > 0 ? only : await questionIds(served);
  for (const id of ids) paces.push(await measureQuestion(served, id));
  return paces;
}

async function questionIds(served: ServedPage): Promise<string[]> {
  const page = await served.browser.newPage();
  await page.goto(served.address);
  await page.click('.ask-panel > summary');
  await page.waitForSelector('select[data-ask="question"]');
  const ids = await page
    .locator('select[data-ask="question"] option')
    .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
  await page.close();
  return ids;
}

async function measureQuestion(served: ServedPage, question: string): Promise<QuestionPace> {
  const context = await served.browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(watchAsking);
  await page.goto(served.address);
  await page.waitForSelector('.figures[aria-busy="false"]');
  await page.click('.ask-panel > summary');
  await page.selectOption('select[data-ask="question"]', question);
  await page.waitForTimeout(REST_MS);
  await page.click('.ask-form button[type="submit"]');
  await page.waitForSelector('.ask-answer[data-answer="whole"]', { timeout: 300_000 });
  // Tasks are told a little later.
  await page.waitForTimeout(300);
  const seen = await page.evaluate(() => (globalThis as unknown as { askWatch: AskWatch }).askWatch);
  const runs = Number(await page.getAttribute('.ask-answer', 'data-runs'));
  await context.close();
  return {
    question,
    runs,
    firstPictureMs: seen.firstPicture - seen.asked,
    wholeMs: seen.whole - seen.asked,
    longTasks: seen.longTasks
      .filter(({ start, ms }) => start + ms >= seen.asked)
      .map(({ ms }) => ms)
      .sort((a, b) => b - a),
  };
}

/** Runs in the page before anything else. */
function watchAsking(): void {
  const held: AskWatch = { asked: 0, firstPicture: 0, whole: 0, longTasks: [] };
  (globalThis as unknown as { askWatch: AskWatch }).askWatch = held;
  document.addEventListener('submit', () => {
    held.asked = performance.now();
  });
  new MutationObserver(() => {
    const answer = document.querySelector('.ask-answer');
    if (!answer || held.asked === 0) return;
    const drawn = answer.querySelector('.answer-chart polyline, .answer-cell, tbody tr');
    if (drawn && held.firstPicture === 0) held.firstPicture = performance.now();
    if (answer.getAttribute('data-answer') === 'whole' && held.whole === 0) held.whole = performance.now();
  }).observe(document, { subtree: true, childList: true, attributes: true });
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries())
      held.longTasks.push({ start: startTime, ms: duration });
  }).observe({ type: 'longtask' });
}

/** The figures as lines for a terminal. */
export function questionLines(paces: readonly QuestionPace[]): readonly string[] {
  return [
    'while a question runs (example on screen, all workers, panel open beforehand)',
    ...paces.map(({ question, runs, firstPictureMs, wholeMs, longTasks }) => {
      const longest =
        longTasks.length === 0
          ? 'no task of the page over 50 ms'
          : `${longTasks.length} tasks of the page over 50 ms, longest ${longTasks[0]!.toFixed(0)} ms`;
      return `  ${question.padEnd(20)} ${String(runs).padStart(4)} runs, first picture ${(firstPictureMs / 1000).toFixed(2)} s, whole ${(wholeMs / 1000).toFixed(1)} s, ${longest}`;
    }),
  ];
}
