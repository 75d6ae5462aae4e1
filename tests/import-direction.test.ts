// Guards the one-way flow of the rooms: physics ← weather, design ← model ← network ← outcomes ← quantities ← findings ← the door
// (daystone.ts) ← questions ← report ← workers ← app, cli; loggers ← matching ← workers. An import against it fails here with the file and the import.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');

const ENGINE = ['physics', 'weather', 'design', 'model', 'network', 'outcomes', 'quantities', 'findings'];

/** For each room, the rooms it may import from besides itself. */
const ALLOWED: Record<string, readonly string[]> = {
  physics: [],
  weather: ['physics'],
  places: ['physics', 'weather'],
  design: ['physics'],
  model: ['physics', 'weather', 'design'],
  network: ['physics', 'weather', 'design', 'model'],
  outcomes: ['physics', 'weather', 'design', 'model', 'network'],
  findings: ['physics', 'weather', 'design', 'model', 'network', 'outcomes', 'quantities'],
  quantities: ['physics', 'weather', 'design', 'model', 'outcomes'],
  'daystone.ts': [...ENGINE, 'loggers'],
  questions: [...ENGINE, 'daystone.ts'],
  loggers: ['physics', 'weather'],
  matching: [...ENGINE, 'daystone.ts', 'loggers'],
  report: [...ENGINE, 'daystone.ts', 'questions'],
  workers: [...ENGINE, 'daystone.ts', 'questions', 'report', 'matching'],
  app: [
    ...ENGINE,
    'quantities',
    'places',
    'daystone.ts',
    'questions',
    'report',
    'workers',
    'loggers',
    'matching',
  ],
  cli: [
    ...ENGINE,
    'quantities',
    'places',
    'daystone.ts',
    'questions',
    'report',
    'workers',
    'loggers',
    'matching',
  ],
};

function sourceFiles(dir: string): string[] {
  return readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(dir, name));
}

function roomOf(path: string): string {
  const [first = '', second = ''] = relative(ROOT, path).split('/');
  return first === 'src' ? second : first;
}

function faultsOf(path: string, text: string): string[] {
  const room = roomOf(path);
  const imports = [...text.matchAll(/(?:from\s+|import\s*\(\s*|import\s+|new URL\(\s*)['"](\.[^'"]+)['"]/g)];
  return imports
    .map((match) => roomOf(resolve(dirname(path), match[1]!)))
    .filter((target) => target in ALLOWED && target !== room && !ALLOWED[room]!.includes(target))
    .map((target) => `${relative(ROOT, path)} (${room}) imports from ${target}`);
}

test('every import follows the direction of the rooms', () => {
  const files = [...sourceFiles(join(ROOT, 'src')), ...sourceFiles(join(ROOT, 'workers'))];
  expect(files.length).toBeGreaterThan(5);
  expect(files.filter((path) => !(roomOf(path) in ALLOWED))).toEqual([]);
  expect(files.flatMap((path) => faultsOf(path, readFileSync(path, 'utf8')))).toEqual([]);
});

test('an import against the direction is found', () => {
  const path = join(ROOT, 'src/physics/made-up.ts');
  expect(faultsOf(path, "import { x } from '../model/model.ts';")).toHaveLength(1);
  expect(faultsOf(path, "import { x } from './moist-air.ts';")).toEqual([]);
});
