// docs/model.md and docs/fast-loop.md against the sources: every file they name is there, and every formula file that a
// year or its findings reach is in the first.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');
const page = readFileSync(join(ROOT, 'docs/model.md'), 'utf8');
const named = new Set([...page.matchAll(/`(src\/[\w./-]+)`/g)].map(([, file]) => file!));

/** Imports of values, at the head of a file or within it. */
const IMPORT = /^(?:import|export)\s+(?!type\b)[^;]*?from\s+'(\.[^']+)'|\bimport\('(\.[^']+)'\)/gm;

/** Files that one brings along, itself among them. */
function reachedFrom(entry: string): Set<string> {
  const reached = new Set<string>();
  const visit = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    if (!file.endsWith('.ts')) return;
    for (const match of readFileSync(join(ROOT, file), 'utf8').matchAll(IMPORT)) {
      visit(join(dirname(file), (match[1] ?? match[2])!));
    }
  };
  visit(entry);
  return reached;
}

test('every file that the page names is there', () => {
  expect(named.size).toBeGreaterThan(60);
  expect([...named].filter((file) => !existsSync(join(ROOT, file)))).toEqual([]);
});

test('every file that the page on the fast loop names is there', () => {
  const files = new Set(
    ['src', 'tests'].flatMap((folder) =>
      readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map((file) => basename(file)),
    ),
  );
  const text = readFileSync(join(ROOT, 'docs/fast-loop.md'), 'utf8');
  const names = [...text.matchAll(/`(?:[\w-]+\/)*([\w.-]+\.ts)`/g)].map(([, file]) => file!);
  expect(names.length).toBeGreaterThan(5);
  expect(names.filter((name) => !files.has(name))).toEqual([]);
});

test('every formula file that a year, its weather and its findings reach is on the page', () => {
  const physics = [...reachedFrom('src/daystone.ts')].filter((file) => dirname(file) === 'src/physics');
  expect(physics.length).toBeGreaterThan(30);
  expect(physics.filter((file) => !named.has(file))).toEqual([]);
});

test('every link within the docs leads to a file, and within the page to a heading', () => {
  const anchors = new Set(
    [...page.matchAll(/^#+ (.*)$/gm)].map(([, words]) =>
      words!
        .toLowerCase()
        .replace(/[^\w -]/g, '')
        .replaceAll(' ', '-'),
    ),
  );
  const within = [...page.matchAll(/\]\(#([^)]*)\)/g)].map(([, anchor]) => anchor!);
  expect(within.length).toBeGreaterThan(9);
  expect(within.filter((anchor) => !anchors.has(anchor))).toEqual([]);
  for (const [, file] of page.matchAll(/\]\(([\w-]+\.md)\)/g)) {
    expect(existsSync(join(ROOT, 'docs', file!)), relative(ROOT, file!)).toBe(true);
  }
});
