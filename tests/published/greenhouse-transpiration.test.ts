// Source: Penman–Monteith for canopies under glass (1987 form); formula from memory, medium confidence. Rows are computed from them with air constants the source table
// leaves open: ρcp of sea-level air is 1206 to 1212 J/(m³K), half a percent, as it is rounded.
import { test } from 'vitest';
import { soilVapour } from '../../src/physics/bed-soil.ts';
import { LATENT_HEAT } from '../../src/physics/constants.ts';
import { leafResistance } from '../../src/physics/transpiration.ts';
import { canopyEvaporation } from '../reference/whole-formulas.ts';
import { check } from './ledger.ts';

/** Boundary-layer resistance of a leaf in slow air that the rows were computed with, s/m. */
const LEAF_BOUNDARY_RESISTANCE = 275;

/** Rows are printed to a tenth and to whole s/m. */
const ALLOWED_RESISTANCE = 0.5;

/** Half the last digit of the row, and the half percent that the source leaves open. */
const withinAirConstants = (row: number) => 0.05 + 0.005 * row;

test('Penman–Monteith under glass meets its worked rows', () => {
  // deficit [Pa]: by the saturation of ISO 13788, which the rows were computed with
  const rows = [
    { tempC: 22, rh: 0.7, deficit: 792.7, net: 150, leaf: 2, resistance: 333.6, watts: 124.2, grams: 182.5 },
    { tempC: 22, rh: 0.7, deficit: 792.7, net: 300, leaf: 3, resistance: 326.2, watts: 227.0, grams: 333.5 },
    { tempC: 25, rh: 0.6, deficit: 1266.4, net: 300, leaf: 3, resistance: 511.0, watts: 238.8, grams: 350.8 },
    { tempC: 22, rh: 0.8, deficit: 528.5, net: 100, leaf: 2, resistance: 207.1, watts: 91.8, grams: 135.0 },
    { tempC: 18, rh: 0.85, deficit: 309.4, net: 0, leaf: 2, resistance: 978, watts: 12.7, grams: 18.6 },
  ];
  for (const { tempC, rh, deficit, net, leaf, resistance, watts, grams } of rows) {
    const row = {
      source: 'Penman–Monteith under glass',
      case: `${tempC} °C ${100 * rh} %, Rn ${net}, LAI ${leaf}`,
      mark: 'computed',
    } as const;
    const heat = canopyEvaporation(tempC, deficit, net, leaf, LEAF_BOUNDARY_RESISTANCE);
    check({
      ...row,
      quantity: 'leaf resistance',
      reference: resistance,
      ours: leafResistance(net, leaf, deficit),
      allowed: ALLOWED_RESISTANCE,
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
      ours: (3600 * 1000 * heat) / LATENT_HEAT,
      allowed: withinAirConstants(grams),
      unit: 'g/(m²h)',
    });
  }
});

test('mulch leaves a fifth to two fifths of what bare soil gives', () => {
  check({
    source: 'handbooks on mulch and sub-irrigated beds',
    case: 'surface at 15 °C, still air over it, 1.5 W/(m²K)',
    quantity: 'water of a mulched bed by that of a bare one',
    kind: 'range',
    referenceMin: 0.2,
    referenceMax: 0.4,
    ours: soilVapour(1.5, 15, 'mulched') / soilVapour(1.5, 15, 'bare'),
    allowed: 0,
    unit: '–',
    mark: 'memory',
  });
});
