// Every handle of the section, by mouse and by keyboard, on the built page; undo takes each drag back in one step.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onePage } from './one-page.ts';
import { settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');
const openClosed = onePage(served, { left: 'closed' });

/** Handles of the closed-off example, with a way to drag each [px] that must change its number. */
const DRAGS: readonly (readonly [string, number, number])[] = [
  ['glass.value', 0, -20],
  ['glass.tiltDeg', -40, 0],
  ['glass.overhangM', 30, 0],
  ['sunspace.depthM', 40, 0],
  ['sunspace.commonWallM', 12, 0],
  ['floor.thicknessM', 0, 14],
  ['envelope.bermShare', 0, -40],
  ['vents.sunspaceM2', -16, -19],
];

const shownValue = (page: Page, id: string) =>
  page.getAttribute(`[data-handle="${id}"]`, 'aria-valuenow').then((text) => Number(text));

/** Where a handle's knob stands, once nothing above the drawing changes and all of it is in sight. */
async function boxInSight(page: Page, id: string) {
  await settledFigure(page, 'heating');
  await page.locator('div.section-drawing').scrollIntoViewIfNeeded();
  return page.locator(`[data-handle="${id}"] .handle-knob`).boundingBox();
}

test('every handle moves its number under the mouse, undo takes the drag back in one step, and figures follow before it ends', async () => {
  const { page, complaints } = await openClosed();
  expect(await page.locator('[data-handle]').count()).toBe(DRAGS.length);
  for (const [id, dx, dy] of DRAGS) {
    const before = await shownValue(page, id);
    const knob = await boxInSight(page, id);
    const x = knob!.x + knob!.width / 2;
    const y = knob!.y + knob!.height / 2;
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let step = 1; step <= 5; step++) await page.mouse.move(x + (dx * step) / 5, y + (dy * step) / 5);
    expect(await page.locator('.handle-figure').count(), `${id} tells its figure`).toBe(1);
    await page.mouse.up();
    const after = await shownValue(page, id);
    expect(after, id).not.toBe(before);
    await page.click('text=Undo');
    expect(await shownValue(page, id), `${id} undone`).toBe(before);
  }
  const before = await settledFigure(page, 'heating');
  const knob = await boxInSight(page, 'glass.value');
  await page.mouse.move(knob!.x + 6, knob!.y + 6);
  await page.mouse.down();
  await page.mouse.move(knob!.x + 6, knob!.y - 40, { steps: 4 });
  const during = await settledFigure(page, 'heating');
  await page.mouse.up();
  expect(during).not.toBe(before);
  expect(complaints).toEqual([]);
});

test('every handle moves by the arrow keys and ends at its limits', async () => {
  const { page, complaints } = await openClosed();
  for (const [id] of DRAGS) {
    const handle = page.locator(`[data-handle="${id}"]`);
    const before = await shownValue(page, id);
    await handle.focus();
    const key = id === 'glass.tiltDeg' ? 'ArrowLeft' : 'ArrowUp';
    await page.keyboard.press(key);
    expect(await shownValue(page, id), `${id} by one step`).not.toBe(before);
    await page.keyboard.press('Home');
    expect(await shownValue(page, id), `${id} at its least`).toBe(
      Number(await handle.getAttribute('aria-valuemin')),
    );
    expect(await handle.getAttribute('aria-label')).not.toBe('');
    await page.click('text=Undo');
  }
  expect(complaints).toEqual([]);
});
