// One file of JavaScript out of a tree of sources: its engine, for comparisons and benches. A folder or a revision of
// this repository in, the built module out.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

export type Engine = typeof import('./engine.ts');

const ROOT = resolve(import.meta.dirname, '../..');

/** The engine of a revision, of a built file (`*.mjs`), or, for `null`, of the files as they are. */
export async function engineOf(from: string | null): Promise<Engine> {
  if (from?.endsWith('.mjs')) return import(pathToFileURL(resolve(from)).href);
  const folder = mkdtempSync(join(tmpdir(), 'daystone-engine-'));
  try {
    const tree = from === null ? ROOT : extracted(from, folder);
    const file = join(folder, 'engine.mjs');
    await buildEngine(tree, file);
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Build the engine of a folder of sources into one file. */
export async function buildEngine(tree: string, file: string, minify = false): Promise<void> {
  await build({
    configFile: false,
    root: tree,
    logLevel: 'error',
    publicDir: false,
    build: {
      ssr: join(tree, 'tests/same/engine.ts'),
      outDir: resolve(file, '..'),
      emptyOutDir: false,
      minify,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: file.split('/').at(-1)!, codeSplitting: false } },
    },
    ssr: { noExternal: true },
  });
}

/** Sources of a revision in a folder of their own, with this tree's packages and this tree's idea of an engine. */
function extracted(revision: string, folder: string): string {
  const tree = join(folder, 'tree');
  mkdirSync(tree);
  const archive = execFileSync(
    'git',
    ['archive', revision, 'src', 'tests/model', 'package.json', 'tsconfig.json'],
    {
      cwd: ROOT,
      maxBuffer: 1 << 28,
    },
  );
  execFileSync('tar', ['-x', '-C', tree], { input: archive });
  cpSync(import.meta.dirname, join(tree, 'tests/same'), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(tree, 'node_modules'));
  return tree;
}
