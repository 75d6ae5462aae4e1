// Firewood, fuels, stoves, masonry heaters, heated floors: tables read from biomass and energy agencies, the wood stove
// trade and two standards recalled. What is from memory is marked so.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { STOVE_NUMBERS, type StoveSource, USUAL_STOVE } from '../../src/design/heat-source.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { FixedOpening, Stove } from '../../src/model/model.ts';
import { floorOutput, wallOutput } from '../../src/physics/floor-output.ts';
import { FUEL_CONTENT } from '../../src/physics/fuel-content.ts';
import { hotSurface } from '../../src/physics/hot-surface.ts';
import { fireKg } from '../../src/physics/masonry-heater.ts';
import { bodyHeatAfter } from '../../src/physics/stove-body.ts';
import { storeAfter, storeCapacity, storeLoss } from '../../src/physics/water-store.ts';
import {
  CORD_M3,
  dryHeatOf,
  stackedKgPerM3,
  type WoodId,
  woodById,
  woodHeat,
} from '../../src/physics/wood-fuel.ts';
import { check } from './ledger.ts';

const BIOMASS = 'Austrian biomass table';
const SITE = {
  name: '',
  latitudeDeg: 40,
  longitudeDeg: -105,
  elevationM: 1600,
  utcOffsetH: -7,
  groundReflectance: null,
};
const GROUND = { meanC: 10, amplitudeK: 11, coldestDay: 15 };
const BTU_PER_FT2 = 0.293071 / 0.3048 ** 2;
/** Heat by weight is worked back from steres rounded to ten kWh: 0.4 % of 4.5 kWh/kg [kWh/kg]. */
const WORKED_BACK = 0.02;
const MBTU_KWH = 293.071;

function modest(source: Partial<StoveSource>, capacityKW: number): Design {
  const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
  return { ...design, heating: { ...design.heating, capacityKW, source: { ...USUAL_STOVE, ...source } } };
}

function partsOf(design: Design): { stove: Stove; air: FixedOpening | undefined } {
  const model = modelOf(design, SITE, GROUND);
  const air = model.openings.find(
    (one): one is FixedOpening => one.kind === 'fixed' && one.feedsFire === true,
  );
  return { stove: model.zones[0]!.stove!, air };
}

test('heat of wood by its water', () => {
  const rows: [WoodId, number, number][] = [
    ['beech', 0.3, 3.28],
    ['spruce', 0.3, 3.58],
  ];
  for (const [wood, moisture, reference] of rows) {
    const ours = woodHeat(dryHeatOf(woodById(wood)), moisture);
    const row = {
      source: BIOMASS,
      case: `${wood} at 30 % water`,
      quantity: 'net heat',
      unit: 'kWh/kg',
    } as const;
    check({ ...row, reference, ours, allowed: WORKED_BACK, mark: 'document' });
  }
  const tabled: [number, number][] = [
    [0, 5],
    [0.15, 4.15],
    [0.2, 3.86],
    [0.25, 3.58],
    [0.3, 3.3],
    [0.5, 2.16],
  ];
  for (const [moisture, reference] of tabled) {
    const row = {
      source: 'H = H₀ (1 − w) − 0.68 w',
      quantity: 'net heat',
      unit: 'kWh/kg',
      mark: 'computed',
    } as const;
    const ours = woodHeat(5, moisture);
    check({ ...row, case: `H₀ 5.0, ${100 * moisture} % water`, reference, ours, allowed: 0.006 });
  }
});

test('a stacked cubic metre at 30 % water, whose weight is worked out from the table at 15 %', () => {
  const rows: [WoodId, number][] = [
    ['spruce', 1210],
    ['pine', 1420],
    ['birch', 1430],
    ['oak', 1610],
    ['beech', 1640],
  ];
  expect(rows).toHaveLength(5);
  for (const [id, reference] of rows) {
    const wood = woodById(id);
    check({
      source: BIOMASS,
      case: `${id}, 1 m³ stacked at 30 % water`,
      quantity: 'net heat',
      reference,
      ours: stackedKgPerM3(wood, 0.3) * woodHeat(dryHeatOf(wood), 0.3),
      // Both tables are rounded to ten kWh, 0.4 % each.
      allowed: 0.008,
      kind: 'rel',
      unit: 'kWh',
      mark: 'document',
    });
  }
});

/**
 * A cord as US tables have it. The extension table's own heat by its own weight, 2.9 to 3.3 kWh/kg, is that of wood of which a
 * third is water (5.0 (1 − w) − 0.68 w), so it is held to ours at the 30 % of the European table; compared at 20 % our beech
 * was 9 % lighter than its hardwood. The table by kinds of wood says nothing of water: 20 %, as firewood is sold there. Its
 * softwoods are other woods than the European ones: a solid m³ of pine holds 470 kg here and 340 of eastern white pine (USDA
 * Wood Handbook, memory), so none of those are set side by side.
 */
test('a cord by weight and heat, and by kinds of wood', () => {
  const range = { kind: 'range', allowed: 0, mark: 'document' } as const;
  const cordOf = (id: WoodId, moisture: number) => {
    const wood = woodById(id);
    const kg = stackedKgPerM3(wood, moisture) * CORD_M3;
    return { kg, kWh: kg * woodHeat(dryHeatOf(wood), moisture) };
  };
  for (const [id, name, kg, mBtu] of [
    ['beech', 'hardwood', [1800, 2270], [18, 24]],
    ['spruce', 'softwood', [900, 1360], [10, 15]],
  ] as const) {
    const cord = {
      ...range,
      source: 'US extension service',
      case: `a cord of ${name}, ours ${id} at 30 % water`,
    } as const;
    const ours = cordOf(id, 0.3);
    check({
      ...cord,
      quantity: 'weight',
      referenceMin: kg[0],
      referenceMax: kg[1],
      ours: ours.kg,
      unit: 'kg',
    });
    check({
      ...cord,
      quantity: 'heat',
      referenceMin: mBtu[0] * MBTU_KWH,
      referenceMax: mBtu[1] * MBTU_KWH,
      ours: ours.kWh,
      unit: 'kWh',
    });
  }
  for (const [id, name, least, most] of [
    ['beech', 'beech', 17.3, 21.8],
    ['oak', 'red oak', 17.9, 21.3],
    ['birch', 'yellow birch', 17.3, 21.3],
    ['poplar', 'aspen', 10.3, 12.5],
  ] as const)
    check({
      ...range,
      source: 'US table of heat by kinds of wood',
      case: `a cord of ${name}, ours at 20 % water`,
      quantity: 'heat',
      referenceMin: least * MBTU_KWH,
      referenceMax: most * MBTU_KWH,
      ours: cordOf(id, 0.2).kWh,
      unit: 'kWh',
    });
});

test('wood in a solid cubic metre, by the table of stacks and how much of a stack is wood', () => {
  // Of one-metre logs 65 % is wood in softwood and 59 % in hardwood; read in the same table. Dry wood by the volume it has
  // green and at 12 % water: USDA Wood Handbook, memory, medium confidence.
  for (const [id, solid, least, most, name] of [
    ['beech', 0.59, 560, 640, 'American beech'],
    ['oak', 0.59, 560, 630, 'northern red oak'],
    ['birch', 0.59, 550, 620, 'yellow birch'],
    ['poplar', 0.59, 350, 380, 'quaking aspen'],
    ['larch', 0.65, 480, 520, 'western larch'],
    ['spruce', 0.65, 370, 400, 'red spruce'],
  ] as const)
    check({
      kind: 'range',
      source: 'USDA Wood Handbook',
      case: `${name}, ours ${id} of the ${BIOMASS}`,
      quantity: 'dry wood in a solid m³',
      referenceMin: least,
      referenceMax: most,
      allowed: 0,
      ours: (woodById(id).kgPerStere * 0.85) / solid,
      unit: 'kg',
      mark: 'memory',
    });
});

test('bought fuels', () => {
  const range = { kind: 'range', allowed: 0, mark: 'document' } as const;
  check({
    ...range,
    source: 'US energy agencies, gross; net 93–95 % of it, memory',
    case: 'heating oil, 10.72–10.81 kWh/L gross',
    quantity: 'net heat',
    referenceMin: 0.93 * 10.72,
    referenceMax: 0.95 * 10.81,
    allowed: 0.01,
    ours: FUEL_CONTENT.oilKWhPerL,
    unit: 'kWh/L',
  });
  check({
    ...range,
    source: 'US energy agencies, 12.8 kWh/kg net',
    case: 'liquid propane of 0.50–0.52 kg/L',
    quantity: 'net heat',
    referenceMin: 12.8 * 0.5,
    referenceMax: 12.8 * 0.52,
    ours: FUEL_CONTENT.propaneKWhPerL,
    unit: 'kWh/L',
  });
  check({
    ...range,
    source: BIOMASS,
    case: 'pellets heaped, about 3000 kWh/m³',
    quantity: 'net heat',
    referenceMin: 2850,
    referenceMax: 3090,
    ours: FUEL_CONTENT.pelletsKgPerM3 * FUEL_CONTENT.pelletsKWhPerKg,
    unit: 'kWh/m³',
  });
});

test('wood of a masonry heater’s fire', () => {
  const row = { quantity: 'wood of a fire', unit: 'kg' } as const;
  check({
    ...row,
    source: 'EN 15544',
    case: '4 kW for 12 h',
    reference: 14.8,
    ours: fireKg(4, 12),
    allowed: 0.05,
    mark: 'memory',
  });
  for (const [kW, reference] of [
    [2.7, 10],
    [11, 40],
  ] as const) {
    check({
      ...row,
      kind: 'rel',
      source: 'Masonry heater guild',
      case: `${kW} kW for 12 h`,
      reference,
      ours: fireKg(kW, 12),
      allowed: 0.02,
      mark: 'document',
    });
  }
  const { stove } = partsOf(modest({ stove: 'masonry' }, 4));
  check({
    ...row,
    source: 'EN 15544',
    case: '4 kW fired morning and evening, smallest fire',
    reference: 7.4,
    ours: stove.loadKg * stove.leastLoad,
    allowed: 0.05,
    mark: 'memory',
  });
});

test('a light stove at its nominal output', () => {
  const { stove, air } = partsOf(modest({}, 6));
  const kgPerH = stove.loadKg / stove.burnH;
  check({
    source: 'Stove trade',
    case: '6 kW at about 80 %, "just under 2 kg an hour"',
    quantity: 'wood burnt',
    kind: 'range',
    referenceMin: 1.75,
    referenceMax: 2,
    allowed: 0,
    ours: kgPerH,
    unit: 'kg/h',
    mark: 'document',
  });
  check({
    source: 'Chemistry: 4.6 m³/kg of dry wood, 15 % water, twice to two and a half times as much air',
    case: '6 kW stove',
    quantity: 'air for the fire',
    kind: 'range',
    referenceMin: 7.8,
    referenceMax: 9.8,
    allowed: 0,
    ours: (air!.flow.workday[12]! * 3600) / kgPerH,
    unit: 'm³/kg',
    mark: 'computed',
  });
  expect(partsOf(modest({ air: 'own' }, 6)).air).toBe(undefined);
  for (const [kind, min, max] of [
    ['steel', 20 / 60, 40 / 60],
    ['soapstone', 1, 2],
    ['masonry', 8, 15],
  ] as const) {
    check({
      source: 'Stove trade',
      case: `${kind}, time in which the body cools to 1/e`,
      quantity: 'time constant',
      kind: 'range',
      referenceMin: min,
      referenceMax: max,
      allowed: 0,
      ours: STOVE_NUMBERS[kind].coolingH,
      unit: 'h',
      mark: 'practice',
    });
  }
});

test('radiation of hot surfaces', () => {
  const plate = hotSurface(204.4, 21, 0.95);
  const row = { source: 'Trade rule for a stove’s plate', case: '400 °F' } as const;
  check({
    ...row,
    kind: 'rel',
    quantity: 'heat',
    reference: 1200 * BTU_PER_FT2,
    ours: plate.flux,
    allowed: 0.02,
    unit: 'W/m²',
    mark: 'document',
  });
  check({
    ...row,
    quantity: 'radiant share',
    reference: 0.65,
    ours: plate.radiantShare,
    allowed: 0.02,
    unit: '',
    mark: 'document',
  });
  const computed: [number, number, number][] = [
    [60, 431, 0.58],
    [80, 725, 0.58],
    [100, 1064, 0.58],
    [200, 3512, 0.62],
    [300, 7530, 0.68],
  ];
  for (const [surfaceC, flux, share] of computed) {
    const ours = hotSurface(surfaceC, 20, 0.9);
    const at = {
      source: '1.31 ΔT^⅓ + ε σ ΔT⁴',
      case: `${surfaceC} °C, room 20 °C`,
      mark: 'computed',
    } as const;
    check({ ...at, quantity: 'heat', reference: flux, ours: ours.flux, allowed: 2, unit: 'W/m²' });
    check({
      ...at,
      quantity: 'radiant share',
      reference: share,
      ours: ours.radiantShare,
      allowed: 0.006,
      unit: '',
    });
  }
  for (const [kind, min, max] of [
    ['steel', 0.6, 0.7],
    ['cast-iron', 0.6, 0.7],
    ['masonry', 0.55, 0.65],
  ] as const) {
    check({
      source: 'Handbooks',
      case: kind,
      quantity: 'radiant share of a stove',
      kind: 'range',
      referenceMin: min,
      referenceMax: max,
      allowed: 0,
      ours: partsOf(modest({ stove: kind }, 4)).stove.radiantShare,
      unit: '',
      mark: 'memory',
    });
  }
});

test('a masonry heater cools as its closed form: 48.75 kWh, 10 h', () => {
  const HOUR = 3600;
  const held = (hours: number) => bodyHeatAfter(48.75, 0, 10 * HOUR, hours * HOUR);
  const rows: [number, number, number][] = [
    [0, 4.88, 0.006],
    [8, 2.19, 0.006],
    [12, 1.47, 0.006],
  ];
  const row = { source: 'E = E₀ e^(−t/τ)', mark: 'computed' } as const;
  for (const [hours, reference, allowed] of rows) {
    check({
      ...row,
      case: `after ${hours} h`,
      quantity: 'output',
      reference,
      ours: held(hours) / 10,
      allowed,
      unit: 'kW',
    });
  }
  check({
    ...row,
    case: 'after 24 h',
    quantity: 'share held',
    reference: 0.09,
    ours: held(24) / 48.75,
    allowed: 0.001,
    unit: '',
  });
  // EN 15250 declares the half time; τ = t½/ln 2.
  for (const [half, tau] of [
    [4, 5.77],
    [8, 11.5],
    [12, 17.3],
  ] as const) {
    const ours = bodyHeatAfter(1, 0, tau * HOUR, half * HOUR);
    check({
      ...row,
      case: `half time ${half} h`,
      quantity: 'share held',
      reference: 0.5,
      ours,
      allowed: 0.002,
      unit: '',
    });
  }
  // Heated evenly it nears P τ, and in halves it comes to the same.
  const whole = bodyHeatAfter(3, 2, 5, 8);
  expect(bodyHeatAfter(bodyHeatAfter(3, 2, 5, 4), 2, 5, 4)).toBeCloseTo(whole, 12);
  expect(bodyHeatAfter(0, 2, 5, 1e6)).toBeCloseTo(10, 9);
});

test('a water store between boiler and floor', () => {
  check({
    source: 'Closed form',
    case: '500 litres at 70 °C, 12 W/K in all, room 20 °C, ten hours',
    quantity: 'temperature of a store left alone',
    reference: 20 + 50 * Math.exp(-12 / 57.14),
    ours: storeAfter(
      70,
      0,
      { capacity: storeCapacity(500), loss: 12 },
      { roomC: 20 },
      { pipes: 0, slabC: 20 },
      36_000,
    ).celsius,
    allowed: 0.02,
    unit: '°C',
    mark: 'computed',
  });
  check({
    source: 'EU 812/2013, class C',
    case: '500 litres, upper bound, at 45 K',
    quantity: 'standing loss',
    reference: 117,
    ours: 45 * storeLoss(500),
    allowed: 1,
    unit: 'W',
    mark: 'memory',
  });
  // Halves of a step make the step, and what goes in comes out or is held.
  const store = { capacity: storeCapacity(300), loss: storeLoss(300) };
  const [room, floor] = [{ roomC: 20 }, { pipes: 400, slabC: 24 }];
  const whole = storeAfter(50, 4000, store, room, floor, 3600);
  const half = storeAfter(50, 4000, store, room, floor, 1800);
  const other = storeAfter(half.celsius, 4000, store, room, floor, 1800);
  expect(other.celsius).toBeCloseTo(whole.celsius, 10);
  expect((half.pipesW + other.pipesW) / 2).toBeCloseTo(whole.pipesW, 8);
  expect(whole.lossW + whole.pipesW + (store.capacity * (whole.celsius - 50)) / 3600).toBeCloseTo(4000, 8);
  expect(Math.abs(storeAfter(22, 0, store, room, floor, 3600).pipesW)).toBe(0);
});

test('what a heated floor gives', () => {
  const row = {
    source: 'EN 1264',
    quantity: 'output of a floor',
    unit: 'W/m²',
    allowed: 0.5,
    mark: 'memory',
  } as const;
  check({ ...row, case: 'lived in, 29 °C in a room of 20 °C', reference: 100, ours: floorOutput(9) });
  check({ ...row, case: 'edge strip, 35 °C in a room of 20 °C', reference: 175, ours: floorOutput(15) });
  check({ ...row, case: '5 K over the room', reference: 52.4, ours: floorOutput(5), mark: 'computed' });
  check({ ...row, case: '2 K over the room', reference: 19.1, ours: floorOutput(2), mark: 'computed' });
  check({ ...row, case: 'a wall 9 K over the room, 8 W/(m²K)', reference: 72, ours: wallOutput(9) });
});
