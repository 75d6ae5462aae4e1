// The one-file build, opened from disk in a fresh profile: it computes, with climates inside and nothing asked of a
// network.
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { expect, test } from 'vitest';
import { findChromium } from './find-chromium.ts';
import { settledFigure } from './served-page.ts';

test('one file on disk is the whole tool', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'daystone-file-'));
  await build({ mode: 'one-file', logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  expect(readdirSync(folder)).toEqual(['daystone.html']);
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-quic'],
  });
  const context = await browser.newContext({ offline: true });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`file://${folder}/daystone.html`);
  const before = await settledFigure(page, 'house-overheated');
  expect(before).toBeGreaterThan(0);
  await page.selectOption('select[data-path="climate"]', 'anchorage');
  await page.waitForFunction(
    (old) =>
      document.querySelector('[data-figure="house-overheated"]')?.getAttribute('data-value') !== String(old),
    before,
  );
  expect(complaints).toEqual([]);
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});
