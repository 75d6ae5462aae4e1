// The lines of a year in Chromium, where most years are run.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from '../browser/find-chromium.ts';
import { printTable } from './measure.ts';
import { SHARE_OF_YEAR } from './other-ways.ts';

const WAY_ROUNDS = 7;

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
    const ways = await page.evaluate(([r, w]) => window.years.otherWays(r, w), [WAY_ROUNDS, 2] as const);
    const year = ways[0]!.medianMs;
    console.log('\nOther ways to step the network of the closed example, in Chromium, scaled to a year');
    for (const [i, { name, medianMs }] of ways.entries()) {
      const ms = i === 0 ? medianMs : medianMs / SHARE_OF_YEAR;
      console.log(
        `  ${name.padEnd(58)}${(ms / 1000).toFixed(2).padStart(8)} s${(ms / year).toFixed(0).padStart(6)} times`,
      );
    }
  } finally {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
}
