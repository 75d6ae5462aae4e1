// The site and the browser that all test files of a run share. A file holds a connection of its own, so nothing it opens
// outlives it; each test opens a fresh profile.
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { get, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { json } from 'node:stream/consumers';
import { type Browser, type BrowserContextOptions, chromium, type Download } from 'playwright-core';
import { afterAll, inject } from 'vitest';
import type { BrowserHost } from './host.ts';
import type {} from './start-host.ts';

export interface SharedSite {
  readonly browser: Browser;
  readonly address: string;
  /** folder of the site; for reading only */
  readonly folder: string;
  readonly options: BrowserContextOptions;
}

/** What all browser tests of a run share, once it stands. */
export async function browserHost(): Promise<BrowserHost> {
  // However long it takes: fetch would give up.
  const said = await new Promise<IncomingMessage>((resolve, reject) =>
    get(inject('hostAddress'), resolve).once('error', reject),
  );
  if (said.statusCode !== 200)
    throw new Error('the pages for the browser tests could not be built or served');
  return (await json(said)) as BrowserHost;
}

/** For the head of a test file. */
export async function sharedBrowser(): Promise<Browser> {
  const browser = await chromium.connect((await browserHost()).browser);
  afterAll(() => browser.close());
  return browser;
}

/**
 * For the head of a test file. `plain` for files that are not about the copy of the site for days without a network: its
 * worker, which fetches the whole site anew for each profile, is then kept out.
 */
export async function sharedSite(copy: 'with offline copy' | 'plain'): Promise<SharedSite> {
  const serviceWorkers = copy === 'plain' ? ('block' as const) : ('allow' as const);
  return { browser: await sharedBrowser(), ...(await browserHost()).site, options: { serviceWorkers } };
}

/** A folder for the files a test makes, gone after the last test of its file. */
export async function scratchFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'daystone-scratch-'));
  afterAll(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** What was downloaded. */
export async function bytesOf(download: Download): Promise<Buffer> {
  const folder = await mkdtemp(join(tmpdir(), 'daystone-download-'));
  try {
    const file = join(folder, 'download');
    await download.saveAs(file);
    return readFileSync(file);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
