// The lines of a year in Chromium, where most years are run.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from '../browser/find-chromium.ts';
import { printTable } from './measure.ts';

/** Print the table. */
export async function benchYearsInBrowser(rounds: number, warmUps: number): Promise<void> {
  const root = join(import.meta.dirname, 'year-page');
  const outDir = mkdtempSync(join(tmpdir(), 'daystone-years-'));
  await build({ configFile: false, root, logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    configFile: false,
    root,
    logLevel: 'error',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, open: false },
  });
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking'],
  });
  try {
    const page = await browser.newPage();
    await page.goto(server.resolvedUrls!.local[0]!);
    await page.waitForFunction(() => 'years' in window);
    const measured = await page.evaluate(([r, w]) => window.years.measure(r, w), [rounds, warmUps] as const);
    printTable('One year in Chromium, everything on', measured);
  } finally {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
}
