// The report as a person gets it: the three examples printed to PDF by the browser, both papers among them. Length, text, and in
// print layout what can be seen by machine: nothing wider than its place, no empty picture, no page nearly empty.
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onePage } from './one-page.ts';
import { pdfPages, requirePdftotext } from './pdf-text.ts';
import { settledFigure } from './served-page.ts';
import { scratchFolder, sharedSite } from './shared-browser.ts';

requirePdftotext();
const served = await sharedSite('plain');
const sheet = onePage(served);
const folder = await scratchFolder();

const EXAMPLES = ['leaning', 'closed', 'modest'] as const;
const TYPED = {
  client: 'The Quillens',
  place: 'Larkspur Bench',
  adviser: 'A. Adviser',
  question: 'How much glass can it carry?',
};
const MM = 96 / 25.4;
/** Paper and the width between the margins [mm]. */
const PAPERS = { A4: { wide: 210, high: 297 }, Letter: { wide: 215.9, high: 279.4 } } as const;
const SIDE_MARGINS_MM = 30;

/** Open the report of an example, the two others beside it, with everything typed. */
async function openReport(page: Page, example: string): Promise<void> {
  await settledFigure(page, 'house-overheated');
  for (const other of EXAMPLES.filter((id) => id !== example)) {
    await page.selectOption('.head-example select', other);
    await page.fill('.version-keep input', `the ${other} one`);
    await page.click('.version-keep button');
  }
  for (const box of await page.locator('.version-check input').all()) await box.check();
  await page.selectOption('.head-example select', example);
  await settledFigure(page, 'house-overheated');
  await showReport(page);
  for (const [field, text] of Object.entries(TYPED)) await page.fill(`[data-report="${field}"]`, text);
  await page.waitForFunction(
    (text) => document.querySelector('.paper')?.textContent?.includes(text),
    TYPED.question,
  );
}

async function showReport(page: Page): Promise<void> {
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper');
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** What is cut or empty in print layout at the width of a paper. */
async function faultsInPrint(page: Page, paper: keyof typeof PAPERS): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({
    width: Math.floor((PAPERS[paper].wide - SIDE_MARGINS_MM) * MM),
    height: 1000,
  });
  const faults = await page.evaluate(() => {
    const said: string[] = [];
    const name = (element: Element) => `${element.tagName} ${(element.textContent ?? '').slice(0, 40)}`;
    const wide = document.documentElement.clientWidth;
    for (const element of document.querySelectorAll('.paper *')) {
      if (element.closest('svg') && element.tagName !== 'svg') continue;
      const box = element.getBoundingClientRect();
      if (box.left < -1 || box.right > wide + 1) said.push(`off the paper: ${name(element)}`);
      if (element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0)
        said.push(`wider than its place: ${name(element)}`);
    }
    // Tables of the assumptions stand in columns: none may reach into the next.
    const tables = [...document.querySelectorAll('.paper-columns table')].map((table) =>
      table.getBoundingClientRect(),
    );
    for (const [i, one] of tables.entries())
      for (const other of tables.slice(i + 1))
        if (
          Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1 &&
          Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 1
        )
          said.push('two tables lie over each other');
    for (const svg of document.querySelectorAll<SVGSVGElement>('.paper svg')) {
      const frame = svg.getBoundingClientRect();
      if (frame.width < 200 || frame.height < 60) said.push(`a picture of ${frame.width} × ${frame.height}`);
      const drawn = [...svg.querySelectorAll('path, polyline, rect:not([fill="none"])')]
        .filter((shape) => !shape.closest('defs'))
        .map((shape) => shape.getBoundingClientRect());
      const across =
        Math.max(...drawn.map(({ right }) => right)) - Math.min(...drawn.map(({ left }) => left));
      const down = Math.max(...drawn.map(({ bottom }) => bottom)) - Math.min(...drawn.map(({ top }) => top));
      if (!(across > 0.6 * frame.width && down > 0.4 * frame.height))
        said.push(`an empty picture: ${svg.dataset.picture}`);
      for (const word of svg.querySelectorAll('text')) {
        const box = word.getBoundingClientRect();
        if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.bottom > frame.bottom + 2)
          said.push(`cut word in ${svg.dataset.picture}: ${word.textContent}`);
      }
    }
    for (const control of document.querySelectorAll('button, input, select, textarea, .sheet, .report-tools'))
      if (control.getClientRects().length > 0) said.push(`on paper: ${name(control)}`);
    return said;
  });
  await page.emulateMedia({ media: null });
  await page.setViewportSize({ width: 1280, height: 900 });
  return faults;
}

/** Print the report on these papers and look at every page. */
async function expectWholeInPrint(
  page: Page,
  example: string,
  units: 'metric' | 'US',
  papers: readonly (keyof typeof PAPERS)[],
): Promise<void> {
  const title = await page.textContent('.paper-head h1');
  for (const paper of papers) {
    expect(await faultsInPrint(page, paper), paper).toEqual([]);
    const file = join(folder, `${example}-${units}-${paper}.pdf`);
    await page.pdf({ path: file, format: paper });
    const pages = pdfPages(file);
    // Two pages that everybody reads, and the appendix behind them.
    expect(
      pages.findIndex((text) => text.includes('The answer at length')),
      paper,
    ).toBe(2);
    expect(pages.length, paper).toBeLessThanOrEqual(7);
    const whole = pages.join(' ');
    for (const text of [
      title!,
      ...Object.values(TYPED),
      'In short',
      'What we tried',
      'Words',
      'What matters most',
      'What else we find',
      'Take care of this too',
      'What we assumed',
    ])
      expect(whole, paper).toContain(text);
    for (const text of [
      'Beside other versions',
      'the leaning one',
      'How far to trust it',
      'too hot',
      'Jan',
      'glass',
    ])
      expect(whole, paper).toContain(text);
    expect(whole).not.toMatch(/NaN|undefined|\[object/);
    expect(whole).toMatch(units === 'US' ? /\d °F/ : /\d °C/);
    expect(whole).not.toMatch(units === 'US' ? /\d\s?°C/ : /\d\s?°F/);
    for (const [i, text] of pages.entries()) {
      expect(text, `${paper}, foot of page ${i + 1}`).toMatch(/Daystone \d+\.\d+\.\d+ · \d+ \w+ \d{4}/);
      expect(text).toMatch(new RegExp(`${i + 1} ?/ ?${pages.length}$`));
      // The foot alone is about 60 letters.
      expect(text.length, `${paper}, page ${i + 1} is nearly empty`).toBeGreaterThan(300);
      // A heading that closes a page has lost what it heads.
      expect(text).not.toMatch(
        /(What matters most|What else we find|Take care of this too|What we assumed|How far to trust it) Daystone \d/,
      );
    }
  }
}

// The longest of the three on both papers, and on the narrower also in the other units.
test.each([
  ['leaning', ['A4', 'Letter']],
  ['closed', ['A4']],
  ['modest', ['Letter']],
] as const)('the report of %s prints whole on %s', async (example, papers) => {
  const { page, complaints } = await sheet();
  await openReport(page, example);
  await expectWholeInPrint(page, example, 'metric', papers);
  if (example === 'leaning') {
    await page.click('text=Back to the sheet');
    await page.locator('label.chip', { hasText: /^US$/ }).click();
    await settledFigure(page, 'house-overheated');
    await showReport(page);
    await expectWholeInPrint(page, example, 'US', ['A4']);
  }
  expect(complaints).toEqual([]);
});

test('what was typed for the report outlives a reload, and the sheet is as it was left', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.fill('input[data-path="glass.tiltDeg"]', '75');
  await settledFigure(page, 'house-overheated');
  await page.click('.keep-tools >> text=Report');
  await page.fill('[data-report="client"]', TYPED.client);
  await page.reload();
  await page.waitForSelector('.paper');
  expect(await page.inputValue('[data-report="client"]')).toBe(TYPED.client);
  expect(await page.textContent('.paper')).toContain('at 75°');
  await page.click('text=Back to the sheet');
  await page.waitForSelector('.paper', { state: 'detached' });
  expect(await page.inputValue('input[data-path="glass.tiltDeg"]')).toBe('75');
  expect(complaints).toEqual([]);
});
