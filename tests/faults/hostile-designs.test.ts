// Designs that are damaged, huge or mean, through every door a design comes in by: the page's file, its link, the
// command line, a line of a batch. Each is a design or a short sentence; nothing throws, nothing is polluted.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { designFromLink, designFromText, designToLink } from '../../src/app/keeping/design-text.ts';
import { takeFile } from '../../src/app/keeping/file-intake.ts';
import { answerLine } from '../../src/cli/batch-line.ts';
import { readDesign } from '../../src/cli/design-file.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { readWeather } from '../../src/weather/reader.ts';
import { textOf } from '../../src/weather/text/platform-streams.ts';

const FOLDER = join(import.meta.dirname, '../data/hostile');
/** What the refusal must say; null where the file is a design all the same. */
const CORPUS: Readonly<Record<string, string | null>> = {
  'climate-is-a-path.json': null,
  'climate-is-proto.json': null,
  'constructor-key.json': 'constructor is "constructor"; allowed: no such key',
  'control-characters.json': null,
  'empty-object.json': 'version is missing',
  'formula-in-texts.json': null,
  'glass-id-constructor.json': 'glass.type is "constructor"; allowed: one of ',
  'half-binary.json': 'JSON',
  'html-in-texts.json': null,
  'html-page.json': 'JSON',
  'key-twice.json': 'house.floorAreaM2 is -1',
  'list-of-designs.json': 'the design is a list',
  'newer-version.json': 'version',
  'not-a-number.json': 'JSON',
  'note-too-long.json': 'note is "xxx',
  'number-as-text.json': 'house.floorAreaM2 is "110"',
  'number-too-large.json': 'house.floorAreaM2 is Infinity',
  'proto-block.json': 'house.__proto__ is "__proto__"; allowed: no such key',
  'proto-key.json': '__proto__ is "__proto__"; allowed: no such key',
  'truncated.json': 'JSON',
  'unknown-glass.json': 'glass.type is "toString-',
  'utf-16.json': null,
  'version-infinite.json': 'version',
  'zeros.json': 'JSON',
};
const LONGEST = 1200;

afterEach(() => {
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(({} as { isAdmin?: unknown }).isAdmin).toBeUndefined();
});

test('the corpus on disk is the one listed here', () => {
  expect(readdirSync(FOLDER).sort()).toEqual(Object.keys(CORPUS).sort());
});

test.each(Object.entries(CORPUS))('%s through the file, the command line and a batch', async (file, said) => {
  const bytes = readFileSync(join(FOLDER, file));
  const text = textOf(bytes);
  const onPage = designFromText(text);
  const onLine = await readDesign(join(FOLDER, file));
  const taken = await takeFile(new File([bytes], file));
  if (said === null) {
    expect(onPage.ok && onLine.ok && taken.kind === 'design').toBe(true);
    return;
  }
  expectRefusal(onPage.ok ? null : onPage.message, said);
  expectRefusal(onLine.ok ? null : (onLine.faults.find((line) => line.includes(said)) ?? ''), said);
  // What does not look like a design is handed on as weather, and refused there.
  if (taken.kind === 'weather') expect((await readWeather(taken.bytes)).ok).toBe(false);
  else expect(taken.kind === 'refused' && taken.message.length < LONGEST).toBe(true);
  const line = `{"id": "x", "design": ${text.replaceAll('\n', ' ')}}`;
  const { id, error } = JSON.parse(await answerLine(line, 3)) as { id: unknown; error: string };
  expect(id === 'x' || id === 3).toBe(true);
  // A batch tells all faults of a line at once, fifty at most.
  expect(error.length).toBeLessThan(10 * LONGEST);
});

function expectRefusal(message: string | null, said: string): void {
  expect(message).not.toBeNull();
  expect(message).toContain(said);
  expect(message!.length).toBeLessThan(LONGEST);
  expect(message).not.toMatch(/\n/);
}

const TEXT = JSON.stringify(EXAMPLES[1]!.design);

test('a nest of brackets too deep to print is refused, wherever it stands', async () => {
  const nest = '['.repeat(200_000) + ']'.repeat(200_000);
  for (const text of [nest, TEXT.replace(/"floorAreaM2":[\d.]+/, `"floorAreaM2":${nest}`)]) {
    const read = designFromText(text);
    expect(read.ok).toBe(false);
    expect(JSON.parse(await answerLine(`{"id":1,"design":${text}}`, 1))).toHaveProperty('error');
  }
});

test('a key as long as a book is named by its beginning', () => {
  const read = designFromText(TEXT.replace('{', `{"${'k'.repeat(500_000)}":1,`));
  if (read.ok) throw new Error('accepted an unknown key');
  expect(read.message).toContain('kkkk');
  expect(read.message.length).toBeLessThan(LONGEST);
});

test('text cut, doubled or overwritten anywhere is a design that passes, or a short sentence', async () => {
  const damage = fc.record({
    at: fc.nat(TEXT.length),
    length: fc.nat(200),
    put: fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom('', '"', '{', '}', '[', '1e999', '-', 'null', '__proto__', '\\u0000', '\0', '\ud800'),
    ),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(damage, { minLength: 1, maxLength: 4 }), async (cuts) => {
      let text = TEXT;
      for (const { at, length, put } of cuts) text = text.slice(0, at) + put + text.slice(at + length);
      const read = designFromText(text);
      if (read.ok) expect(parseDesign(read.design).ok).toBe(true);
      else expect(read.message.length).toBeLessThan(LONGEST);
    }),
    { numRuns: 2000 },
  );
});

test('any JSON at any place of a design is taken only where the schema takes it', () => {
  const places = pathsOf(EXAMPLES[1]!.design);
  fc.assert(
    fc.property(fc.constantFrom(...places), fc.jsonValue({ maxDepth: 4 }), (path, value) => {
      const data = structuredClone(EXAMPLES[1]!.design) as unknown as Record<string, unknown>;
      let at = data;
      for (const key of path.slice(0, -1)) at = at[key] as Record<string, unknown>;
      at[path.at(-1)!] = value;
      const text = JSON.stringify(data);
      const read = designFromText(text);
      // As the text holds it: JSON has no negative nought.
      if (read.ok) expect(read.design).toEqual(JSON.parse(text));
      else expect(read.message.length).toBeLessThan(LONGEST);
    }),
    { numRuns: 1500 },
  );
});

test('any link is a design or a sentence', async () => {
  const whole = await designToLink(EXAMPLES[0]!.design);
  const link = fc.oneof(
    fc.string({ maxLength: 300 }),
    fc.base64String({ maxLength: 300 }),
    fc
      .tuple(fc.nat(whole.length), fc.nat(40), fc.base64String({ maxLength: 8 }))
      .map(([at, length, put]) => whole.slice(0, at) + put + whole.slice(at + length)),
  );
  await fc.assert(
    fc.asyncProperty(link, async (packed) => {
      const read = await designFromLink(packed);
      if (!read.ok) expect(read.message.length).toBeLessThan(LONGEST);
    }),
    { numRuns: 600 },
  );
});

test('a bomb in a link is named with the limit that stopped it', async () => {
  const stream = new Blob(['0'.repeat(30_000_000)])
    .stream()
    .pipeThrough(new CompressionStream('deflate-raw'));
  const packed = Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url');
  const read = await designFromLink(packed);
  if (read.ok) throw new Error('accepted a bomb');
  expect(read.message).toContain('at most 1 MB');
});

test('a file too long for a design says so with its limit', async () => {
  const read = designFromText(`{"version": 1,${' '.repeat(1_000_001)}}`);
  if (read.ok) throw new Error('accepted');
  expect(read.message).toContain('at most 1 MB');
  const taken = await takeFile(new File([`{"version": 1,${' '.repeat(1_500_000)}}`], 'long.json'));
  expect(taken).toMatchObject({ kind: 'refused', message: expect.stringContaining('at most 1 MB') });
});

function pathsOf(value: unknown, before: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [before];
  const inner = Object.entries(value).flatMap(([key, child]) => pathsOf(child, [...before, key]));
  return before.length === 0 ? inner : [before, ...inner];
}
