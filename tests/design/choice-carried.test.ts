// A choice brings what it needs, says so, and touches nothing else.
import { expect, test } from 'vitest';
import { withCarried } from '../../src/design/choice-carried.ts';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';

const [DRAWN, CLOSED] = EXAMPLES.map(({ design }) => design) as [Design, Design];
/** With windows enough in the rooms themselves, so that what counts as too hot does not hang on the sunspace. */
const LEANING: Design = { ...DRAWN, vents: { ...DRAWN.vents, houseM2: 3 } };
const join = (design: Design, to: Design['sunspace']['join']): Design => ({
  ...design,
  sunspace: { ...design.sunspace, join: to },
});
const chosen = (design: Design, to: Design['sunspace']['join']) => withCarried(design, join(design, to));

test('closing off an open sunspace gives an ordinary door used by need in place of 18 m² that always stand open', () => {
  const { design, carried } = chosen(LEANING, 'closed');
  expect(design).toEqual({
    ...LEANING,
    sunspace: { ...LEANING.sunspace, join: 'closed', doorM2: 2, doorRule: 'by-need' },
  });
  expect(carried).toEqual([expect.stringContaining('an ordinary door')]);
});

test('a door that a person opens is kept, whatever its size', () => {
  const drawn = { ...LEANING, sunspace: { ...LEANING.sunspace, doorM2: 3, doorRule: 'shut' as const } };
  expect(chosen(drawn, 'closed')).toEqual({ design: join(drawn, 'closed'), carried: [] });
});

test('left out, the sunspace takes its bed and its lean with it', () => {
  const { design, carried } = chosen(LEANING, 'none');
  expect([design.glass.tiltDeg, design.plants.bedM2]).toEqual([90, 0]);
  expect(carried).toHaveLength(2);
});

test('what counts as too hot is kept where nobody opens the windows any more', () => {
  const after = { ...CLOSED, vents: { ...CLOSED.vents, habit: 'never' as const } };
  const { design, carried } = withCarried(CLOSED, after);
  expect(design.comfort.criterion).toBe('adaptive-II');
  expect(carried).toHaveLength(1);
  // Somebody who chooses the limit has it.
  const own = { ...after, comfort: { ...after.comfort, criterion: 'fixed' as const } };
  expect(withCarried(CLOSED, own)).toEqual({ design: own, carried: [] });
});

test('what counts as too hot is kept where the windows of the rooms are those of the sunspace, now shut off', () => {
  const { design, carried } = chosen(DRAWN, 'closed');
  expect(design.comfort.criterion).toBe('adaptive-II');
  expect(carried).toHaveLength(2);
});

test('any other change carries nothing', () => {
  const after = { ...CLOSED, glass: { ...CLOSED.glass, tiltDeg: 60 } };
  expect(withCarried(CLOSED, after)).toEqual({ design: after, carried: [] });
});
