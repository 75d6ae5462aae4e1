import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import type { Figures } from '../../src/questions/figures.ts';
import { bestLever, type Lever, leversOf } from '../../src/questions/levers.ts';
import { whatHelps } from '../../src/questions/what-helps.ts';

const design = EXAMPLES[0]!.design;
const figures = (overheatedHours: number, humidHours = 0, heatingKWh = 0) =>
  ({ overheatedHours, humidHours, heatingKWh, coldestC: 10 + overheatedHours }) as Figures;

describe('levers', () => {
  it('make designs that can be built, each different from the one drawn', () => {
    for (const example of EXAMPLES) {
      const levers = leversOf(example.design);
      expect(levers.length).toBeGreaterThan(8);
      expect(new Set(levers.map(({ id }) => id)).size).toBe(levers.length);
      for (const { id, apply } of levers) {
        const pulled = apply(example.design);
        expect(pulled, id).not.toEqual(example.design);
        expect(parseDesign(pulled), id).toMatchObject({ ok: true });
      }
    }
  });

  it('are not offered when they are pulled already', () => {
    for (const { id, apply } of leversOf(design)) {
      if (id === 'less-glass' || id === 'more-mass') continue;
      // Small steps may be taken again; a thing done is done.
      if (id === 'tighter') continue;
      expect(
        leversOf(apply(design)).map((lever) => lever.id),
        id,
      ).not.toContain(id);
    }
  });
});

describe('the best lever', () => {
  const lever = (id: string): Lever => ({ id, words: id, apply: (same) => same });
  const pulled = [100, 40, 120].map((hours, i) => ({ lever: lever(`${i}`), figures: figures(hours) }));

  it('lowers the figure most, and is none where none moves it far enough', () => {
    expect(bestLever(figures(110), pulled, 'overheatedHours', 20)).toMatchObject({ from: 110, to: 40 });
    expect(bestLever(figures(45), pulled, 'overheatedHours', 20)).toBeNull();
  });

  it('raises the coldest hour', () => {
    expect(bestLever(figures(110), pulled, 'coldestC', 1)).toMatchObject({ lever: { id: '2' }, to: 130 });
  });
});

describe('what helps', () => {
  it('pulls every lever once, and the two best together', async () => {
    let runs = 0;
    const help = await whatHelps(design, async (run) => {
      runs++;
      const isShaded = run.glass.summerShade > 0.5;
      const isBare = run.plants.bedM2 === 0;
      return figures(isShaded ? 100 : 1500, isBare ? 5 : 3600, 1000);
    });
    expect(help!.hot).toMatchObject({ lever: { id: 'shade' }, from: 1500, to: 100 });
    expect(help!.damp).toMatchObject({ lever: { id: 'no-plants' }, to: 5 });
    expect(help!.heat).toBeNull();
    expect(help!.both!.figures).toMatchObject({ overheatedHours: 100, humidHours: 5 });
    expect(runs).toBe(leversOf(design).length + 2);
  });

  it('gives up with the runner', async () => {
    expect(await whatHelps(design, async () => null)).toBeNull();
  });
});
