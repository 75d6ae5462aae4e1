// Numbers typed on the built page, key by key: what is half typed is applied nowhere, what is out of limits stays beside
// its limit, and what no longer fits comes back when there is room.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sheet = onePage(served);

const DEPTH = 'input[data-path="sunspace.depthM"]';
const LENGTH = 'input[data-path="sunspace.lengthM"]';
const GLASS = 'input[data-path="glass.value"]';

/** What the drawing says of a number: the design's own, whatever stands in the field. */
const drawn = async (page: Page, id: string) =>
  Number(await page.getAttribute(`[data-handle="${id}"]`, 'aria-valuenow'));

/** Clear a field and type, key by key. */
async function type(page: Page, field: string, text: string): Promise<void> {
  await page.focus(field);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

/** The text that stands beside a field. */
const beside = (page: Page, field: string) =>
  page.locator('.input', { has: page.locator(field) }).locator('.input-limits');

test('a number is taken whole, refused beside its limit, and no other number pays for it', async () => {
  const { page, complaints } = await sheet();
  const steps: number[] = [];
  await settledFigure(page, 'house-overheated');
  const glass = await drawn(page, 'glass.value');

  // Two digits pass through "1", which would leave a sunspace of one metre and a tenth of the glass.
  const length = await page.inputValue(LENGTH);
  expect(length).toMatch(/^1\d/);
  await type(page, LENGTH, length);
  await page.keyboard.press('Enter');
  await settledFigure(page, 'house-overheated');
  expect(await page.inputValue(LENGTH)).toBe(length);
  expect(await drawn(page, 'glass.value')).toBe(glass);
  expect(await page.locator('.head-tools >> text=Undo').isDisabled()).toBe(true);

  // Out of limits: the draft and the house stay; Tab, a look elsewhere and Escape.
  const depth = await drawn(page, 'sunspace.depthM');
  await type(page, DEPTH, '60');
  expect(await drawn(page, 'sunspace.depthM')).toBe(depth);
  await page.keyboard.press('Tab');
  expect(await page.inputValue(DEPTH)).toBe('60');
  expect(await page.getAttribute(DEPTH, 'aria-invalid')).toBe('true');
  expect(await beside(page, DEPTH).textContent()).toMatch(/Give a number from 0\.6.*to 10/);
  expect(await drawn(page, 'sunspace.depthM')).toBe(depth);
  await page.focus(DEPTH);
  await page.keyboard.press('Escape');
  expect(Number(await page.inputValue(DEPTH))).toBe(depth);
  await type(page, DEPTH, '60');
  await page.keyboard.press('Enter');
  await page.click('button[data-take="sunspace.depthM"]');
  expect(await drawn(page, 'sunspace.depthM')).toBe(10);
  await page.click('.head-tools >> text=Undo');
  expect(await drawn(page, 'sunspace.depthM')).toBe(depth);

  // Arrows, with Shift and Alt, are one step of undo and one Escape.
  await page.focus(DEPTH);
  for (const key of ['ArrowUp', 'ArrowUp', 'Alt+ArrowDown', 'Shift+ArrowUp']) {
    await page.keyboard.press(key);
    steps.push(Number(((await drawn(page, 'sunspace.depthM')) - depth).toFixed(2)));
  }
  expect(steps).toEqual([0.1, 0.2, 0.19, 1.19]);
  await page.keyboard.press('Escape');
  expect(await drawn(page, 'sunspace.depthM')).toBe(depth);

  // The wheel scrolls the page and changes nothing, in the field and over its slider.
  await page.mouse.wheel(0, 120);
  for (const place of [DEPTH, 'input[data-slider="sunspace.depthM"]']) {
    await page.hover(place);
    const before = await page.evaluate(() => {
      const seen = new Promise((done) => window.addEventListener('wheel', done, { once: true }));
      (window as unknown as { wheeled: Promise<unknown> }).wheeled = seen;
      return null;
    });
    expect(before).toBeNull();
    await page.mouse.wheel(0, -40);
    await page.evaluate(() => (window as unknown as { wheeled: Promise<unknown> }).wheeled.then(() => null));
    expect(await drawn(page, 'sunspace.depthM')).toBe(depth);
  }

  // A rest takes a sound draft; Escape takes even that back and leaves no step behind.
  await type(page, DEPTH, '3');
  await page.waitForFunction(
    () => document.querySelector('[data-handle="sunspace.depthM"]')?.getAttribute('aria-valuenow') === '3',
  );
  await page.keyboard.press('Escape');
  expect(await drawn(page, 'sunspace.depthM')).toBe(depth);
  // Of a field at rest Ctrl-Z is the page's own undo.
  await type(page, DEPTH, '3');
  await page.keyboard.press('Enter');
  expect(await drawn(page, 'sunspace.depthM')).toBe(3);
  await page.keyboard.press('Control+Z');
  expect(await drawn(page, 'sunspace.depthM')).toBe(depth);
  expect(complaints).toEqual([]);
});

/** In the page: what is sent to the threads that run years waits until it is let go. */
function holdRuns(): void {
  const { postMessage } = Worker.prototype;
  const held: (() => void)[] = [];
  Worker.prototype.postMessage = function (this: Worker, ...message: unknown[]) {
    held.push(() => Reflect.apply(postMessage, this, message));
  };
  Object.assign(window, {
    letRunsGo() {
      Worker.prototype.postMessage = postMessage;
      for (const send of held) send();
    },
  });
}

test('figures of an older design are dimmed after a while and say so, until the new year is there', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  const figure = page.locator('[data-figure="house-overheated"]');
  const before = await figure.getAttribute('data-value');
  await page.evaluate(holdRuns);
  // A house that no other test has run: the answer to one that was is at hand.
  await type(page, DEPTH, '3.37');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => {
    const opacity = (part: string) => Number(getComputedStyle(document.querySelector(part)!).opacity);
    return (
      opacity('.figures .figure') < 0.6 && opacity('.verdict-line') < 0.6 && opacity('.figures-old') === 1
    );
  });
  expect(await page.textContent('.figures-old')).toContain('Of the design before');
  expect(await figure.getAttribute('data-value')).toBe(before);
  // A run that takes no longer than this is not seen to come and go.
  expect(await figure.evaluate((element) => getComputedStyle(element).transitionDelay)).toBe('0.15s');
  await page.evaluate(() => (window as unknown as { letRunsGo(): void }).letRunsGo());
  await settledFigure(page, 'house-overheated');
  expect(await figure.getAttribute('data-value')).not.toBe(before);
  expect(await figure.evaluate((element) => getComputedStyle(element).opacity)).toBe('1');
  expect(await page.locator('.figures-old').evaluate((words) => getComputedStyle(words).opacity)).toBe('0');
  expect(complaints).toEqual([]);
});

test('inputs behind "more" that are not as usual are counted, and alone when asked for', async () => {
  const { page, complaints } = await sheet();
  const EDITED = 'floor.thicknessM';
  const count = async () =>
    Number(/(\d+) not as usual/.exec((await page.textContent('[data-inputs="more"]'))!)![1]);
  const unusual = () =>
    page
      .locator('.inputs-more .input-place')
      .evaluateAll((all) => all.map((one) => one.querySelector<HTMLElement>('[data-path]')!.dataset.path!));
  const ask = () => page.locator('label.chip', { hasText: 'only what is unusual' }).click();
  const before = await count();
  await ask();
  const listed = await unusual();
  expect(listed).toHaveLength(before);
  expect(listed).not.toContain(EDITED);
  await ask();
  await type(page, `input[data-path="${EDITED}"]`, '24');
  await page.keyboard.press('Enter');
  await page.waitForSelector(`[data-inputs="more"]:has-text("${before + 1} not as usual")`);
  await ask();
  expect((await unusual()).toSorted()).toEqual([...listed, EDITED].toSorted());
  await ask();
  await page.click('.head-tools >> text=Undo');
  await page.waitForSelector(`[data-inputs="more"]:has-text("${before} not as usual")`);
  expect(complaints).toEqual([]);
});

test('what no longer fits is told beside its field with a choice, and comes back when there is room', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  const glass = await drawn(page, 'glass.value');
  const length = await page.inputValue(LENGTH);
  await type(page, LENGTH, '3');
  await page.keyboard.press('Enter');
  const fit = page.locator('.inputs [data-fit="glass.value"]');
  expect(await fit.textContent()).toMatch(/38.* asked for, .* built\. The glass fills its front/);
  expect(await page.locator('.section-panel .fit-lines').textContent()).toContain('Equator-facing glass: 38');
  expect(await drawn(page, 'glass.value')).toBeLessThan(glass);
  // 3 m by 2.4 m of sunspace for a bed of 16 m².
  const bed = page.locator('[data-note="plants.bedM2"]');
  expect((await bed.textContent())!.replaceAll('\u202f', ' ')).toMatch(
    /sunspace has 7\.2 m² of floor; the run plants/,
  );
  await type(page, LENGTH, length);
  await page.keyboard.press('Enter');
  expect(await drawn(page, 'glass.value')).toBe(glass);
  expect(await fit.count()).toBe(0);
  expect(await bed.count()).toBe(0);

  // Undo and redo carry what was asked; staying with what fits ends it.
  await page.click('.head-tools >> text=Undo');
  expect(await fit.count()).toBe(1);
  const built = await page.inputValue(GLASS);
  await page.click('.inputs button[data-settle="glass.value"]');
  await fit.waitFor({ state: 'detached' });
  await type(page, LENGTH, length);
  await page.keyboard.press('Enter');
  expect(await page.inputValue(GLASS)).toBe(built);
  expect(complaints).toEqual([]);
});

test('raising the glazing share raises the overheated hours', async () => {
  const { page, complaints } = await sheet();
  await settledFigure(page, 'house-overheated');
  await page.selectOption('select[data-path="sunspace.join"]', 'none');
  await page.selectOption('select[data-path="glass.basis"]', 'share-of-floor');
  await page.fill('input[data-path="glass.value"]', '10');
  const few = await settledFigure(page, 'house-overheated');
  await page.fill('input[data-path="glass.value"]', '30');
  const many = await settledFigure(page, 'house-overheated');
  expect(many).toBeGreaterThan(few + 50);
  expect(complaints).toEqual([]);
});
