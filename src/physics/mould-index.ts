// Mould on a surface over time. In: temperature and relative humidity at the surface, step by step, and what the
// surface is made of. Out: the mould index, 0 nothing to 6 all covered. Method: the sensitivity classes of the VTT model
// (2010, on the original of 1999 for pine and spruce), in the adoption of ASHRAE 160; formulas from memory, high confidence.
// Relative humidity is a fraction 0–1; the published polynomials count it in per cent, turned once on entry.
// An index of 3 is where mould shows to the eye; ASHRAE 160 wants it to stay below 3.

import { exp, log } from './elementary.ts';

/** Index that fails a surface [–]: ASHRAE 160-2016. */
export const MOULD_INDEX_LIMIT = 3;

/** One sensitivity class: growth against pine below and above index 1, limits A + B·x − C·x², least humidity, wood, decline. */
export interface MouldClass {
  readonly id: 'very-sensitive' | 'sensitive' | 'medium-resistant' | 'resistant';
  readonly examples: string;
  readonly growthStart: number;
  readonly growthVisible: number;
  readonly limitA: number;
  readonly limitB: number;
  readonly limitC: number;
  /** least relative humidity of growth [–] */
  readonly leastHumidity: number;
  /** W of the growth-time formula: 0 pine, 1 spruce; ASHRAE 160 uses 1 below the first class (medium confidence) */
  readonly wood: 0 | 1;
  /** share of pine's decline [–]: 1 strong, 0.5 significant, 0.25 low, 0.1 almost none; 0.1 when untested (medium confidence) */
  readonly decline: number;
}

/** Source: VTT sensitivity classes, 2010; from memory, high confidence. Order: most sensitive first. */
export const MOULD_CLASSES: readonly [MouldClass, MouldClass, MouldClass, MouldClass] = [
  {
    id: 'very-sensitive',
    examples: 'untreated pine sapwood, straw, cardboard',
    growthStart: 1,
    growthVisible: 2,
    limitA: 1,
    limitB: 7,
    limitC: 2,
    leastHumidity: 0.8,
    wood: 0,
    decline: 1,
  },
  {
    id: 'sensitive',
    examples: 'planed spruce, glued wood boards, paper facings',
    growthStart: 0.578,
    growthVisible: 0.386,
    limitA: 0.3,
    limitB: 6,
    limitC: 1,
    leastHumidity: 0.8,
    wood: 1,
    decline: 0.1,
  },
  {
    id: 'medium-resistant',
    examples: 'concrete, earth plaster, lime plaster, mineral wool',
    growthStart: 0.072,
    growthVisible: 0.097,
    limitA: 0,
    limitB: 5,
    limitC: 1.5,
    leastHumidity: 0.85,
    wood: 1,
    decline: 0.1,
  },
  {
    id: 'resistant',
    examples: 'glass, metal, polished foam',
    growthStart: 0.033,
    growthVisible: 0.014,
    limitA: 0,
    limitB: 3,
    limitC: 1,
    leastHumidity: 0.85,
    wood: 1,
    decline: 0.1,
  },
];

/** The running state of one surface. `mouldStepUnder` changes it in place. */
export interface MouldState {
  /** mould index [–], 0…6 */
  index: number;
  /** hours since conditions turned unfavourable [h]; 0 while they favour growth */
  unfavourableHours: number;
}

/** A clean surface. */
export function cleanSurface(): MouldState {
  return { index: 0, unfavourableHours: 0 };
}

/**
 * Humidity above which mould can grow: −0.00267 t³ + 0.160 t² − 3.13 t + 100 % up to 20 °C and 80 % above, never
 * below the least of the class. Every time step: no guards.
 *
 * @param tempC surface [°C]; the published range is 0…50
 * @param leastHumidity of the class [–]; 0.8 for wood
 * @returns relative humidity [–]
 */
export function criticalHumidity(tempC: number, leastHumidity: number): number {
  if (tempC > 20) return Math.max(0.8, leastHumidity);
  const percent = ((-0.00267 * tempC + 0.16) * tempC - 3.13) * tempC + 100;
  return Math.max(percent / 100, leastHumidity);
}

/**
 * Weeks at constant conditions until growth starts (index 1) on wood: exp(−0.68 ln t − 13.9 ln RH + 0.14 W + 66.02),
 * in its original, sawn surface. Every time step: no guards; tempC > 0, humidity > 0.
 */
export function weeksToStart(tempC: number, humidity: number, wood: 0 | 1): number {
  return exp(-0.68 * log(tempC) - 13.9 * log(100 * humidity) + 0.14 * wood + 66.02);
}

/**
 * Index that growth cannot pass at constant conditions: A + B·x − C·x², x = (RHcrit − RH) / (RHcrit − 100 %).
 * Every time step: no guards.
 *
 * @param humidity at the surface [–]; counted as 1 at most
 * @param critical from `criticalHumidity` [–]; below 1
 * @param limitA @param limitB @param limitC of the class; 1, 7 and 2 for wood
 * @returns index [–]; below 0 counts as 0
 */
export function largestIndex(
  humidity: number,
  critical: number,
  limitA: number,
  limitB: number,
  limitC: number,
): number {
  const x = (Math.min(humidity, 1) - critical) / (1 - critical);
  return Math.max(limitA + limitB * x - limitC * x * x, 0);
}

/** Index that growth on a class cannot pass at these conditions, −1 when they favour none. As `largestIndex`. */
export function limitOnClass(tempC: number, humidity: number, cls: MouldClass): number {
  const critical = criticalHumidity(tempC, cls.leastHumidity);
  if (!favours(tempC, humidity, critical)) return -1;
  return largestIndex(humidity, critical, cls.limitA, cls.limitB, cls.limitC);
}

/**
 * One step of a surface of a sensitivity class. Every time step: no guards; changes `state`.
 *
 * @param limit from `limitOnClass` at the step's conditions: how fast mould grows is asked only where it can
 * @param state of the surface
 * @param tempC at the surface [°C]
 * @param humidity at the surface [–]; values above 1 (dew) count as 1
 * @param dtHours [h]; 1 or less, so that the growth is followed
 * @param cls sensitivity class
 * @returns the new index [–]
 */
export function mouldStepUnder(
  limit: number,
  state: MouldState,
  tempC: number,
  humidity: number,
  dtHours: number,
  cls: MouldClass,
): number {
  if (limit < 0) return decline(state, dtHours, cls.decline);
  if (limit <= state.index) {
    state.unfavourableHours = 0;
    return state.index;
  }
  const weeks = weeksToStart(tempC, Math.min(humidity, 1), cls.wood);
  const speed = state.index < 1 ? cls.growthStart : cls.growthVisible;
  return grow(state, dtHours, speed / (168 * weeks), limit);
}

/** Growth needs more than the critical humidity and a surface between 0 and 50 °C, the range of the experiments. */
function favours(tempC: number, humidity: number, critical: number): boolean {
  return humidity > critical && critical < 1 && tempC > 0 && tempC <= 50;
}

function grow(state: MouldState, dtHours: number, ratePerHour: number, limit: number): number {
  const slowing = Math.max(1 - exp(2.3 * (state.index - limit)), 0);
  state.index = Math.min(state.index + ratePerHour * slowing * dtHours, 6);
  state.unfavourableHours = 0;
  return state.index;
}

/** Pine loses 0.032 a day in the first 6 unfavourable hours, nothing until 24 h, 0.016 a day from then on. */
function decline(state: MouldState, dtHours: number, share: number): number {
  const from = state.unfavourableHours;
  const to = from + dtHours;
  const early = Math.max(Math.min(to, 6) - from, 0);
  const late = Math.max(to - Math.max(from, 24), 0);
  state.index = Math.max(state.index - share * ((0.032 * early + 0.016 * late) / 24), 0);
  state.unfavourableHours = to;
  return state.index;
}
