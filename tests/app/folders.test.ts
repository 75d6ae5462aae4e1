// Guards the folders of src/app as import-direction.test.ts guards the rooms: what draws stands above what it draws
// from, and two views of one level know nothing of each other. Below that, no file reaches itself by its imports,
// anywhere in src/ and workers/, and no folder of a room of the engine does.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const APP = join(ROOT, 'src/app');

/** From low to high; a folder imports from levels below its own and nothing else of src/app. */
const LEVELS: readonly (readonly string[])[] = [
  ['style', 'parts'],
  ['keeping'],
  ['state'],
  ['charts', 'build', 'climate', 'inputs', 'section', 'trust'],
  ['figures', 'findings', 'found', 'questions', 'start'],
  ['pictures', 'versions', 'why'],
  ['report', 'take'],
  ['page'],
  ['main.tsx'],
];

function sourceFiles(dir: string): string[] {
  return readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(dir, name));
}

/** Files and styles a file names relative to itself, types too. */
function targetsOf(path: string, text: string): string[] {
  const named = text.matchAll(/(?:from\s+|import\s*\(\s*|import\s+|new URL\(\s*)['"](\.[^'"?]+)/g);
  return [...named].map((match) => resolve(dirname(path), match[1]!));
}

const folderOf = (path: string): string => relative(APP, path).split('/')[0]!;
const levelOf = (folder: string): number => LEVELS.findIndex((level) => level.includes(folder));

function faultsOf(path: string, text: string): string[] {
  const folder = folderOf(path);
  return targetsOf(path, text)
    .filter((target) => !relative(APP, target).startsWith('..') && folderOf(target) !== folder)
    .filter((target) => levelOf(folderOf(target)) >= levelOf(folder))
    .map((target) => `${relative(APP, path)} imports ${relative(APP, target)}`);
}

/** One circle of a graph, first and last the same; null when there is none. */
function circleIn(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const done = new Set<string>();
  const walk = (node: string, above: readonly string[]): readonly string[] | null => {
    if (above.includes(node)) return [...above.slice(above.indexOf(node)), node];
    if (done.has(node)) return null;
    for (const next of graph.get(node) ?? []) {
      const circle = walk(next, [...above, node]);
      if (circle) return circle;
    }
    done.add(node);
    return null;
  };
  for (const node of graph.keys()) {
    const circle = walk(node, []);
    if (circle) return circle;
  }
  return null;
}

test('every folder of the page has its level, and imports only from levels below', () => {
  const files = sourceFiles(APP);
  expect(files.length).toBeGreaterThan(100);
  const found = readdirSync(APP).filter((name) => name !== 'tsconfig.json');
  expect(found.toSorted()).toEqual(LEVELS.flat().toSorted());
  expect(files.flatMap((path) => faultsOf(path, readFileSync(path, 'utf8')))).toEqual([]);
});

test('an import upwards or sideways is found', () => {
  const path = join(APP, 'charts/MadeUp.tsx');
  expect(faultsOf(path, "import { Page } from '../page/Page.tsx';")).toHaveLength(1);
  expect(faultsOf(path, "import { FactLine } from '../section/FactLine.tsx';")).toHaveLength(1);
  expect(faultsOf(path, "const late = import('../report/ReportView.tsx');")).toHaveLength(1);
  expect(faultsOf(path, "import { useSession } from '../state/session-context.ts';")).toEqual([]);
  expect(faultsOf(path, "import type { Year } from '../../network/year.ts';")).toEqual([]);
});

test('no file reaches itself by its imports', () => {
  const files = [...sourceFiles(join(ROOT, 'src')), ...sourceFiles(join(ROOT, 'workers'))];
  const graph = new Map(
    files.map((path) => [
      relative(ROOT, path),
      targetsOf(path, readFileSync(path, 'utf8')).map((target) => relative(ROOT, target)),
    ]),
  );
  expect(graph.size).toBeGreaterThan(300);
  expect([...graph.values()].flat().length).toBeGreaterThan(1000);
  expect(circleIn(graph)).toBeNull();
});

test.each(['network', 'weather'])('no folder of src/%s reaches itself through another', (room) => {
  const top = join(ROOT, 'src', room);
  // A file that stands in the room itself counts for itself: simulate.ts is above the folders, year.ts below them.
  const partOf = (path: string) => relative(top, path).split('/')[0]!;
  const graph = new Map<string, string[]>();
  for (const path of sourceFiles(top)) {
    const part = partOf(path);
    const others = targetsOf(path, readFileSync(path, 'utf8'))
      .filter((target) => !relative(top, target).startsWith('..'))
      .map(partOf)
      .filter((other) => other !== part);
    graph.set(part, [...(graph.get(part) ?? []), ...others]);
  }
  expect(graph.size).toBeGreaterThan(5);
  expect(circleIn(graph)).toBeNull();
});

test('a circle is found, and a diamond is none', () => {
  const circle = new Map([
    ['a', ['b']],
    ['b', ['c']],
    ['c', ['b']],
  ]);
  const diamond = new Map([
    ['a', ['b', 'c']],
    ['b', ['d']],
    ['c', ['d']],
    ['d', []],
  ]);
  expect(circleIn(circle)).toEqual(['b', 'c', 'b']);
  expect(circleIn(diamond)).toBeNull();
});
