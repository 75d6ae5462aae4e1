// The page of tests/browser/pool-page, built, served and opened: for the browser tests of the pool and for the bench.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from './find-chromium.ts';

export interface OpenPool {
  readonly page: Page;
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

export async function openPool(): Promise<OpenPool> {
  const root = join(import.meta.dirname, 'pool-page');
  const outDir = mkdtempSync(join(tmpdir(), 'daystone-pool-'));
  const worker = { format: 'es' as const };
  await build({ configFile: false, root, worker, logLevel: 'error', build: { outDir, emptyOutDir: true } });
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
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(server.resolvedUrls!.local[0]!);
  await page.waitForFunction(() => 'pool' in window);
  return {
    page,
    complaints,
    async close() {
      await browser.close();
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
