// The built page as a first visitor meets it: an example with its year computed, and nothing in the console. What it is, whose
// house, one verdict, the changes that help most; and that nothing of an older year stands there as if it were of this one.
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { onePage } from './one-page.ts';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sample = onePage(served, { acts: 'open', before: noteWhatWasMade });
const FIRST_SCREENS = [
  [1024, 768],
  [1152, 800],
  [1280, 800],
] as const;

interface Seen {
  verdict: string;
  acts: string;
  figures: Record<string, string>;
}

/** Runs in the page before anything else: notes what stood there before a year was run. */
function noteWhatWasMade(): void {
  const seen: { [part in keyof Seen]?: Seen[part] | undefined } = {};
  Object.assign(globalThis, { seen });
  new MutationObserver(() => {
    const made = (of: string) => document.querySelector<HTMLElement>(`${of}[data-made]`);
    seen.verdict ??= made('.verdict')?.querySelector('.verdict-line')?.textContent ?? undefined;
    seen.acts ??= made('.acts')?.textContent ?? undefined;
    const figures = made('.figures')?.querySelectorAll<HTMLElement>('[data-figure]');
    if (figures && !seen.figures)
      seen.figures = Object.fromEntries([...figures].map(({ dataset }) => [dataset.figure, dataset.value]));
  }).observe(document, { subtree: true, childList: true, attributes: true });
}

/**
 * Sine, power and exponential of a browser and of the build's Node differ in the last place, and a hand that opens a window
 * an hour sooner carries that on: a few hours in a thousand at most.
 */
function expectNear(one: number, other: number, of: string): void {
  expect(Math.abs(one - other), `${of}: ${one} and ${other}`).toBeLessThanOrEqual(
    Math.max(0.005 * other, 0.05),
  );
}

/** The same words with the same numbers. */
function expectAlike(one: string, other: string): void {
  const NUMBER = /\d[\d,]*(\.\d+)?/g;
  const numbers = (text: string) => text.match(NUMBER)!.map((number) => Number(number.replaceAll(',', '')));
  expect(one.replace(NUMBER, '#')).toBe(other.replace(NUMBER, '#'));
  for (const [i, number] of numbers(one).entries()) expectNear(number, numbers(other)[i]!, other);
}

test('the page opens on an example that was run when it was built, the run in the page says the same, nothing is in the console, and serious cautions are counted', async () => {
  const { page, complaints } = await sample();
  expect(await settledFigure(page, 'house-overheated')).toBeGreaterThan(0);
  await page.waitForSelector('.acts:not([data-made])');
  const made = await page.evaluate(() => (globalThis as unknown as { seen: Seen }).seen);
  expectAlike(made.verdict, (await page.textContent('.verdict-line'))!);
  expectAlike(made.acts, (await page.textContent('.acts'))!);
  expect(await page.locator('.acts li').count()).toBe(3);
  // What this is, whose house, the verdict, all three changes and the whole drawing stand on the first screen, above the bar
  // of figures where there is one.
  for (const [width, height] of FIRST_SCREENS) {
    await page.setViewportSize({ width, height });
    const drawn = await page.waitForFunction(() => {
      const box = (part: string) => document.querySelector(part)!.getBoundingClientRect();
      // The drawing follows its frame a moment later.
      if (Math.round(box('div.section-drawing svg').width) !== Math.round(box('div.section-drawing').width))
        return null;
      const parts = ['.verdict-what', '.verdict-sample', '.verdict-line', '.acts', 'div.section-drawing svg'];
      const bar = box('.figure-bar');
      return {
        feet: parts.map((part) => box(part).bottom),
        free: bar.height > 0 ? bar.top : window.innerHeight,
      };
    });
    const { feet, free } = (await drawn.jsonValue())!;
    expect(feet).toEqual(feet.toSorted((a, b) => a - b));
    expect(feet.at(-1), `${width} × ${height}`).toBeLessThanOrEqual(free);
  }
  const run = await page
    .locator('.figures:not([data-made]) [data-figure]')
    .evaluateAll((all) => Object.fromEntries(all.map((one) => [one.dataset.figure, one.dataset.value])));
  expect(Object.keys(run).length).toBeGreaterThan(8);
  expect(Object.keys(made.figures)).toEqual(Object.keys(run));
  for (const [id, value] of Object.entries(run)) expectNear(Number(made.figures[id]), Number(value), id);
  expect(await page.locator('.map-field canvas').count()).toBe(1);
  // Charts are drawn when they come into sight.
  for (const id of ['hot-week', 'cold-week']) {
    await page.locator(`#${id}`).evaluate((section) => section.scrollIntoView());
    await page.waitForSelector(`#${id} .week-chart canvas`);
  }
  expect(await page.locator('.section-drawing svg polygon').count()).toBeGreaterThan(10);
  expect(complaints).toEqual([]);
  const fold = page.locator('#findings details', { hasText: 'Before you build' });
  const serious = await fold.locator('.is-danger').count();
  expect(serious).toBeGreaterThan(0);
  expect(await fold.locator('summary').textContent()).toContain(
    `for this design, ${serious} of them serious`,
  );
  await page.selectOption('.head-example select', 'modest');
  await settledFigure(page, 'house-overheated');
  const calm = await fold.locator('.is-danger').count();
  expect(await fold.locator('summary').textContent()).toMatch(
    calm === 0 ? /for this design$/ : new RegExp(`${calm} of them serious`),
  );
});

test('above the drawing stand what this is, a verdict and the changes that help most; one is tried and taken back', async () => {
  const { page, complaints } = await sample();
  // Of the houses that something helps the one with the fewest changes to try.
  await page.selectOption('.head-example select', 'closed');
  const hot = await settledFigure(page, 'house-overheated');
  const verdict = page.locator('.verdict');
  expect(await verdict.textContent()).toContain('a year in a house that the sun heats');
  expect(await verdict.textContent()).toContain('made-up sample house');
  const line = await page.textContent('.verdict-line');
  expect(line).toMatch(/back-up heat/);
  const bottom = (await verdict.boundingBox())!;
  const drawing = (await page.locator('div.section-drawing').boundingBox())!;
  expect(bottom.y + bottom.height).toBeLessThanOrEqual(drawing.y);
  await page.waitForFunction(
    (said) => document.querySelector('[data-live="verdict"]')?.textContent === said,
    line,
  );

  await page.waitForSelector('.acts li');
  const acts = await page.locator('.acts li b').allTextContents();
  expect(acts.length).toBeGreaterThan(0);
  expect(await violations(page)).toEqual([]);

  // A drag runs them anew; the drawing stays under the hand.
  const top = async () => (await page.locator('div.section-drawing').boundingBox())!.y;
  const before = await top();
  const knob = (await page.locator('[data-handle="glass.tiltDeg"] .handle-knob').boundingBox())!;
  await page.mouse.move(knob.x + 5, knob.y + 5);
  await page.mouse.down();
  await page.mouse.move(knob.x - 30, knob.y + 5, { steps: 4 });
  await page.waitForSelector('.acts-wait');
  expect(await top()).toBe(before);
  await page.mouse.up();
  await page.locator('button', { hasText: /^Undo$/ }).click();
  await page.waitForSelector('.acts li');
  const humid = await settledFigure(page, 'house-humid');
  await page.locator('button[data-act="try"]').last().click();
  const then = [await settledFigure(page, 'house-overheated'), await settledFigure(page, 'house-humid')];
  expect(then).not.toEqual([hot, humid]);
  expect(await page.textContent('.verdict')).not.toContain('sample house');
  await page.click('.notices >> text=Take it back');
  expect(await settledFigure(page, 'house-overheated')).toBe(hot);
  expect(await page.locator('.notices >> text=Take it back').count()).toBe(0);

  // The same changes stand in the report.
  await page.click('.keep-tools >> text=Report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper-what-we-tried td');
  const paper = (await page.textContent('.paper'))!.toLowerCase();
  for (const act of acts) expect(paper).toContain(act.replace(/^(Then|Or else:) /, '').toLowerCase());
  await page.click('text=Back to the sheet');

  // Another place: the verdict and figures of the old one are gone before the new ones come.
  const seen = await page.evaluate(async () => {
    const select = document.querySelector<HTMLSelectElement>('select[data-path="climate"]')!;
    const old = document.querySelector('.verdict-line')!.textContent;
    select.value = 'tucson';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    const lines: string[] = [];
    while (document.querySelector('.figures')!.getAttribute('aria-busy') !== 'false' || lines.length < 2) {
      await new Promise(requestAnimationFrame);
      lines.push(document.querySelector('.verdict-line')!.textContent!);
    }
    // The frame in which the choice is drawn comes first.
    return { old, lines: lines.slice(1) };
  });
  expect(seen.lines).not.toContain(seen.old);
  expect(seen.lines).toContain('Computing the year…');

  await page.selectOption('.head-example select', 'modest');
  await page.click('button[data-act="own"]');
  await page.waitForSelector('.start-view');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('five answers');
  expect(complaints).toEqual([]);
});

test('on the way to an own house a wrong number is not passed over, and a step back loses no answer', async () => {
  const { page, complaints, close } = await openPage(served);
  const floor = '[data-field="start-floor"]';
  const place = '[data-start="climate"]';
  await page.click('[data-act="own"]');
  await page.selectOption(place, 'tucson');
  await page.click(floor);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('99999');
  await page.click('[data-start="go"]');
  expect(await page.evaluate(() => location.hash)).toBe('#own');
  expect(await page.evaluate(() => (document.activeElement as HTMLElement).dataset.field)).toBe(
    'start-floor',
  );
  expect(await page.textContent('.limited-field.is-wrong')).toContain('Give a number from');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('88');
  await page.keyboard.press('Tab');
  await page.goBack();
  await page.waitForSelector('.sheet:not([hidden])');
  await page.goForward();
  await page.waitForSelector(floor);
  expect([await page.inputValue(place), await page.inputValue(floor)]).toEqual(['tucson', '88.0']);
  // Pressed twice by mistake, it is one step to be undone.
  await page.dblclick('[data-start="go"]');
  await page.waitForSelector('.sheet:not([hidden])');
  await settledFigure(page, 'house-overheated');
  expect(await page.inputValue('[data-path="house.floorAreaM2"]')).toBe('88');
  expect(await page.inputValue('select[data-path="climate"]')).toBe('tucson');
  await page.click('text=Undo');
  expect(await page.textContent('.verdict')).toContain('sample house');
  expect(complaints).toEqual([]);
  await close();
});
