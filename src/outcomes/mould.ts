// Mould on one surface of a zone, hour by hour. In: the surface's temperature and the zone's vapour pressure. Out:
// the VTT mould index (physics/mould-index.ts). Surfaces count as the "sensitive" class whatever the wall is made
// of, since paint, wood trim, cardboard and furniture backs stand everywhere. The year is run twice on end from a
// clean start, so that a damp winter is not cut in two at new year.

import type { ZoneYear } from '../network/year.ts';
import { saturationPressureHeld } from '../physics/moist-air.ts';
import { cleanSurface, limitOnClass, MOULD_CLASSES, mouldStepUnder } from '../physics/mould-index.ts';
import { HOURS } from '../weather/typical-year.ts';

/** The class every surface is judged by. */
const SURFACE_CLASS = MOULD_CLASSES[1];

export interface MouldYear {
  /** highest index of the two years, 0…6 */
  readonly max: number;
  /** index by hour of the second year */
  readonly index: Float64Array;
  /** relative humidity at the surface, 0…1 (1 = dew) */
  readonly humidity: Float64Array;
}

/** Arrays by hour for a judgement to write into. */
export interface MouldBuffers {
  readonly index: Float64Array;
  readonly humidity: Float64Array;
  /** index that the hour lets nothing pass, −1 when it favours no growth */
  readonly limits: Float64Array;
}

/** Room for one judgement after another: each writes over the last. */
export function mouldBuffers(): MouldBuffers {
  const column = () => new Float64Array(HOURS);
  return { index: column(), humidity: column(), limits: column() };
}

/**
 * Mould index of a surface.
 *
 * @param surfaceC temperature of the surface by hour [°C], 8760 entries
 * @param vapourPa vapour pressure of the zone's air by hour [Pa], 8760 entries
 * @param buffers what to write into; its own unless given
 * @returns index and surface humidity by hour
 */
export function mouldOfSurface(
  surfaceC: Float64Array,
  vapourPa: Float64Array,
  buffers: MouldBuffers = mouldBuffers(),
): MouldYear {
  const { index, humidity, limits } = buffers;
  for (let hour = 0; hour < HOURS; hour++) {
    const surface = surfaceC[hour]!;
    const damp = Math.min(vapourPa[hour]! / saturationPressureHeld(surface), 1);
    humidity[hour] = damp;
    // What an hour lets grow is the same in both years.
    limits[hour] = limitOnClass(surface, damp, SURFACE_CLASS);
  }
  const state = cleanSurface();
  const stepIn = (hour: number) =>
    mouldStepUnder(limits[hour]!, state, surfaceC[hour]!, humidity[hour]!, 1, SURFACE_CLASS);
  let max = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    index[hour] = stepIn(hour);
    max = Math.max(max, index[hour]!);
  }
  // The second year, until it goes on as the first did: as clean, or in the same growth.
  for (let hour = 0; hour < HOURS && state.index > 0; hour++) {
    const now = stepIn(hour);
    if (now === index[hour] && (now === 0 || state.unfavourableHours === 0)) break;
    index[hour] = now;
    max = Math.max(max, now);
  }
  return { max, index, humidity };
}

/** Vapour pressure of a zone's air by hour [Pa]. */
export function vapourOf(zone: ZoneYear): Float64Array {
  const vapour = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    vapour[hour] = zone.relativeHumidity[hour]! * saturationPressureHeld(zone.airC[hour]!);
  }
  return vapour;
}
