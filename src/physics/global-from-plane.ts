// Global radiation on the horizontal from what a meter on any plane read: the sky model of plane-on-sky run backwards. One
// unknown an hour, found by bisection: the global that, split by Erbs 1982 and laid on the plane by Perez 1990, gives the
// reading. Sources: diffuse-split.ts, sky-on-plane.ts.

import { splitGlobal } from './diffuse-split.ts';
import { acos } from './elementary.ts';
import { groundOnPlane, perezCoefficients, skyFromCoefficients } from './sky-on-plane.ts';

/** Where sun and plane stand in an hour. */
export interface PlaneHour {
  /** cosine of the sun's incidence on the plane */
  readonly cosIncidence: number;
  /** cosine of the sun's true zenith angle; > 0 */
  readonly cosZenith: number;
  /** [W/m²] */
  readonly extraNormal: number;
  /** of the plane [°] */
  readonly tiltDeg: number;
  /** of the ground, 0…1 */
  readonly albedo: number;
}

/** No hour is brighter on the horizontal than this share of what arrives above the air: cloud edges reach it. */
const BRIGHTEST = 1.1;
const HALVINGS = 40;

/** Light on the plane from a global on the horizontal [W/m²]. */
function onPlane(global: number, at: PlaneHour): number {
  const { cosIncidence, cosZenith, extraNormal, tiltDeg, albedo } = at;
  const { beamNormal, diffuse } = splitGlobal(global, cosZenith, extraNormal);
  const zenithDeg = (acos(Math.min(1, cosZenith)) * 180) / Math.PI;
  const { f1, f2 } = perezCoefficients(beamNormal, diffuse, extraNormal, zenithDeg);
  const sky = skyFromCoefficients(diffuse, f1, f2, cosIncidence, cosZenith, tiltDeg);
  return (
    beamNormal * Math.max(cosIncidence, 0) +
    sky.isotropic +
    sky.circumsolar +
    sky.horizon +
    groundOnPlane(global, albedo, tiltDeg)
  );
}

/**
 * Global on the horizontal that puts so much light on a plane.
 *
 * A plane that faces the sun tells it well (the scatter of the split, some 10 %). One turned away from the sun sees the
 * diffuse part alone, which rises and falls as a sky clears, so that two skies can look alike to it: the cloudier is
 * taken.
 *
 * @param reading on the plane [W/m²]; ≥ 0
 * @returns [W/m²], at most 1.1 of what arrives above the air
 */
export function globalFromPlane(reading: number, at: PlaneHour): number {
  if (reading <= 0 || at.cosZenith <= 0) return 0;
  const most = BRIGHTEST * at.extraNormal * at.cosZenith;
  const pieces = 24;
  let low = 0;
  let high = most;
  for (let i = 1; i <= pieces; i++) {
    high = (most * i) / pieces;
    if (onPlane(high, at) >= reading) break;
    if (i < pieces) low = high;
  }
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (onPlane(middle, at) < reading) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
