// What a diary or a meter says of heat, as series of a run: wood on the drawing's stove, or heat of its heaters. Lines with an
// amount in; series by hour of the period, NaN on days that nobody wrote of, and a sentence on what was taken out.

import type { PeriodSeries } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import { efficiencyOf, LEAST_STOVE_KW, STOVE_NUMBERS, USUAL_STOVE } from '../design/heat-source.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { DiaryLine } from '../loggers/diary-file.ts';
import { type HeatAmount, LOG_KG } from '../loggers/heat-amount.ts';
import type { Model } from '../model/model.ts';
import { J_PER_KWH } from '../physics/constants.ts';
import { dryHeatOf, woodById, woodHeat } from '../physics/wood-fuel.ts';
import { DAY_MS, dateOfMoment, HOUR_MS } from '../weather/moments.ts';
import type { HourGrid } from '../weather/real/hourly-means.ts';

export interface ToldHeat {
  readonly series: readonly PeriodSeries[];
  readonly notes: readonly string[];
}

/** What burns, where and how fast. */
interface Burner {
  readonly zone: string;
  readonly kind: 'wood' | 'heat';
  /** heat to the house of a kg of wood [kWh] */
  readonly usefulKWhPerKg: number;
  /** wood that is put on at once burns down so fast [kg/h] */
  readonly kgPerH: number;
}

/** Series of the heat that was written down; none where no line has an amount. */
export function toldHeat(
  design: Design,
  model: Model,
  lines: readonly DiaryLine[],
  period: HourGrid,
  utcOffsetH: number,
): ToldHeat {
  const told = lines.filter((line) => line.amount !== undefined) as (DiaryLine & { amount: HeatAmount })[];
  if (told.length === 0) return { series: [], notes: [] };
  const burner = burnerOf(design, model);
  if (burner === null)
    return {
      series: [],
      notes: ['The heat that was written down is not used: nothing heats the house as it is drawn.'],
    };
  const dayOf = (ms: number) =>
    Math.floor((ms + utcOffsetH * HOUR_MS) / DAY_MS) * DAY_MS - utcOffsetH * HOUR_MS;
  const fromMs = dayOf(Math.min(...told.map((line) => line.fromMs)));
  const untilMs = dayOf(Math.max(...told.map((line) => Math.max(line.untilMs - 1, line.fromMs)))) + DAY_MS;
  const isKnown = (hour: number) => {
    const ms = period.startMs + hour * HOUR_MS;
    return ms >= fromMs && ms < untilMs;
  };
  const known = (value: (hour: number) => number) =>
    Float64Array.from({ length: period.hours }, (_, hour) => (isKnown(hour) ? value(hour) : Number.NaN));
  const kWh = new Float64Array(period.hours);
  for (const line of told) spread(kWh, line, burner, period);
  const perUnit = burner.kind === 'wood' ? 1 / burner.usefulKWhPerKg : 1000;
  const series: PeriodSeries[] = [
    { kind: burner.kind, zone: burner.zone, values: known((hour) => perUnit * kWh[hour]!) },
    // Nothing else heats on these days.
    ...model.zones
      .filter(({ id, thermostat }) => id !== burner.zone && thermostat !== null)
      .map(({ id }): PeriodSeries => ({ kind: 'heat', zone: id, values: known(() => 0) })),
  ];
  const all = kWh.reduce((sum, value) => sum + value, 0);
  const date = (ms: number) => dateOfMoment(ms, utcOffsetH).slice(0, 10);
  const notes = [
    `Heat as it was written down, ${Math.round(all)} kWh to the house, from ${date(fromMs)} to ${date(untilMs - 1)}; on these days nothing else is taken to heat. A line with 0 kg at either end makes them more.`,
  ];
  if (told.some(({ amount }) => amount.isCounted))
    notes.push(`Logs that were counted are taken as ${LOG_KG} kg each; weigh ten of them to do better.`);
  return { series, notes };
}

/** An amount over the hours it was given in [kWh]. */
function spread(
  kWh: Float64Array,
  { fromMs, untilMs, amount }: DiaryLine & { amount: HeatAmount },
  { usefulKWhPerKg, kgPerH }: Burner,
  { startMs }: HourGrid,
): void {
  const lasts = untilMs - fromMs;
  const hours = lasts / HOUR_MS;
  const total =
    amount.unit === 'kg'
      ? amount.value * usefulKWhPerKg
      : amount.unit === 'kWh'
        ? amount.value
        : amount.value * hours;
  // What is put on at a moment is fed load after load, as fast as it burns down.
  const forH = Math.max(hours, lasts === 0 ? total / usefulKWhPerKg / kgPerH : 0, 1 / 60);
  const end = fromMs + forH * HOUR_MS;
  for (let hour = Math.floor((fromMs - startMs) / HOUR_MS); startMs + hour * HOUR_MS < end; hour++) {
    if (hour < 0 || hour >= kWh.length) continue;
    const from = Math.max(fromMs, startMs + hour * HOUR_MS);
    const until = Math.min(end, startMs + (hour + 1) * HOUR_MS);
    kWh[hour]! += (total * (until - from)) / HOUR_MS / forH;
  }
}

/** The drawing's stove; else its heaters, with wood as a usual light stove burns it; null where nothing heats. */
function burnerOf(design: Design, { zones }: Model): Burner | null {
  const withStove = zones.find(({ stove }) => stove !== undefined);
  if (withStove !== undefined) {
    const { woodJPerKg, efficiency, loadKg, burnH } = withStove.stove!;
    return {
      zone: withStove.id,
      kind: 'wood',
      usefulKWhPerKg: (woodJPerKg / J_PER_KWH) * efficiency,
      kgPerH: loadKg / burnH,
    };
  }
  const plan = roomPlanOf(design);
  const heated = zones.filter(({ thermostat }) => thermostat !== null);
  const zone = heated.find(({ id }) => id === plan?.rooms[plan.stove]?.id) ?? heated[0];
  if (zone === undefined) return null;
  const wood = woodById(USUAL_STOVE.wood);
  const usefulKWhPerKg = woodHeat(dryHeatOf(wood), USUAL_STOVE.moisture) * efficiencyOf(USUAL_STOVE);
  const kgPerH = USUAL_LOAD_KW / usefulKWhPerKg / STOVE_NUMBERS[USUAL_STOVE.stove].burnH;
  return { zone: zone.id, kind: 'heat', usefulKWhPerKg, kgPerH };
}

/** Of a light stove of the middle size; common practice, no source [kW]. */
const USUAL_LOAD_KW = 2 * LEAST_STOVE_KW.steel;
