// What can stand on a bill of quantities: its name, the unit it is bought by, the norm its labour goes by, what it is carried
// in. Materials are those of the design's catalogue, told apart where the same material is another work: concrete as a
// slab and as a wall. Sizes of bags, blocks, tyres and drums are common practice, no source.

import { coverKindById } from '../design/cover-catalogue.ts';
import { glassById } from '../design/glass-catalogue.ts';
import { FUELS, type Fuel, type StoveKind } from '../design/heat-source.ts';
import { materialById } from '../design/materials.ts';
import { TYRE_PRACTICE } from '../physics/labour.ts';
import { firstTimerFactor, NORMS, type Norm, type NormId, type NormUnit } from './norms.ts';

export type CautionId = 'lifting' | 'trench' | 'tyres' | 'overhead-glass' | 'ladder' | 'dust';

/** What it is carried in, told beside its quantity. */
export interface Pieces {
  /** in the plural */
  readonly name: string;
  readonly each: { readonly m3: number } | { readonly kg: number };
}

export interface Item {
  readonly id: string;
  readonly name: string;
  /** it is bought by */
  readonly unit: NormUnit;
  readonly norm: Norm;
  readonly pieces?: Pieces;
  readonly caution?: CautionId;
}

/** As a wall of tyres 0.7 m thick is built [m³ each]. */
const TYRE_M3 = TYRE_PRACTICE.rammedDiameterM * TYRE_PRACTICE.courseHeightM * 0.7;
const DRUM_M3 = 0.2;
const ADOBE_M3 = 0.011;
/** 215 × 103 × 65 mm with joints of 10 mm. */
const BRICK_M3 = 0.225 * 0.1125 * 0.075;
const STONE_M3 = 0.02;
const BAG_25: Pieces = { name: 'bags of 25 kg', each: { kg: 25 } };
const LOOSE_BAG: Pieces = { name: 'bags of 14 kg', each: { kg: 14 } };
const BALE: Pieces = { name: 'bales', each: { m3: 0.17 } };
/** 300 kg of cement in a cubic metre: twelve bags of 25 kg. */
const CEMENT: Pieces = { name: 'bags of cement of 25 kg', each: { m3: 1 / 12 } };

interface Build {
  readonly norm: NormId;
  readonly unit: NormUnit;
  readonly pieces?: Pieces;
  readonly caution?: CautionId;
  /** the material's own where absent */
  readonly name?: string;
}

/** As walls, linings and masses are built of a material. */
const WALLS: Readonly<Record<string, Build>> = {
  concrete: { norm: 'concrete-wall', unit: 'm³', pieces: CEMENT, caution: 'lifting' },
  'rammed-earth': { norm: 'rammed-earth', unit: 'm³', caution: 'lifting' },
  adobe: {
    norm: 'earth-blocks',
    unit: 'm³',
    pieces: { name: 'blocks', each: { m3: ADOBE_M3 } },
    caution: 'lifting',
  },
  cob: { norm: 'cob', unit: 'm³', caution: 'lifting' },
  'earth-tyres': {
    norm: 'tyres',
    unit: 'piece',
    pieces: { name: 'tyres', each: { m3: TYRE_M3 } },
    caution: 'tyres',
  },
  brick: {
    norm: 'brick',
    unit: 'm³',
    pieces: { name: 'bricks', each: { m3: BRICK_M3 } },
    caution: 'lifting',
  },
  stone: {
    norm: 'stone',
    unit: 'm³',
    pieces: { name: 'stones of 50 kg', each: { m3: STONE_M3 } },
    caution: 'lifting',
  },
  limestone: {
    norm: 'stone',
    unit: 'm³',
    pieces: { name: 'stones of 40 kg', each: { m3: STONE_M3 } },
    caution: 'lifting',
  },
  water: {
    norm: 'drums',
    unit: 'piece',
    pieces: { name: 'drums of 200 litres', each: { m3: DRUM_M3 } },
    caution: 'lifting',
  },
  softwood: { norm: 'boards', unit: 'm²' },
  plywood: { norm: 'sheets', unit: 'm²' },
  plasterboard: { norm: 'sheets', unit: 'm²' },
  'earth-plaster': { norm: 'plaster', unit: 'm³', pieces: BAG_25 },
  'lime-plaster': { norm: 'plaster', unit: 'm³', pieces: BAG_25, caution: 'dust' },
  cellulose: {
    name: 'Cellulose fibre in built cavities',
    norm: 'filled-wall',
    unit: 'm³',
    pieces: LOOSE_BAG,
    caution: 'dust',
  },
  'mineral-wool': { norm: 'quilt', unit: 'm³', caution: 'dust' },
  straw: { norm: 'bales', unit: 'm³', pieces: BALE },
  xps: { norm: 'rigid-boards', unit: 'm³' },
  tile: { norm: 'tiles', unit: 'm²' },
  carpet: { norm: 'carpet', unit: 'm²' },
  soil: { norm: 'cob', unit: 'm³', caution: 'lifting' },
};

/** The same as floors on the ground, where that is another work. */
const FLOORS: Readonly<Record<string, Build>> = {
  concrete: { norm: 'concrete-slab', unit: 'm³', pieces: CEMENT, name: 'Concrete slab' },
  'rammed-earth': { norm: 'earth-floor', unit: 'm³', name: 'Rammed-earth floor' },
  adobe: { norm: 'earth-floor', unit: 'm³', name: 'Adobe floor' },
  cob: { norm: 'earth-floor', unit: 'm³', name: 'Cob floor' },
  'earth-tyres': { norm: 'earth-floor', unit: 'm³', name: 'Rammed-earth floor, as in tyres' },
  brick: { norm: 'paving', unit: 'm³', name: 'Brick paving' },
  stone: { norm: 'paving', unit: 'm³', name: 'Granite paving' },
  limestone: { norm: 'paving', unit: 'm³', name: 'Limestone paving' },
};

/** Kinds of cover by how they are put up; the rest hang inside. */
const COVERS: Readonly<Record<string, NormId>> = {
  'outside-blind': 'built-cover',
  'outside-screen': 'built-cover',
  shutter: 'built-cover',
  'insulated-shutter': 'night-cover',
  awning: 'built-cover',
  'shade-cloth': 'cloth',
  leaves: 'trellis',
};

const FUEL_NAMES: Readonly<Record<Fuel, string>> = {
  electric: 'electric',
  gas: 'natural gas',
  propane: 'propane',
  oil: 'heating oil',
  pellets: 'pellets',
};

const plainItem = (
  id: string,
  name: string,
  unit: NormUnit,
  norm: NormId,
  caution?: CautionId,
): readonly [string, Item] => [id, { id, name, unit, norm: NORMS[norm], ...(caution && { caution }) }];

const PLAIN: ReadonlyMap<string, Item> = new Map([
  plainItem('loose-fill roof', 'Cellulose fibre, loose on the ceiling', 'm³', 'loose-fill', 'dust'),
  plainItem('summer-shade', 'Seasonal outside shade', 'm²', 'summer-shade'),
  plainItem('night-cover', 'Night insulation before the glass', 'm²', 'night-cover'),
  plainItem('overhang', 'Overhang', 'm²', 'overhang', 'ladder'),
  plainItem('sash', 'Windows that open: sash and fittings, more than fixed glass', 'm²', 'sash'),
  plainItem('sunspace-vent', 'Vents of the sunspace', 'm²', 'vent'),
  plainItem('opener', 'Automatic vent openers', 'piece', 'opener'),
  plainItem('sunspace-door', 'Doors between sunspace and rooms', 'piece', 'door'),
  plainItem('inner-door', 'Inner doors', 'piece', 'door'),
  plainItem('grilles', 'Pairs of grilles in doors', 'piece', 'grilles'),
  plainItem('stairs', 'Flights of stairs', 'piece', 'stairs', 'lifting'),
  plainItem('extract-fan', 'Extract fans', 'piece', 'fan'),
  plainItem('purge-fan', 'Fans for night air', 'piece', 'fan'),
  plainItem('sunspace-fan', 'Fans from the sunspace', 'piece', 'fan'),
  plainItem('room-fan', 'Fans between rooms', 'piece', 'fan'),
  plainItem('ceiling-fan', 'Ceiling fans', 'piece', 'ceiling-fan'),
  plainItem(
    'ventilation-unit',
    'Ventilation units with heat recovery and ducts',
    'piece',
    'ventilation-unit',
  ),
  plainItem('sealing', 'Sealing the shell, for each halving of its leakage', 'm²', 'sealing'),
  plainItem('digging', 'Earth dug, as it lies', 'm³', 'digging', 'trench'),
  plainItem('berm', 'Earth berm, as it lies', 'm³', 'berm', 'trench'),
  plainItem('bed-soil', 'Soil of the bed', 'm³', 'bed-soil', 'lifting'),
  plainItem('pool', 'Open water indoors, lined', 'm²', 'pool'),
  plainItem('flue', 'Insulated flue, lengths of 1 m', 'piece', 'flue', 'ladder'),
  plainItem('fire-air-pipe', 'Pipes for a fire’s own air', 'piece', 'air-pipe'),
  plainItem('back-boiler', 'Back boilers with pump, safety valve and pipes', 'piece', 'back-boiler'),
  plainItem('water-store', 'Insulated water stores', 'piece', 'water-store', 'lifting'),
  plainItem('heating-pipes', 'Heating pipes or mats in floors and walls', 'm²', 'heating-pipes'),
  plainItem('stove steel', 'Light steel stoves on a hearth', 'piece', 'light-stove', 'lifting'),
  plainItem('stove cast-iron', 'Cast-iron stoves on a hearth', 'piece', 'light-stove', 'lifting'),
  plainItem('stove soapstone', 'Stoves clad in soapstone, on a hearth', 'piece', 'light-stove', 'lifting'),
  plainItem('stove masonry', 'Masonry heaters, without their footing', 'piece', 'masonry-heater', 'lifting'),
  ...FUELS.flatMap((fuel) => [
    plainItem(`heater ${fuel}`, `Heaters of the air, ${FUEL_NAMES[fuel]}`, 'piece', 'heater'),
    plainItem(`boiler ${fuel}`, `Boilers with pump and controls, ${FUEL_NAMES[fuel]}`, 'piece', 'boiler'),
  ]),
]);

/** A material as a wall, lining or mass. */
export function wallItem(materialId: string): string {
  return materialId;
}

/** A material as a floor on the ground. */
export function floorItem(materialId: string): string {
  return materialId in FLOORS ? `${materialId} floor` : materialId;
}

export function glassItem(glassId: string, isLeaning: boolean): string {
  return `${isLeaning ? 'leaning' : 'upright'}-glass ${glassId}`;
}

export function coverItem(kindId: string): string {
  return `cover ${kindId}`;
}

export function stoveItem(kind: StoveKind): string {
  return `stove ${kind}`;
}

/** A heater by what it warms. */
export function heaterItem(warms: 'air' | 'water', fuel: Fuel): string {
  return `${warms === 'air' ? 'heater' : 'boiler'} ${fuel}`;
}

/**
 * An item by its id.
 *
 * @returns the item; throws RangeError for an id that no design makes
 */
export function itemById(id: string): Item {
  const plain = PLAIN.get(id);
  if (plain !== undefined) return plain;
  const [first = '', second = ''] = id.split(' ');
  if (first === 'upright-glass' || first === 'leaning-glass') {
    const isLeaning = first === 'leaning-glass';
    const name = `${glassById(second).name} glass with frames, ${isLeaning ? 'leaning' : 'upright'}`;
    return { id, name, unit: 'm²', norm: NORMS[first], caution: isLeaning ? 'overhead-glass' : 'lifting' };
  }
  if (first === 'cover') {
    const norm = COVERS[second] ?? 'hung';
    return { id, name: coverKindById(second).name, unit: 'm²', norm: NORMS[norm] };
  }
  const table = id === `${first} floor` ? FLOORS : WALLS;
  const build = Object.hasOwn(table, first) ? table[first] : undefined;
  if (build === undefined || (table === WALLS && id !== first))
    throw new RangeError(`item is '${id}'; allowed: one that a design makes`);
  const { norm, ...rest } = build;
  return { name: materialById(first).name, ...rest, id, norm: NORMS[norm] };
}

/** How many pieces there are in an amount, whole ones. */
export function piecesIn({ each }: Pieces, volumeM3: number, weightKg: number): number {
  const count = 'm3' in each ? volumeM3 / each.m3 : weightKg / each.kg;
  // A hair over a whole number is round-off.
  return Math.max(0, Math.ceil(count - 1e-9));
}

/** Pieces, weight and hours in a mass of one material, as it stands on a bill. */
export interface MassWork {
  readonly volumeM3: number;
  readonly weightKg: number;
  readonly pieces: number;
  /** low and high, of one person who does it for the first time [h] */
  readonly firstTimerHours: readonly [number, number];
}

/**
 * What a wall or mass takes.
 *
 * @param materialId of the catalogue
 * @param areaM2 face [m²]; ≥ 0
 * @param thicknessM > 0
 */
export function massWork(materialId: string, areaM2: number, thicknessM: number): MassWork {
  const { norm, pieces } = itemById(wallItem(materialId));
  const volumeM3 = areaM2 * thicknessM;
  const weightKg = volumeM3 * materialById(materialId).density;
  const count = pieces === undefined ? 0 : piecesIn(pieces, volumeM3, weightKg);
  const units = { 'm²': areaM2, 'm³': volumeM3, piece: count }[norm.per] * firstTimerFactor(norm);
  const [low, high] = norm.hours;
  return { volumeM3, weightKg, pieces: count, firstTimerHours: [low * units, high * units] };
}
