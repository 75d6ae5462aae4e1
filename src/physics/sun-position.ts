// Where the sun stands: instant and place in, TRUE elevation and azimuth out, as angles or as a unit vector.
// Source: Meeus, Astronomical Algorithms, chapters 12, 13, 22 and 25 at low accuracy; the seconds by which the clock of the
// heavens runs ahead of ours by Espenak and Meeus. Azimuth: degrees clockwise from true north.
import { asin, atan2, cos, sin } from './elementary.ts';
import { requireRange } from './require-range.ts';

const DEG = Math.PI / 180;
const DAY_MS = 86_400_000;
/** 2000-01-01T12:00Z, from which days are counted [ms since 1970]. */
const J2000_MS = 946_728_000_000;
const CENTURY_DAYS = 36_525;

export interface SunPosition {
  /** true (unrefracted) elevation of the sun's centre [°], −90…90 */
  readonly elevationDeg: number;
  /** [° clockwise from true north], 0…360 */
  readonly azimuthDeg: number;
}

/** Unit vector; x east, y north, z up, all dimensionless. */
export interface SkyVector {
  readonly east: number;
  readonly north: number;
  readonly up: number;
}

/**
 * True position of the sun.
 *
 * @param instantMs milliseconds since 1970-01-01T00:00Z; years 1900…2150
 * @param latitudeDeg north positive [°]; −90…90
 * @param longitudeDeg east positive [°]; −180…180
 * @returns true elevation [°] and azimuth [° clockwise from north]
 * Error: direction within 0.012° of the NREL solar position algorithm, by day and night
 *   (tests/published/sun-position.test.ts). Within a degree or two of the zenith the azimuth alone is worse.
 */
export function sunPosition(instantMs: number, latitudeDeg: number, longitudeDeg: number): SunPosition {
  requireRange('latitudeDeg', latitudeDeg, -90, 90, '°');
  requireRange('longitudeDeg', longitudeDeg, -180, 180, '°');
  requireRange('instantMs', instantMs, -2_208_988_800_000, 5_680_281_600_000, 'ms');
  const days = (instantMs - J2000_MS) / DAY_MS;
  const { sinDeclination, cosDeclination, rightAscension } = sunAmongStars(days + clockLead(days) / 86_400);
  // Meeus 12.4, less what a century bends; then 13.5 and 13.6, with the azimuth from north.
  const sidereal = (280.460_618_37 + 360.985_647_366_29 * days + longitudeDeg) * DEG;
  const hourAngle = sidereal - rightAscension;
  const [sinLatitude, cosLatitude] = [sin(latitudeDeg * DEG), cos(latitudeDeg * DEG)];
  const [sinHour, cosHour] = [sin(hourAngle), cos(hourAngle)];
  const up = sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour;
  const azimuth = atan2(
    -sinHour * cosDeclination,
    sinDeclination * cosLatitude - cosDeclination * sinLatitude * cosHour,
  );
  return {
    elevationDeg: asin(Math.min(1, Math.max(-1, up))) / DEG,
    azimuthDeg: (azimuth < 0 ? azimuth + 2 * Math.PI : azimuth) / DEG,
  };
}

/** Where the sun stands among the stars, so many days after J2000 by dynamical time; Meeus 25.2–25.8, as it is seen. */
function sunAmongStars(days: number) {
  const t = days / CENTURY_DAYS;
  const meanLongitude = (280.466_46 + t * (36_000.769_83 + t * 0.000_303_2)) * DEG;
  const anomaly = (357.529_11 + t * (35_999.050_29 - t * 0.000_153_7)) * DEG;
  const centre =
    (1.914_602 - t * (0.004_817 + t * 0.000_014)) * sin(anomaly) +
    (0.019_993 - 0.000_101 * t) * sin(2 * anomaly) +
    0.000_289 * sin(3 * anomaly);
  const node = (125.04 - 1934.136 * t) * DEG;
  const longitude = meanLongitude + (centre - 0.005_69 - 0.004_78 * sin(node)) * DEG;
  const obliquity =
    (23.439_291 - t * (0.013_004_2 + t * (0.000_000_16 - t * 0.000_000_504)) + 0.002_56 * cos(node)) * DEG;
  const sinDeclination = sin(obliquity) * sin(longitude);
  return {
    sinDeclination,
    cosDeclination: Math.sqrt((1 - sinDeclination) * (1 + sinDeclination)),
    rightAscension: atan2(cos(obliquity) * sin(longitude), cos(longitude)),
  };
}

/**
 * Seconds by which dynamical time leads universal time; they move the sun by less than a thousandth of a degree.
 * Source: Espenak and Meeus, polynomials for NASA's eclipse canon, 1900…2150.
 */
function clockLead(days: number): number {
  const year = 2000 + days / 365.2425;
  const { since, terms } = CLOCK_LEAD.find(({ until }) => year < until)!;
  const t = year - since;
  return terms.reduceRight((sum, term) => sum * t + term, 0);
}

const CLOCK_LEAD = [
  { until: 1920, since: 1900, terms: [-2.79, 1.494_119, -0.059_893_9, 0.006_196_6, -0.000_197] },
  { until: 1941, since: 1920, terms: [21.2, 0.844_93, -0.0761, 0.002_093_6] },
  { until: 1961, since: 1950, terms: [29.07, 0.407, -1 / 233, 1 / 2547] },
  { until: 1986, since: 1975, terms: [45.45, 1.067, -1 / 260, -1 / 718] },
  {
    until: 2005,
    since: 2000,
    terms: [63.86, 0.3345, -0.060_374, 0.001_727_5, 0.000_651_814, 0.000_023_735_99],
  },
  { until: 2050, since: 2000, terms: [62.92, 0.322_17, 0.005_589] },
  // −20 + 32 u² − 0.5628 (2150 − year), u in centuries since 1820.
  { until: Number.POSITIVE_INFINITY, since: 1820, terms: [-20 - 0.5628 * 330, 0.5628, 0.0032] },
] as const;

/**
 * Direction as a unit vector.
 *
 * @param elevationDeg [°]; −90…90
 * @param azimuthDeg [° clockwise from north]; any
 * @returns east, north and up components
 */
export function sunVector(elevationDeg: number, azimuthDeg: number): SkyVector {
  const horizontal = cos(elevationDeg * DEG);
  return {
    east: horizontal * sin(azimuthDeg * DEG),
    north: horizontal * cos(azimuthDeg * DEG),
    up: sin(elevationDeg * DEG),
  };
}
