// Light on a plane through the year: a prepared climate and the plane's direction in, hourly beam and diffuse in
// its parts out [W/m² on the plane]. Planes seen once are remembered beside the climate they belong to.
// Source: Perez 1990 through src/physics/sky-on-plane.ts; ground reflection from level ground.

import { cosIncidence, planeNormal } from '../../physics/incidence.ts';
import { requireRange } from '../../physics/require-range.ts';
import { groundOnPlane, skyFromCoefficients } from '../../physics/sky-on-plane.ts';
import { HOURS } from '../typical-year.ts';
import type { PreparedClimate } from './prepared-climate.ts';

/** Hourly light on one plane; 8760 entries each, all but cosIncidence in W/m² of the plane. */
export interface PlaneIrradiance {
  /** cosine of the angle of incidence; 0 in hours without sun, negative with the sun behind the plane */
  readonly cosIncidence: Float64Array;
  readonly beam: Float64Array;
  /** sky light from beside the sun, shaded as the beam is */
  readonly circumsolar: Float64Array;
  /** sky light from the whole dome */
  readonly isotropic: Float64Array;
  /** sky light from the band along the horizon; may be negative */
  readonly horizon: Float64Array;
  readonly ground: Float64Array;
  /** all of it, never negative */
  readonly total: Float64Array;
}

/** Planes remembered per climate; a design has far fewer, a dragged slider passes through many. */
const MOST_PLANES = 64;

const remembered = new WeakMap<PreparedClimate, Map<string, PlaneIrradiance>>();

/**
 * Light on a plane.
 *
 * @param tiltDeg 0 flat facing up, 90 upright, 180 facing down
 * @param azimuthDeg the way it faces [° clockwise
 *   from north], any
 */
export function planeIrradiance(
  climate: PreparedClimate,
  tiltDeg: number,
  azimuthDeg: number,
): PlaneIrradiance {
  requireRange('tiltDeg', tiltDeg, 0, 180, '°');
  requireRange('azimuthDeg', azimuthDeg, -720, 720, '°');
  const planes = remembered.get(climate) ?? new Map<string, PlaneIrradiance>();
  remembered.set(climate, planes);
  const facing = tiltDeg === 0 || tiltDeg === 180 ? 0 : ((azimuthDeg % 360) + 360) % 360;
  const key = `${tiltDeg},${facing}`;
  const known = planes.get(key);
  if (known !== undefined) return known;
  if (planes.size >= MOST_PLANES) planes.delete(planes.keys().next().value!);
  const fresh = lightOn(climate, tiltDeg, facing);
  planes.set(key, fresh);
  return fresh;
}

/** Sum of all parts over some hours [kWh/m²]. */
export function planeTotal(plane: PlaneIrradiance, from = 0, to = HOURS): number {
  let sum = 0;
  for (let hour = from; hour < to; hour++) {
    sum += plane.beam[hour]! + plane.circumsolar[hour]! + plane.isotropic[hour]!;
    sum += plane.horizon[hour]! + plane.ground[hour]!;
  }
  return sum / 1000;
}

function lightOn(climate: PreparedClimate, tiltDeg: number, azimuthDeg: number): PlaneIrradiance {
  const cosines = new Float64Array(HOURS);
  const beam = new Float64Array(HOURS);
  const circumsolar = new Float64Array(HOURS);
  const isotropic = new Float64Array(HOURS);
  const horizon = new Float64Array(HOURS);
  const ground = new Float64Array(HOURS);
  const total = new Float64Array(HOURS);
  const normal = planeNormal(tiltDeg, azimuthDeg);
  const { sunEast, sunNorth, sunUp, f1, f2, beamNormal, diffuseHorizontal, globalHorizontal, albedo } =
    climate;
  for (let hour = 0; hour < HOURS; hour++) {
    const cosZenith = sunUp[hour]!;
    if (cosZenith <= 0) continue;
    const cosInc = cosIncidence(normal, sunEast[hour]!, sunNorth[hour]!, cosZenith);
    cosines[hour] = cosInc;
    beam[hour] = beamNormal[hour]! * Math.max(cosInc, 0);
    const sky = skyFromCoefficients(
      diffuseHorizontal[hour]!,
      f1[hour]!,
      f2[hour]!,
      cosInc,
      cosZenith,
      tiltDeg,
    );
    circumsolar[hour] = sky.circumsolar;
    isotropic[hour] = sky.isotropic;
    horizon[hour] = sky.horizon;
    ground[hour] = groundOnPlane(globalHorizontal[hour]!, albedo[hour]!, tiltDeg);
    total[hour] = Math.max(0, beam[hour]! + sky.circumsolar + sky.isotropic + sky.horizon + ground[hour]!);
  }
  return { cosIncidence: cosines, beam, circumsolar, isotropic, horizon, ground, total };
}
