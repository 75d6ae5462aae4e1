// What gives off water in each zone: people, cooking and washing by their schedules, and what beds gave (beds.ts). A model in;
// releases of an hour and of a step out, by cause, into the state of the water balance.

import type { Model } from '../../model/model.ts';
import { addToTable, SCHEDULE_LENGTH } from '../hour/clock.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { MoistureInputs, MoistureState } from './moisture-state.ts';

export const PLANT_CAUSE = 'plants';
export const SOIL_CAUSE = 'soil and water';

export interface MoistureSources {
  load(model: Model): void;
  /** what gives off water */
  causes(): readonly string[];
  /** by zone · causes + cause, given off in the hour so far; what follows a schedule, in the whole hour [kg] */
  readonly byCause: Float64Array;
  /** what follows a schedule, by zone, cause and schedule index [g in the hour] */
  readonly scheduled: Float64Array;
  /** releases that hold for an hour, by schedule */
  beginHour(): void;
  /** what the bed of a zone gave in the step */
  endBedStep(zone: number): void;
}

/** Releases into this state, with room for so many zones and causes; load() before use. */
export function createMoistureSources(
  capacity: EngineCapacity,
  state: MoistureState,
  inputs: MoistureInputs,
): MoistureSources {
  let zones = 0;
  let causes: readonly string[] = [];
  let plantCause = -1;
  let soilCause = -1;
  const byCause = new Float64Array(capacity.zones * capacity.causes);
  /** what follows a schedule, by zone, cause and schedule index [g in the hour] */
  const scheduled = new Float64Array(capacity.zones * capacity.causes * SCHEDULE_LENGTH);

  function load(model: Model): void {
    zones = model.zones.length;
    causes = moistureCauses(model);
    plantCause = causes.indexOf(PLANT_CAUSE);
    soilCause = causes.indexOf(SOIL_CAUSE);
    for (const array of [scheduled, byCause]) array.fill(0);
    model.zones.forEach(({ moisture }, z) => {
      for (const { cause, rate } of moisture) {
        const row = z * causes.length + causes.indexOf(cause);
        addToTable(scheduled, row * SCHEDULE_LENGTH, rate, 1);
      }
    });
  }

  function beginHour(): void {
    const { scheduledKg } = state.zone;
    const table = scheduled;
    const given = byCause;
    const { scheduleIndex } = inputs.moment;
    const count = causes.length;
    const zoneCount = zones;
    for (let z = 0; z < zoneCount; z++) {
      let sum = 0;
      for (let i = z * count; i < (z + 1) * count; i++) {
        const kg = table[i * SCHEDULE_LENGTH + scheduleIndex]! / 1000;
        given[i] = kg;
        sum += kg;
      }
      scheduledKg[z] = sum / 3600;
    }
  }

  function endBedStep(z: number): void {
    const { plantsKg, soilKg, released } = state.zone;
    const { stepS } = inputs;
    const given = plantsKg[z]! + soilKg[z]!;
    if (given === 0) return;
    byCause[z * causes.length + plantCause]! += plantsKg[z]! * stepS;
    byCause[z * causes.length + soilCause]! += soilKg[z]! * stepS;
    released[z]! += given;
  }

  return { load, causes: () => causes, byCause, scheduled, beginHour, endBedStep };
}

/** What gives off water in a model. */
export function moistureCauses(model: Model): string[] {
  const causes = new Set<string>();
  for (const zone of model.zones) {
    for (const source of zone.moisture) causes.add(source.cause);
    if (zone.planting !== null && zone.planting.bedM2 > 0) causes.add(PLANT_CAUSE).add(SOIL_CAUSE);
  }
  return [...causes];
}
