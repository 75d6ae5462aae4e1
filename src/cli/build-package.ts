// `npm run package`, which `npm pack` runs first: makes of the sources what the package holds beside the climates.
// lib/modules: the library, the command line and its threads as ES modules, with what they use of other packages
// inside, so that the installed package needs none. lib/types: declarations of the library. lib/licences.txt.

import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { build } from 'vite';
import { licenceText, shippedPackages } from './shipped-packages.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const MODULES = join(ROOT, 'lib/modules');
const TYPES = join(ROOT, 'lib/types');

/** Module of the package, and the source it begins with. Threads are started by these names (thread-code.ts). */
const ENTRIES = {
  daystone: 'src/daystone.ts',
  'command-line': 'src/cli/main.ts',
  'batch-thread': 'src/cli/batch-thread.ts',
  'simulation-thread': 'src/cli/simulation-thread.ts',
};

rmSync(join(ROOT, 'lib'), { recursive: true, force: true });
await buildModules();
execFileSync(
  process.execPath,
  [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', 'tsconfig.package.json'],
  {
    cwd: ROOT,
    stdio: 'inherit',
  },
);
dropUnreached(join(TYPES, 'daystone.d.ts'));

async function buildModules(): Promise<void> {
  const packages = shippedPackages(ROOT);
  const inside = new Set<string>();
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'warn',
    publicDir: false,
    build: {
      ssr: true,
      outDir: MODULES,
      target: 'node20',
      minify: false,
      rolldownOptions: {
        input: ENTRIES,
        // All in one folder: the climates are found from it, two folders up as from src/cli.
        output: { entryFileNames: '[name].js', chunkFileNames: 'part-[name].js' },
      },
    },
    ssr: { noExternal: true },
    plugins: [
      {
        name: 'packages-inside',
        generateBundle(_, bundle) {
          for (const chunk of Object.values(bundle)) {
            for (const id of chunk.type === 'chunk' ? chunk.moduleIds : []) {
              const name = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
              if (name !== undefined) inside.add(name);
            }
          }
        },
      },
    ],
  });
  const unlisted = [...inside].filter((name) => !packages.some((listed) => listed.name === name));
  if (unlisted.length > 0) throw new Error(`not on the list of what ships: ${unlisted.join(', ')}`);
  const held = packages.filter(({ name }) => inside.has(name));
  writeFileSync(join(ROOT, 'lib/licences.txt'), licenceText(held));
}

/** Removes declarations that the library's own does not lead to: the compiler writes one for every module that runs. */
function dropUnreached(first: string): void {
  const reached = new Set<string>();
  const reach = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const [, from] of readFileSync(file, 'utf8').matchAll(/(?:from|import\()\s*'(\.[^']*)\.ts'/g)) {
      reach(join(dirname(file), `${from}.d.ts`));
    }
  };
  reach(first);
  for (const entry of readdirSync(TYPES, { recursive: true, withFileTypes: true })) {
    const file = join(entry.parentPath, entry.name);
    if (entry.isFile() && !reached.has(file)) rmSync(file);
  }
}
