// The columns a run writes: zones, panes and the temperatures inside elements. Ids and areas in; records out that
// the recorder fills and hands over as they are.

import type { Model } from '../../model/model.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { PaneLight } from '../sun/pane-light.ts';
import type { ElementHistory, PaneYear, ZoneYear } from '../year.ts';

export type ZoneRecord = { -readonly [K in keyof ZoneYear]: ZoneYear[K] };
export type PaneRecord = PaneYear & { wetHours: number; frostHours: number };

/** A column of hours, written in full by a run. */
export const newColumn = () => new Float64Array(HOURS);

/** A zone's hours, to be written by a run. */
export function blankZone(id: string, column: () => Float64Array): ZoneRecord {
  return {
    id,
    airC: column(),
    operativeC: column(),
    relativeHumidity: column(),
    solarW: column(),
    heatingW: column(),
    coolingW: column(),
    ventAch: column(),
    moistureG: column(),
    condensationG: column(),
    airHeatW: column(),
    airWaterG: column(),
    airWaterFrom: [],
    moistureByCause: [],
    cornerC: column(),
    drainedKg: 0,
    waterGainKg: 0,
    co2Ppm: column(),
  };
}

/**
 * The sun on and through a pane is known before the run; it is summed only when somebody asks for it. What passes a pane
 * with covers is not, and is written by the run.
 */
export function blankPane(
  pane: Model['panes'][number],
  glassM2: number,
  light: PaneLight | null | undefined,
  column: () => Float64Array,
): PaneRecord {
  let incident: Float64Array | null = null;
  let transmitted: Float64Array | null = (pane.covers?.length ?? 0) > 0 ? newColumn() : null;
  return {
    id: pane.id,
    from: pane.from,
    to: pane.to,
    areaM2: glassM2,
    get incidentW() {
      incident ??= scaledSum(light ? [light.incidentW] : [], glassM2);
      return incident;
    },
    get transmittedW() {
      transmitted ??= scaledSum(light ? [light.beamFloorW, light.beamBackW, light.diffuseW] : [], glassM2);
      return transmitted;
    },
    innerC: column(),
    wetHours: 0,
    frostHours: 0,
  };
}

function scaledSum(parts: readonly Float64Array[], scale: number): Float64Array {
  const sum = new Float64Array(HOURS);
  for (const part of parts) {
    for (let hour = 0; hour < HOURS; hour++) sum[hour]! += scale * part[hour]!;
  }
  return sum;
}

/**
 * Temperatures in an element, to be written by a run.
 *
 * @param depthM of each place that is recorded, from face a [m]
 */
export function blankHistory(id: string, depthM: readonly number[]): ElementHistory {
  return { id, depthM, temperatureC: new Float32Array(HOURS * depthM.length) };
}
