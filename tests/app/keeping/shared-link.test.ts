import { expect, test } from 'vitest';
import { sharedFromLink, sharedToLink } from '../../../src/app/keeping/shared-link.ts';
import { sharesOfWidth } from '../../../src/app/section/StillSection.tsx';
import { EXAMPLES } from '../../../src/design/examples.ts';

const [first, ...others] = EXAMPLES.map(({ design, id }) => ({ design, name: id }));
const shared = { design: first!.design, versions: others };

test('a link carries the design and every version', async () => {
  const packed = (await sharedToLink(shared))!;
  expect(packed).toMatch(/^[\w-]+$/);
  expect(await sharedFromLink(packed)).toEqual({ ok: true, shared });
});

test('a link that was cut anywhere, or changed, is refused and says so', async () => {
  const packed = (await sharedToLink(shared))!;
  for (const length of [0, 1, 20, Math.floor(packed.length / 2), packed.length - 12, packed.length - 3])
    expect(await sharedFromLink(packed.slice(0, length)), `${length}`).toMatchObject({
      ok: false,
      message: expect.stringContaining('cut off'),
    });
  const middle = Math.floor(packed.length / 2);
  const changed = packed.slice(0, middle) + (packed[middle] === 'A' ? 'B' : 'A') + packed.slice(middle + 1);
  expect(await sharedFromLink(changed)).toMatchObject({ ok: false });
  expect(await sharedFromLink('A'.repeat(60_001))).toMatchObject({ ok: false });
});

test('a link too long to be read is not made', async () => {
  // Noise does not pack. A linear congruential generator with the constants of Numerical Recipes.
  let state = 1;
  const noise = () => {
    state = (1664525 * state + 1013904223) % 2 ** 32;
    return String.fromCharCode(35 + (state >>> 25));
  };
  const versions = Array.from({ length: 40 }, (_, i) => ({
    name: `${i}`,
    design: { ...first!.design, note: Array.from({ length: 2000 }, noise).join('') },
  }));
  expect(await sharedToLink({ ...shared, versions })).toBeNull();
});

test('sections side by side have one scale, the largest fills its place', () => {
  const deep = { ...first!.design, house: { ...first!.design.house, equatorWallM: 8 } };
  const [small, large] = sharesOfWidth([first!.design, deep]);
  expect(large).toBe(1);
  expect(small).toBeLessThan(0.9);
});
