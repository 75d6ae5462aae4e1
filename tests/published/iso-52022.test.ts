// Sources: a fabric maker's data sheet that gives g of a white fabric behind the four reference glazings of EN 14501
// (read); ISO 52022-1 (EN 13363-1) values worked by hand from the printed formulas (from memory, high confidence);
// ISO 10077-1 added resistance of shutters (from memory, high confidence).
import { expect, test } from 'vitest';
import { type BlindPlace, shadedSolarHeatGain, slatsAt45 } from '../../src/physics/shaded-glazing.ts';
import { type AirPermeability, shutterResistance } from '../../src/physics/shutter-resistance.ts';
import { check } from './ledger.ts';

/** Reference glazings of EN 14501: g and U [W/(m²K)]. */
const GLAZINGS = { A: [0.85, 5.8], B: [0.76, 2.9], C: [0.59, 1.2], D: [0.32, 1.1] } as const;
type Glazing = keyof typeof GLAZINGS;

test('a white fabric behind the four reference glazings as its maker publishes it', () => {
  const published = { A: 0.41, B: 0.41, C: 0.38, D: 0.26 } as const;
  expect(Object.keys(published)).toEqual(Object.keys(GLAZINGS));
  for (const [glazing, reference] of Object.entries(published)) {
    const [g, u] = GLAZINGS[glazing as Glazing];
    check({
      source: "fabric maker's data sheet, EN 13363-1 on EN 14501 glazings",
      case: `white fabric inside, glazing ${glazing}`,
      quantity: 'total solar heat gain',
      reference,
      ours: shadedSolarHeatGain('inside', g, u, { transmittance: 0.225, reflectance: 0.577 }),
      // printed with two decimals
      allowed: 0.006,
      unit: '',
      mark: 'document',
    });
  }
});

test('blinds in the three places, worked by hand', () => {
  const worked: readonly (readonly [string, BlindPlace, Glazing, number, number, number])[] = [
    ['white opaque', 'outside', 'C', 0, 0.7, 0.026],
    ['white screen', 'outside', 'C', 0.2, 0.6, 0.15],
    ['dark screen', 'outside', 'C', 0.05, 0.1, 0.108],
    ['white opaque', 'inside', 'C', 0, 0.7, 0.34],
    ['dark opaque', 'inside', 'C', 0, 0.3, 0.47],
    ['white, very translucent', 'inside', 'C', 0.4, 0.4, 0.446],
    ['white opaque', 'between', 'B', 0, 0.7, 0.175],
    ['dark opaque', 'between', 'B', 0, 0.3, 0.288],
  ];
  for (const [name, place, glazing, transmittance, reflectance, reference] of worked) {
    const [g, u] = GLAZINGS[glazing];
    check({
      source: 'ISO 52022-1:2017, simplified method',
      case: `${name} ${place}, glazing ${glazing}`,
      quantity: 'total solar heat gain',
      reference,
      ours: shadedSolarHeatGain(place, g, u, { transmittance, reflectance }),
      allowed: 0.0006,
      unit: '',
      mark: 'computed',
    });
  }
});

test('the better the glass, the less a white blind inside keeps out', () => {
  const shares = { A: 0.36, B: 0.44, C: 0.58, D: 0.77 } as const;
  for (const [glazing, reference] of Object.entries(shares)) {
    const [g, u] = GLAZINGS[glazing as Glazing];
    check({
      source: 'ISO 52022-1:2017, simplified method',
      case: `white opaque inside, glazing ${glazing}`,
      quantity: 'shading factor Fc',
      reference,
      ours: shadedSolarHeatGain('inside', g, u, { transmittance: 0, reflectance: 0.7 }) / g,
      allowed: 0.005,
      unit: '',
      mark: 'computed',
    });
  }
});

test('slats at 45° as one layer', () => {
  const light = slatsAt45({ transmittance: 0, reflectance: 0.7 });
  const rows = [
    ['transmittance', light.transmittance, 0.105],
    ['reflectance', light.reflectance, 0.525],
  ] as const;
  for (const [quantity, ours, reference] of rows) {
    const row = { source: 'EN 13363-1', case: 'light slats at 45°', quantity, reference, ours } as const;
    check({ ...row, allowed: 0.0005, unit: '', mark: 'memory' });
  }
});

test('shutters add resistance by how freely air passes them', () => {
  // A panel of 0.2 m²K/W through the five classes: 0.08; 0.25 R + 0.09; 0.55 R + 0.11; 0.80 R + 0.14; 0.95 R + 0.17.
  const rows: readonly (readonly [AirPermeability, number])[] = [
    ['very high', 0.08],
    ['high', 0.14],
    ['average', 0.22],
    ['low', 0.3],
    ['very low', 0.36],
  ];
  for (const [permeability, reference] of rows) {
    check({
      source: 'ISO 10077-1:2017',
      case: `panel of 0.2 m²K/W, permeability ${permeability}`,
      quantity: 'added resistance',
      reference,
      ours: shutterResistance(0.2, permeability),
      allowed: 1e-9,
      unit: 'm²K/W',
      mark: 'memory',
    });
  }
});
