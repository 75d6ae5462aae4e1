// What a fit leaves, by what goes with it: time of day, sun, wind, warmth outdoors. The largest pattern left is what the
// model, or what it was told, lacks; it is named, not fitted away.

import { type HouseRecord, rowOf } from './house-record.ts';

export interface Pattern {
  readonly with: 'hour' | 'sun' | 'wind' | 'outdoors' | 'moments';
  /** of what is left, so much goes with it, 0…1 */
  readonly share: number;
  /** from its lowest group to its highest, or from before to after [K] */
  readonly rangeK: number;
  /** one sentence */
  readonly words: string;
}

const LEAST_SHARE = 0.2;
const LEAST_K = 0.3;
const GROUPS = 6;

/** Patterns of a residual by hour (measured less computed; NaN where not judged), the largest first. */
export function patternsOf(record: HouseRecord, residual: Float64Array): Pattern[] {
  const { year } = record.weather;
  const row = (hour: number) => rowOf(record, hour);
  const clock = (hour: number) => row(hour) % 24;
  const hours = [...residual.keys()].filter((hour) => !Number.isNaN(residual[hour]!));
  if (hours.length < 48) return [];
  const mean = hours.reduce((sum, hour) => sum + residual[hour]!, 0) / hours.length;
  const all = hours.reduce((sum, hour) => sum + (residual[hour]! - mean) ** 2, 0);
  const grouped = (groupOf: (hour: number) => number) => {
    const groups = new Map<number, number[]>();
    for (const hour of hours) {
      const group = groupOf(hour);
      groups.set(group, [...(groups.get(group) ?? []), residual[hour]!]);
    }
    const means = [...groups]
      .filter(([, values]) => values.length >= 6)
      .map(([group, values]) => ({
        group,
        mean: values.reduce((a, b) => a + b, 0) / values.length,
        count: values.length,
      }));
    const explained = means.reduce((sum, one) => sum + one.count * (one.mean - mean) ** 2, 0);
    const high = means.reduce((a, b) => (b.mean > a.mean ? b : a));
    const low = means.reduce((a, b) => (b.mean < a.mean ? b : a));
    return { share: all === 0 ? 0 : explained / all, high, low, rangeK: high.mean - low.mean };
  };
  const ranked = (column: Float64Array) => {
    const order = [...hours].sort((a, b) => column[row(a)]! - column[row(b)]!);
    const place = new Map(order.map((hour, i) => [hour, Math.floor((GROUPS * i) / order.length)]));
    return (hour: number) => place.get(hour)!;
  };
  const kelvin = (value: number) => `${value.toFixed(1)} K`;
  const found: Pattern[] = [];
  const byHour = grouped((hour) => Math.floor(clock(hour) / 2));
  const around = ({ group }: { group: number }) => `${2 * group} to ${2 * group + 2} h`;
  found.push({
    with: 'hour',
    share: byHour.share,
    rangeK: byHour.rangeK,
    words: `Warmer than computed from ${around(byHour.high)} and cooler from ${around(byHour.low)}, by ${kelvin(byHour.rangeK)} from one to the other.`,
  });
  const columns = [
    ['sun', year.globalHorizontal, 'in bright sun', 'in the dark'],
    ['wind', year.windSpeed, 'in strong wind', 'in still air'],
    ['outdoors', year.dryBulbC, 'while it is warm outdoors', 'while it is cold outdoors'],
  ] as const;
  for (const [name, column, much, little] of columns) {
    const { share, high, low, rangeK } = grouped(ranked(column));
    const [warm, cool] = high.group > low.group ? [much, little] : [little, much];
    found.push({
      with: name,
      share,
      rangeK,
      words: `Warmer than computed ${warm} and cooler ${cool}, by ${kelvin(rangeK)}.`,
    });
  }
  return found
    .filter(({ share, rangeK }) => share >= LEAST_SHARE && rangeK >= LEAST_K)
    .sort((a, b) => b.share - a.share);
}
