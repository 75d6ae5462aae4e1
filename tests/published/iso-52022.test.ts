// Sources: a fabric maker's data sheet that gives g of a white fabric behind the four reference glazings of EN 14501
// (read); ISO 52022-1 (EN 13363-1) values worked by hand from the printed formulas (from memory, high confidence);
// ISO 10077-1 added resistance of shutters (from memory, high confidence); a renovation firm's table of shading factors
// and the examples of the German national table (read); heat loss cut by curtains and blinds in chamber tests of a sash
// window in 2008 (read second-hand, or from memory).
import { expect, test } from 'vitest';
import { coverKindById } from '../../src/design/cover-catalogue.ts';
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
      source: 'ISO 52022-1:2017, data sheet of a fabric on EN 14501 glazings',
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
    const row = {
      source: 'ISO 52022-1:2017, slats of EN 13363-1',
      case: 'light slats at 45°',
      quantity,
      reference,
      ours,
    } as const;
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

test('kinds of the catalogue keep out what trade tables say, before glass C', () => {
  const rows: readonly (readonly [string, string, number, number])[] = [
    ['outside-blind', 'outside slats', 0.1, 0.25],
    ['shutter', 'closed shutter', 0.15, 0.3],
    ['outside-screen', 'upright outside screen', 0.15, 0.35],
    // drop-arm awnings of the trade table, up to the awning of the national table
    ['awning', 'awning', 0.2, 0.5],
    ['inside-blind', 'inside roller blind', 0.55, 0.75],
  ];
  const [g, u] = GLAZINGS.C;
  for (const [id, name, referenceMin, referenceMax] of rows) {
    const kind = coverKindById(id);
    const drawn = shadedSolarHeatGain(kind.place, g, u, kind) / g;
    check({
      source: 'Shading factors, trade table and DIN 4108-2 examples',
      case: name,
      quantity: 'shading factor Fc',
      kind: 'range',
      referenceMin,
      referenceMax,
      ours: 1 - kind.coverage * (1 - drawn),
      allowed: 0,
      unit: '',
      mark: 'document',
    });
  }
});

test('kinds of the catalogue cut the heat loss of a window as measured', () => {
  const rows: readonly (readonly [string, string, number, number, 'document' | 'memory'])[] = [
    ['curtain', 'heavy curtain', 4.5, 0.14, 'document'],
    ['inside-blind', 'roller blind', 4.5, 0.22, 'memory'],
    ['honeycomb', 'honeycomb blind', 4.5, 0.36, 'memory'],
    ['sealed-curtain', 'curtain to the floor, close to the wall, single glass', 5.7, 0.6, 'document'],
  ];
  for (const [id, name, uValue, reference, mark] of rows) {
    const { resistance } = coverKindById(id);
    check({
      source: 'Windows with curtains and blinds, chamber tests of 2008 and public advice',
      case: name,
      quantity: 'share of heat loss cut',
      reference,
      ours: 1 - 1 / (1 + uValue * resistance),
      // printed as whole percent
      allowed: 0.005,
      unit: '',
      mark,
    });
  }
});
