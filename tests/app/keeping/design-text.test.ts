import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  designFromLink,
  designFromText,
  designToLink,
  designToText,
} from '../../../src/app/keeping/design-text.ts';
import { fittedDesign } from '../../../src/app/state/design-fit.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { LIMITS } from '../../../src/design/limits.ts';

test('any design comes back whole from its file and from its link', async () => {
  const anyDesign = fc
    .record({
      example: fc.constantFrom(...EXAMPLES),
      limit: fc.constantFrom(...LIMITS.filter((limit) => !limit.whole)),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      name: fc.string({ unit: 'grapheme', maxLength: 40 }),
    })
    .map(({ example, limit, share, name }) => {
      const changed = withValueAt(example.design, limit.path, limit.min + share * (limit.max - limit.min));
      return { ...fittedDesign(changed).design, name };
    })
    .filter(({ name }) => name.isWellFormed());
  await fc.assert(
    fc.asyncProperty(anyDesign, async (design) => {
      expect(designFromText(designToText(design))).toEqual({ ok: true, design });
      expect(await designFromLink(await designToLink(design))).toEqual({ ok: true, design });
    }),
    { numRuns: 40 },
  );
});

test('a link is short and holds only what may stand in an address', async () => {
  for (const { design } of EXAMPLES) {
    const link = await designToLink(design);
    expect(link).toMatch(/^[A-Za-z0-9_-]+$/);
    expect(link.length).toBeLessThan(1500);
  }
});

test('a cut, changed or foreign link is refused in one sentence', async () => {
  const link = await designToLink(EXAMPLES[0]!.design);
  for (const bad of ['', 'A', '!!!', link.slice(0, 200), `${link.slice(0, 300)}AAAA${link.slice(304)}`]) {
    const read = await designFromLink(bad);
    expect(read.ok, bad.slice(0, 12)).toBe(false);
    if (!read.ok) expect(read.message.length).toBeGreaterThan(20);
  }
});

test('a short link that unpacks to a very long text stops early', async () => {
  const stream = new Blob(['0'.repeat(30_000_000)])
    .stream()
    .pipeThrough(new CompressionStream('deflate-raw'));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  const packed = Buffer.from(bytes).toString('base64url');
  expect(packed.length).toBeLessThan(60_000);
  expect(await designFromLink(packed)).toMatchObject({ ok: false });
});

test('a file from a newer page, and one that is no design, say why', () => {
  const newer = designFromText(JSON.stringify({ ...EXAMPLES[0]!.design, version: 3 }));
  expect(newer).toMatchObject({ ok: false });
  if (!newer.ok) expect(newer.message).toContain('version 3');
  expect(designFromText('not json')).toMatchObject({ ok: false });
  const wrong = designFromText(JSON.stringify(withValueAt(EXAMPLES[0]!.design, 'glass.tiltDeg', 400)));
  if (wrong.ok) throw new Error('accepted a tilt of 400°');
  expect(wrong.message).toContain('glass.tiltDeg is 400');
  expect(wrong.message).toContain('20 to 90');
});
