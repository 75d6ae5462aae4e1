// Hours of one person for a piece of work, by published norms where there are any. Each row says what it is per, whose pace
// it is, and how far it can be trusted: read in a document, from memory (published, not looked up again), or common
// practice without a source. "Trade" is the pace of those who do it every day; a first-timer takes FIRST_TIMER times
// as long. "Own" is the pace of owner-builders already. All are orders of size, for a talk and not for a contract.

export type NormMark = 'read' | 'memory' | 'practice';
export type NormUnit = 'm²' | 'm³' | 'piece';

export interface Norm {
  /** low and high [h of one person for each unit] */
  readonly hours: readonly [number, number];
  readonly per: NormUnit;
  readonly pace: 'trade' | 'own';
  readonly mark: NormMark;
  readonly source: string;
}

/** Owner-builders take so many times the hours of the trade, falling over the job; common practice, no source. */
export const FIRST_TIMER = { usual: 2, range: [1.5, 3] } as const;
/** Hours of one person a day; common practice, no source. */
export const HOURS_PER_DAY = 8;

const ECOLOGY = 'The Ecology of Building Materials, table of labour';
const MAN_HOURS = 'published man-hour norms for glazing';
const RATES = 'published production rates for excavators';
const ESTIMATING = 'estimating handbooks';

/**
 * Earth walls and blocks by hand, hours for a square metre without and with breaks and preparation. The table's thickness
 * was not to be seen: 0.4 m is taken, common practice.
 */
const EARTH_WALL_HOURS_PER_M2 = [5.5, 7] as const;
const EARTH_WALL_M = 0.4;
/** A finished concrete wall [h/m²]. */
const CONCRETE_WALL_HOURS_PER_M2 = 3.3;
/** Fixed upright lights a crew sets in a day [m²]; the crew is not stated: two to three people, common practice. */
const LIGHTS_PER_CREW_DAY_M2 = 14.5;
const CREW = [2, 3] as const;
/** Of a small digger with a bucket of 0.3 m³ in clay [m³/h]. */
const DIGGER_M3_PER_H = 6.5;
/** Clay takes up so many times its room once dug; the ground of every house here is clay or silt. */
export const CLAY_BULKING = 1.4;
/** Middle of the thickness of the walls that a norm is given for [m]. */
const COB_WALL_M = 0.525;
const STONE_WALL_M = 0.525;
const BRICK_WALL_M = 0.215;
/** One coat of plaster [m]; common practice, no source. */
const COAT_M = 0.01;

const each =
  (per: NormUnit, pace: Norm['pace'], mark: NormMark, source: string) =>
  (low: number, high: number): Norm => ({ hours: [low, high], per, pace, mark, source });

const memoryM2 = each('m²', 'trade', 'memory', ESTIMATING);
const practiceM2 = each('m²', 'trade', 'practice', 'common practice, no source');
const practiceM3 = each('m³', 'trade', 'practice', 'common practice, no source');
const practicePiece = each('piece', 'trade', 'practice', 'common practice, no source');

const earthWall = each(
  'm³',
  'trade',
  'read',
  `${ECOLOGY}; 0.4 m thick taken`,
)(EARTH_WALL_HOURS_PER_M2[0] / EARTH_WALL_M, EARTH_WALL_HOURS_PER_M2[1] / EARTH_WALL_M);
const rubble = each(
  'm³',
  'trade',
  'memory',
  `${ESTIMATING}: 8 to 13 h/m² of a wall of 450 to 600 mm`,
)(8 / STONE_WALL_M, 13 / STONE_WALL_M);
const plaster = each(
  'm³',
  'trade',
  'memory',
  `${ESTIMATING}: 0.4 to 0.8 h/m² a coat; 10 mm a coat taken`,
)(0.4 / COAT_M, 0.8 / COAT_M);

export const NORMS = {
  'rammed-earth': earthWall,
  'earth-blocks': earthWall,
  cob: each(
    'm³',
    'own',
    'memory',
    'owner reports: 8 to 15 h/m² of a wall of 450 to 600 mm',
  )(8 / COB_WALL_M, 15 / COB_WALL_M),
  /** a strong worker rams six to ten a day */
  tyres: each(
    'piece',
    'own',
    'practice',
    'common practice, no source: 6 to 10 a day',
  )(HOURS_PER_DAY / 10, HOURS_PER_DAY / 6),
  stone: rubble,
  brick: each(
    'm³',
    'trade',
    'memory',
    `${ESTIMATING}: 2.4 to 3 h/m² of a one-brick wall`,
  )(2.4 / BRICK_WALL_M, 3 / BRICK_WALL_M),
  'concrete-wall': each(
    'm²',
    'trade',
    'read',
    ECOLOGY,
  )(CONCRETE_WALL_HOURS_PER_M2, CONCRETE_WALL_HOURS_PER_M2),
  'concrete-slab': each('m²', 'trade', 'memory', `${ESTIMATING}: place and float, with mesh`)(0.35, 0.6),
  'earth-floor': memoryM2(1.5, 2.5),
  paving: memoryM2(0.8, 1.4),
  drums: each('piece', 'own', 'practice', 'common practice, no source')(0.2, 0.6),
  plaster,
  boards: memoryM2(0.3, 0.5),
  sheets: memoryM2(0.3, 0.5),
  carpet: practiceM2(0.1, 0.25),
  tiles: memoryM2(0.8, 1.4),
  'filled-wall': practiceM3(4, 8),
  'loose-fill': practiceM3(0.5, 1),
  quilt: practiceM3(2, 4),
  'rigid-boards': practiceM3(1.5, 2.5),
  bales: practiceM3(4, 8),
  'upright-glass': each(
    'm²',
    'trade',
    'read',
    `${MAN_HOURS}: 14.5 m² a crew-day; a crew of two to three taken`,
  )((CREW[0] * HOURS_PER_DAY) / LIGHTS_PER_CREW_DAY_M2, (CREW[1] * HOURS_PER_DAY) / LIGHTS_PER_CREW_DAY_M2),
  /** twice upright glass: a ladder, bars with drains, two more hands */
  'leaning-glass': practiceM2(2.2, 3.4),
  overhang: practiceM2(1.2, 2.4),
  'summer-shade': practiceM2(0.4, 0.8),
  'night-cover': practiceM2(0.8, 1.6),
  hung: practiceM2(0.3, 0.8),
  'built-cover': practiceM2(0.8, 1.6),
  cloth: practiceM2(0.15, 0.3),
  trellis: practiceM2(0.6, 1.2),
  sash: practiceM2(1, 2),
  vent: practiceM2(3, 5),
  opener: practicePiece(1, 2),
  door: each('piece', 'trade', 'memory', `${ESTIMATING}: frame, leaf and fittings`)(3, 5),
  grilles: practicePiece(1, 2),
  stairs: practicePiece(16, 30),
  fan: practicePiece(3, 5),
  'ceiling-fan': practicePiece(1, 2),
  'ventilation-unit': practicePiece(16, 24),
  /** for each halving of leakage from a shell built without thinking of it */
  sealing: practiceM2(0.05, 0.1),
  digging: each(
    'm³',
    'trade',
    'read',
    `${RATES}: small digger in clay 6.5 m³/h`,
  )(1 / DIGGER_M3_PER_H, 1 / DIGGER_M3_PER_H),
  /** taken up twice: at the heap and on the berm */
  berm: each(
    'm³',
    'trade',
    'read',
    `${RATES}: small digger in clay 6.5 m³/h, twice`,
  )(2 / DIGGER_M3_PER_H, 2 / DIGGER_M3_PER_H),
  'bed-soil': practiceM3(1.5, 3),
  /** carried in and set on a hearth; a mason's core, facing and doors */
  'light-stove': practicePiece(4, 8),
  'masonry-heater': practicePiece(40, 80),
  /** one length, its share of the roof's sleeve in it */
  flue: practicePiece(1, 2),
  'air-pipe': practicePiece(2, 4),
  /** with safety valve, loop and pump */
  'back-boiler': practicePiece(12, 24),
  'water-store': practicePiece(4, 8),
  heater: practicePiece(3, 6),
  boiler: practicePiece(12, 24),
  /** tied down before the pour, or to a wall before its plaster */
  'heating-pipes': practiceM2(0.15, 0.3),
  pool: practiceM2(1.5, 3),
} as const satisfies Record<string, Norm>;

export type NormId = keyof typeof NORMS;

/** Hours of the trade, or of an owner-builder where the norm is of those, for each unit: the middle. */
export function usualHours({ hours: [low, high] }: Norm): number {
  return (low + high) / 2;
}

/** How many times the norm's hours a first-timer takes. */
export function firstTimerFactor({ pace }: Norm): number {
  return pace === 'trade' ? FIRST_TIMER.usual : 1;
}
