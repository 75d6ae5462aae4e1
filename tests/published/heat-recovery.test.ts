// Source: EN 308 and EN 13141-7, temperature ratio on the supply side: supply = outdoor + ratio · (extract − outdoor). The
// rows are computed from it; one box without walls, held at 20 °C, is run through a whole year in steady weather, so that
// what is checked is what the network makes of a unit. Air of 1.2 kg/m³, 0.335 Wh/(m³K).
import { expect, test } from 'vitest';
import type { FixedOpening, Model, Opening } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import { ventilation } from '../../src/outcomes/ventilation.ts';
import { preheatRise } from '../../src/physics/heat-recovery.ts';
import { HOURS } from '../../src/weather/typical-year.ts';
import { always } from '../network/always.ts';
import { boxModel } from '../network/box-model.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { check } from './ledger.ts';

const SOURCE = 'EN 308, EN 13141-7, temperature ratio';
const INDOOR_C = 20;
const FLOW_M3H = 150;
const VOLUME_M3 = 250;
const HEAT_WH_M3K = 0.335;

/** 1.5 W where the reference rounds ρc_p to 0.335 (half its last digit, 150 m³/h, 20 K); 0.02 K where a supply temperature is printed to a tenth. */
const ALLOWED = { watt: 1.5, kelvin: 0.02, rate: 0.005, kWh: 0.1 };

function boxWith(openings: readonly Opening[]): Model {
  return boxModel({
    zone: {
      floorAreaM2: 100,
      volumeM3: VOLUME_M3,
      thermostat: { heatC: always(INDOOR_C), coolC: null, heatCapacityW: 1e5, coolCapacityW: 0 },
    },
    floor: {
      layers: [{ name: 'slab', thicknessM: 0.05, conductivity: 1.5, density: 2000, specificHeat: 1000 }],
    },
    openings,
  });
}

const unit = (
  effectiveness: number,
  more: Partial<FixedOpening> = {},
  frost: 'preheat' | 'recirculate' = 'preheat',
): FixedOpening => ({
  kind: 'fixed',
  id: 'ventilation unit',
  zone: 'house',
  flow: always(FLOW_M3H / 3600),
  fan: true,
  recovery: { effectiveness, frost, bypassAboveC: 24 },
  ...more,
});

/** Heat that holds the box, once it stands still, and the year. */
function held(outdoorC: number, openings: readonly Opening[]) {
  const made = madeClimate({ dryBulbC: outdoorC, dewPointC: outdoorC - 5 });
  const climate = { ...made, airDensity: new Float64Array(HOURS).fill(1.2) };
  const model = boxWith(openings);
  const year = simulate(model, climate);
  expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  return { year, watt: year.zones[0]!.heatingW[HOURS - 1]!, energy: ventilation(model, climate, year) };
}

test('150 m³/h at 20 K cost 1005 W, and 151 W behind an exchanger of 85 %', () => {
  const row = {
    source: SOURCE,
    quantity: 'heat loss',
    unit: 'W',
    mark: 'computed',
    allowed: ALLOWED.watt,
  } as const;
  const { recovery: _, ...plain } = unit(0);
  check({ ...row, case: '150 m³/h, 0 and 20 °C, none', reference: 1005, ours: held(0, [plain]).watt });
  check({ ...row, case: '150 m³/h, 0 and 20 °C, 0.85', reference: 151, ours: held(0, [unit(0.85)]).watt });
});

test('the air comes in at outdoor + ratio · (room − outdoor)', () => {
  for (const { ratio, outdoorC, reference } of [
    { ratio: 0.75, outdoorC: 0, reference: 15 },
    { ratio: 0.85, outdoorC: -4, reference: 16.4 },
  ]) {
    const { watt } = held(outdoorC, [unit(ratio)]);
    check({
      source: SOURCE,
      case: `ratio ${ratio}, ${outdoorC} and 20 °C`,
      quantity: 'supply air',
      reference,
      ours: INDOOR_C - watt / (FLOW_M3H * HEAT_WH_M3K),
      allowed: ALLOWED.kelvin,
      unit: '°C',
      mark: 'computed',
    });
  }
});

test('0.4 air changes behind 85 % and 0.05 through cracks lose the heat of 0.11', () => {
  const leak: FixedOpening = {
    kind: 'fixed',
    id: 'leak',
    zone: 'house',
    flow: always((0.05 * VOLUME_M3) / 3600),
    fan: false,
  };
  const { watt } = held(0, [unit(0.85, { flow: always((0.4 * VOLUME_M3) / 3600) }), leak]);
  check({
    source: SOURCE,
    case: '0.4 1/h at 0.85 and 0.05 1/h of leaks',
    quantity: 'air changes as heat sees them',
    reference: 0.11,
    ours: watt / (INDOOR_C * HEAT_WH_M3K * VOLUME_M3),
    allowed: ALLOWED.rate,
    unit: '1/h',
    mark: 'computed',
  });
});

test('fans of 0.45 W for each m³/h take 67.5 W, of which half warms the rooms', () => {
  const fans = held(0, [unit(0.85, { fanWPerM3H: 0.45 })]);
  const still = held(0, [unit(0.85)]);
  const row = {
    source: "low-energy certifier's limit of fan power",
    case: '150 m³/h at 0.45 Wh/m³',
  } as const;
  check({
    ...row,
    quantity: 'electricity of the year',
    reference: (67.5 * HOURS) / 1000,
    ours: fans.energy.fansKWh,
    allowed: ALLOWED.kWh,
    unit: 'kWh',
    mark: 'memory',
  });
  check({
    ...row,
    quantity: 'heat it spares',
    reference: 67.5 / 2,
    ours: still.watt - fans.watt,
    allowed: ALLOWED.watt,
    unit: 'W',
    mark: 'practice',
  });
});

test('the guard against ice begins where the exhaust of usual exchangers would freeze', () => {
  // exhaust = room − ratio · (room − outdoor): 0 °C at −3.5 with 0.85 and at −6.7 with 0.75, dry air, 20 °C
  let first = 0;
  while (preheatRise(first) === 0) first -= 0.1;
  check({
    source: SOURCE,
    case: 'exhaust at 0 °C, ratio 0.75 to 0.85',
    quantity: 'outdoors when the heater starts',
    kind: 'range',
    referenceMin: -6.7,
    referenceMax: -3.5,
    ours: first,
    allowed: 0,
    unit: '°C',
    mark: 'computed',
  });
});

test('a heater from −15 to −5 °C takes 502.5 W; what leaves with the old air is lost', () => {
  // 150 · 0.335 · 10; supply −5 + 0.85 · 25 = 16.25, so the rooms still give 150 · 0.335 · 3.75 = 188 W
  const { watt, energy } = held(-15, [unit(0.85)]);
  const row = {
    source: SOURCE,
    case: '150 m³/h at −15 °C, 0.85, heater to −5 °C',
    mark: 'computed',
  } as const;
  check({
    ...row,
    quantity: 'heater of the year',
    reference: (502.5 * HOURS) / 1000,
    ours: energy.frostHeaterKWh,
    allowed: 5,
    unit: 'kWh',
  });
  check({ ...row, quantity: 'heat loss left', reference: 188, ours: watt, allowed: ALLOWED.watt, unit: 'W' });
  const months = held(-15, [unit(0.85)]).year.heat.flatMap(({ cause, monthJ }) =>
    cause === 'heat recovered' ? monthJ : [],
  );
  check({
    ...row,
    quantity: 'heat given back, mean',
    // 0.85 · 150 · 0.335 · 25
    reference: 1067.8,
    ours: months.reduce((sum, joule) => sum + joule, 0) / (HOURS * 3600),
    allowed: 2,
    unit: 'W',
  });
});
