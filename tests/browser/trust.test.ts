// "How far to trust it" as a person reaches it: from the foot of the sheet, with every source and its rows.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import checks from '../../src/report/checks.json' with { type: 'json' };
import listed from '../../src/report/checks-listed.json' with { type: 'json' };
import { CHECKS, checksInShort } from '../../src/report/trust.ts';
import { openPage, settledFigure } from './served-page.ts';
import { sharedSite } from './shared-browser.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const served = await sharedSite('plain');

test('every source is listed with its rows, and the way back leads to the sheet', async () => {
  const { page, complaints, close } = await openPage(served, { left: 'modest' });
  await settledFigure(page, 'house-overheated');
  await page.click('.sheet-foot a[href="#trust"]');
  await page.waitForSelector('.trust-view');
  expect(await page.locator('.trust-source').count()).toBe(checks.sources.length);
  expect(await page.textContent('.trust-view')).toContain(checksInShort(CHECKS));
  const rows = listed.sources.reduce(
    (sum, { lines }) => sum + lines.length,
    listed.odd.length + listed.own.length,
  );
  expect(await page.locator('.check-table tbody tr').count()).toBe(rows);
  await page.locator('.trust-source summary', { hasText: 'EN 673' }).click();
  await page.waitForSelector('.trust-source[open] td');
  await page.evaluate(AXE);
  const found = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: () => Promise<{ violations: { id: string }[] }> };
    };
    return (await axe.run()).violations.map(({ id }) => id);
  });
  expect(found).toEqual([]);
  await page.setViewportSize({ width: 390, height: 800 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.goBack();
  await page.waitForSelector('.trust-view', { state: 'detached' });
  expect(await page.isVisible('.section-drawing')).toBe(true);
  expect(complaints).toEqual([]);
  await close();
});
