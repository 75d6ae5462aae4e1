import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cappedLines } from '../../src/cli/capped-lines.ts';

async function linesOf(chunks: readonly (Uint8Array | string)[], most?: number): Promise<string[]> {
  const out: string[] = [];
  const stream = (async function* () {
    yield* chunks;
  })();
  for await (const line of cappedLines(stream, most)) out.push(line);
  return out;
}

test('however bytes are cut, the lines are those of the text', async () => {
  const text = fc
    .array(fc.string({ unit: 'grapheme', maxLength: 12 }), { maxLength: 12 })
    .map((lines) => lines.map((line) => line.replaceAll(/[\r\n]/g, ' ')));
  await fc.assert(
    fc.asyncProperty(text, fc.integer({ min: 1, max: 9 }), fc.boolean(), async (lines, size, crlf) => {
      const whole = lines.filter((line) => line !== '').map((line) => line.toWellFormed());
      const bytes = new TextEncoder().encode(whole.join(crlf ? '\r\n' : '\n'));
      const chunks: Uint8Array[] = [];
      for (let at = 0; at < bytes.length; at += size) chunks.push(bytes.subarray(at, at + size));
      expect(await linesOf(chunks)).toEqual(whole);
    }),
    { numRuns: 200 },
  );
});

test('a line past the cap comes out one character longer than it, and the next line is whole', async () => {
  expect(await linesOf(['12345', '67890', '\nnext\n'], 6)).toEqual(['1234567', 'next']);
  expect(await linesOf(['123456\nx'], 6)).toEqual(['123456', 'x']);
  expect(await linesOf(['', '\n', '\r\n', 'end'], 6)).toEqual(['', '', 'end']);
});

test('a line of a gigabyte is held in no more than its cap', async () => {
  const block = 'x'.repeat(1_000_000);
  const stream = (async function* () {
    for (let i = 0; i < 1000; i++) yield block;
    yield '\n{"id": 2}\n';
  })();
  const lengths: number[] = [];
  for await (const line of cappedLines(stream)) lengths.push(line.length);
  expect(lengths).toEqual([1_000_001, 9]);
});
