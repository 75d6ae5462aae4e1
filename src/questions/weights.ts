// What weighs how much: hours too hot, too damp and too cold, mould, back-up heat and the labour of a change in one sum, so that
// one house can be called better than another. The sum is counted in hours; how much each thing counts is a house rule,
// told wherever it is used, and a person may move each weight. Figures in, a number out: less is better.

import {
  ACCEPTABLE_DAMP_HOURS,
  ACCEPTABLE_SHORT_HOURS,
  FEW_COLD_HOURS,
} from '../outcomes/acceptable-hours.ts';
import type { Figures } from './figures.ts';

/** How many times its usual weight each thing has; 0 leaves it out. */
export interface Weights {
  readonly hot: number;
  readonly damp: number;
  readonly cold: number;
  readonly mould: number;
  readonly heat: number;
  readonly labour: number;
}

export const WEIGHT_KEYS = [
  'hot',
  'damp',
  'cold',
  'mould',
  'heat',
  'labour',
] as const satisfies (keyof Weights)[];
export const MOST_WEIGHT = 10;
export const USUAL_WEIGHTS: Weights = { hot: 1, damp: 1, cold: 1, mould: 1, heat: 1, labour: 1 };

/** What weighs as one hour too hot, at the usual weights. House rules. */
const HOURS_PER_MOULD_INDEX = 100;
const KWH_PER_HOUR = 10;
const HOURS_PER_DAY_OF_WORK = 3;
/** Mould shows under the glass from 1 up; below that it weighs nothing. VTT model. */
const CLEAN_INDEX = 1;

export const WEIGHT_WORDS: Readonly<Record<keyof Weights, string>> = {
  hot: 'an hour too hot, beyond those allowed',
  damp: 'an hour too damp, beyond one in twenty',
  cold: 'an hour colder than asked for while people are up, beyond one in fifty',
  mould: `a hundredth of a point of the mould index above ${CLEAN_INDEX}`,
  heat: `${KWH_PER_HOUR} kWh of back-up heat a year`,
  labour: `a third of a day of work, once`,
};

export type Weighed = Pick<
  Figures,
  | 'tooHotHours'
  | 'tooHotLimitHours'
  | 'humidHours'
  | 'shortHours'
  | 'underheatedHours'
  | 'worstMouldIndex'
  | 'heatingKWh'
>;

/** Hours too cold, and how many of them nobody minds: those in which the heat does not do, or where there is none all of them. */
export function coldHours({
  shortHours,
  underheatedHours,
}: Pick<Weighed, 'shortHours' | 'underheatedHours'>) {
  return shortHours === null
    ? { hours: underheatedHours, allowed: FEW_COLD_HOURS }
    : { hours: shortHours, allowed: ACCEPTABLE_SHORT_HOURS };
}

/**
 * What a house weighs [hours].
 *
 * @param days work that the change takes, once [days of one person]
 */
export function burden(of: Weighed, days: number, weights: Weights): number {
  const cold = coldHours(of);
  return (
    weights.hot * Math.max(0, of.tooHotHours - of.tooHotLimitHours) +
    weights.damp * Math.max(0, of.humidHours - ACCEPTABLE_DAMP_HOURS) +
    weights.cold * Math.max(0, cold.hours - cold.allowed) +
    burdenBesideHours(of, days, weights)
  );
}

/** The same without the hours: mould, heat and work, for a house that is neither hot nor damp nor cold. */
export function burdenBesideHours(of: Weighed, days: number, weights: Weights): number {
  return (
    weights.mould * HOURS_PER_MOULD_INDEX * Math.max(0, of.worstMouldIndex - CLEAN_INDEX) +
    (weights.heat * of.heatingKWh) / KWH_PER_HOUR +
    weights.labour * HOURS_PER_DAY_OF_WORK * days
  );
}

/** A change as it was run. */
export interface WeighedChange {
  readonly figures: Weighed;
  /** of one person, once; below zero where it spares work; none where absent */
  readonly days?: number;
}

/** What a house with a change made weighs, its work counted in [hours]. */
export function weighs({ figures, days = 0 }: WeighedChange, weights: Weights): number {
  return burden(figures, days, weights);
}

/** Changes, the one that weighs least first; those alike stay as they stood. */
export function lightestFirst<T extends WeighedChange>(
  changes: readonly T[],
  weights: Weights,
): readonly T[] {
  return [...changes].sort((one, other) => weighs(one, weights) - weighs(other, weights));
}

/** Whether every one of some houses is damp for longer than people mind. */
export function areAllDamp(houses: readonly Pick<Weighed, 'humidHours'>[]): boolean {
  return houses.every(({ humidHours }) => humidHours > ACCEPTABLE_DAMP_HOURS);
}

/** The weights between houses: damp that none of them cures decides nothing, since it is cured where the water starts. */
export function weightsBetween(houses: readonly Pick<Weighed, 'humidHours'>[], weights: Weights): Weights {
  return areAllDamp(houses) ? withoutDamp(weights) : weights;
}

/** The weights of what is not meant against damp. */
export function withoutDamp(weights: Weights): Weights {
  return { ...weights, damp: 0, mould: 0 };
}

/** The weights in a sentence. */
export function weightsInWords(weights: Weights): string {
  const told = WEIGHT_KEYS.map((key) => WEIGHT_WORDS[key]);
  const moved = WEIGHT_KEYS.filter((key) => weights[key] !== 1).map((key) => `${key} ${weights[key]} times`);
  return (
    `These weigh alike: ${told.slice(0, -1).join('; ')}; and ${told.at(-1)}. A house rule, not a source.` +
    (moved.length === 0 ? '' : ` You weigh otherwise: ${moved.join(', ')}.`)
  );
}

/**
 * Weights as typed: "hot=2,labour=0"; what is not named keeps its usual weight.
 *
 * @returns the weights, or what is wrong
 */
export function parseWeights(text: string): Weights | string {
  const weights: Record<keyof Weights, number> = { ...USUAL_WEIGHTS };
  if (text.trim() === '') return weights;
  for (const part of text.split(',')) {
    const [name = '', value = '', ...rest] = part.split('=').map((piece) => piece.trim());
    const key = WEIGHT_KEYS.find((known) => known === name);
    const number = value === '' ? Number.NaN : Number(value);
    if (key === undefined || rest.length > 0 || !(number >= 0 && number <= MOST_WEIGHT))
      return `${part}; allowed: ${WEIGHT_KEYS.join(', ')}, each =0 to ${MOST_WEIGHT}`;
    weights[key] = number;
  }
  return weights;
}
