import { createHash } from 'node:crypto';
import { availableParallelism } from 'node:os';
import { VitePWA } from 'vite-plugin-pwa';
import { viteSingleFile } from 'vite-plugin-singlefile';
import { defineConfig } from 'vitest/config';
import { licenceText, shippedPackages } from './src/cli/shipped-packages.ts';
import { LongestFirst } from './tests/longest-first.ts';

// Two builds. The plain one is a site that works from any folder and, after the first visit, with no network.
// `--mode one-file` makes dist/daystone.html, which opens from disk: everything is inside it, climates too, and the lists
// of places if DAYSTONE_PLACES=inside; what it weighs is printed.
export default defineConfig(({ mode }) => {
  const oneFile = mode === 'one-file';
  return {
    base: './',
    publicDir: oneFile ? false : 'public',
    worker: { format: oneFile ? 'iife' : 'es', rolldownOptions: { checks: QUIET } },
    build: {
      target: 'es2022',
      emptyOutDir: !oneFile,
      chunkSizeWarningLimit: oneFile ? 6000 : 700,
      rolldownOptions: { checks: QUIET, ...(!oneFile && { output: { codeSplitting: FIRST_IN_ONE } }) },
    },
    resolve: { alias: oneFile ? ONE_FILE_PARTS : [] },
    plugins: oneFile
      ? [
          sampleAnswer(),
          viteSingleFile(),
          iconInside(),
          licencesInside(),
          door('one file'),
          namedPage('daystone.html'),
        ]
      : mode === 'test'
        ? []
        : [sampleAnswer(), licencesBeside(), door('site'), offline()],
    test: {
      reporters: ['default', './tests/slowest-files.ts'],
      maxWorkers: availableParallelism() + 1,
      sequence: { sequencer: LongestFirst },
      // A loaded machine is no reason to fail.
      testTimeout: 180_000,
      hookTimeout: 180_000,
      projects: [
        {
          extends: true,
          test: {
            name: 'unit',
            include: ['tests/**/*.test.{ts,tsx}'],
            exclude: ['tests/browser/**'],
            ...SHARED,
          },
        },
        {
          extends: true,
          test: {
            name: 'browser',
            include: ['tests/browser/**/*.test.ts'],
            globalSetup: 'tests/browser/start-host.ts',
            isolate: false,
          },
        },
      ],
    },
  };
});

/**
 * Files share their workers, and with them what is loaded and compiled. The engine is loaded as Node loads it: as Vitest
 * rewrites modules, with every import a lookup, its loop takes twice the time. By the loader for ES modules alone: the
 * one for CommonJS too slows every array access once a package of that form came through it (docs/fast-loop.md). There are
 * workers for all cores: threads of a worker's own that compile and sweep beside it only take from the others.
 */
const SHARED = {
  isolate: false,
  setupFiles: 'tests/equal-columns.ts',
  execArgv: ['--import', 'tsx/esm', '--single-threaded'],
  server: { deps: { external: [/\/src\/(?!app\/)/, /\/workers\//] } },
};

/** No news to who builds: the command line loads late what a worker holds from the start, and the sample answer takes its years. */
const QUIET = { ineffectiveDynamicImport: false, bundlerTimings: false };

/** What the first paint waits for comes in one file: in forty small ones, six at a time, it took a fifth of a second longer. */
const FIRST_IN_ONE = { groups: [{ name: 'first', tags: ['$initial' as const] }] };

/** What a page opened from disk may not fetch is carried inside it. */
const ONE_FILE_PARTS = [
  { find: /^(.*)\/simulation-thread\.ts$/, replacement: '$1/simulation-thread-inline.ts' },
  { find: /^(.*)\/climate-texts\.ts$/, replacement: '$1/climate-texts-inline.ts' },
  { find: /^(.*)\/offline-copy\.ts$/, replacement: '$1/offline-copy-none.ts' },
  {
    find: /^(.*)\/place-files\.ts$/,
    replacement: `$1/place-files-${process.env.DAYSTONE_PLACES === 'inside' ? 'inline' : 'none'}.ts`,
  },
];

/** What the page knows of its sample house before it has run anything, as a module; made once for all builds of a process. */
function sampleAnswer() {
  const name = 'virtual:sample-answer';
  const made = Symbol.for(name);
  const held = globalThis as { [made]?: Promise<string> };
  const make = async () => {
    // Loaded as Node loads it, which halves its years; see SHARED.
    const { tsImport } = await import('tsx/esm/api');
    const module: typeof import('./src/cli/sample-answer.ts') = await tsImport(
      './src/cli/sample-answer.ts',
      import.meta.url,
    );
    return JSON.stringify(await module.sampleAnswer());
  };
  return {
    name: 'sample-answer',
    resolveId: (id: string) => (id === name ? `\0${name}` : undefined),
    async load(id: string) {
      if (id !== `\0${name}`) return;
      held[made] ??= make();
      return `export default JSON.parse(${JSON.stringify(await held[made])});`;
    },
  };
}

/** A service worker that keeps the whole site, and the manifest that makes it installable. */
function offline() {
  return VitePWA({
    registerType: 'prompt',
    injectRegister: false,
    workbox: {
      globPatterns: ['**/*.{js,css,html,svg,woff2,txt}'],
      // Of the first visit too, so that what it fetches beside the site is kept.
      clientsClaim: true,
      // The lists of places come with the first search and are kept from then on.
      runtimeCaching: [{ urlPattern: /\.bin$/, handler: 'CacheFirst', options: { cacheName: 'places' } }],
      cleanupOutdatedCaches: true,
    },
    manifest: {
      name: 'Daystone',
      short_name: 'Daystone',
      description: 'Draw a sun-heated house with a sunspace and see its year, hour by hour.',
      display: 'standalone',
      background_color: '#f6f1e4',
      theme_color: '#f6f1e4',
      icons: [
        { src: 'favicon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
        { src: 'icon-maskable.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'maskable' },
      ],
    },
  });
}

/**
 * The content security policy, as the first thing in the built page: only its own files, and of these only what it
 * uses. The one-file build has its script and style inside and allows exactly these, by hash. Styles that the page
 * sets by script are no inline styles to a browser. A page that is served may say more by header (frame-ancestors).
 */
function door(build: 'site' | 'one file') {
  const own = build === 'site';
  return {
    name: 'door',
    apply: 'build' as const,
    enforce: 'post' as const,
    generateBundle: {
      order: 'post' as const,
      handler(_: unknown, bundle: Record<string, { fileName: string; source?: unknown }>) {
        const page = Object.values(bundle).find(({ fileName }) => fileName.endsWith('.html'));
        if (page === undefined) return;
        const html = String(page.source);
        const inside = (tag: 'script' | 'style') =>
          [...html.matchAll(new RegExp(`<${tag}\\b(?![^>]*\\bsrc=)[^>]*>([^]*?)</${tag}>`, 'g'))].map(
            ([, text]) => `'sha256-${createHash('sha256').update(text!).digest('base64')}'`,
          );
        const policy = {
          'default-src': ["'none'"],
          'script-src': own ? ["'self'"] : inside('script'),
          'style-src': own ? ["'self'"] : inside('style'),
          'font-src': [own ? "'self'" : 'data:'],
          'img-src': own ? ["'self'", 'data:'] : ['data:'],
          'worker-src': [own ? "'self'" : 'blob:'],
          'connect-src': [own ? "'self'" : "'none'"],
          'manifest-src': [own ? "'self'" : "'none'"],
          'base-uri': ["'none'"],
          'form-action': ["'none'"],
        };
        const text = Object.entries(policy).map(([name, from]) => `${name} ${from.join(' ')}`);
        const meta = `<meta http-equiv="Content-Security-Policy" content="${text.join('; ')}" />`;
        page.source = html.replace(/<meta charset="utf-8" \/>/, (charset) => `${charset}\n    ${meta}`);
      },
    },
  };
}

/** The licences of what ships, as a file beside the page. */
function licencesBeside() {
  return {
    name: 'licences-beside',
    apply: 'build' as const,
    generateBundle(this: { emitFile(file: { type: 'asset'; fileName: string; source: string }): void }) {
      const source = licenceText(shippedPackages(import.meta.dirname));
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  };
}

/** The same at the end of a page that is one file; two dashes would end the comment. */
function licencesInside() {
  return {
    name: 'licences-inside',
    apply: 'build' as const,
    transformIndexHtml: (html: string) =>
      html.replace('</html>', () => {
        const text = licenceText(shippedPackages(import.meta.dirname)).replaceAll('--', '- -');
        return `</html>\n<!--\n${text}-->`;
      }),
  };
}

function iconInside() {
  return {
    name: 'icon-inside',
    transformIndexHtml: (html: string) =>
      html.replace(
        /<link rel="icon"[^>]*>/,
        '<link rel="icon" href="data:image/svg+xml,%3Csvg xmlns=\'http://www.w3.org/2000/svg\'/%3E" />',
      ),
  };
}

/** Gives the page another name than index.html, so that it can lie beside the site. */
function namedPage(name: string) {
  return {
    name: 'named-page',
    enforce: 'post' as const,
    generateBundle(_: unknown, bundle: Record<string, { fileName: string }>) {
      const page = bundle['index.html'];
      if (page) page.fileName = name;
    },
  };
}
