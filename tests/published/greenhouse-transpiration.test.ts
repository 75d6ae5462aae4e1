// Source: Penman–Monteith for canopies under glass (1987 form), the two-term form (1994) and the Priestley–Taylor ceiling
// (1972); formulas from memory, medium confidence. Rows are computed from them with air constants the source table
// leaves open: ρcp of sea-level air is 1206 to 1212 J/(m³K), half a percent, as it is rounded.
import { test } from 'vitest';
import { isoSaturationPressure } from '../../src/physics/surface-humidity.ts';
import {
  canopyEvaporation,
  EVAPORATION_HEAT,
  LEAF_BOUNDARY_RESISTANCE,
  leafResistance,
  priestleyTaylor,
  twoTermTranspiration,
} from '../../src/physics/transpiration.ts';
import { check } from './ledger.ts';

const ALLOWED = { resistance: 0.5, twoTerm: 0.2, twoTermGrams: 0.5 };

/** Half the last digit of the row, and the half percent that the source leaves open. */
const withinAirConstants = (row: number) => 0.05 + 0.005 * row;

test('Penman–Monteith under glass meets its worked rows', () => {
  const rows = [
    { tempC: 22, rh: 0.7, net: 150, leaf: 2, resistance: 333.6, watts: 124.2, grams: 182.5 },
    { tempC: 22, rh: 0.7, net: 300, leaf: 3, resistance: 326.2, watts: 227.0, grams: 333.5 },
    { tempC: 25, rh: 0.6, net: 300, leaf: 3, resistance: 511.0, watts: 238.8, grams: 350.8 },
    { tempC: 22, rh: 0.8, net: 100, leaf: 2, resistance: 207.1, watts: 91.8, grams: 135.0 },
    { tempC: 18, rh: 0.85, net: 0, leaf: 2, resistance: 978, watts: 12.7, grams: 18.6 },
  ];
  for (const { tempC, rh, net, leaf, resistance, watts, grams } of rows) {
    const row = {
      source: 'Penman–Monteith under glass',
      case: `${tempC} °C ${100 * rh} %, Rn ${net}, LAI ${leaf}`,
      mark: 'computed',
    } as const;
    const deficit = (1 - rh) * isoSaturationPressure(tempC);
    const heat = canopyEvaporation(tempC, deficit, net, leaf, LEAF_BOUNDARY_RESISTANCE);
    check({
      ...row,
      quantity: 'leaf resistance',
      reference: resistance,
      ours: leafResistance(net, leaf, deficit),
      allowed: ALLOWED.resistance,
      unit: 's/m',
    });
    check({
      ...row,
      quantity: 'latent heat',
      reference: watts,
      ours: heat,
      allowed: withinAirConstants(watts),
      unit: 'W/m²',
    });
    check({
      ...row,
      quantity: 'water',
      reference: grams,
      ours: (3600 * heat) / EVAPORATION_HEAT,
      allowed: withinAirConstants(grams),
      unit: 'g/(m²h)',
    });
  }
});

test('the two-term form meets its worked rows', () => {
  const rows = [
    { name: 'day, G 300, 0.8 kPa, LAI 2', solar: 300, deficit: 800, b: 20, watts: 140.3, grams: 206 },
    { name: 'night, 0.4 kPa, LAI 2', solar: 0, deficit: 400, b: 10, watts: 8, grams: 12 },
  ];
  for (const { name, solar, deficit, b, watts, grams } of rows) {
    const heat = twoTermTranspiration(solar, deficit, 2, 0.5, b);
    const row = { source: 'Two-term transpiration', case: name, mark: 'computed' } as const;
    check({
      ...row,
      quantity: 'latent heat',
      reference: watts,
      ours: heat,
      allowed: ALLOWED.twoTerm,
      unit: 'W/m²',
    });
    check({
      ...row,
      quantity: 'water',
      reference: grams,
      ours: (3600 * heat) / EVAPORATION_HEAT,
      allowed: ALLOWED.twoTermGrams,
      unit: 'g/(m²h)',
    });
  }
});

test('the ceiling at 20 °C and 10 MJ a day is 3.5 mm', () => {
  check({
    source: 'Priestley–Taylor 1972',
    case: '20 °C, 10 MJ/(m²·d)',
    quantity: 'evaporation',
    reference: 3.5,
    ours: (1000 * priestleyTaylor(20, 10)) / EVAPORATION_HEAT,
    allowed: 0.05,
    unit: 'mm/d',
    mark: 'computed',
  });
});

test('a litre evaporated at 20 °C takes 0.681 kWh, a pound about 1053 Btu', () => {
  const row = { source: 'Latent heat of water', mark: 'computed' } as const;
  check({
    ...row,
    case: '1 L at 20 °C',
    quantity: 'heat',
    reference: 0.681,
    ours: (1000 * EVAPORATION_HEAT) / 3.6e6,
    allowed: 0.005,
    unit: 'kWh',
  });
  check({
    ...row,
    case: '1 lb at 20 °C',
    quantity: 'heat',
    reference: 1053,
    ours: (453.592 * EVAPORATION_HEAT) / 1055.06,
    allowed: 1,
    unit: 'Btu',
  });
});
