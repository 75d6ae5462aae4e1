// Heat lost by walls, roof and draughts together, told better than its parts, for a record ties leaks to insulation; and what of
// it goes by draughts, leaks and the wind at the house in one. Factors of the drawing at the record's mean weather.

import type { UnknownId } from '../design/as-found.ts';
import { modelOf } from '../model/from-design.ts';
import { asDrawn, INSULATES_BELOW, valueAt } from '../model/unknowns.ts';
import { preparedOnce } from '../weather/prepared/prepared-climate.ts';
import { type HouseRecord, rowOf } from './house-record.ts';
import { NORMAL_90 } from './intervals.ts';
import type { Estimate } from './least-squares.ts';

export interface HeatLoss {
  readonly value: number;
  /** nine in ten of such intervals should hold the truth */
  readonly low: number;
  readonly high: number;
}

export interface HeatLosses {
  readonly together: HeatLoss;
  readonly draughts: HeatLoss;
}

/** Both surface films together [m²K/W]. */
const FILMS = 0.17;
/** Heat of the air that cracks let through, by their flow as `crackFlow` has it: 1200 J/(m³K) by 1000 cm² [W/K]. */
const AIR = 1.2;
const LEAST_DIFFERENCE_K = 2;

/**
 * Both, and how well they are known; null where leaks were not fitted. What stays as drawn counts with what it makes of the
 * others: more wind at the house means fewer leaks found, and draughts as they were.
 *
 * @param fitted and `considered` as the estimate has them
 */
export function heatLossesOf(
  record: HouseRecord,
  fitted: readonly UnknownId[],
  considered: readonly UnknownId[],
  found: readonly number[],
  { covariance, blamed }: Pick<Estimate, 'covariance' | 'blamed'>,
  widening: number,
): HeatLosses | null {
  if (!fitted.includes('airtightness')) return null;
  const unknowns = [...fitted, ...considered];
  const places = unknowns.map((_, i) => found[i] ?? 0);
  const { design, weather } = record;
  const model = modelOf(design, weather.year.site, preparedOnce(weather.year).ground);
  const opaque = model.elements
    .filter(({ a }) => a.kind === 'outdoors')
    .map(({ areaM2, layers }) => {
      const resistance = (insulates: boolean) =>
        layers
          .filter(({ conductivity }) => conductivity < INSULATES_BELOW === insulates)
          .reduce((sum, { conductivity, thicknessM }) => sum + thicknessM / conductivity, 0);
      return { areaM2, insulating: resistance(true), rest: FILMS + resistance(false) };
    });
  const { windMS, differenceK } = meanWeather(record);
  const lossAt = (at: readonly number[]) => {
    const value = (id: UnknownId) =>
      unknowns.includes(id) ? valueAt(id, at[unknowns.indexOf(id)]!) : asDrawn(id);
    const walls = opaque.reduce(
      (sum, one) => sum + one.areaM2 / (one.rest + one.insulating * value('insulation')),
      0,
    );
    const draughts = model.openings.reduce((sum, opening) => {
      if (opening.kind !== 'cracks') return sum;
      const driven =
        opening.stackCoefficient * differenceK + opening.windCoefficient * (windMS * value('wind')) ** 2;
      return sum + AIR * opening.leakageCm2 * value('airtightness') * Math.sqrt(driven);
    }, 0);
    return { together: walls + draughts, draughts };
  };
  const drawn = lossAt(unknowns.map(() => 0));
  const of = (part: keyof HeatLosses): HeatLoss => {
    const logAt = (at: readonly number[]) => Math.log(lossAt(at)[part] / drawn[part]);
    const here = logAt(places);
    const step = 0.05;
    const gradient = places.map(
      (_, i) => (logAt(places.map((place, k) => (k === i ? place + step : place))) - here) / step,
    );
    const ofFitted = gradient.slice(0, fitted.length);
    const fromFit = ofFitted.reduce(
      (sum, a, i) => sum + ofFitted.reduce((total, b, k) => total + a * b * covariance[i]![k]!, 0),
      0,
    );
    const fromDrawing = considered.reduce((sum, _, j) => {
      const moves = ofFitted.reduce((total, a, i) => total + a * blamed[i]![j]!, 0);
      return sum + (gradient[fitted.length + j]! - moves) ** 2;
    }, 0);
    const variance = fromFit + fromDrawing;
    const half = NORMAL_90 * widening * Math.sqrt(variance);
    return { value: Math.exp(here), low: Math.exp(here - half), high: Math.exp(here + half) };
  };
  return { together: of('together'), draughts: of('draughts') };
}

/** Of the hours with a reading: wind at the station, and how far the first logger was from outdoors. */
function meanWeather(record: HouseRecord): { readonly windMS: number; readonly differenceK: number } {
  const { measured } = record.targets.find(({ kind }) => kind === 'temperature')!;
  const { windSpeed, dryBulbC } = record.weather.year;
  let [count, wind, difference] = [0, 0, 0];
  measured.forEach((value, hour) => {
    if (Number.isNaN(value)) return;
    const row = rowOf(record, hour);
    count++;
    wind += windSpeed[row]!;
    difference += Math.abs(value - dryBulbC[row]!);
  });
  return { windMS: wind / count, differenceK: Math.max(LEAST_DIFFERENCE_K, difference / count) };
}
