import { describe, expect, it, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { ALL_EXAMPLES } from '../../src/design/stove-examples.ts';
import { type Figures, figuresOf } from '../../src/questions/figures.ts';
import { helpFor, pullLevers } from '../../src/questions/help-runs.ts';
import type { Lever } from '../../src/questions/lever.ts';
import { bestLever, leversOf } from '../../src/questions/levers.ts';
import type { RunResult } from '../../src/questions/run-job.ts';
import type { Runner } from '../../src/questions/runner.ts';
import { bestOf, helpOfPlain, isCalm, plainHelp } from '../../src/questions/what-helps.ts';
import { madeRun } from '../findings/made-run.ts';

const design = EXAMPLES[0]!.design;
const figures = (tooHotHours: number, humidHours = 0, heatingKWh = 0) =>
  ({
    tooHotHours,
    tooHotLimitHours: 87,
    humidHours,
    shortHours: 0,
    heatingKWh,
    coldestC: 10 + tooHotHours,
  }) as Figures;

describe('levers', () => {
  it('make designs that can be built, each different from the one drawn', () => {
    for (const example of ALL_EXAMPLES) {
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

test('mass is added where the house has room for it, and no more', () => {
  const { design } = EXAMPLES[2]!;
  const added = (one: Design) =>
    leversOf(one)
      .find(({ id }) => id === 'more-mass')
      ?.apply(one).mass.areaM2;
  expect(added(design)).toBe(design.mass.areaM2 + 30);
  const hut = (floorAreaM2: number, areaM2: number) => ({
    ...design,
    house: { ...design.house, floorAreaM2, equatorWallM: 4 },
    mass: { ...design.mass, areaM2, thicknessM: 0.2 },
  });
  // A tenth of 14 m² carries 7 m of walls 0.2 m thick and 2 m high.
  expect(added(hut(14, 4))).toBeCloseTo(14, 9);
  expect(added(hut(14, 10))).toBeUndefined();
});

test('a house that has none can be given a heater, of several rooms the first one', () => {
  const heatOf = (design: Design) => leversOf(design).filter(({ id }) => id === 'heater');
  for (const { design } of EXAMPLES) {
    expect(heatOf(design)).toEqual([]);
    const cold = { ...design, heating: { ...design.heating, capacityKW: 0 } };
    const none = cold.rooms && {
      ...cold,
      rooms: { ...cold.rooms, list: cold.rooms.list.map((room) => ({ ...room, heated: false })) },
    };
    for (const one of none ? [cold, none] : [cold]) {
      const [heater] = heatOf(one);
      const made = heater!.apply(one);
      // 50 W/m² in steps of half a kilowatt.
      expect(made.heating.capacityKW).toBe(design.house.floorAreaM2 === 96 ? 5 : 5.5);
      expect(parseDesign(made).ok).toBe(true);
    }
  }
});

test('a stove can be bigger, smaller, of masonry, lit at other hours and have air of its own; a thermostat offers none of it', () => {
  const modest = EXAMPLES.find(({ id }) => id === 'modest')!.design;
  const drawn = (source: object, capacityKW = 6): Design => ({
    ...modest,
    heating: { ...modest.heating, capacityKW, source: { ...USUAL_STOVE, ...source } },
  });
  const STOVE = /stove|masonry|lit-|fire-air/;
  const of = (one: Design) => leversOf(one).filter(({ id }) => STOVE.test(id));
  const ids = (one: Design) => of(one).map(({ id }) => id);
  expect(ids(modest)).toEqual([]);
  expect(ids(drawn({}))).toEqual([
    'bigger-stove',
    'smaller-stove',
    'masonry-heater',
    'lit-in-the-evening',
    'fire-air',
  ]);
  expect(ids(drawn({ stove: 'masonry', lit: 'evening', litBy: 'habit', air: 'own' }, 1))).toEqual([
    'bigger-stove',
    'lit-by-need',
    'lit-at-usual-hours',
  ]);
  const made = (id: string, one = drawn({})) =>
    of(one)
      .find((lever) => lever.id === id)!
      .apply(one).heating;
  expect(made('bigger-stove').capacityKW).toBe(9);
  expect(made('smaller-stove').capacityKW).toBe(4);
  // What was measured of a steel stove is not what a masonry heater does.
  expect(made('masonry-heater', drawn({ efficiency: 0.7 }))).toMatchObject({
    capacityKW: 3,
    source: { stove: 'masonry' },
  });
  expect(made('masonry-heater', drawn({ efficiency: 0.7 })).source).not.toHaveProperty('efficiency');
  expect(made('fire-air', drawn({ efficiency: 0.7 })).source).toMatchObject({ air: 'own', efficiency: 0.7 });
  // A light stove is not made smaller than 3 kW.
  expect(ids(drawn({}, 3))).not.toContain('smaller-stove');
});

test('a sunspace shut off has a door that is opened by need, whatever the open one had', () => {
  const open = {
    ...design,
    sunspace: { ...design.sunspace, join: 'open' as const, doorRule: 'open' as const },
  };
  const closed = leversOf(open)
    .find(({ id }) => id === 'close-off')!
    .apply(open);
  expect(closed.sunspace).toMatchObject({ join: 'closed', doorRule: 'by-need' });
});

describe('a fan for fresh air', () => {
  const fanOf = (people: number, extractAch = 0) => {
    const drawn = {
      ...design,
      people: { ...design.people, count: people },
      vents: { ...design.vents, extractAch },
    };
    return leversOf(drawn)
      .find(({ id }) => id === 'fresh-air-fan')
      ?.apply(drawn).vents.extractAch;
  };

  it('through a unit with heat recovery is as much, in place of the fan', () => {
    const drawn = { ...design, vents: { ...design.vents, extractAch: 0.1 } };
    const unit = leversOf(drawn).find(({ id }) => id === 'heat-recovery')!;
    expect(unit.words).toContain('in place of the fan');
    const pulled = unit.apply(drawn);
    expect(pulled.ventilation.recoveryAch).toBeCloseTo(43.2 / 286, 9);
    expect(pulled.vents.extractAch).toBe(0);
    expect(leversOf(pulled).map(({ id }) => id)).not.toContain('fresh-air-fan');
  });

  it('gives each person 4 litres of air a second, and nobody none', () => {
    // three people: 12 L/s, 43.2 m³/h; house of 110 m² by 2.6 m
    expect(fanOf(3)).toBeCloseTo(43.2 / 286, 9);
    expect(fanOf(0)).toBeUndefined();
    expect(fanOf(3, 0.15)).toBeUndefined();
  });
});

describe('the best lever', () => {
  const lever = (id: string): Lever => ({ id, words: id, apply: (same) => same });
  const pulled = [100, 40, 120].map((hours, i) => ({ lever: lever(`${i}`), figures: figures(hours) }));

  it('lowers the figure most, and is none where none moves it far enough', () => {
    expect(bestLever(figures(110), pulled, 'tooHotHours', 20)).toMatchObject({ from: 110, to: 40 });
    expect(bestLever(figures(45), pulled, 'tooHotHours', 20)).toBeNull();
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
          const { house: made } = outcome.zones;
          const tooHot = { ...made.tooHot, hours: hotOf(ran), limitHours: 87 };
          const house = { ...made, tooHot, humidHours: dampOf(ran) };
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
    expect(help.steps.map(({ figures: then }) => [then.tooHotHours, then.humidHours])).toEqual([
      [1500, 5],
      [100, 5],
    ]);
    // What is tried next stands on the steps already taken; last of all they are tried with half the bed.
    expect(seen.at(-2)!.plants.bedM2).toBe(0);
    expect(help.milder!.lever.id).toBe('smaller-bed');
    expect(seen.at(-1)!.plants).toMatchObject({ bedM2: design.plants.bedM2 / 2, soil: 'mulched' });
    expect(seen.at(-1)!.glass.summerShade).toBeGreaterThan(0.5);
    expect(help.milder!.figures).toMatchObject({ tooHotHours: 100, humidHours: 3600 });
  });

  it('tries on top of a step only what alone did something against what is left, and runs nothing known anew', async () => {
    const seen: Design[] = [];
    const runner = runnerOf(hot, damp, seen);
    const [known] = (await runner.run([{ id: 'as drawn', label: '', design, at: {} }])).map(
      ({ outcome: of }) => figuresOf(of),
    );
    seen.length = 0;
    const pulled = await pullLevers(design, runner, known);
    expect(seen).toHaveLength(pulled.pulled.length);
    seen.length = 0;
    const help = await helpFor(design, pulled, runner);
    // Of all levers only the shade takes off heat; only it is run on top of a house without plants, and then half the bed.
    expect(seen.map(({ plants, glass }) => [plants.bedM2 > 0, glass.summerShade > 0.5])).toEqual([
      [false, true],
      [true, true],
    ]);
    expect(helpOfPlain(design, JSON.parse(JSON.stringify(plainHelp(help))))).toMatchObject({
      steps: help.steps.map(({ lever, figures: then }) => ({
        lever: { id: lever.id, words: lever.words },
        figures: then,
      })),
    });
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

  it('offers nothing against heat or damp that is hardly there', async () => {
    // A twentieth of the year is 438 hours, a hundredth 88; one change would bring both within.
    const nearly = runnerOf(
      (run) => (run.glass.nightResistance > 0 ? 20 : 95),
      (run) => (run.glass.nightResistance > 0 ? 400 : 500),
    );
    const help = await helpFor(modest, await pullLevers(modest, nearly), nearly);
    expect(help.steps).toEqual([]);
    expect([isCalm(help.drawn), isCalm(figures(100, 560)), isCalm(figures(120, 0))]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it('chooses no milder form of another change, however well it does', async () => {
    const runner = runnerOf(
      () => 50,
      (run) => (run.plants.soil === 'mulched' ? 0 : run.plants.bedM2 === 0 ? 100 : 3600),
    );
    const help = await helpFor(design, await pullLevers(design, runner), runner);
    expect(help.steps.map(({ lever }) => lever.id)).toEqual(['no-plants']);
    expect(help.milder).toMatchObject({ lever: { id: 'smaller-bed' }, figures: { humidHours: 0 } });
  });

  it('fails with its runner', async () => {
    const broken: Runner = { run: () => Promise.reject(new Error('no thread')) };
    await expect(pullLevers(design, broken)).rejects.toThrow('no thread');
  });
});

describe('what helps most', () => {
  const lever = (id: string, milderThan?: string): Lever => ({
    id,
    words: id,
    apply: (to) => to,
    ...(milderThan !== undefined && { milderThan }),
  });
  const with_ = (id: string, of: Figures, milderThan?: string) => ({
    lever: lever(id, milderThan),
    figures: of,
  });
  const made = (tooHotHours: number, humidHours: number, heatingKWh: number, worstMouldIndex = 0) =>
    ({ ...figures(tooHotHours, humidHours, heatingKWh), worstMouldIndex }) as Figures;

  it('is never beaten in its own table, by a milder form either', () => {
    const hard = with_('no-plants', made(500, 100, 1000));
    const mild = with_('smaller-bed', made(200, 100, 1000), 'no-plants');
    expect(bestOf([hard, mild])!.lever.id).toBe('smaller-bed');
    expect(bestOf([hard, with_('smaller-bed', made(700, 100, 1000), 'no-plants')])!.lever.id).toBe(
      'no-plants',
    );
  });

  it('goes by mould and then by heat where hours are alike', () => {
    const one = with_('one', made(100, 100, 3000, 2));
    expect(bestOf([one, with_('other', made(102, 100, 3000, 0.5))])!.lever.id).toBe('other');
    expect(bestOf([one, with_('other', made(102, 100, 900, 2))])!.lever.id).toBe('other');
  });
});
