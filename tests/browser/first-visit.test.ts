// The built page as a first visitor meets it: an example with its year computed, and nothing in the console.
import { expect, test } from 'vitest';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
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
  const { page, complaints, close } = await openPage(served, { acts: 'open', before: noteWhatWasMade });
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
  await close();
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
