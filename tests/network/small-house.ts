// A small house with a sunspace, written by hand, for tests of whole runs: both zones, ground, common wall, leaning and
// upright glass, vents, a door by need, plants and people. `equatorDeg` is the way its glass faces.
import type { Element, Film, Layer, Model, Opening, Pane, Zone, ZoneFace } from '../../src/model/model.ts';
import { always } from './always.ts';

const COMPUTED: Film = { kind: 'computed' };
const CONCRETE: Layer = {
  name: 'concrete',
  thicknessM: 0.15,
  conductivity: 1.75,
  density: 2300,
  specificHeat: 1000,
};
const ADOBE: Layer = { name: 'adobe', thicknessM: 0.3, conductivity: 0.7, density: 1600, specificHeat: 900 };
const WOOL: Layer = { name: 'wool', thicknessM: 0.2, conductivity: 0.04, density: 30, specificHeat: 840 };
const SOIL: Layer = { name: 'soil', thicknessM: 0.3, conductivity: 1, density: 1350, specificHeat: 1750 };
const BOARD: Layer = {
  name: 'board',
  thicknessM: 0.02,
  conductivity: 0.14,
  density: 600,
  specificHeat: 1600,
};

export interface SmallHouseOptions {
  readonly equatorDeg?: number;
  /** without panes when false */
  readonly glass?: boolean;
  /** no thermostat when false */
  readonly heated?: boolean;
  /** nothing that opens and shuts when false: cracks alone */
  readonly moved?: boolean;
  /** no plants when false */
  readonly planted?: boolean;
}

/** House and sunspace. */
export function smallHouse(options: SmallHouseOptions = {}): Model {
  const equatorDeg = options.equatorDeg ?? 180;
  return {
    name: 'small house',
    zones: [house(options.heated ?? true), sunspace(options.planted ?? true)],
    elements: elements(equatorDeg, options.planted ?? true),
    panes: (options.glass ?? true) ? panes(equatorDeg) : [],
    openings: (options.moved ?? true) ? OPENINGS : OPENINGS.filter(({ kind }) => kind === 'cracks'),
  };
}

function house(heated: boolean): Zone {
  return {
    id: 'house',
    floorAreaM2: 60,
    volumeM3: 150,
    furnitureCapacity: 1e6,
    furnitureMoisture: 2,
    thermostat: heated ? { heatC: always(19), coolC: null, heatCapacityW: 8000, coolCapacityW: 0 } : null,
    gains: [{ id: 'living', power: always(250), radiantShare: 0.5 }],
    moisture: [{ cause: 'people', rate: always(150) }],
    planting: null,
    people: always(2),
    cornerFactor: 0.8,
  };
}

function sunspace(planted: boolean): Zone {
  return {
    ...house(false),
    id: 'sunspace',
    floorAreaM2: 16,
    volumeM3: 40,
    furnitureCapacity: 0,
    furnitureMoisture: 0.2,
    gains: [],
    moisture: [],
    planting: planted
      ? { bedM2: 4, leafAreaIndex: 2, boundaryResistance: 150, albedo: 0.2, soil: 'mulched' }
      : null,
    people: null,
  };
}

function face(zone: string, faceTiltDeg: number, lit: ZoneFace['lit']): ZoneFace {
  return { kind: 'zone', zone, absorptance: 0.65, emissivity: 0.9, film: COMPUTED, lit, faceTiltDeg };
}

function floor(id: string, zone: string, areaM2: number, layer: Layer): Omit<Element, 'a'> {
  return { id, areaM2, layers: [layer], b: face(zone, 0, 'floor') };
}

function elements(equatorDeg: number, planted: boolean): Element[] {
  const outdoors = (tiltDeg: number, turnDeg: number) =>
    ({
      kind: 'outdoors',
      absorptance: 0.6,
      emissivity: 0.9,
      tiltDeg,
      azimuthDeg: (equatorDeg + turnDeg) % 360,
      film: COMPUTED,
      exposed: true,
    }) as const;
  const ground = {
    kind: 'ground',
    wave: { meanC: 10, amplitudeK: 0, coldestDay: 0 },
    resistance: 3,
  } as const;
  const wall = (id: string, zone: string, areaM2: number, turnDeg: number): Element => ({
    id,
    areaM2,
    layers: [BOARD, WOOL, BOARD],
    a: outdoors(90, turnDeg),
    b: face(zone, 90, turnDeg === 180 ? 'back' : 'none'),
  });
  return [
    { id: 'house floor', areaM2: 60, layers: [CONCRETE], a: ground, b: face('house', 0, 'floor') },
    {
      id: 'house roof',
      areaM2: 60,
      layers: [BOARD, WOOL, BOARD],
      a: outdoors(20, 180),
      b: face('house', 180, 'none'),
    },
    wall('pole wall', 'house', 25, 180),
    wall('morning wall', 'house', 15, -90 + 360),
    wall('evening wall', 'house', 15, 90),
    {
      id: 'common wall',
      areaM2: 18,
      layers: [ADOBE],
      a: face('sunspace', 90, 'back'),
      b: face('house', 90, 'none'),
      moistureBuffer: 1,
    },
    ...(planted
      ? [
          { ...floor('sunspace floor', 'sunspace', 12, CONCRETE), a: ground },
          { ...floor('sunspace bed', 'sunspace', 4, SOIL), a: ground, isBed: true as const },
        ]
      : [{ ...floor('sunspace floor', 'sunspace', 16, CONCRETE), a: ground }]),
    wall('sunspace morning end', 'sunspace', 5, -90 + 360),
    wall('sunspace evening end', 'sunspace', 5, 90),
  ];
}

function panes(equatorDeg: number): Pane[] {
  const pane = (id: string, to: string, areaM2: number, tiltDeg: number, from = 'outdoors'): Pane => ({
    id,
    areaM2,
    frameShare: 0.1,
    frameUValue: 2,
    glass: {
      sheets: 2,
      sheetM: 0.004,
      sheetConductivity: 1,
      gapM: 0.014,
      gas: 'air',
      gapEmissivity: 0.837,
      outsideEmissivity: 0.837,
      insideEmissivity: 0.837,
      optics: { kind: 'clear', refractiveIndex: 1.526, extinctionPerM: 19.6 },
    },
    tiltDeg,
    azimuthDeg: equatorDeg,
    from,
    to,
    shading: {
      widthM: 6,
      heightM: areaM2 / 6,
      overhang: { depthM: 0.4, gapM: 0.2, extendM: Number.POSITIVE_INFINITY },
    },
    filmOutside: COMPUTED,
    filmInside: COMPUTED,
    nightResistance: id === 'leaning' ? 0.5 : 0,
    lightRoom: { depthM: 3, sillM: 0.3, headM: 2.4 },
    dirt: 0.95,
  });
  return [
    pane('upright', 'house', 4, 90),
    pane('leaning', 'sunspace', 15, 60),
    { ...pane('between', 'house', 2, 90, 'sunspace'), frameShare: 0, shading: null, lightRoom: null },
  ];
}

const OPENINGS: readonly Opening[] = [
  {
    kind: 'cracks',
    id: 'house cracks',
    zone: 'house',
    leakageCm2: 300,
    stackCoefficient: 0.000145,
    windCoefficient: 0.000104,
  },
  {
    kind: 'vent',
    id: 'sunspace vents',
    zone: 'sunspace',
    lowM2: 0.6,
    highM2: 0.8,
    stackM: 2,
    openingHeightM: 0.5,
    discharge: 0.61,
    windCoefficient: 0.2,
    rule: {
      opensAboveC: 27,
      bandK: 3,
      onlyWhileOutside: 'cooler',
      opens: 'by-degrees',
      schedule: always(1),
      shutAboveWind: 15,
      shutInRain: true,
    },
    control: 'automatic',
  },
  {
    kind: 'door',
    id: 'door',
    zone: 'sunspace',
    other: 'house',
    widthM: 0.9,
    heightM: 2,
    discharge: 0.4,
    rule: 'by-need',
    wantsHeatBelowC: 21,
    dampLimit: 0.002,
    control: 'attentive',
    seeThrough: false,
  },
];
