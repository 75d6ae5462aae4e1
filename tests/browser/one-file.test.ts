// The one-file build, opened from disk in a fresh profile: it computes, with climates inside and nothing asked of a
// network.
import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openPage, settledFigure } from './served-page.ts';
import { browserHost, sharedBrowser } from './shared-browser.ts';

const browser = await sharedBrowser();

test('one file on disk is the whole tool', async () => {
  const folder = (await browserHost()).oneFile;
  expect(readdirSync(folder)).toEqual(['daystone.html']);
  const address = `file://${folder}/daystone.html`;
  const { page, complaints, close } = await openPage({ browser, address }, { offline: true });
  const before = await settledFigure(page, 'house-overheated');
  expect(before).toBeGreaterThan(0);
  await page.selectOption('select[data-path="climate"]', 'anchorage');
  await page.waitForFunction(
    (old) =>
      document.querySelector('[data-figure="house-overheated"]')?.getAttribute('data-value') !== String(old),
    before,
  );
  expect(complaints).toEqual([]);
  await close();
});
