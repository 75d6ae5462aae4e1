// The pages that browsers open, built and served on a free port of this machine: for the browser tests, the bench and
// the soak.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type InlineConfig, type Plugin, preview } from 'vite';

export interface Served {
  readonly address: string;
  /** folder the pages were built into */
  readonly folder: string;
  close(): Promise<void>;
}

/** What Chromium is started with: nothing that asks a network of its own accord. */
export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A sub-path, as a static host would serve it. */
const BASE = '/some/where/';
const POOL_ROOT = join(import.meta.dirname, 'pool-page');

/** Build the site into a folder of its own and serve it under a sub-path; `listed` is told what stands in each chunk. */
export async function serveSite(listed?: () => Plugin): Promise<Served> {
  const collecting = listed
    ? { plugins: [listed()], worker: { format: 'es' as const, plugins: () => [listed()] } }
    : {};
  return serveBuild({ ...collecting }, 'site', BASE);
}

/** The page of tests/browser/pool-page. */
export async function servePoolPage(): Promise<Served> {
  return serveBuild({ configFile: false, root: POOL_ROOT, worker: { format: 'es' } }, 'pool', '/');
}

/** The one-file build, in a folder of its own. */
export async function buildOneFile(): Promise<{ readonly folder: string; close(): void }> {
  const folder = mkdtempSync(join(tmpdir(), 'daystone-file-'));
  await build({ mode: 'one-file', logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  return { folder, close: () => rmSync(folder, { recursive: true, force: true }) };
}

/** Serve a folder that was built before. */
export async function serveFolder(folder: string, base = BASE): Promise<Served> {
  const server = await preview({
    configFile: false,
    logLevel: 'error',
    base,
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0, strictPort: false, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('the preview server has no address');
  return {
    address,
    folder,
    async close() {
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function serveBuild(config: InlineConfig, name: string, base: string): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), `daystone-${name}-`));
  await build({ ...config, logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  return serveFolder(folder, base);
}
