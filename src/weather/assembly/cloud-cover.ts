// Sky cover for files that do not observe it: from the measured long-wave radiation of the sky where there is
// one, else from the global radiation by day, carried over the night along a straight line.

import { STEFAN_BOLTZMANN, ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { power } from '../../physics/elementary.ts';
import { CLOUD_EFFECT, clearSkyEmissivity } from '../../physics/sky-temperature.ts';
import { HOURS, type TypicalYear } from '../typical-year.ts';
import { cosZenithAt } from './radiation-timing.ts';

/** Below this sine of the sun's elevation the daylight says too little about clouds (about 10°). */
const LOWEST_SINE = 0.17;

/**
 * Sky cover that makes the clear-sky emissivity match the measured long-wave radiation.
 *
 *   n = (ε − ε0) / (1 − ε0) / CLOUD_EFFECT, ε = L / σT⁴, ε0 by Berdahl and Martin 1984, held to 0…1
 *
 * The sky model and this are inverses, so the sky temperature of such a year is the measured one.
 */
export function coverFromLongwave(
  skyLongwave: Float64Array,
  dryBulbC: Float64Array,
  dewPointC: Float64Array,
  pressurePa: Float64Array,
): Float64Array {
  return new Float64Array(HOURS).map((_, hour) => {
    const dewC = Math.min(dewPointC[hour]!, dryBulbC[hour]!);
    const clear = clearSkyEmissivity(dewC, (hour % 24) + 0.5, pressurePa[hour]!);
    const seen = skyLongwave[hour]! / (STEFAN_BOLTZMANN * power(dryBulbC[hour]! + ZERO_CELSIUS_K, 4));
    const cover = (seen - clear) / (1 - clear) / CLOUD_EFFECT;
    return Number.isFinite(cover) ? Math.min(Math.max(cover, 0), 1) : Number.NaN;
  });
}

/**
 * Sky cover from the global radiation.
 *
 *   G/G0 = 1 − 0.75 n^3.4, G0 = 910 sin h − 30 W/m²
 *
 * Source: Kasten and Czeplak 1980, Solar Energy 24, 177–189 (Hamburg; n of 0…1); from memory, high confidence.
 * A low sun (under 10°) is not judged. Error: a few tenths in single hours; good for the sky's temperature only.
 */
export function coverFromGlobal(
  year: Pick<TypicalYear, 'site' | 'monthYears' | 'globalHorizontal' | 'sunMinute'>,
): Float64Array {
  const cover = new Float64Array(HOURS).fill(Number.NaN);
  const minute = year.sunMinute === 'mean' ? 30 : year.sunMinute;
  for (let hour = 0; hour < HOURS; hour++) {
    const global = year.globalHorizontal[hour]!;
    if (!(global > 0)) continue;
    const sine = cosZenithAt(year, hour, minute);
    if (sine < LOWEST_SINE) continue;
    const share = Math.min(Math.max(global / (910 * sine - 30), 0.25), 1);
    cover[hour] = power((1 - share) / 0.75, 1 / 3.4);
  }
  return carryOver(cover);
}

/** Fill every hole along a straight line around the ring of the year; a year of holes is half covered. */
function carryOver(cover: Float64Array): Float64Array {
  const known = Array.from(cover.keys()).filter((hour) => !Number.isNaN(cover[hour]!));
  if (known.length === 0) return cover.fill(0.5);
  for (const [i, hour] of known.entries()) {
    const next = known[i + 1] ?? known[0]! + HOURS;
    for (let at = hour + 1; at < next; at++) {
      const share = (at - hour) / (next - hour);
      cover[at % HOURS] = cover[hour]! + share * (cover[next % HOURS]! - cover[hour]!);
    }
  }
  return cover;
}
