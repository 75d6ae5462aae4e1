// Global, beam and diffuse radiation where a table has only one or two of them. The two that are there are kept as
// they are; the third follows from global = beam · cos z + diffuse, and the split of a lone global from Erbs 1982.
import { splitGlobal } from '../../physics/diffuse-split.ts';
import { extraterrestrialNormal } from '../../physics/extraterrestrial.ts';
import { sunlitMinute } from '../../physics/sunlit-hour.ts';
import { HOURS, instantOfHour, type TypicalYear } from '../typical-year.ts';
import { cosZenithAt } from './radiation-timing.ts';

export interface PartlyKnown {
  readonly global: Float64Array | null;
  readonly beam: Float64Array | null;
  readonly diffuse: Float64Array | null;
}
export interface Parts {
  readonly globalHorizontal: Float64Array;
  readonly beamNormal: Float64Array;
  readonly diffuseHorizontal: Float64Array;
  readonly note: string | null;
}

/** Below this cosine the beam is not told from the diffuse light (about 3°, as in the split itself). */
const LOWEST_COSINE = 0.052;

/**
 * Complete the three parts. Holes by night are zeros; by day they stay NaN for whoever fills holes.
 *
 * @returns null when neither global nor both of the others are there
 */
export function completeComponents(
  known: PartlyKnown,
  year: Pick<TypicalYear, 'site' | 'monthYears' | 'sunMinute'>,
): Parts | null {
  const { global, beam, diffuse } = known;
  if (global === null && (beam === null || diffuse === null)) return null;
  const globalHorizontal = new Float64Array(HOURS);
  const beamNormal = new Float64Array(HOURS);
  const diffuseHorizontal = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const cosZenith = cosineOf(year, hour);
    const read = (column: Float64Array): number => {
      const value = column[hour]!;
      return Number.isNaN(value) && cosZenith === 0 ? 0 : value;
    };
    const b = beam === null ? null : read(beam);
    const d = diffuse === null ? null : read(diffuse);
    const g = global === null ? b! * cosZenith + d! : read(global);
    globalHorizontal[hour] = g;
    if (b !== null && d !== null) {
      beamNormal[hour] = b;
      diffuseHorizontal[hour] = d;
    } else if (d !== null) {
      beamNormal[hour] = beamFrom(g - d, cosZenith, hour);
      diffuseHorizontal[hour] = d;
    } else if (b !== null) {
      beamNormal[hour] = b;
      diffuseHorizontal[hour] = Number.isNaN(g - b) ? Number.NaN : Math.max(g - b * cosZenith, 0);
    } else {
      const day = Math.floor(hour / 24) + 1;
      const split =
        g >= 0 ? splitGlobal(g, cosZenith, extraterrestrialNormal(day)) : { beamNormal: g, diffuse: g };
      beamNormal[hour] = split.beamNormal;
      diffuseHorizontal[hour] = split.diffuse;
    }
  }
  return { globalHorizontal, beamNormal, diffuseHorizontal, note: noteOf(known) };
}

function cosineOf(year: Pick<TypicalYear, 'site' | 'monthYears' | 'sunMinute'>, hour: number): number {
  const { latitudeDeg, longitudeDeg } = year.site;
  const minute =
    year.sunMinute === 'mean'
      ? sunlitMinute(instantOfHour(year, hour, 0), latitudeDeg, longitudeDeg)
      : year.sunMinute;
  return minute === null ? 0 : cosZenithAt(year, hour, minute);
}

/** No stronger than above the air; NaN stays NaN. */
function beamFrom(horizontal: number, cosZenith: number, hour: number): number {
  if (Number.isNaN(horizontal)) return Number.NaN;
  if (cosZenith < LOWEST_COSINE || horizontal <= 0) return 0;
  return Math.min(horizontal / cosZenith, extraterrestrialNormal(Math.floor(hour / 24) + 1));
}

function noteOf({ global, beam, diffuse }: PartlyKnown): string | null {
  if (global === null) return 'The table has no global radiation; it was added up from beam and diffuse.';
  if (beam === null && diffuse === null) {
    return 'The table has only global radiation; beam and diffuse were split by the average curve of Erbs 1982, so single hours may be off by 100 W/m² and more.';
  }
  if (beam === null) return 'The table has no beam radiation; it was computed from global and diffuse.';
  return diffuse === null
    ? 'The table has no diffuse radiation; it was computed from global and beam.'
    : null;
}
