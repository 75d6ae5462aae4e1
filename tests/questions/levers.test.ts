import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import type { Figures } from '../../src/questions/figures.ts';
import { bestLever, type Lever, leversOf } from '../../src/questions/levers.ts';
import type { RunResult } from '../../src/questions/run-job.ts';
import type { Runner } from '../../src/questions/runner.ts';
import { helpFor, pullLevers } from '../../src/questions/what-helps.ts';
import { madeRun } from '../findings/made-run.ts';

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
  const hot = (run: Design) => (run.glass.summerShade > 0.5 ? 100 : 1500);
  const damp = (run: Design) => (run.plants.bedM2 === 0 ? 5 : 3600);
  const modest = EXAMPLES.find(({ id }) => id === 'modest')!.design;
  const outcome = madeRun().outcome;

  /** A runner by formula, which notes what it ran. */
  function runnerOf(
    hotOf: (run: Design) => number,
    dampOf: (run: Design) => number,
    seen: Design[] = [],
  ): Runner {
    return {
      run: async (jobs) =>
        jobs.map(({ id, design: ran }): RunResult => {
          seen.push(ran);
          const house = { ...outcome.zones.house, overheatedHours: hotOf(ran), humidHours: dampOf(ran) };
          return { id, outcome: { ...outcome, zones: { house } }, frontGlass: null };
        }),
    };
  }

  it('pulls every lever alone, then the next best on top of the best', async () => {
    const seen: Design[] = [];
    const runner = runnerOf(hot, damp, seen);
    const pulled = await pullLevers(design, runner);
    expect(pulled.pulled).toHaveLength(leversOf(design).length);
    expect(seen).toHaveLength(pulled.pulled.length + 1);
    const help = await helpFor(design, pulled, runner);
    expect(help.steps.map(({ lever }) => lever.id)).toEqual(['no-plants', 'shade']);
    expect(help.steps.map(({ figures: then }) => [then.overheatedHours, then.humidHours])).toEqual([
      [1500, 5],
      [100, 5],
    ]);
    // What is tried next stands on the steps already taken.
    expect(seen.at(-1)!.plants.bedM2).toBe(0);
  });

  it('takes no step that wins next to nothing, and none for a calm house', async () => {
    const little = runnerOf(
      (run) => (run.glass.summerShade > 0.5 ? 1460 : 1500),
      () => 100,
    );
    expect((await helpFor(modest, await pullLevers(modest, little), little)).steps).toEqual([]);
    const calm = runnerOf(
      () => 50,
      () => 100,
    );
    expect((await helpFor(modest, await pullLevers(modest, calm), calm)).steps).toEqual([]);
  });

  it('fails with its runner', async () => {
    const broken: Runner = { run: () => Promise.reject(new Error('no thread')) };
    await expect(pullLevers(design, broken)).rejects.toThrow('no thread');
  });
});
