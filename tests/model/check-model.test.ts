// Every way a model can be without meaning is refused with the name of the part, the value and what is allowed.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { requireModel } from '../../src/model/check-model.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Element, Model, Opening, Pane, Zone } from '../../src/model/model.ts';
import { NORTH, WAVE } from './sites.ts';

const GOOD = modelOf(EXAMPLES.find(({ id }) => id === 'closed')!.design, NORTH, WAVE);

type Part<T> = { -readonly [K in keyof T]: T[K] };
type Loose = Record<string, unknown>;

/** The good model with one part changed. */
function changed<K extends 'zones' | 'elements' | 'panes' | 'openings'>(
  kind: K,
  id: string,
  change: Loose | ((part: Loose) => Loose),
): Model {
  const parts = GOOD[kind] as readonly (Zone | Element | Pane | Opening)[];
  expect(parts.some((part) => part.id === id)).toBe(true);
  const swapped = parts.map((part) => {
    if (part.id !== id) return part;
    const loose = part as unknown as Loose;
    return { ...loose, ...(typeof change === 'function' ? change(loose) : change) };
  });
  return { ...GOOD, [kind]: swapped } as unknown as Part<Model>;
}

const layerWith = (change: Loose) => (element: Loose) => ({
  layers: (element.layers as Loose[]).map((layer, i) => (i === 0 ? { ...layer, ...change } : layer)),
});
const inside = (key: string, change: Loose) => (part: Loose) => ({
  [key]: { ...(part[key] as Loose), ...change },
});

/** Model, and words its message must hold: part, value, allowed. */
const BAD: readonly (readonly [string, Model, readonly string[]])[] = [
  ['no zone', { ...GOOD, zones: [] }, ['zones is empty', 'at least one']],
  ['two zones of one name', { ...GOOD, zones: [GOOD.zones[0]!, ...GOOD.zones] }, ["zone 'house'", 'once']],
  [
    'two elements of one name',
    { ...GOOD, elements: [...GOOD.elements, GOOD.elements[0]!] },
    ["element 'floor'", 'once'],
  ],
  ['a zone called outdoors', changed('zones', 'house', { id: 'outdoors' }), ["'outdoors'", 'other name']],
  ['no volume', changed('zones', 'house', { volumeM3: 0 }), ["zone 'house', volumeM3 is 0 m³", 'above 0']],
  [
    'NaN furniture',
    changed('zones', 'house', { furnitureCapacity: Number.NaN }),
    ['furnitureCapacity is NaN'],
  ],
  ['a corner factor of 2', changed('zones', 'house', { cornerFactor: 2 }), ['cornerFactor is 2', '0 to 1']],
  [
    'a day of 23 hours',
    changed('zones', 'house', { people: { workday: new Array<number>(23).fill(1) } }),
    ["zone 'house', people, workday has 23 values", '24'],
  ],
  [
    'a year of 11 months',
    changed('zones', 'house', {
      gains: [
        {
          id: 'oven',
          radiantShare: 0,
          power: { workday: new Array<number>(24).fill(1), months: new Array<number>(11).fill(1) },
        },
      ],
    }),
    ["gain 'oven', months has 11 values", '12'],
  ],
  [
    'a NaN in the weekend',
    changed('zones', 'house', {
      moisture: [
        {
          cause: 'pond',
          rate: { workday: new Array<number>(24).fill(1), weekend: new Array<number>(24).fill(Number.NaN) },
        },
      ],
    }),
    ["moisture 'pond', weekend[0] is NaN g/h"],
  ],
  [
    'an element of no area',
    changed('elements', 'roof', { areaM2: 0 }),
    ["element 'roof', areaM2 is 0 m²", 'above 0'],
  ],
  [
    'no layers',
    changed('elements', 'roof', { layers: [] }),
    ["element 'roof', layers is empty", 'at least one'],
  ],
  [
    'zero thickness',
    changed('elements', 'roof', layerWith({ thicknessM: 0 })),
    ["element 'roof', layer 'Softwood', thicknessM is 0 m", 'above 0'],
  ],
  [
    'negative conductivity',
    changed('elements', 'roof', layerWith({ conductivity: -0.1 })),
    ["element 'roof'", 'conductivity is -0.1 W/(m·K)', 'above 0'],
  ],
  [
    'negative density',
    changed('elements', 'roof', layerWith({ density: -1 })),
    ["element 'roof'", 'density is -1 kg/m³'],
  ],
  [
    'a wall of a room that is not there',
    changed('elements', 'common wall', inside('b', { zone: 'attic' })),
    ["element 'common wall', face b, zone is 'attic'", 'house, sunspace'],
  ],
  [
    'a face blacker than black',
    changed('elements', 'roof', inside('a', { absorptance: 1.1 })),
    ["element 'roof', face a, absorptance is 1.1", '0 to 1'],
  ],
  [
    'negative ground resistance',
    changed('elements', 'floor', inside('a', { resistance: -0.5 })),
    ["element 'floor', face a, resistance is -0.5 m²K/W"],
  ],
  [
    'a pane bigger than its wall',
    changed('panes', 'front', { areaM2: 40 }),
    ["pane 'front', areaM2 is 40 m²", 'at most its wall', '23.4'],
  ],
  [
    'a pane of no area',
    changed('panes', 'front', { areaM2: 0 }),
    ["pane 'front', areaM2 is 0 m²", 'above 0'],
  ],
  ['all frame', changed('panes', 'front', { frameShare: 1 }), ["pane 'front', frameShare is 1", 'below 1']],
  [
    'less than no frame',
    changed('panes', 'front', { frameShare: -0.1 }),
    ["pane 'front', frameShare is -0.1"],
  ],
  ['a pane to nowhere', changed('panes', 'front', { to: 'attic' }), ["pane 'front', to is 'attic'", 'house']],
  [
    'a pane from nowhere',
    changed('panes', 'common', { from: 'cellar' }),
    ["pane 'common', from is 'cellar'"],
  ],
  ['a pane within one room', changed('panes', 'common', { from: 'house' }), ["pane 'common', to is 'house'"]],
  [
    'four sheets',
    changed('panes', 'front', inside('glass', { sheets: 4 })),
    ['glass.sheets is 4', '1, 2 or 3'],
  ],
  ['no gap', changed('panes', 'front', inside('glass', { gapM: 0 })), ['glass.gapM is 0 m', 'above 0']],
  [
    'more light than heat',
    changed(
      'panes',
      'front',
      inside('glass', { optics: { kind: 'scaled', solarTransmittance: 0.6, solarHeatGain: 0.5 } }),
    ),
    ['solarHeatGain is 0.5', '0.6 to 1'],
  ],
  [
    'a head below its sill',
    changed('panes', 'front', { lightRoom: { depthM: 2, sillM: 2, headM: 1 } }),
    ['lightRoom.headM is 1 m', 'above the sill, 2 m'],
  ],
  [
    'shade for 11 months',
    changed('panes', 'front', inside('shading', { seasonal: new Array<number>(11).fill(0) })),
    ['shading.seasonal has 11 values', '12'],
  ],
  [
    'an opening of a room that is not there',
    changed('openings', 'house windows', { zone: 'attic' }),
    ["opening 'house windows', zone is 'attic'", 'house, sunspace'],
  ],
  [
    'a door to nowhere',
    changed('openings', 'door', { other: 'attic' }),
    ["opening 'door', other is 'attic'", 'house, sunspace'],
  ],
  [
    'a door to itself',
    changed('openings', 'door', { other: 'sunspace' }),
    ["opening 'door', other is 'sunspace'"],
  ],
  [
    'a door of no width',
    changed('openings', 'door', { widthM: 0 }),
    ["opening 'door', widthM is 0 m", 'above 0'],
  ],
  [
    'a vent of no area',
    changed('openings', 'sunspace vents', { lowM2: 0, highM2: 0 }),
    ["opening 'sunspace vents'", 'is 0 m²', 'above 0'],
  ],
  [
    'a vent rule without width',
    changed('openings', 'sunspace vents', inside('rule', { bandK: 0 })),
    ["opening 'sunspace vents', rule.bandK is 0 K", 'above 0'],
  ],
  [
    'negative cracks',
    changed('openings', 'house cracks', { leakageCm2: -1 }),
    ["opening 'house cracks', leakageCm2 is -1 cm²"],
  ],
];

test('a model of an example passes', () => {
  expect(() => requireModel(GOOD)).not.toThrow();
});

test('models without meaning are refused by name, value and what is allowed', () => {
  expect(BAD).toHaveLength(37);
  for (const [what, model, words] of BAD) {
    let message = 'nothing was thrown';
    try {
      requireModel(model);
    } catch (error) {
      expect(error).toBeInstanceOf(RangeError);
      message = (error as Error).message;
    }
    for (const word of words) expect(message, what).toContain(word);
    expect(message, what).toMatch(/allowed/);
  }
});

/** Every number in plain data, as a path. */
function numberPaths(data: unknown, path: readonly string[] = []): string[][] {
  if (typeof data === 'number') return [[...path]];
  if (data === null || typeof data !== 'object') return [];
  return Object.entries(data).flatMap(([key, value]) => numberPaths(value, [...path, key]));
}

test('NaN is refused wherever a number stands', () => {
  const paths = numberPaths(GOOD);
  expect(paths.length).toBeGreaterThan(500);
  const copy = structuredClone(GOOD) as unknown as Loose;
  const passed = paths.filter((path) => {
    const at = path.slice(0, -1).reduce((part, key) => part[key] as Loose, copy);
    const key = path.at(-1)!;
    const sound = at[key];
    at[key] = Number.NaN;
    try {
      requireModel(copy as unknown as Model);
      return true;
    } catch {
      return false;
    } finally {
      at[key] = sound;
    }
  });
  expect(passed.map((path) => path.join('.'))).toEqual([]);
  expect(copy).toEqual(GOOD);
});

test('plant and overhang without limit are allowed, as test cases ask for them', () => {
  const endless = changed(
    'zones',
    'house',
    inside('thermostat', { heatCapacityW: Number.POSITIVE_INFINITY }),
  );
  expect(() => requireModel(endless)).not.toThrow();
  const overhang = { depthM: 1, gapM: 0, extendM: Number.POSITIVE_INFINITY };
  expect(() => requireModel(changed('panes', 'front', inside('shading', { overhang })))).not.toThrow();
});

test('a zone none of whose surfaces radiates is refused by name', () => {
  const { modest } = Object.fromEntries(EXAMPLES.map(({ id, design }) => [id, design]));
  const model = modelOf(modest!, NORTH, WAVE);
  const film = { kind: 'fixed', convection: 3, radiation: 0 } as const;
  const still = {
    ...model,
    elements: model.elements.map((element) => ({ ...element, b: { ...element.b, film } })),
    panes: model.panes.map((pane) => ({ ...pane, filmInside: film })),
  };
  expect(() => requireModel(still)).toThrow("zone 'house', radiation of its films is 0 everywhere");
});
