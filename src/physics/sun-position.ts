// Where the sun stands: instant and place in, TRUE elevation and azimuth out, as angles or as a unit vector.
// Position by the suncalc library (Meeus, Astronomical Algorithms, chapters 12 and 25). Its altitude is raised
// by refraction; everything here works with true angles, as the irradiance formulas do, so that rise is taken
// off again by inverting the library's own formula. Azimuth: degrees clockwise from true north.
// The library uses the engine's own sines, whose last digits differ from one JavaScript engine to the next; what it says is
// put on a grid far coarser than they and far finer than the sun is known, so that all engines have the same sun.
import { getPosition } from 'suncalc';
import { cos, sin, tan } from './elementary.ts';
import { requireRange } from './require-range.ts';

const DEG = Math.PI / 180;
/** Steps of the grid in a degree: the sun moves through one in 15 ms. */
const STEPS_PER_DEG = 16_384;

/** Refraction of the library at and below the horizon [rad], its formula at 0. */
const HORIZON_REFRACTION = refraction(0);

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
  const { altitude, azimuth } = getPosition(new Date(instantMs), latitudeDeg, longitudeDeg);
  return { elevationDeg: trueElevation(onGrid(altitude) * DEG) / DEG, azimuthDeg: onGrid(azimuth) };
}

function onGrid(angleDeg: number): number {
  return Math.round(angleDeg * STEPS_PER_DEG) / STEPS_PER_DEG;
}

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

/** Meeus 16.4 as the library has it: apparent minus true elevation [rad] at a true elevation ≥ 0 [rad]. */
function refraction(elevation: number): number {
  return 0.0002967 / tan(elevation + 0.00312536 / (elevation + 0.08901179));
}

/** True elevation [rad] from the library's apparent one [rad]; twelve passes leave less than 1e-6°. */
function trueElevation(apparent: number): number {
  if (apparent <= HORIZON_REFRACTION) return apparent - HORIZON_REFRACTION;
  let elevation = apparent;
  for (let pass = 0; pass < 12; pass++) elevation = apparent - refraction(Math.max(elevation, 0));
  return elevation;
}
