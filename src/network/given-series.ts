// What is known of the days that are run, in place of a schedule or a rule: heat and water measured, fires written down,
// people counted, a zone's air held as it was, openings as they stood. Where a value is NaN nothing is known and the schedule
// or rule decides. A run without any pays nothing: an hour's known amounts are written over the hour's own place in the
// tables of schedules, which every load writes anew, and positions of openings are asked for only where there are events.

import type { Model, Schedule, Zone } from '../model/model.ts';
import { always } from '../model/schedule.ts';
import { addToTable, type Moment, SCHEDULE_LENGTH } from './hour/clock.ts';

/** A measured series of a run; `values` by row of the climate, NaN where not known. */
export type RowSeries =
  /** heat of one of a zone's gains, by its id [W] */
  | {
      readonly kind: 'gain';
      readonly zone: string;
      readonly gain: string;
      readonly values: Float64Array;
    }
  /** heat that a zone's heater gives, to air or heated floor as it does, whatever it is set to [W, not below 0] */
  | { readonly kind: 'heat'; readonly zone: string; readonly values: Float64Array }
  /** wood put on a zone's stove within the hour, whoever is at home [kg, not below 0] */
  | { readonly kind: 'wood'; readonly zone: string; readonly values: Float64Array }
  /** water given off by one of a zone's causes [g/h] */
  | {
      readonly kind: 'moisture';
      readonly zone: string;
      readonly cause: string;
      readonly values: Float64Array;
    }
  /** people in a zone: their breath; their heat and water are series of their own */
  | { readonly kind: 'people'; readonly zone: string; readonly values: Float64Array }
  /** the zone's air is held at this [°C] */
  | { readonly kind: 'held'; readonly zone: string; readonly values: Float64Array }
  /** share open of a vent or door from each event on, 0…1, NaN for as its rule has it from there */
  | { readonly kind: 'opening'; readonly opening: string; readonly events: readonly OpeningEvent[] };

export interface OpeningEvent {
  /** hours since the start of the period, with fractions; below 0 in the weather before */
  readonly hour: number;
  /** 0…1, or NaN */
  readonly open: number;
}

/** Tables of schedules that series write over, by row and schedule index. */
export interface ScheduleTables {
  /** people and appliances, to the air and by radiation, by zone [W] */
  readonly air: Float64Array;
  readonly radiant: Float64Array;
  /** water by zone · causes + cause [g/h] */
  readonly moisture: Float64Array;
  /** breath by zone, and of one person [ppm·kg/h] */
  readonly breath: Float64Array;
}

/** An amount of a table that a series knows better. */
interface Overwritten {
  readonly table: Float64Array;
  readonly from: number;
  /** the table as its schedules have it, and of it what the series replaces */
  readonly whole: Float64Array;
  readonly own: Float64Array;
  readonly values: Float64Array;
  readonly factor: number;
}

/** What heaters are known to have given in the hour that runs, by zone; NaN where it is not known. */
export interface GivenHeat {
  /** [W] */
  readonly watt: Float64Array;
  /** put on the stove [kg] */
  readonly woodKg: Float64Array;
}

/** Nothing known of any heater, with room for so many zones. */
export function blankGivenHeat(zones: number): GivenHeat {
  const unknown = () => new Float64Array(zones).fill(Number.NaN);
  return { watt: unknown(), woodKg: unknown() };
}

/** No position is known. */
const BY_RULE = Number.NaN;

/** Heat enough to hold any air [W]. */
export const HOLDING_W = 1e9;
/** No air is as warm; a heater that aims at it gives all it may [°C]. */
export const OUT_OF_REACH_C = 1000;

/**
 * Series of a run, with room for so many zones; load() before use.
 *
 * @param openShare by opening, written: share open in the hour or step that begins, NaN by rule
 * @param heat written: of the hour that begins
 */
export function createGivenSeries(
  zonesMost: number,
  tables: ScheduleTables,
  openShare: Float64Array,
  heat: GivenHeat,
) {
  let overwritten: readonly Overwritten[] = [];
  let held: { zone: number; values: Float64Array }[] = [];
  let heats: { zone: number; into: Float64Array; values: Float64Array }[] = [];
  let positions: readonly (readonly OpeningEvent[] | null)[] = [];
  /** air held in the hour, by zone [°C]; NaN where it is not */
  const heldC = new Float64Array(zonesMost).fill(Number.NaN);
  /** by opening: the event in force */
  const eventAt = new Int32Array(openShare.length);

  /**
   * Take the series of a run in, after all tables were loaded.
   *
   * @param breathPerPerson [ppm·kg/h]
   */
  function load(
    series: readonly RowSeries[],
    model: Model,
    causes: readonly string[],
    breathPerPerson: number,
  ): void {
    const { air, radiant, moisture, breath } = tables;
    const over = (
      table: Float64Array,
      row: number,
      schedule: Schedule,
      factor: number,
      values: Float64Array,
    ) => {
      const own = new Float64Array(SCHEDULE_LENGTH);
      addToTable(own, 0, schedule, factor);
      const from = row * SCHEDULE_LENGTH;
      return { table, from, whole: table.slice(from, from + SCHEDULE_LENGTH), own, values, factor };
    };
    const zoneOf = (id: string) => {
      const at = model.zones.findIndex((zone) => zone.id === id);
      if (at < 0) throw new RangeError(`series of zone '${id}'; allowed: ${names(model.zones)}`);
      return at;
    };
    heldC.fill(Number.NaN);
    openShare.fill(BY_RULE);
    eventAt.fill(-1);
    heat.watt.fill(Number.NaN);
    heat.woodKg.fill(Number.NaN);
    held = [];
    heats = [];
    overwritten = series.flatMap((one): Overwritten[] => {
      if (one.kind === 'opening') return [];
      const z = zoneOf(one.zone);
      const zone = model.zones[z]!;
      if (one.kind === 'held') {
        held.push({ zone: z, values: one.values });
        return [];
      }
      if (one.kind === 'heat' || one.kind === 'wood') {
        checkHeat(one, zone);
        heats.push({ zone: z, into: one.kind === 'heat' ? heat.watt : heat.woodKg, values: one.values });
        return [];
      }
      if (one.kind === 'people')
        return [over(breath, z, zone.people ?? NOTHING, breathPerPerson, one.values)];
      if (one.kind === 'gain') {
        const gain = zone.gains.find(({ id }) => id === one.gain);
        if (gain === undefined)
          throw new RangeError(`series of gain '${one.gain}'; allowed: ${names(zone.gains)}`);
        const { power, radiantShare } = gain;
        return [
          over(air, z, power, 1 - radiantShare, one.values),
          over(radiant, z, power, radiantShare, one.values),
        ];
      }
      const source = zone.moisture.find(({ cause }) => cause === one.cause);
      if (source === undefined)
        throw new RangeError(
          `series of water by '${one.cause}'; allowed: ${zone.moisture.map(({ cause }) => cause).join(', ')}`,
        );
      const row = z * causes.length + causes.indexOf(one.cause);
      return [over(moisture, row, source.rate, 1, one.values)];
    });
    positions = model.openings.map(({ id }) => {
      const events = series.flatMap((one) =>
        one.kind === 'opening' && one.opening === id ? one.events : [],
      );
      return events.length === 0 ? null : [...events].sort((a, b) => a.hour - b.hour);
    });
    const movable = model.openings.filter(({ kind }) => kind === 'vent' || kind === 'door');
    for (const one of series) {
      if (one.kind === 'opening' && !movable.some(({ id }) => id === one.opening))
        throw new RangeError(`series of opening '${one.opening}'; allowed: ${names(movable)}`);
    }
  }

  /** What is known of an hour: into the tables, and what is held. */
  function beginHour({ hour, scheduleIndex }: Moment): void {
    // Two series may share a place, as people and appliances of one zone do.
    for (let i = 0; i < overwritten.length; i++) {
      const { table, from, whole } = overwritten[i]!;
      table[from + scheduleIndex] = whole[scheduleIndex]!;
    }
    for (let i = 0; i < overwritten.length; i++) {
      const { table, from, own, values, factor } = overwritten[i]!;
      const value = values[hour]!;
      if (!Number.isNaN(value)) table[from + scheduleIndex]! += value * factor - own[scheduleIndex]!;
    }
    for (let i = 0; i < held.length; i++) heldC[held[i]!.zone] = held[i]!.values[hour]!;
    for (let i = 0; i < heats.length; i++) heats[i]!.into[heats[i]!.zone] = heats[i]!.values[hour]!;
  }

  /** Where openings stand at an hour since the start of the period. */
  function readPositions(hourIn: number): void {
    for (let i = 0; i < positions.length; i++) {
      const events = positions[i]!;
      if (events === null) continue;
      let at = eventAt[i]!;
      while (at + 1 < events.length && events[at + 1]!.hour <= hourIn) at++;
      eventAt[i] = at;
      openShare[i] = at < 0 ? BY_RULE : events[at]!.open;
    }
  }

  /** Whether an opening opens, or may by its rule, within the hour that has begun. */
  function opensWithin(hourIn: number): boolean {
    for (let i = 0; i < positions.length; i++) {
      const next = positions[i]?.[eventAt[i]! + 1];
      if (next !== undefined && next.hour < hourIn + 1 && next.open !== 0) return true;
    }
    return false;
  }

  return {
    heldC,
    opensWithin,
    load,
    beginHour,
    readPositions,
    /** whether any is known at all */
    any: () =>
      overwritten.length + held.length + heats.length > 0 || positions.some((events) => events !== null),
    /** whether any zone's air is held, or heat given by a heater or a fire */
    holds: () => held.length + heats.length > 0,
    moves: () => positions.some((events) => events !== null),
  };
}

const NOTHING = always(0);

/** A fire needs a stove, other heat a heater that is none; neither is below 0. */
function checkHeat(
  one: Extract<RowSeries, { kind: 'heat' | 'wood' }>,
  { id, stove, thermostat }: Zone,
): void {
  const isFire = one.kind === 'wood';
  if (isFire !== (stove !== undefined) || (!isFire && thermostat === null)) {
    const has = stove !== undefined ? 'a stove' : thermostat === null ? 'nothing that heats' : 'a heater';
    throw new RangeError(
      `series of ${one.kind} of zone '${id}', which has ${has}; allowed: wood for a stove, heat for a heater`,
    );
  }
  const negative = one.values.find((value) => value < 0);
  if (negative !== undefined)
    throw new RangeError(`series of ${one.kind} of zone '${id}' has ${negative}; allowed: 0 or more`);
}

function names(all: readonly { readonly id: string }[]): string {
  return all.map(({ id }) => `'${id}'`).join(', ') || 'none';
}
