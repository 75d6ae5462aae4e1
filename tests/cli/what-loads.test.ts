// What the command line and its threads load before they run years. Loaded through the loader of TypeScript, a package in
// CommonJS form of some size makes every later access to an array of numbers slower in its thread (DEVELOPERS.md); the
// two that ship are papaparse and the older form of comlink.
import { readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const CLI = resolve(import.meta.dirname, '../../src/cli');
const STATIC_IMPORT = /^(?:import|export)\s+(?!type\b)[^;]*?from\s+'([^']+)'|^import\s+'([^']+)'/gm;

/** Files and packages that a file brings along by static imports of values. */
function loadedBy(entry: string): { files: Set<string>; packages: Set<string> } {
  const files = new Set<string>();
  const packages = new Set<string>();
  const visit = (path: string): void => {
    if (files.has(path)) return;
    files.add(path);
    if (!path.endsWith('.ts')) return;
    for (const match of readFileSync(path, 'utf8').matchAll(STATIC_IMPORT)) {
      const from = (match[1] ?? match[2])!;
      if (from.startsWith('.')) visit(join(dirname(path), from));
      else packages.add(from);
    }
  };
  visit(join(CLI, entry));
  return { files, packages };
}

test.each(['main.ts', 'simulation-thread.ts', 'batch-thread.ts'])(
  '%s runs years without a package that slows them',
  (entry) => {
    const { files, packages } = loadedBy(entry);
    expect([...files].filter((path) => path.endsWith('network/simulate.ts'))).toHaveLength(1);
    expect([...packages].filter((name) => name === 'papaparse' || name === 'comlink')).toEqual([]);
  },
);

test('the reader of weather is what brings the table library', () => {
  const { packages } = loadedBy('../weather/reader.ts');
  expect(packages).toContain('papaparse');
});
