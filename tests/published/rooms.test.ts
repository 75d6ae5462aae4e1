// Air between rooms and storeys against published formulas. Sources, from memory: Brown and Solvason 1962 for doorways;
// Epstein 1988 for holes in floors; BS 5925:1991 and ASHRAE Fundamentals for openings in series on both sides of a neutral level.
import { expect, test } from 'vitest';
import type { DoorOpening, Element, Film, Model, Opening, VentOpening, Zone } from '../../src/model/model.ts';
import { createStackFlows } from '../../src/network/air/house-stack.ts';
import { blankHourWeather } from '../../src/network/hour/hour-weather.ts';
import { USUAL_CAPACITY } from '../../src/network/layout/engine-capacity.ts';
import type { ZoneAir } from '../../src/network/people/zone-air.ts';
import { simulate } from '../../src/network/simulate.ts';
import { stairFroude } from '../../src/physics/stairwell.ts';
import { always } from '../network/always.ts';
import { bareZone } from '../network/box-model.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { check } from './ledger.ts';

const ALLOWED = {
  /** what the search for temperatures leaves, and the density of air that is heated a little [fraction] */
  doorK: 0.01,
  /** the same formula by another road */
  flow: 1e-9,
  /** the source's own scatter is a tenth */
  froude: 0.1,
  /** round-off of kilograms a second */
  mass: 1e-12,
};

const COMPUTED: Film = { kind: 'computed' };

function box(id: string, watt: number): Zone {
  return bareZone(id, { gains: [{ id: 'heater', power: always(watt), radiantShare: 0 }] });
}

/** A wall without mass worth speaking of; nothing passes the warm room's. */
function shell(zone: string, isOpen: boolean): Element {
  return {
    id: `shell of ${zone}`,
    areaM2: 60,
    layers: [{ name: 'board', thicknessM: 0.01, conductivity: 0.1, density: 100, specificHeat: 1000 }],
    a: isOpen
      ? {
          kind: 'outdoors',
          absorptance: 0,
          emissivity: 0.9,
          tiltDeg: 90,
          azimuthDeg: 0,
          film: COMPUTED,
          exposed: false,
        }
      : { kind: 'adiabatic' },
    b: {
      kind: 'zone',
      zone,
      absorptance: 0.5,
      emissivity: 0.9,
      film: COMPUTED,
      lit: 'none',
      faceTiltDeg: 90,
    },
  };
}

test('a heated room behind a doorway is as much warmer as its heat asks for', () => {
  const climate = madeClimate({ dryBulbC: 5, dewPointC: -20 });
  const door: DoorOpening = {
    kind: 'door',
    id: 'door',
    zone: 'warm',
    other: 'cool',
    widthM: 0.8,
    heightM: 2,
    discharge: 0.6,
    rule: 'open',
    schedule: always(1),
    control: 'never',
    seeThrough: false,
    wantsHeatBelowC: 0,
    dampLimit: 0,
  };
  for (const watt of [100, 400, 1000]) {
    const model: Model = {
      name: 'two rooms',
      zones: [box('warm', watt), box('cool', 0)],
      elements: [shell('warm', false), shell('cool', true)],
      panes: [],
      openings: [door],
    };
    const [warm, cool] = simulate(model, climate, { water: false }).zones.map(({ airC }) => airC[8759]!);
    // Q = Cd/3 · W H^1.5 √(g ΔT/T̄) and W = ρ c_p Q ΔT, solved for ΔT.
    const meanK = (warm! + cool!) / 2 + 273.15;
    const perRoot = (0.6 / 3) * 0.8 * 2 ** 1.5 * Math.sqrt(9.81 / meanK);
    const density = climate.airDensity[8759]!;
    check({
      source: 'Brown and Solvason 1962',
      case: `two rooms, doorway 0.8 × 2 m, ${watt} W in one of them, steady`,
      quantity: 'warmer by',
      reference: (watt / (density * 1006 * perRoot)) ** (2 / 3),
      ours: warm! - cool!,
      allowed: ALLOWED.doorK,
      kind: 'rel',
      unit: 'K',
      mark: 'memory',
    });
  }
});

test('a hole in a floor passes what was measured for thin floors and for tall shafts', () => {
  const rows = [
    { slenderness: 0, froude: 0.055, of: 'thin floor' },
    // Diffusion in a tall shaft: 0.32 (L/D)^-1.5.
    { slenderness: 6, froude: 0.32 * 6 ** -1.5, of: 'shaft six times as tall as wide' },
    { slenderness: 10, froude: 0.32 * 10 ** -1.5, of: 'shaft ten times as tall as wide' },
  ];
  for (const { slenderness, froude, of } of rows) {
    check({
      source: 'Epstein 1988',
      case: of,
      quantity: 'exchange as a Froude number',
      reference: froude,
      ours: stairFroude(slenderness),
      allowed: ALLOWED.froude,
      kind: 'rel',
      unit: '–',
      mark: 'memory',
    });
  }
});

/** Living room and kitchen below, two bedrooms above; ways lead to the living room. */
function stackOf(windowsM2: readonly number[], stairM2: number, insideC: readonly number[], cracks: number) {
  const zoneIds = ['living', 'kitchen', 'bed', 'loft'];
  const window = (zone: string, lowM2: number): Opening =>
    ({ kind: 'vent', id: `${zone} windows`, zone, lowM2, highM2: 0 }) as VentOpening;
  const crack = (zone: string): Opening => ({
    kind: 'cracks',
    id: `${zone} cracks`,
    zone,
    leakageCm2: 100,
    stackCoefficient: 0.00029,
    windCoefficient: 0.00023,
  });
  const door = (id: string) => ({ kind: 'door', id, widthM: 0.8, heightM: 2 }) as DoorOpening;
  const stairs = { kind: 'stairs', id: 'stairs', areaM2: stairM2 } as unknown as Opening;
  const openings = [
    ...zoneIds.map((zone, i) => window(zone, windowsM2[i]!)),
    ...zoneIds.map(crack),
    door('kitchen door'),
    stairs,
    door('loft door'),
  ];
  const { zones, openings: most } = USUAL_CAPACITY;
  const columns = { volume: new Float64Array(most), steady: new Float64Array(most).fill(1) };
  columns.volume.fill(cracks, 4, 8);
  const exchange = {
    outdoors: new Float64Array(zones),
    between: new Float64Array(zones * zones),
  };
  const air = {
    zoneC: Float64Array.from(insideC),
    weather: { ...blankHourWeather(), dryBulbC: 10, windSpeed: 0, airDensity: 1.2 },
  } as unknown as ZoneAir;
  const stack = createStackFlows(USUAL_CAPACITY, columns, exchange, air);
  stack.load(
    {
      places: zoneIds.map((zone, i) => ({
        zone,
        heightM: i < 2 ? 1.25 : 3.75,
        windows: `${zone} windows`,
        cracks: `${zone} cracks`,
        share: 1,
      })),
      ways: [
        { zone: 'kitchen', to: 'living', opening: 'kitchen door' },
        { zone: 'bed', to: 'living', opening: 'stairs' },
        { zone: 'loft', to: 'bed', opening: 'loft door' },
      ],
    },
    openings,
    zoneIds,
  );
  stack.beginHour();
  stack.find();
  stack.apply();
  return { ...exchange, zones: zoneIds.length, stack };
}

test('air from low windows up the stairs to high ones is the published flow of openings in series', () => {
  const series = (...areas: number[]) => 1 / Math.sqrt(areas.reduce((sum, area) => sum + 1 / area ** 2, 0));
  const flowOf = (areaM2: number, insideC: number) =>
    0.61 * areaM2 * Math.sqrt((2 * 9.81 * 2.5 * Math.abs(insideC - 10)) / ((insideC + 10) / 2 + 273.15));
  const rows = [
    {
      of: 'window, stairs, window',
      windows: [0.5, 0, 0.4, 0],
      stairs: 3,
      area: series(0.5, 3, 0.4),
      insideC: 24,
    },
    { of: 'small stairs', windows: [1, 0, 1, 0], stairs: 0.3, area: series(1, 0.3, 1), insideC: 24 },
    {
      of: 'a door on the way above',
      windows: [0.5, 0, 0, 0.5],
      stairs: 2,
      area: series(0.5, 2, 0.5, 1.6),
      insideC: 30,
    },
    {
      of: 'a door on the way below',
      windows: [0, 0.5, 0.5, 0],
      stairs: 2,
      area: series(0.5, 2, 0.5, 1.6),
      insideC: 13,
    },
  ];
  for (const { of, windows, stairs, area, insideC } of rows) {
    const { between } = stackOf(windows, stairs, [insideC, insideC, insideC, insideC], 0);
    check({
      source: 'BS 5925:1991',
      case: `stack of a house of two storeys: ${of}, ${insideC} °C inside, 10 °C outside`,
      quantity: 'air up the stairs',
      reference: flowOf(area, insideC),
      ours: (between[2 * 4 + 0]! - between[0 * 4 + 2]!) / 1.2,
      allowed: ALLOWED.flow,
      kind: 'rel',
      unit: 'm³/s',
      mark: 'computed',
    });
  }
});

test('as much air leaves every room as comes in, whatever stands open', () => {
  const cases = [
    { of: 'warm house, all windows open', windows: [0.5, 0.3, 0.2, 0.7], insideC: [22, 21, 23, 20] },
    { of: 'cool house in summer', windows: [0.5, 0.3, 0.2, 0.7], insideC: [6, 5, 7, 8] },
    { of: 'warm house, windows shut', windows: [0, 0, 0, 0], insideC: [22, 21, 19, 17] },
  ];
  for (const { of, windows, insideC } of cases) {
    const { between, outdoors, stack, zones } = stackOf(windows, 3, insideC, 0.01);
    const { place, way } = stack;
    expect(Math.max(...way.flow.map(Math.abs))).toBeGreaterThan(1e-3);
    for (let z = 0; z < zones; z++) {
      // From outdoors by windows and cracks, one way; from other rooms, less what goes to them.
      const net = [0, 1, 2, 3].reduce(
        (sum, p) => sum + (place.zone[p] === z ? place.windowFlow[p]! + place.crackFlow[p]! : 0),
        0,
      );
      let carried = 0;
      for (let y = 0; y < zones; y++) carried += between[z * zones + y]! - between[y * zones + z]!;
      check({
        source: 'conservation of mass',
        case: `${of}, room ${z + 1} of four`,
        quantity: 'air in less air out',
        reference: 0,
        ours: 1.2 * net + carried,
        allowed: ALLOWED.mass,
        unit: 'kg/s',
        mark: 'computed',
      });
      expect(outdoors[z]!).toBeLessThan(2);
    }
  }
});
