// Guards that what src/ and workers/ hold is what runs: every export is reached from the page, its workers, the command
// line, the scripts of package.json or the door to the engine, and is read by another module or by a test.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import {
  importedExports,
  isInSignature,
  type Module,
  moduleOf,
  reachedFrom,
} from './reachability/module-graph.ts';

const ROOT = resolve(import.meta.dirname, '..');

const ROOTS = [
  'src/app/main.tsx',
  'src/cli/main.ts',
  'src/daystone.ts',
  // scripts of package.json and of the build
  'src/cli/serve.ts',
  'src/cli/bundle-climates.ts',
  'src/cli/bundle-places.ts',
  'src/cli/licences.ts',
  'src/cli/sample-answer.ts',
  'vite.config.ts',
  // started by their address
  'workers/simulation.worker.ts',
  // what the build puts in their neighbours' place for the one-file page
  'workers/simulation-thread-inline.ts',
  'src/app/climate/climate-texts-inline.ts',
  'src/app/keeping/offline-copy-none.ts',
  'src/app/climate/place-files-none.ts',
  'src/app/climate/place-files-inline.ts',
].map((path) => join(ROOT, path));

/** Exports nothing reaches yet, each with what waits for it. */
const WAITING: Readonly<Record<string, string>> = {};

function modulesIn(...folders: string[]): Map<string, Module> {
  const paths = folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'))
      .map((name) => join(ROOT, folder, name)),
  );
  return new Map(paths.map((path) => [path, moduleOf(path)]));
}

const modules = modulesIn('src', 'workers');
modules.set(join(ROOT, 'vite.config.ts'), moduleOf(join(ROOT, 'vite.config.ts')));

function unreached(among: ReadonlyMap<string, Module>, roots: readonly string[]): string[] {
  const reached = reachedFrom(among, roots);
  return [...among.values()].flatMap(({ path, exported }) =>
    [...exported]
      .filter(([, local]) => !reached.get(path)?.has(local))
      .map(([name]) => `${relative(ROOT, path)} ${name}`),
  );
}

test('every export is reached from the page, a worker, the command line or the door to the engine', () => {
  expect(modules.size).toBeGreaterThan(400);
  expect(unreached(modules, ROOTS).filter((name) => !(name in WAITING))).toEqual([]);
});

test('what waits is still there and still waits', () => {
  const idle = unreached(modules, ROOTS);
  expect(Object.keys(WAITING).filter((name) => !idle.includes(name))).toEqual([]);
});

test('every export is read by another module or a test, or is a type in the signature of one that is', () => {
  const readers = [...modules.values(), ...modulesIn('tests').values()];
  const read = importedExports(readers);
  const alone = [...modules.values()]
    .filter(({ path }) => !ROOTS.includes(path))
    .flatMap((module) =>
      [...module.exported.keys()]
        .filter((name) => !read.has(`${module.path} ${name}`))
        .filter((name) => !(module.types.has(name) && isInSignature(module, name)))
        .map((name) => `${relative(ROOT, module.path)} ${name}`),
    );
  expect(alone).toEqual([]);
});

test('an outside check is marked “reference only” where it calls what no run reaches, and nowhere else', () => {
  const waiting = new Set(Object.keys(WAITING));
  const files = readdirSync(join(ROOT, 'tests/published')).filter((name) => name.endsWith('.test.ts'));
  expect(files.length).toBeGreaterThan(30);
  const wrong = files.filter((name) => {
    const path = join(ROOT, 'tests/published', name);
    const text = readFileSync(path, 'utf8');
    const callsIdle = [...moduleOf(path, text).imported.values()].some((binding) =>
      waiting.has(`${relative(ROOT, binding.from)} ${binding.name}`),
    );
    return callsIdle !== text.includes("use: 'reference only'");
  });
  expect(wrong).toEqual([]);
});

test('a function, a type and a constant that nothing reaches are found, also behind one another', () => {
  const made = (name: string, text: string) => moduleOf(join(ROOT, 'src/physics', name), text);
  const root = made('root.ts', "import { used } from './altitude.ts'; used();");
  const file = made(
    'altitude.ts',
    `export function used(): number { return inner(); }
     function inner(): number { return 1; }
     export function dead(): Shape { return DEEP; }
     export interface Shape { readonly used: number }
     export const DEEP = { used: 1 };`,
  );
  const among = new Map([root, file].map((module) => [module.path, module]));
  expect(unreached(among, [root.path])).toEqual([
    'src/physics/altitude.ts dead',
    'src/physics/altitude.ts Shape',
    'src/physics/altitude.ts DEEP',
  ]);
});
