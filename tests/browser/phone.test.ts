// The page under a finger: real touches, sent below the page, on a phone's screen.
import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onePage } from './one-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const sheet = onePage(served, {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
});

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A finger set down, led from point to point and lifted. */
async function touch(finger: CDPSession, points: readonly Point[]): Promise<void> {
  for (const [i, point] of points.entries())
    await finger.send('Input.dispatchTouchEvent', {
      type: i === 0 ? 'touchStart' : 'touchMove',
      touchPoints: [point],
    });
  await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** Ten points on the way by so much. */
const way = (from: Point, dx: number, dy: number): Point[] =>
  Array.from({ length: 11 }, (_, i) => ({ x: from.x + (dx * i) / 10, y: from.y + (dy * i) / 10 }));

/** The middle of an element, scrolled to the middle of the screen. */
async function middleOf(page: Page, selector: string): Promise<Point> {
  await page
    .locator(selector)
    .evaluate((element) => element.scrollIntoView({ block: 'center', behavior: 'instant' }));
  const box = (await page.locator(selector).boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Where the page stands once it has come to rest: the same for ten frames. */
const restingPlace = (page: Page) =>
  page.evaluate(async () => {
    let last = Number.NaN;
    for (let same = 0; same < 10; same = window.scrollY === last ? same + 1 : 0) {
      last = window.scrollY;
      await new Promise(requestAnimationFrame);
    }
    return last;
  });

/** Everything to press that is smaller than 44 px [CSS px], links within sentences aside. */
const smallTargets = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, select, summary, input, .button, [role="slider"] .handle-reach')]
      .filter((element) => !element.closest('.visually-hidden') && element.getClientRects().length > 0)
      .map((element) => {
        // A box is pressed by its label too.
        const pressed = element.matches('[type="checkbox"], [type="radio"]')
          ? element.closest('label')!
          : element;
        const { width, height } = pressed.getBoundingClientRect();
        const name = element.getAttribute('aria-label') ?? element.textContent ?? '';
        return { name: `${element.tagName} ${name.slice(0, 40)} ${width}×${height}`, width, height };
      })
      .filter(({ width, height }) => width < 43.5 || height < 43.5)
      .map(({ name }) => name),
  );

test('on a phone a swipe up or down scrolls and changes nothing, and a move across moves one number', async () => {
  const { page, complaints } = await sheet();
  const top = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((e) => e.getBoundingClientRect().top + window.scrollY);
  expect(await top('#findings .finding-list')).toBeLessThan(await top('.inputs'));
  // The first screen holds the verdict and the whole drawing, above the bar of figures.
  const drawing = (await page.locator('.section-panel .section-drawing').boundingBox())!;
  expect(drawing.y).toBeGreaterThan(await top('.verdict-line'));
  expect(drawing.y + drawing.height).toBeLessThan((await page.locator('.figure-bar').boundingBox())!.y);
  const undo = page.locator('.head-tools >> text=Undo');
  const finger = await page.context().newCDPSession(page);

  // Over a slider, from its knob and from its rail.
  const slider = '[data-touch="glass.frameShare"]';
  for (const dx of [0, 60]) {
    const from = await middleOf(page, slider);
    const before = await restingPlace(page);
    await touch(finger, way({ x: from.x + dx, y: from.y }, 8, -160));
    await page.waitForFunction((y) => window.scrollY > y + 40, before);
    await restingPlace(page);
    expect(await undo.isDisabled()).toBe(true);
  }
  // A tap on the rail moves nothing; a move across does, and is one step of undo.
  await touch(finger, [await middleOf(page, slider)]);
  expect(await undo.isDisabled()).toBe(true);
  const share = await page.inputValue('input[data-path="glass.frameShare"]');
  const from = await middleOf(page, slider);
  await touch(finger, [...way(from, 40, 4), ...way({ x: from.x + 40, y: from.y }, 0, -60)]);
  expect(Number(await page.inputValue('input[data-path="glass.frameShare"]'))).toBeGreaterThan(Number(share));
  await restingPlace(page);
  // What grows above it does not push it from under the finger.
  const after = (await page.locator(slider).boundingBox())!;
  expect(Math.abs(after.y + after.height / 2 - from.y)).toBeLessThan(10);
  await undo.click();
  expect(await page.inputValue('input[data-path="glass.frameShare"]')).toBe(share);
  expect(await undo.isDisabled()).toBe(true);

  // A handle that goes across lets a swipe down pass.
  const knob = await middleOf(page, '[data-handle="sunspace.depthM"] .handle-knob');
  const above = await restingPlace(page);
  await touch(finger, way(knob, 4, -200));
  await page.waitForFunction((y) => window.scrollY > y + 40, above);
  expect(await undo.isDisabled()).toBe(true);

  // One step at a time beside the number.
  await page.click('[aria-label="Frame share: one step less"]');
  expect(await page.inputValue('input[data-path="glass.frameShare"]')).toBe(String(Number(share) - 1));
  await undo.click();

  // A message, with a cross as high as a finger is wide, leaves the sheet its width.
  await page.click('.keep-tools >> text=Copy link');
  await page.waitForSelector('.notices p');
  expect((await page.locator('.sheet-body').boundingBox())!.width).toBe(
    (await page.locator('.sheet-head').boundingBox())!.width,
  );
  await page.click('.notices button[aria-label]');

  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  await page.waitForSelector('.ask-form');
  expect(await smallTargets(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  const bar = (await page.locator('.figure-bar').boundingBox())!;
  expect(bar.y + bar.height).toBeCloseTo(844, 0);
  expect(complaints).toEqual([]);
});

test('a handle follows a finger', async () => {
  const { page, complaints } = await sheet();
  const depth = () =>
    page.getAttribute('[data-handle="sunspace.depthM"]', 'aria-valuenow').then((text) => Number(text));
  const before = await depth();
  const knob = await middleOf(page, '[data-handle="sunspace.depthM"] .handle-knob');
  await restingPlace(page);
  const finger = await page.context().newCDPSession(page);
  await touch(finger, way(knob, 16, 0));
  expect(await depth()).toBeGreaterThan(before);
  expect(complaints).toEqual([]);
});
