// The package as others get it: packed, installed into an empty folder by a client that may ask no network and finds
// nothing in its cache, then used as library and as command. What it answers is what the sources answer.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { type Design, EXAMPLES, type Outcome, readBundle, runYear } from '../src/daystone.ts';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const ROOT = resolve(import.meta.dirname, '..');
const folder = mkdtempSync(join(tmpdir(), 'daystone-package-'));
const empty = join(folder, 'empty');
/** What npx starts, which the batch starts through it. */
const COMMAND = join(empty, 'node_modules/.bin/daystone');

/** Of the environment, all but what the npm that runs these tests tells those it starts. */
const ENV = {
  ...Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_/i.test(name))),
  npm_config_cache: join(folder, 'cache'),
  npm_config_offline: 'true',
};

function run(command: string, words: readonly string[], cwd: string, input = ''): string {
  const { status, stdout, stderr } = spawnSync(command, words, { cwd, env: ENV, encoding: 'utf8', input });
  expect(status, `${command} ${words.join(' ')}: ${stderr}`).toBe(0);
  return stdout;
}

const example = (id: string) => EXAMPLES.find((entry) => entry.id === id)!.design;

function outcomeOf(design: Design): Outcome {
  const site = readBundle(readFileSync(join(ROOT, 'climates', `${design.climate}.txt`), 'utf8'));
  if (!site.ok) throw new Error('the climate of the example does not read');
  return runYear(design, site.year).outcome;
}

const modestHere = outcomeOf(example('modest'));

beforeAll(() => {
  mkdirSync(empty);
  run('npm', ['pack', '--silent', '--pack-destination', folder], ROOT);
  const packed = readdirSync(folder).find((name) => name.endsWith('.tgz'))!;
  // By name: a folder above may look like a project of npm's to it.
  run('npm', ['install', '--prefix', empty, join(folder, packed)], empty);
});

afterAll(() => rmSync(folder, { recursive: true }));

test('the package brings nothing along and holds nothing but modules, types, climates and its papers', () => {
  expect(readdirSync(join(empty, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
    'daystone',
  ]);
  const inside = readdirSync(join(empty, 'node_modules/daystone')).sort();
  expect(inside).toEqual(['LICENSE', 'README.md', 'bin', 'climates', 'lib', 'package.json']);
  const types = readdirSync(join(empty, 'node_modules/daystone/lib'), { recursive: true, encoding: 'utf8' });
  expect(types.filter((name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'))).toEqual([]);
  expect(readFileSync(join(empty, 'node_modules/daystone/lib/licences.txt'), 'utf8')).toContain('suncalc');
});

test('the example of docs/library.md runs as it is printed', () => {
  const [printed = ''] = [
    ...readFileSync(join(ROOT, 'docs/library.md'), 'utf8').matchAll(/```js\n([\s\S]*?)```/g),
  ].map(([, code]) => code!);
  expect(printed.split('\n').filter((line) => line !== '')).toHaveLength(10);
  writeFileSync(join(empty, 'example.mjs'), printed);
  const design = example('modest');
  const { zones, heating } = outcomeOf({ ...design, glass: { ...design.glass, tiltDeg: 60 } });
  const { overheatedHours, overheatLimitC } = zones.house;
  expect(run(process.execPath, ['example.mjs'], empty)).toBe(
    `${overheatedHours} hours above ${overheatLimitC} °C, ${heating.energyKWh} kWh of heating\n`,
  );
});

test('a strict compiler takes the declarations, and knows a figure by its name', () => {
  const code = (figure: string) => `import { type Design, runYear, type TypicalYear } from 'daystone';
export const figure = (design: Design, year: TypicalYear): number => runYear(design, year).outcome.${figure};
`;
  writeFileSync(join(empty, 'right.mts'), code('heating.energyKWh'));
  writeFileSync(join(empty, 'wrong.mts'), code('heating.energyMWh'));
  const tsc = join(ROOT, 'node_modules/typescript/bin/tsc');
  const options = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2022', '--types', ''];
  const words = [tsc, ...options, 'right.mts', 'wrong.mts'];
  const { stdout } = spawnSync(process.execPath, words, { cwd: empty, encoding: 'utf8' });
  const faults = stdout.split('\n').filter((line) => line.includes('error TS'));
  expect(faults).toEqual([expect.stringMatching(/^wrong\.mts.*'energyMWh' does not exist/)]);
});

test('the command of the package prints what the sources print', () => {
  const printed = run(COMMAND, ['year', 'modest', '--json'], empty);
  const { howSure, ...outcome } = JSON.parse(printed);
  expect(outcome).toEqual(JSON.parse(JSON.stringify(modestHere)));
  expect(howSure).toBeDefined();
});

// In the project the command runs from the sources, without a build, and from any of its folders.
test.each([['the package', empty] as const, ['a folder of the project', join(ROOT, 'docs')] as const])(
  'a batch on two threads answers every line in %s',
  (_, place) => {
    const lines = [1, 2].map((id) => JSON.stringify({ id, design: 'modest' }));
    const answers = run('npx', ['daystone', 'batch', '--workers', '2'], place, lines.join('\n'));
    const outcomes = answers
      .trim()
      .split('\n')
      .map((line): Outcome & { id: number } => JSON.parse(line));
    expect(outcomes.map(({ id }) => id).sort()).toEqual([1, 2]);
    for (const { heating } of outcomes) expect(heating).toEqual(modestHere.heating);
  },
);

test('a question runs on threads of the package, and a weather file is read by it', () => {
  const asked = JSON.parse(run(COMMAND, ['ask', 'who-opens-the-vents', 'modest', '--json'], empty));
  expect(asked.runs.length).toBeGreaterThan(1);
  const file = join(empty, 'node_modules/daystone/climates/denver.txt');
  expect(run(COMMAND, ['climate', file], empty)).toContain('Denver');
});
