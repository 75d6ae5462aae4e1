// Random small houses for property tests: one to three zones with elements to outdoors, ground and each other, panes,
// openings of every kind, gains, moisture, plants and thermostats. Everything physical and nothing sensible.
import fc from 'fast-check';
import type {
  Element,
  Face,
  Film,
  GlassSystem,
  Layer,
  Model,
  Opening,
  Pane,
  PaneCover,
  Schedule,
  Shading,
  Thermostat,
  Zone,
  ZoneFace,
} from '../../src/model/model.ts';

/** Random models, each accepted by requireModel. */
export const randomModel: fc.Arbitrary<Model> = fc
  .integer({ min: 1, max: 3 })
  .chain((zones) => modelOf(Array.from({ length: zones }, (_, i) => `zone ${i + 1}`)));

function modelOf(ids: readonly string[]): fc.Arbitrary<Model> {
  const first = ids[0]!;
  const pairs = ids.slice(1).map((id) => [first, id] as const);
  const perZone = <T>(of: (id: string) => fc.Arbitrary<T>) => fc.tuple(...ids.map(of));
  const perPair = <T>(of: (a: string, b: string) => fc.Arbitrary<T>) =>
    fc.tuple(...pairs.map(([a, b]) => of(a, b)));
  return fc
    .record({
      zones: perZone(zone),
      floors: perZone((id) => element(`${id} floor`, face, zoneFace(id, 0, 'floor'))),
      walls: perZone((id) =>
        fc.array(element(`${id} wall`, face, zoneFace(id, 90, 'back')), { maxLength: 2 }),
      ),
      between: perPair((a, b) => element(`${a} to ${b}`, zoneFace(a, 90, 'back'), zoneFace(b, 90, 'none'))),
      panes: perZone((id) => fc.array(pane(`${id} pane`, 'outdoors', id), { maxLength: 2 })),
      lights: perPair((a, b) => fc.array(pane(`${a} light to ${b}`, a, b), { maxLength: 1 })),
      openings: perZone((id) => fc.array(fc.oneof(cracks(id), fixed(id), vent(id)), { maxLength: 3 })),
      doors: perPair((a, b) => fc.array(door(a, b), { maxLength: 1 })),
    })
    .map(({ zones, floors, walls, between, panes, lights, openings, doors }) => ({
      name: 'random',
      zones,
      elements: numbered([...floors, ...walls.flat(), ...between, ...zones.flatMap(bedsOf)]),
      panes: numbered([...panes.flat(), ...lights.flat()]),
      openings: numbered([...openings.flat(), ...doors.flat()]),
    }));
}

/** The bed of what is planted in a zone. */
function bedsOf({ id, planting }: Zone): Element[] {
  if (planting === null || planting.bedM2 === 0) return [];
  return [
    {
      id: `${id} bed`,
      areaM2: planting.bedM2,
      layers: [{ name: 'soil', thicknessM: 0.3, conductivity: 1, density: 1300, specificHeat: 1800 }],
      a: { kind: 'ground', wave: { meanC: 10, amplitudeK: 5, coldestDay: 40 }, resistance: 1 },
      b: {
        kind: 'zone',
        zone: id,
        absorptance: 0.8,
        emissivity: 0.9,
        film: { kind: 'computed' },
        lit: 'floor',
        faceTiltDeg: 0,
      },
      isBed: true,
    },
  ];
}

function numbered<T extends { readonly id: string }>(parts: readonly T[]): readonly T[] {
  return parts.map((part, i) => ({ ...part, id: `${part.id} ${i + 1}` }));
}

/** Evenly spread on a grid of 2000 steps: free doubles would mostly be next to nothing. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 2000 }).map((step) => Number((min + ((max - min) * step) / 2000).toPrecision(6)));

const schedule = (min: number, max: number): fc.Arbitrary<Schedule> =>
  fc.oneof(
    between(min, max).map((value) => ({ workday: new Array<number>(24).fill(value) })),
    fc
      .record({ workday: hours(min, max), weekend: hours(min, max), months: fc.array(between(0, 1), twelve) })
      .map(({ workday, weekend, months }) => ({ workday, weekend, months })),
  );
const twelve = { minLength: 12, maxLength: 12 };
function hours(min: number, max: number): fc.Arbitrary<number[]> {
  return fc.array(between(min, max), { minLength: 24, maxLength: 24 });
}

const film: fc.Arbitrary<Film> = fc.oneof(
  fc.constant<Film>({ kind: 'computed' }),
  fc.record({
    kind: fc.constant('fixed' as const),
    convection: between(0.5, 20),
    radiation: fc.oneof(fc.constant('computed' as const), between(0.5, 6)),
  }),
);

const layer: fc.Arbitrary<Layer> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      name: fc.constant('solid'),
      thicknessM: between(0.005, 0.4),
      conductivity: between(0.03, 2),
      density: between(10, 2400),
      specificHeat: between(700, 2000),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      name: fc.constant('without mass'),
      thicknessM: between(0.01, 0.2),
      conductivity: between(0.02, 0.2),
      density: fc.constant(0),
      specificHeat: fc.constant(0),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      name: fc.constant('water'),
      thicknessM: between(0.05, 0.4),
      conductivity: fc.constant(0.6),
      density: fc.constant(1000),
      specificHeat: fc.constant(4186),
      mixed: fc.constant(true),
    }),
  },
);

const share = between(0, 1);
const emissivity = between(0.05, 0.95);

function zoneFace(zone: string, faceTiltDeg: number, lit: ZoneFace['lit']): fc.Arbitrary<ZoneFace> {
  return fc.record({
    kind: fc.constant('zone' as const),
    zone: fc.constant(zone),
    absorptance: share,
    emissivity,
    film,
    lit: fc.constant(lit),
    faceTiltDeg: fc.constant(faceTiltDeg),
  });
}

const face: fc.Arbitrary<Face> = fc.oneof(
  fc.record({
    kind: fc.constant('outdoors' as const),
    absorptance: share,
    emissivity,
    tiltDeg: between(0, 180),
    azimuthDeg: between(0, 360),
    film,
    exposed: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('ground' as const),
    wave: fc.record({ meanC: between(0, 20), amplitudeK: between(0, 15), coldestDay: between(0, 60) }),
    resistance: between(0, 3),
  }),
  fc.constant({ kind: 'adiabatic' as const }),
);

function element(id: string, a: fc.Arbitrary<Face>, b: fc.Arbitrary<ZoneFace>): fc.Arbitrary<Element> {
  return fc.record({
    id: fc.constant(id),
    areaM2: between(2, 80),
    layers: fc.array(layer, { minLength: 1, maxLength: 3 }),
    a,
    b,
    moistureBuffer: between(0, 2),
  });
}

const glass: fc.Arbitrary<GlassSystem> = fc.record({
  sheets: fc.constantFrom(1 as const, 2 as const, 3 as const),
  sheetM: between(0.003, 0.008),
  sheetConductivity: fc.constant(1),
  gapM: between(0.008, 0.02),
  gas: fc.constantFrom('air' as const, 'argon' as const, 'krypton' as const),
  gapEmissivity: between(0.03, 0.84),
  outsideEmissivity: emissivity,
  insideEmissivity: emissivity,
  optics: fc.constantFrom(
    { kind: 'clear' as const, refractiveIndex: 1.526, extinctionPerM: 19.6 },
    { kind: 'scaled' as const, solarTransmittance: 0.4, solarHeatGain: 0.43 },
  ),
});

const shading: fc.Arbitrary<Shading> = fc
  .record({
    depthM: between(0, 2),
    gapM: between(0, 0.5),
    extendM: fc.constantFrom(0, 1, Number.POSITIVE_INFINITY),
    fins: fc.boolean(),
    summer: share,
  })
  .map(({ depthM, gapM, extendM, fins, summer }) => ({
    widthM: 3,
    heightM: 2,
    overhang: { depthM, gapM, extendM },
    ...(fins && { fins: { depthM, gapM } }),
    seasonal: Array.from({ length: 12 }, (_, month) => (month > 3 && month < 9 ? summer : 0)),
  }));

const control = fc.constantFrom(
  'automatic' as const,
  'attentive' as const,
  'away' as const,
  'forgetful' as const,
  'never' as const,
);

function cover(pane: string): fc.Arbitrary<PaneCover> {
  return fc
    .record({
      hand: fc.constantFrom(`${pane} one`, `${pane} two`),
      place: fc.constantFrom('outside' as const, 'inside' as const),
      transmittance: share,
      reflecting: share,
      scatters: fc.boolean(),
      coverage: share,
      resistance: fc.constantFrom(0, 0.1, 1),
      rule: fc.record({
        drawnBy: fc.constantFrom('sun' as const, 'heat' as const, 'night' as const, 'season' as const),
        months: fc.array(share, { minLength: 12, maxLength: 12 }),
        sunW: between(20, 600),
        aboveC: between(15, 30),
        mostWind: between(3, 20),
      }),
      control,
    })
    .map(({ reflecting, ...rest }) => ({ ...rest, reflectance: reflecting * (1 - rest.transmittance) }));
}

function pane(id: string, from: string, to: string): fc.Arbitrary<Pane> {
  return fc.record({
    id: fc.constant(id),
    areaM2: between(0.5, 20),
    frameShare: from === 'outdoors' ? between(0, 0.3) : fc.constant(0),
    frameUValue: between(0, 3),
    glass,
    tiltDeg: between(20, 90),
    azimuthDeg: between(0, 360),
    from: fc.constant(from),
    to: fc.constant(to),
    shading: fc.option(shading, { nil: null }),
    filmOutside: film,
    filmInside: film,
    nightResistance: fc.constantFrom(0, 0.5, 1.6),
    covers: fc.array(cover(id), { maxLength: from === 'outdoors' ? 2 : 0 }),
    lightRoom: fc.constantFrom(null, { depthM: 4, sillM: 0.3, headM: 2.3 }),
    dirt: between(0.5, 1),
  });
}

function cracks(zone: string): fc.Arbitrary<Opening> {
  return fc.record({
    kind: fc.constant('cracks' as const),
    id: fc.constant(`${zone} cracks`),
    zone: fc.constant(zone),
    leakageCm2: between(0, 1500),
    stackCoefficient: fc.constant(0.000145),
    windCoefficient: fc.constant(0.000104),
  });
}

function fixed(zone: string): fc.Arbitrary<Opening> {
  return fc
    .record({
      flow: schedule(0, 0.3),
      fan: fc.boolean(),
      onlyAboveC: fc.option(between(15, 30)),
      byHumidity: fc.option(fc.record({ from: between(0.3, 0.6), full: between(0.61, 0.9) })),
      recovery: fc.option(
        fc.record({
          effectiveness: share,
          frost: fc.constantFrom('preheat' as const, 'recirculate' as const),
          bypassAboveC: between(18, 28),
        }),
      ),
    })
    .map(({ flow, fan, onlyAboveC, byHumidity, recovery }) => ({
      kind: 'fixed' as const,
      id: `${zone} fixed`,
      zone,
      flow,
      fan,
      ...(onlyAboveC !== null && { onlyAboveC }),
      ...(byHumidity !== null && { byHumidity }),
      ...(recovery !== null && { recovery, fanWPerM3H: 0.4 }),
    }));
}

function vent(zone: string): fc.Arbitrary<Opening> {
  return fc.record({
    kind: fc.constant('vent' as const),
    id: fc.constant(`${zone} vent`),
    zone: fc.constant(zone),
    lowM2: between(0.05, 2),
    highM2: fc.oneof(fc.constant(0), between(0.05, 2)),
    stackM: between(0, 4),
    openingHeightM: between(0.2, 2),
    discharge: fc.constant(0.61),
    windCoefficient: between(0, 0.3),
    rule: fc.record({
      opensAboveC: between(18, 30),
      bandK: between(0.5, 5),
      onlyWhileOutside: fc.constantFrom('cooler' as const, 'warmer' as const, 'either' as const),
      opens: fc.constantFrom('by-degrees' as const, 'all-at-once' as const),
      schedule: schedule(0, 1),
      shutAboveWind: fc.constantFrom(8, 1000),
      shutInRain: fc.boolean(),
    }),
    control,
  });
}

function door(zone: string, other: string): fc.Arbitrary<Opening> {
  return fc.record({
    kind: fc.constant('door' as const),
    id: fc.constant(`${zone} door`),
    zone: fc.constant(zone),
    other: fc.constant(other),
    widthM: between(0.5, 4),
    heightM: between(0.5, 2.4),
    discharge: fc.constant(0.4),
    rule: fc.constantFrom('open' as const, 'shut' as const, 'by-need' as const),
    wantsHeatBelowC: between(18, 24),
    dampLimit: between(0, 0.004),
    control,
    seeThrough: fc.boolean(),
  });
}

function zone(id: string): fc.Arbitrary<Zone> {
  return fc.record({
    id: fc.constant(id),
    floorAreaM2: between(5, 150),
    volumeM3: between(15, 450),
    furnitureCapacity: fc.oneof(fc.constant(0), between(1e4, 5e6)),
    furnitureMoisture: between(0, 5),
    thermostat: fc.option(thermostat, { nil: null }),
    gains: fc.array(fc.record({ id: fc.constant('gain'), power: schedule(0, 800), radiantShare: share }), {
      maxLength: 1,
    }),
    moisture: fc.array(fc.record({ cause: fc.constantFrom('people', 'washing'), rate: schedule(0, 500) }), {
      maxLength: 2,
    }),
    planting: fc.option(
      fc.record({
        bedM2: between(0, 10),
        leafAreaIndex: between(0, 4),
        boundaryResistance: between(50, 300),
        albedo: between(0.1, 0.3),
        soil: fc.constantFrom('mulched' as const, 'bare' as const, 'open-water' as const),
      }),
      { nil: null },
    ),
    people: fc.option(schedule(0, 5), { nil: null }),
    cornerFactor: between(0.4, 0.95),
  });
}

const thermostat: fc.Arbitrary<Thermostat> = fc.record({
  heatC: fc.option(schedule(5, 21), { nil: null }),
  coolC: fc.option(
    between(24, 30).map((value) => ({ workday: new Array<number>(24).fill(value) })),
    { nil: null },
  ),
  heatCapacityW: fc.constantFrom(500, 5000, 1e6, Number.POSITIVE_INFINITY),
  coolCapacityW: fc.constantFrom(0, 2000, Number.POSITIVE_INFINITY),
});
