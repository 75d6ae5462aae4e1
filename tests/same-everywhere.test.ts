// Guards that a year is the same on every JavaScript engine: no function of Math that the language leaves to the engine, and
// no power by its operator, stands where a run passes. src/physics/elementary.ts has them all.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');
const PASSED = ['physics', 'weather', 'places', 'design', 'model', 'network', 'outcomes', 'questions'];
/** Which IEEE 754 or the language itself settles to the last bit. */
const SETTLED =
  /^(abs|ceil|clz32|floor|fround|imul|max|min|round|sign|sqrt|trunc|PI|E|LN2|LN10|LOG2E|LOG10E|SQRT2|SQRT1_2)$/;

function leftToEngine(text: string): string[] {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:'"`])\/\/.*$/gm, '$1');
  const called = [...code.matchAll(/\bMath\.(\w+)/g)]
    .map(([, name]) => name!)
    .filter((name) => !SETTLED.test(name));
  return [...called, ...[...code.matchAll(/[\w)\]!] \*\* ?/g)].map(() => '**')];
}

test('no run asks the engine for what engines answer differently', () => {
  const files = PASSED.flatMap((folder) =>
    readdirSync(join(ROOT, 'src', folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => join(ROOT, 'src', folder, name)),
  );
  expect(files.length).toBeGreaterThan(200);
  expect(
    files.flatMap((path) =>
      leftToEngine(readFileSync(path, 'utf8')).map((name) => `${relative(ROOT, path)}: ${name}`),
    ),
  ).toEqual([]);
});

test('what is left to the engine is found, and what stands in a comment is not', () => {
  expect(leftToEngine('const a = Math.sin(b) + c ** 2;')).toEqual(['sin', '**']);
  expect(leftToEngine('// Math.sin\n/** x ** 2 */\nconst a = Math.sqrt(b);')).toEqual([]);
});
