// Twins: a house whose truth differs from its drawing by numbers drawn at random, run through real days, and read by
// loggers that drift, jitter, stand off and round. What a fit gives back of the truth says what can be told apart, not how
// right the engine is about real houses.

import {
  type Design,
  EXAMPLES,
  type PeriodSeries,
  recordOf,
  runPeriod,
  type WeatherRecord,
} from '../../src/daystone.ts';
import type { UnknownId } from '../../src/design/as-found.ts';
import {
  type HouseRecord,
  type MatchRunner,
  runMatch,
  type Target,
} from '../../src/matching/house-record.ts';
import { modelOfDays } from '../../src/matching/record-of-files.ts';
import { toldSeries } from '../../src/matching/told-days.ts';
import { modelWith, UNKNOWNS, type UnknownValues, valueAt } from '../../src/model/unknowns.ts';
import { momentOfDate } from '../../src/weather/moments.ts';
import { randomNumbers } from '../../src/weather/synthetic/random-numbers.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';

export interface TwinCase {
  readonly design: string;
  readonly changed?: (design: Design) => Design;
  readonly from: string;
  readonly days: number;
  readonly truth: readonly UnknownId[];
  readonly targets: readonly Pick<Target, 'zone' | 'kind'>[];
  /** what was built, where the drawing has it otherwise */
  readonly built?: (design: Design) => Design;
  /** the zone the loggers hung in, where the record says another */
  readonly hung?: string;
  /** windows and vents stood shut */
  readonly shut: boolean;
  /** what the heater gave was written down, by the day within a tenth */
  readonly heatWritten?: boolean;
  /** what the run that fits is given, in place of what the truth had */
  readonly seen?: (weather: WeatherRecord) => WeatherRecord;
  readonly readings?: (reading: Float64Array, say: (note: string) => void) => Float64Array;
}

export interface Twin {
  readonly record: HouseRecord;
  readonly truth: UnknownValues;
  /** what the reader of the logger's file would say */
  readonly notes: readonly string[];
}

/** Typical weather of these dates, as if it had been measured, with four weeks before them. */
export function weatherOf(typical: TypicalYear, from: string, days: number): WeatherRecord {
  const before = 28;
  const { site } = typical;
  const startMs = momentOfDate(from, site.utcOffsetH) - before * 86_400_000;
  const hours = 24 * (before + days);
  const first = Math.floor((startMs + site.utcOffsetH * 3_600_000 - Date.UTC(2021, 0, 1)) / 3_600_000);
  const part = (column: Float64Array) =>
    Float64Array.from({ length: hours }, (_, hour) => column[(first + hour + 8760) % 8760]!);
  return recordOf(
    {
      site,
      startMs,
      hours,
      dryBulbC: part(typical.dryBulbC),
      dewPointC: part(typical.dewPointC),
      windSpeed: part(typical.windSpeed),
      globalHorizontal: part(typical.globalHorizontal),
      diffuseHorizontal: part(typical.diffuseHorizontal),
      beamNormal: part(typical.beamNormal),
      skyCover: part(typical.skyCover),
      sunMinute: typical.sunMinute,
    },
    typical,
  );
}

export function twinOf(made: TwinCase, typical: TypicalYear, seed: number): Twin {
  const random = randomNumbers(seed);
  const drawn = EXAMPLES.find(({ id }) => id === made.design)!.design;
  const design = made.changed?.(drawn) ?? drawn;
  const weather = weatherOf(typical, made.from, made.days);
  const truth = Object.fromEntries(
    made.truth.map((id) => [id, valueAt(id, Math.max(-2, Math.min(2, random.normal())))]),
  );
  const hours = 24 * made.days;
  const startMs = momentOfDate(made.from, typical.site.utcOffsetH);
  const blank = new Float64Array(hours);
  const targets = made.targets.map(
    (target): Target => ({
      ...target,
      name: target.zone,
      radiantShare: target.kind === 'temperature' ? 0.3 : 0,
      measured: blank,
    }),
  );
  const record: HouseRecord = {
    design,
    weather,
    startMs,
    hours,
    targets,
    series: made.shut ? shutSeries(design, weather, startMs, hours) : [],
    warmUpDays: 28,
  };
  const house = {
    ...record,
    design: made.built?.(design) ?? design,
    targets: targets.map((target) => ({ ...target, zone: made.hung ?? target.zone })),
  };
  const readings = runMatch(house, { values: truth });
  const heat = made.heatWritten ? writtenHeat(house, truth, random.normal) : [];
  const notes: string[] = [];
  return {
    truth,
    notes,
    record: {
      ...record,
      series: [...record.series, ...heat],
      weather: made.seen?.(weather) ?? weather,
      targets: targets.map((target, t) => {
        const seen = made.readings?.(readings[t]!, (note) => notes.push(note)) ?? readings[t]!;
        return { ...target, measured: logged(seen, target.kind, random.normal) };
      }),
    },
  };
}

/** All that moves, shut. */
function shutSeries(design: Design, weather: WeatherRecord, startMs: number, hours: number): PeriodSeries[] {
  const all = { fromMs: startMs, untilMs: startMs + hours * 3_600_000 };
  return toldSeries(modelOfDays(design, weather), { shut: [all], away: [] }, { startMs, hours });
}

/** Heat of the true house by hour [W], off by a tenth from day to day. */
function writtenHeat(
  { design, weather, startMs, hours, series, warmUpDays }: HouseRecord,
  truth: UnknownValues,
  normal: () => number,
): PeriodSeries[] {
  const { zones, model } = runPeriod(design, weather, {
    from: startMs,
    until: startMs + hours * 3_600_000,
    series,
    warmUpDays,
    model: (drawn) => modelWith(drawn, truth),
  });
  const ofDay = Array.from({ length: Math.ceil(hours / 24) }, () => Math.exp(0.1 * normal()));
  return model.zones.flatMap(({ id, thermostat }): PeriodSeries[] => {
    if (thermostat === null) return [];
    const { heatingW } = zones.find((zone) => zone.id === id)!;
    const values = heatingW.map((watt, hour) => watt * ofDay[Math.floor(hour / 24)]!);
    return [{ kind: 'heat', zone: id, values }];
  });
}

/** Of loggers: drift over hours, jitter, constant error and rounding, °C and %. */
export const LOGGER_NOISE = {
  temperature: { slow: 0.3, fast: 0.1, offset: 0.2, step: 0.1 },
  humidity: { slow: 2, fast: 0.5, offset: 2, step: 1 },
} as const;
/** Of a drift, so much is left after an hour. */
export const DRIFT_KEPT = Math.exp(-1 / 6);

/** What a logger makes of a reading: drift over hours, jitter, a constant error, rounding. */
function logged(reading: Float64Array, kind: Target['kind'], normal: () => number): Float64Array {
  const noise = LOGGER_NOISE[kind];
  const offset = noise.offset * normal();
  const kept = DRIFT_KEPT;
  let slow = noise.slow * normal();
  return reading.map((value) => {
    slow = kept * slow + noise.slow * Math.sqrt(1 - kept * kept) * normal();
    const read = value + offset + slow + noise.fast * normal();
    return Math.round(read / noise.step) * noise.step;
  });
}

/** Error of a fitted value against the truth: of the logarithm for factors, in K for shifts. */
export function errorOf(id: UnknownId, fitted: number, truth: number): number {
  return UNKNOWNS[id].scale === 'factor' ? Math.log(fitted / truth) : fitted - truth;
}

/** Runs jobs one after the other where it is called. */
export function plainMatchRunner(record: HouseRecord): MatchRunner {
  return { run: async (jobs) => jobs.map((job) => runMatch(record, job)) };
}
