// Source: BS 5925:1991, code of practice for ventilation principles and designing for natural ventilation; formulas
// from memory, high confidence. Worked numbers are computed from the formulas as printed, with g 9.81 m/s².
import { test } from 'vitest';
import { doorwayExchange, exchangeHeat } from '../../src/physics/doorway.ts';
import {
  crossWindFlow,
  effectiveArea,
  hingedFlapArea,
  neutralLevelFlow,
  singleSidedWindFlow,
  stackFlow,
} from '../../src/physics/openings.ts';
import { flowForRise, ventAreaForRise, ventedRise } from '../../src/physics/vent-rule.ts';
import { check } from './ledger.ts';

const SOURCE = 'BS 5925:1991';

/** Half of the last printed digit, except the rise, whose vent share of one sixth is itself a round number. */
const ALLOWED = { flow4: 0.00005, flow3: 0.0005, area2: 0.005, heat: 2, riseK: 0.1, percent: 0.5 };

test('stack flow through two openings meets its worked rows', () => {
  const rows = [
    { low: 1, high: 1, height: 2, inside: 30, outside: 20, area: Math.SQRT1_2, flow: 0.4948 },
    { low: 1, high: 2, height: 2, inside: 30, outside: 20, area: 0.8944, flow: 0.6259 },
    { low: 1, high: 1, height: 3, inside: 40, outside: 25, area: Math.SQRT1_2, flow: 0.7331 },
  ];
  for (const { low, high, height, inside, outside, area, flow } of rows) {
    const series = effectiveArea(low, high);
    const row = {
      source: SOURCE,
      case: `${low} and ${high} m², H ${height} m, ${inside}/${outside} °C, Cd 0.61`,
      allowed: ALLOWED.flow4,
      mark: 'computed',
    } as const;
    check({ ...row, quantity: 'effective area', reference: area, ours: series, unit: 'm²' });
    check({
      ...row,
      quantity: 'stack flow',
      reference: flow,
      ours: stackFlow(series, height, inside, outside, 0.61),
      unit: 'm³/s',
    });
  }
});

test('both conventions of stack flow agree for equal vents, temperature below the line apart', () => {
  const [inside, outside, height] = [30, 20, 2];
  const one = neutralLevelFlow(1, height / 2, inside, outside, 0.61);
  check({
    source: SOURCE,
    case: 'two 1 m² with H 2 m against one 1 m² with H/2, 30/20 °C',
    quantity: 'stack flow',
    reference: one * Math.sqrt((inside + 273.15) / ((inside + outside) / 2 + 273.15)),
    ours: stackFlow(effectiveArea(1, 1), height, inside, outside, 0.61),
    allowed: 1e-9,
    unit: 'm³/s',
    mark: 'computed',
  });
});

test('wind through one side and across meets its worked rows', () => {
  const row = {
    source: SOURCE,
    quantity: 'wind flow',
    allowed: ALLOWED.flow3,
    unit: 'm³/s',
    mark: 'computed',
  } as const;
  check({ ...row, case: 'one side, 1 m², 4 m/s', reference: 0.1, ours: singleSidedWindFlow(1, 4) });
  check({
    ...row,
    case: 'across, two 1 m², 3 m/s, ΔCp 1',
    reference: 1.294,
    ours: crossWindFlow(effectiveArea(1, 1), 3, 1, 0.61),
  });
});

test('a doorway of 0.9 by 2.0 m exchanges air and heat as tabled', () => {
  const rows = [
    { rise: 1, flow: 0.0947, heat: 114, slow: 0.0621 },
    { rise: 2, flow: 0.1339, heat: 323, slow: 0.0878 },
    { rise: 5, flow: 0.2117, heat: 1277, slow: 0.1388 },
    { rise: 10, flow: 0.2994, heat: 3611, slow: 0.1963 },
  ];
  for (const { rise, flow, heat, slow } of rows) {
    const [warm, cool] = [20 + rise / 2, 20 - rise / 2];
    const ours = doorwayExchange(0.9, 2, warm, cool, 0.61);
    const row = {
      source: SOURCE,
      case: `doorway 0.9 × 2.0 m, ${rise} K about 20 °C`,
      mark: 'computed',
    } as const;
    check({
      ...row,
      quantity: 'exchange, Cd 0.61',
      reference: flow,
      ours,
      allowed: ALLOWED.flow4,
      unit: 'm³/s',
    });
    check({
      ...row,
      quantity: 'exchange, Cd 0.4',
      reference: slow,
      ours: doorwayExchange(0.9, 2, warm, cool, 0.4),
      allowed: ALLOWED.flow4,
      unit: 'm³/s',
    });
    check({
      ...row,
      quantity: 'heat carried',
      reference: heat,
      ours: exchangeHeat(ours, warm, cool, 1206),
      allowed: ALLOWED.heat,
      unit: 'W',
    });
  }
});

test('20 m² of sunspace glass, 6720 W to carry off: vents and rise as tabled', () => {
  const rows = [
    { rise: 5, flow: 1.114, each: 2.9, share: 29 },
    { rise: 10, flow: 0.557, each: 1.02, share: 10 },
  ];
  for (const { rise, flow, each, share } of rows) {
    const row = { source: SOURCE, case: `vent check, 6720 W, H 2.5 m, ${rise} K`, mark: 'computed' } as const;
    const area = ventAreaForRise(6720, rise, 2.5, 0.61, 308);
    check({
      ...row,
      quantity: 'airflow',
      reference: flow,
      ours: flowForRise(6720, rise),
      allowed: ALLOWED.flow3,
      unit: 'm³/s',
    });
    check({ ...row, quantity: 'each vent', reference: each, ours: area, allowed: ALLOWED.area2, unit: 'm²' });
    check({
      ...row,
      quantity: 'vents of glazing',
      reference: share,
      ours: (200 * area) / 20,
      allowed: ALLOWED.percent,
      unit: '%',
    });
  }
  check({
    source: SOURCE,
    case: 'vents of one sixth of 20 m² glass, 6720 W, H 2.5 m',
    quantity: 'rise over outdoors',
    reference: 7.2,
    ours: ventedRise(6720, 20 / 6 / 2, 2.5, 0.61, 308),
    allowed: ALLOWED.riseK,
    unit: 'K',
    mark: 'computed',
  });
});

test('a flap of 1.0 by 0.6 m opened 30° frees 0.491 m²', () => {
  check({
    source: 'Geometry of a hinged flap',
    case: '1.0 × 0.6 m, 30°',
    quantity: 'free area',
    reference: 0.491,
    ours: hingedFlapArea(1, 0.6, 30),
    allowed: ALLOWED.flow3,
    unit: 'm²',
    mark: 'computed',
  });
});
