// What all browser tests of a run share, in a process of its own: the site, the one-file page and the page of the pool,
// built once as a person would build them, served once, and one Chromium that every test file connects to. Says where
// they are in a message to the process that started it, and ends when that lets go of it.
import { chromium } from 'playwright-core';
import type { Plugin } from 'vite';
import { buildOneFile, CHROMIUM_ARGS, servePoolPage, serveSite } from './built-site.ts';
import { findChromium } from './find-chromium.ts';

export interface BrowserHost {
  /** where a Chromium listens for Playwright */
  readonly browser: string;
  readonly site: { readonly address: string; readonly folder: string };
  /** names of the packages that stand in the site's scripts */
  readonly packages: readonly string[];
  /** folder of the one-file page */
  readonly oneFile: string;
  readonly poolAddress: string;
}

const packages = new Set<string>();
const collectPackages = (): Plugin => ({
  name: 'collect-packages',
  generateBundle(_, bundle) {
    for (const part of Object.values(bundle)) {
      if (part.type !== 'chunk') continue;
      for (const id of Object.keys(part.modules)) {
        const name = /^.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
        if (name !== undefined) packages.add(name);
      }
    }
  },
});

// A test opens a page for a few years of one house, a question runs a hundred: the loops are compiled to the last only where
// they run on and on. Threads that compile and sweep beside the page's own cost more than they give back.
const args = [...CHROMIUM_ARGS, '--js-flags=--single-threaded --interrupt-budget=8000000'];
const [browser, site, oneFile, pool] = await Promise.all([
  chromium.launchServer({ executablePath: findChromium(), args, host: '127.0.0.1' }),
  serveSite(collectPackages),
  buildOneFile(),
  servePoolPage(),
]);
const host: BrowserHost = {
  browser: browser.wsEndpoint(),
  site: { address: site.address, folder: site.folder },
  packages: [...packages],
  oneFile: oneFile.folder,
  poolAddress: pool.address,
};
process.send?.(host);
process.once('disconnect', async () => {
  await browser.close();
  await Promise.all([site.close(), oneFile.close(), pool.close()]);
  process.exit();
});
