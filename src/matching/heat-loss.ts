// Heat lost by walls, roof and draughts together, as a factor of the drawing: told better than its parts.

import type { UnknownId } from '../design/as-found.ts';
import { modelOf } from '../model/from-design.ts';
import { asDrawn, valueAt } from '../model/unknowns.ts';
import { preparedOnce } from '../weather/prepared/prepared-climate.ts';
import type { HouseRecord } from './house-record.ts';
import { NORMAL_90 } from './intervals.ts';
import type { Estimate } from './least-squares.ts';

export interface HeatLoss {
  readonly value: number;
  /** nine in ten of such intervals should hold the truth */
  readonly low: number;
  readonly high: number;
}

/** Walls, roof and draughts together at the record's mean weather, as a factor of the drawing, and how well it is known. */
export function heatLossOf(
  record: HouseRecord,
  unknowns: readonly UnknownId[],
  places: readonly number[],
  { covariance, considered }: Estimate,
  widening: number,
): HeatLoss | null {
  const parts = (['airtightness', 'insulation', 'wind'] as const).filter((id) => unknowns.includes(id));
  if (!parts.includes('airtightness')) return null;
  const { design, weather } = record;
  const climate = preparedOnce(weather.year);
  const model = modelOf(design, weather.year.site, climate.ground);
  const opaque = model.elements
    .filter(({ a }) => a.kind === 'outdoors')
    .map(({ areaM2, layers }) => ({
      areaM2,
      bare: 0.17,
      insulating: layers.reduce(
        (sum, { conductivity, thicknessM }) => sum + (conductivity < 0.08 ? thicknessM / conductivity : 0),
        0,
      ),
      rest: layers.reduce(
        (sum, { conductivity, thicknessM }) => sum + (conductivity < 0.08 ? 0 : thicknessM / conductivity),
        0,
      ),
    }));
  const wind = 3;
  const difference = 15;
  const lossAt = (at: readonly number[]) => {
    const value = (id: UnknownId) =>
      unknowns.includes(id) ? valueAt(id, at[unknowns.indexOf(id)]!) : asDrawn(id);
    const walls = opaque.reduce(
      (sum, one) => sum + one.areaM2 / (one.bare + one.rest + one.insulating * value('insulation')),
      0,
    );
    const air = model.openings.reduce((sum, opening) => {
      if (opening.kind !== 'cracks') return sum;
      const driven =
        opening.stackCoefficient * difference + opening.windCoefficient * (wind * value('wind')) ** 2;
      return sum + 1.2 * opening.leakageCm2 * value('airtightness') * Math.sqrt(driven);
    }, 0);
    return walls + air;
  };
  const drawn = lossAt(unknowns.map(() => 0));
  const here = Math.log(lossAt(places) / drawn);
  const gradient = unknowns.map((_, i) => {
    const step = 0.05;
    return (
      (Math.log(lossAt(places.map((place, k) => (k === i ? place + step : place))) / drawn) - here) / step
    );
  });
  const variance = gradient.reduce(
    (sum, a, i) =>
      sum + gradient.reduce((total, b, k) => total + a * b * (covariance[i]![k]! + considered[i]![k]!), 0),
    0,
  );
  const half = NORMAL_90 * widening * Math.sqrt(Math.max(0, variance));
  return { value: Math.exp(here), low: Math.exp(here - half), high: Math.exp(here + half) };
}
