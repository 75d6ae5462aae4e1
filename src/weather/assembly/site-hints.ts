// Site facts a file does not carry: from what the person said, from coordinates in the file's name, and from the
// pressure for the elevation. Every guess is reported in a note.
import { elevationFromPressure } from '../../physics/altitude.ts';
import type { Fault, SiteHints } from '../read-result.ts';
import { numberOf } from '../text/text-lines.ts';

/** Coordinates such as 45.000_8.000 or 54.60452_-5.9286 in a file's name; a decimal point is required in both. */
export function coordinatesInName(fileName: string): { latitudeDeg: number; longitudeDeg: number } | null {
  const match = /(?:^|[^\d.-])(-?\d{1,2}\.\d+)[_, ](-?\d{1,3}\.\d+)(?!\.?\d)/.exec(fileName);
  if (match === null) return null;
  const latitudeDeg = numberOf(match[1]);
  const longitudeDeg = numberOf(match[2]);
  return Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180 ? { latitudeDeg, longitudeDeg } : null;
}

/** Latitude and longitude from the file, else the person, else the file's name; or the fault to show. */
export function placeOf(
  stated: { readonly latitudeDeg: number | null; readonly longitudeDeg: number | null },
  hints: SiteHints,
  notes: string[],
): { latitudeDeg: number; longitudeDeg: number } | Fault {
  const latitudeDeg = stated.latitudeDeg ?? hints.latitudeDeg ?? null;
  const longitudeDeg = stated.longitudeDeg ?? hints.longitudeDeg ?? null;
  if (latitudeDeg !== null && longitudeDeg !== null) {
    if (!(Math.abs(latitudeDeg) <= 90)) {
      return { line: null, column: 'latitude', value: String(latitudeDeg), expected: '−90 to 90 degrees' };
    }
    if (!(Math.abs(longitudeDeg) <= 180)) {
      return {
        line: null,
        column: 'longitude',
        value: String(longitudeDeg),
        expected: '−180 to 180 degrees',
      };
    }
    return { latitudeDeg, longitudeDeg };
  }
  const named = coordinatesInName(hints.fileName ?? '');
  if (named !== null) {
    notes.push(
      `The file does not say where it is; latitude ${named.latitudeDeg} and longitude ${named.longitudeDeg} were taken from its name.`,
    );
    return named;
  }
  const expected = 'the site: this file does not say where it is, so give latitude and longitude';
  return { line: null, column: 'latitude and longitude', value: '', expected };
}

/**
 * Elevation from the file, else the person, else the mean pressure, else sea level; whatever is guessed is told in a note.
 *
 * @param stated [m]; one outside −500…9000 counts as none
 * @param pressurePa [Pa]; readings outside 40 000…110 000 are left out
 * @returns [m]; of the pressure to the ten, and not below 0
 */
export function elevationOf(
  stated: number | null,
  hints: SiteHints,
  pressurePa: Float64Array | null,
  notes: string[],
): number {
  const known = stated ?? hints.elevationM ?? null;
  if (known !== null && known >= -500 && known <= 9000) return known;
  const readings = pressurePa?.filter((value) => value >= 40_000 && value <= 110_000) ?? new Float64Array(0);
  if (readings.length === 0) {
    notes.push('The elevation is not known; sea level is used.');
    return 0;
  }
  const mean = readings.reduce((sum, value) => sum + value, 0) / readings.length;
  const elevationM = Math.round(Math.max(elevationFromPressure(mean), 0) / 10) * 10;
  notes.push(
    `The elevation is not known; ${elevationM} m fits the mean pressure of ${Math.round(mean / 100)} hPa.`,
  );
  return elevationM;
}
