// Why a headline figure is what it is: the hours behind it (how many, which months, which times of day), the heat
// that moved in those hours, and the one change that would move the figure most, as far as one run can tell. A
// context and a figure's name in, a trace out. The change is a guess from the findings until the question "What
// matters most?" has been asked; `change` then comes from its answer.

import { hoursByMonth } from '../outcomes/calendar.ts';
import { HOURS } from '../weather/typical-year.ts';
import { CHANGES } from './answer.ts';
import type { Context } from './context.ts';
import { findingsOf } from './findings.ts';
import { monthsThatMatter } from './rules/season.ts';
import { during, hours, listed } from './wording.ts';

export const TRACED = ['overheatedHours', 'underheatedHours', 'humidHours', 'heatingKWh'] as const;
export type Traced = (typeof TRACED)[number];

export interface HeatFlow {
  readonly cause: string;
  /** mean over the hours behind the figure; into the rooms is positive [W] */
  readonly watts: number;
}

export interface Trace {
  readonly figure: Traced;
  /** hours of the year behind the figure, in their order */
  readonly hours: readonly number[];
  /** twelve counts, and twenty-four by hour of day */
  readonly byMonth: readonly number[];
  readonly byHourOfDay: readonly number[];
  /** largest first, by size */
  readonly flows: readonly HeatFlow[];
  readonly change: string | null;
  readonly text: string;
}

/** Heat capacity of air by volume [J/(m³·K)] at room temperature and sea level; enough for a mean flow. */
const AIR_J_PER_M3K = 1206;

/** Findings whose cure moves the figure. */
const CURES: Readonly<Record<Traced, readonly string[]>> = {
  overheatedHours: [
    'sunspace-open',
    'glass-leans',
    'glass-share',
    'mass-too-little',
    'vents-neglected',
    'too-hot',
  ],
  underheatedHours: ['too-cold'],
  humidHours: ['damp-from-plants', 'sunspace-open', 'too-damp'],
  heatingKWh: ['too-cold'],
};

/**
 * Trace a headline figure of the rooms.
 *
 * @param context one run
 * @param figure its name
 * @returns hours, flows and words; no hours and a plain sentence where the figure is zero
 */
export function whyOf(context: Context, figure: Traced): Trace {
  const isBehind = testOf(context, figure);
  const behind: number[] = [];
  const byHourOfDay = Array<number>(24).fill(0);
  const flags = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    if (!isBehind(hour)) continue;
    behind.push(hour);
    flags[hour] = 1;
    byHourOfDay[hour % 24]!++;
  }
  const byMonth = hoursByMonth(flags, (flag) => flag > 0);
  const flows = flowsIn(context, behind);
  const change = changeFor(context, figure);
  return {
    figure,
    hours: behind,
    byMonth,
    byHourOfDay,
    flows,
    change,
    text: tell(behind, byMonth, byHourOfDay, flows, change),
  };
}

function testOf({ house, houseYear }: Context, figure: Traced): (hour: number) => boolean {
  switch (figure) {
    case 'overheatedHours':
      return (hour) => houseYear.operativeC[hour]! > house.overheatLimitC;
    case 'underheatedHours':
      return (hour) => houseYear.operativeC[hour]! < house.underheatLimitC;
    case 'humidHours':
      return (hour) => houseYear.relativeHumidity[hour]! > house.humidLimit;
    case 'heatingKWh':
      return (hour) => houseYear.heatingW[hour]! > 0;
  }
}

/** Mean flows that the year keeps by the hour: sun, heater, air. */
function flowsIn({ houseYear, climate, geometry }: Context, behind: readonly number[]): HeatFlow[] {
  let [sun, heater, air] = [0, 0, 0];
  for (const hour of behind) {
    sun += houseYear.solarW[hour]!;
    heater += houseYear.heatingW[hour]!;
    const perK = (houseYear.ventAch[hour]! * geometry.houseVolumeM3 * AIR_J_PER_M3K) / 3600;
    air += perK * (climate.year.dryBulbC[hour]! - houseYear.airC[hour]!);
  }
  const count = Math.max(behind.length, 1);
  return [
    { cause: 'sun', watts: sun / count },
    { cause: 'heater', watts: heater / count },
    { cause: 'outdoor air', watts: air / count },
  ]
    .filter(({ watts }) => Math.abs(watts) >= 1)
    .sort((one, other) => Math.abs(other.watts) - Math.abs(one.watts));
}

function changeFor(context: Context, figure: Traced): string | null {
  const grave = new Set(
    findingsOf(context)
      .filter(({ severity }) => severity === 'danger' || severity === 'warning')
      .map(({ id }) => id),
  );
  const cure = CURES[figure].find((id) => grave.has(id));
  return CHANGES.find(([id]) => id === cure)?.[1] ?? null;
}

function tell(
  behind: readonly number[],
  byMonth: readonly number[],
  byHourOfDay: readonly number[],
  flows: readonly HeatFlow[],
  change: string | null,
): string {
  if (behind.length === 0) return 'No hour of the year stands behind this figure.';
  const when = `${hours(behind.length)} stand behind it, mostly ${during(monthsThatMatter(byMonth))}, ${partOfDay(byHourOfDay)}. `;
  const said = flows.map(
    ({ cause, watts }) => `${cause} ${watts > 0 ? 'brings' : 'takes'} ${Math.round(Math.abs(watts))} W`,
  );
  const flow = said.length === 0 ? '' : `On average in those hours, ${listed(said)}. `;
  return `${when}${flow}${change === null ? '' : `To move it: ${change}.`}`.trim();
}

/** The part of the day with the most hours, in words. */
function partOfDay(byHourOfDay: readonly number[]): string {
  const parts = [
    { name: 'at night', from: 22, to: 30 },
    { name: 'in the morning', from: 6, to: 12 },
    { name: 'in the afternoon', from: 12, to: 18 },
    { name: 'in the evening', from: 18, to: 22 },
  ].map(({ name, from, to }) => {
    let count = 0;
    for (let hour = from; hour < to; hour++) count += byHourOfDay[hour % 24]!;
    return { name, perHour: count / (to - from) };
  });
  return parts.reduce((most, part) => (part.perHour > most.perHour ? part : most)).name;
}
