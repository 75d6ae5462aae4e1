// The sun at solar noon on the three days that matter, as the section sees it. In: latitude and how far the front
// is turned from the equator. Out: elevation, and the angle in the plane of the section (the profile angle).
// Source: noon elevation = 90° − |latitude − declination|; tan(profile) = tan(elevation)/cos(turn).

const DEG = Math.PI / 180;

/** Obliquity of the ecliptic, about 2025 [°] (Meeus, Astronomical Algorithms, ch. 22). */
const OBLIQUITY_DEG = 23.44;

export interface NoonSun {
  readonly id: 'high' | 'equal' | 'low';
  /** as it is said here: the June solstice is summer only in the north */
  readonly label: string;
  /** elevation above the equator-side horizon [°]; above 90 the sun stands on the pole side */
  readonly elevationDeg: number;
  /** in the section's plane [°], 0…180 */
  readonly profileDeg: number;
}

/**
 * Noon sun at both solstices and the equinox, highest first.
 *
 * @param latitudeDeg north positive [°]; −90…90
 * @param turnDeg the front turned from the equator [°]; −60…60
 * @returns three suns
 */
export function noonSuns(latitudeDeg: number, turnDeg: number): readonly NoonSun[] {
  const north = latitudeDeg >= 0;
  const days = [
    { id: 'high', label: north ? '21 June' : '21 December', declination: OBLIQUITY_DEG },
    { id: 'equal', label: 'equinox', declination: 0 },
    { id: 'low', label: north ? '21 December' : '21 June', declination: -OBLIQUITY_DEG },
  ] as const;
  return days.map(({ id, label, declination }) => {
    const elevationDeg = 90 - Math.abs(latitudeDeg) + declination;
    return { id, label, elevationDeg, profileDeg: profileAngleDeg(elevationDeg, turnDeg) };
  });
}

/**
 * Elevation seen in the section's plane.
 *
 * @param elevationDeg true elevation of the sun [°]
 * @param offDeg horizontal angle between the sun and the direction the front faces [°]
 * @returns angle above the horizon on the sunny side [°]; above 90 the sun stands behind the front
 */
export function profileAngleDeg(elevationDeg: number, offDeg: number): number {
  const e = elevationDeg * DEG;
  const angle = Math.atan2(Math.sin(e), Math.cos(e) * Math.cos(offDeg * DEG)) / DEG;
  return angle;
}
