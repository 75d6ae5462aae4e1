// Areas against plain geometry of the same house, hemispheres against each other, and random designs within limits.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { requireModel } from '../../src/model/check-model.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Model } from '../../src/model/model.ts';
import { anyDesign } from './any-design.ts';
import { NORTH, SOUTH, WAVE } from './sites.ts';

const exampleOf = (id: string): Design => EXAMPLES.find((example) => example.id === id)!.design;
const modelIn = (design: Design, site = NORTH) => modelOf(design, site, WAVE);

function areaOf(model: Model, ...ids: string[]): number {
  const parts = [...model.elements, ...model.panes].filter(({ id }) => ids.includes(id));
  expect(parts.map(({ id }) => id).sort()).toEqual([...ids].sort());
  return parts.reduce((sum, { areaM2 }) => sum + areaM2, 0);
}

test('walls, windows, floor and roof of the modest house add up to its box', () => {
  const model = modelIn(exampleOf('modest'));
  const depth = 110 / 13.5;
  expect(areaOf(model, 'floor')).toBeCloseTo(110, 9);
  expect(areaOf(model, 'roof')).toBeCloseTo(110, 9);
  expect(areaOf(model, 'equator wall', 'front')).toBeCloseTo(13.5 * 2.6, 9);
  expect(areaOf(model, 'front')).toBeCloseTo(0.12 * 110, 9);
  expect(areaOf(model, 'pole wall', 'pole')).toBeCloseTo(13.5 * 2.6, 9);
  expect(areaOf(model, 'east wall', 'east')).toBeCloseTo(depth * 2.6, 9);
  expect(areaOf(model, 'west wall', 'west')).toBeCloseTo(depth * 2.6, 9);
  expect(areaOf(model, 'pole', 'east', 'west')).toBeCloseTo(0.05 * 110, 9);
  expect(model.zones.map(({ id }) => id)).toEqual(['house']);
  expect(model.zones[0]!.volumeM3).toBeCloseTo(110 * 2.6, 9);
});

test('the closed sunspace stands before part of the equator wall, its wall whole with windows and door', () => {
  const model = modelIn(exampleOf('closed'));
  expect(areaOf(model, 'equator wall')).toBeCloseTo(4.5 * 2.6, 9);
  expect(areaOf(model, 'common wall', 'common') + 2).toBeCloseTo(9 * 2.6, 9);
  expect(areaOf(model, 'front', 'sunspace front')).toBeCloseTo(9 * 2.6, 9);
  expect(areaOf(model, 'sunspace floor', 'sunspace bed')).toBeCloseTo(9 * 2.2, 9);
  expect(areaOf(model, 'sunspace bed')).toBeCloseTo(6, 9);
  expect(areaOf(model, 'sunspace roof')).toBeCloseTo(9 * 2.2, 9);
  expect(areaOf(model, 'sunspace end east')).toBeCloseTo(2.2 * 2.6, 9);
  const wall = model.elements.find(({ id }) => id === 'common wall')!;
  expect(wall.a).toMatchObject({ kind: 'zone', zone: 'sunspace', lit: 'back' });
  expect(wall.b).toMatchObject({ kind: 'zone', zone: 'house' });
  expect(model.panes.find(({ id }) => id === 'common')).toMatchObject({ from: 'sunspace', to: 'house' });
  expect(model.openings.find(({ id }) => id === 'door')).toMatchObject({
    zone: 'sunspace',
    other: 'house',
    widthM: 1,
    heightM: 2,
    rule: 'by-need',
    wantsHeatBelowC: 22,
    seeThrough: false,
  });
});

test('the leaning front covers its slope, its glazed ends close the section, and nothing parts it from the house', () => {
  const model = modelIn(exampleOf('leaning'));
  const sin60 = Math.sqrt(3) / 2;
  const lean = 2.6 / Math.tan(Math.PI / 3);
  expect(areaOf(model, 'front', 'sunspace front')).toBeCloseTo((13.5 * 2.6) / sin60, 9);
  expect(areaOf(model, 'sunspace roof')).toBeCloseTo(13.5 * (2.4 - lean), 9);
  expect(areaOf(model, 'end-east')).toBeCloseTo(2.6 * (2.4 - lean / 2), 9);
  expect(model.elements.map(({ id }) => id)).not.toContain('common wall');
  expect(model.elements.map(({ id }) => id)).not.toContain('equator wall');
  expect(model.openings.find(({ kind }) => kind === 'door')).toMatchObject({
    widthM: 13.5,
    heightM: 2.6,
    rule: 'open',
    discharge: 0.6,
    seeThrough: true,
  });
  expect(areaOf(model, 'pole wall, bermed', 'pole')).toBeCloseTo(13.5 * 2.6, 9);
  expect(model.zones[1]!.planting).toMatchObject({ bedM2: 16 });
  expect(model.zones[0]!.planting).toBeNull();
});

test('half a berm leaves the upper half of each wall to the weather', () => {
  const modest = exampleOf('modest');
  const model = modelIn({ ...modest, envelope: { ...modest.envelope, bermShare: 0.5 } });
  expect(areaOf(model, 'pole wall, bermed')).toBeCloseTo(0.5 * 13.5 * 2.6, 9);
  expect(areaOf(model, 'pole wall', 'pole')).toBeCloseTo(0.5 * 13.5 * 2.6, 9);
  expect(model.elements.find(({ id }) => id === 'pole wall, bermed')!.a.kind).toBe('ground');
});

test('a second storey is a floor more, with the same roof and ground floor', () => {
  const modest = exampleOf('modest');
  const model = modelIn({ ...modest, house: { ...modest.house, storeys: 2, equatorWallM: 9 } });
  expect(areaOf(model, 'floor')).toBeCloseTo(55, 9);
  expect(areaOf(model, 'roof')).toBeCloseTo(55, 9);
  expect(areaOf(model, 'upper floors')).toBeCloseTo(55, 9);
  const front = model.panes.find(({ id }) => id === 'front')!;
  expect(front.lightRoom!.headM).toBeCloseTo(2.6, 9);
  expect((front.shading!.heightM * front.shading!.widthM * 2) / front.areaM2).toBeCloseTo(1, 9);
});

test('a house in the south looks north, keeps its east, and has its warm months half a year later', () => {
  const modest = exampleOf('modest');
  const design = {
    ...modest,
    glass: { ...modest.glass, summerShade: 0.5 },
    vents: { ...modest.vents, nightPurgeAch: 4 },
  };
  const [north, south] = [modelIn(design, NORTH), modelIn(design, SOUTH)];
  const azimuth = (model: Model, id: string) => model.panes.find((pane) => pane.id === id)!.azimuthDeg;
  expect([azimuth(north, 'front'), azimuth(south, 'front')]).toEqual([180, 0]);
  expect([azimuth(north, 'pole'), azimuth(south, 'pole')]).toEqual([0, 180]);
  expect([azimuth(north, 'east'), azimuth(south, 'east')]).toEqual([90, 90]);
  expect([azimuth(north, 'west'), azimuth(south, 'west')]).toEqual([270, 270]);
  const shade = (model: Model) => model.panes.find(({ id }) => id === 'front')!.shading!.seasonal!;
  const shifted = (months: readonly number[]) => months.map((_, month) => months[(month + 6) % 12]);
  // Longest days in June and December: the shade hangs from a month and a half before to four months after.
  expect(shade(north)).toEqual([0, 0, 0, 0, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0, 0]);
  expect(shade(south)).toEqual(shifted(shade(north)));
  const purge = (model: Model) => model.openings.find(({ kind }) => kind === 'fixed')!;
  expect(purge(north)).toMatchObject({ flow: { months: [0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 0, 0] } });
  expect(purge(south)).toMatchObject({ flow: { months: [1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 1, 1] } });
});

test('all but azimuths and seasons is the same in both hemispheres', () => {
  const plain = (model: Model) =>
    JSON.parse(JSON.stringify(model, (key, value) => (/azimuthDeg|seasonal|months/.test(key) ? 0 : value)));
  for (const { design } of EXAMPLES)
    expect(plain(modelIn(design, SOUTH))).toEqual(plain(modelIn(design, NORTH)));
});

test('a turn moves every side clockwise by as much', () => {
  const modest = exampleOf('modest');
  const turned = modelIn({ ...modest, house: { ...modest.house, turnDeg: 30 } });
  const straight = modelIn(modest);
  expect(turned.panes).toHaveLength(4);
  turned.panes.forEach((pane, i) => {
    expect((pane.azimuthDeg - straight.panes[i]!.azimuthDeg + 360) % 360).toBeCloseTo(30, 9);
  });
});

test('every example makes a model that passes', () => {
  expect(EXAMPLES).toHaveLength(4);
  for (const { design } of EXAMPLES) expect(() => requireModel(modelIn(design))).not.toThrow();
});

test('200 random designs within the limits make models that pass, with walls at least as large as their glass', () => {
  let runs = 0;
  fc.assert(
    fc.property(anyDesign, fc.boolean(), (design, isNorth) => {
      expect(parseDesign(design)).toMatchObject({ ok: true });
      const model = modelIn(design, isNorth ? NORTH : SOUTH);
      requireModel(model);
      const zones = model.zones.map(({ id }) => id);
      expect(zones).toEqual(design.sunspace.join === 'none' ? ['house'] : ['house', 'sunspace']);
      for (const pane of model.panes) expect(pane.areaM2).toBeLessThanOrEqual(pane.wallM2! * (1 + 1e-9));
      runs++;
    }),
    { numRuns: 200, seed: 7 },
  );
  expect(runs).toBe(200);
});

test('what is smaller than a grain makes no part: glass, door, vents and insulation of rounding dust', () => {
  const closed = exampleOf('closed');
  const dust = 1e-300;
  const model = modelIn({
    ...closed,
    glass: { ...closed.glass, value: dust, otherShareOfFloor: dust },
    sunspace: { ...closed.sunspace, commonGlassM2: dust, doorM2: dust },
    vents: { ...closed.vents, sunspaceM2: dust, houseM2: dust },
    mass: { ...closed.mass, areaM2: dust },
    floor: { ...closed.floor, resistance: dust },
  });
  expect(model.panes).toEqual([]);
  expect(model.openings.map(({ kind }) => kind)).toEqual(['cracks', 'cracks']);
  expect(model.elements.map(({ id }) => id)).not.toContain('extra mass');
  const floor = model.elements.find(({ id }) => id === 'floor')!;
  expect([...new Set(floor.layers.map(({ name }) => name))]).toEqual([
    'Soil, clay or silt',
    'Concrete',
    'Ceramic tile',
  ]);
});

test('glass that fills a knee to the last bit has its sill on the floor, not a hair below it', () => {
  const closed = exampleOf('closed');
  let knees = 0;
  for (let step = 0; step < 400; step++) {
    const lengthM = 1 + step * 0.037;
    const empty: Design = {
      ...closed,
      house: { ...closed.house, equatorWallM: lengthM },
      glass: { ...closed.glass, tiltDeg: 45, value: 0 },
      sunspace: { ...closed.sunspace, lengthM, depthM: 1 + (step % 7) * 0.1 },
    };
    const full = { ...empty, glass: { ...empty.glass, value: geometryOf(empty).largestGlassM2 } };
    const knee = modelIn(full).panes.find(({ id }) => id === 'front knee');
    if (!knee) continue;
    knees++;
    expect(knee.lightRoom!.sillM).toBeGreaterThanOrEqual(0);
  }
  expect(knees).toBeGreaterThan(100);
});

test('a house 100 m long and a hand deep stands on its ground in the harshest year', () => {
  const harsh = { ...WAVE, meanC: -10, amplitudeK: 32 };
  const slim = exampleOf('modest');
  for (const thicknessM of [0.01, 0.1, 1.5]) {
    const house = { ...slim.house, floorAreaM2: 4, equatorWallM: 100, storeys: 1 };
    const design = { ...slim, house, floor: { ...slim.floor, thicknessM, resistance: 0 } };
    expect(() => requireModel(modelOf(design, NORTH, harsh))).not.toThrow();
  }
});
