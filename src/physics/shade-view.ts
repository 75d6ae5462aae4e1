// How much scattered light a window under an overhang and between fins still gets: geometry in; kept share of the
// light of the even sky and of the light from the ground out. Averaged over the glass; the shades count as black.
// A long overhang alone has a closed form (crossed strings, Hottel). Everything else is summed once over rays from
// the glass; error below 0.003 against the closed form (tests/physics/shade-view.test.ts).

import { cos, power, sin, square } from './elementary.ts';
import type { WindowShading } from './overhang-shadow.ts';
import { requireRange } from './require-range.ts';

const DEG = Math.PI / 180;

/** Rays of one sum; about 5 ms. */
const RAYS = 40_000;

/**
 * Steps of an additive sequence that fills the four dimensions (place on the glass, direction) evenly: powers of 1/g,
 * g⁵ = g + 1 (Roberts 2018). Deterministic: the same window always keeps the same light.
 */
const STEPS = [1, 2, 3, 4].map((steps) => power(1.1673039782614187, -steps));

export interface KeptLight {
  /** share of the unshaded sky light, 0…1 */
  readonly sky: number;
  /** share of the unshaded light from level ground, 0…1 */
  readonly ground: number;
}

/**
 * Share of the even sky's light a window keeps under an overhang that runs on past both sides.
 *
 *   1 − F/((1 + cos β)/2), F = (|head to lip| + H − |sill to lip|)/(2H)
 *
 * @param heightM window height H along the slope [m]; 0.01…100
 * @param tiltDeg β [°]; 0…90
 * @param depthM overhang, level from the glass plane [m]; 0…100
 * @param gapM from head to overhang along the slope [m]; 0…100
 * @returns 0…1
 * Source: Hottel's crossed strings, any radiation text.
 */
export function overhangSkyView(heightM: number, tiltDeg: number, depthM: number, gapM: number): number {
  requireRange('heightM', heightM, 0.01, 100, 'm');
  requireRange('tiltDeg', tiltDeg, 0, 90, '°');
  requireRange('depthM', depthM, 0, 100, 'm');
  requireRange('gapM', gapM, 0, 100, 'm');
  const [sine, cosine] = [sin(tiltDeg * DEG), cos(tiltDeg * DEG)];
  // From a point of the glass plane, this far down the slope from where the overhang springs, to its lip.
  const toLip = (down: number) => Math.sqrt(square(depthM - down * cosine) + square(down * sine));
  const factor = (toLip(gapM) + heightM - toLip(gapM + heightM)) / (2 * heightM);
  return Math.max(1 - factor / ((1 + cosine) / 2), 0);
}

/**
 * Shares of sky and ground light kept.
 *
 * @param shading overhang and fins [m]
 * @param tiltDeg [°]; 0…90
 * @returns 1 and 1 without shades; the ground share of flat glass, which sees none, is 1
 */
export function keptLight(shading: WindowShading, tiltDeg: number): KeptLight {
  requireRange('tiltDeg', tiltDeg, 0, 90, '°');
  requireRange('widthM', shading.widthM, 0.01, 1000, 'm');
  requireRange('heightM', shading.heightM, 0.01, 100, 'm');
  const { overhang } = shading;
  const hasOverhang = overhang !== undefined && overhang.depthM > 0;
  const hasFins = shading.fins !== undefined && shading.fins.depthM > 0;
  if (!hasFins && !hasOverhang) return { sky: 1, ground: 1 };
  if (!hasFins && hasOverhang && !Number.isFinite(overhang.extendM)) {
    return { sky: overhangSkyView(shading.heightM, tiltDeg, overhang.depthM, overhang.gapM), ground: 1 };
  }
  return summed(shading, tiltDeg);
}

/** Both shares by rays from places all over the glass into directions that carry equal flux. */
function summed(shading: WindowShading, tiltDeg: number): KeptLight {
  const [sine, cosine] = [sin(tiltDeg * DEG), cos(tiltDeg * DEG)];
  const all = { sky: 0, ground: 0 };
  const kept = { sky: 0, ground: 0 };
  for (let i = 0; i < RAYS; i++) {
    const [across, upward, flux, turn] = [draw(i, 0), draw(i, 1), draw(i, 2), 2 * Math.PI * draw(i, 3)];
    const radius = Math.sqrt(flux);
    const ray = { x: radius * sin(turn), y: radius * cos(turn), n: Math.sqrt(1 - flux) };
    const part = ray.y * sine + ray.n * cosine > 0 ? 'sky' : 'ground';
    const [x, y] = [across * shading.widthM, upward * shading.heightM];
    all[part]++;
    if (!meetsOverhang(shading, x, y, ray, sine, cosine) && !meetsFin(shading, x, y, ray)) kept[part]++;
  }
  return { sky: kept.sky / all.sky, ground: all.ground === 0 ? 1 : kept.ground / all.ground };
}

/** The i-th number of one dimension of the sequence, 0…1. */
function draw(i: number, dimension: number): number {
  return (0.5 + i * STEPS[dimension]!) % 1;
}

/** Direction in the plane of the glass: x level, y up the slope, n outward. */
interface Ray {
  readonly x: number;
  readonly y: number;
  readonly n: number;
}

function meetsOverhang(
  shading: WindowShading,
  x: number,
  y: number,
  ray: Ray,
  sine: number,
  cosine: number,
): boolean {
  const { overhang } = shading;
  const rise = ray.y * sine + ray.n * cosine;
  if (overhang === undefined || rise <= 0) return false;
  const down = shading.heightM + overhang.gapM - y;
  const along = (down * sine) / rise;
  const out = down * cosine + along * (ray.n * sine - ray.y * cosine);
  const across = x + along * ray.x;
  const { depthM, extendM } = overhang;
  return out >= 0 && out <= depthM && across >= -extendM && across <= shading.widthM + extendM;
}

function meetsFin(shading: WindowShading, x: number, y: number, ray: Ray): boolean {
  const { fins, heightM, widthM } = shading;
  if (fins === undefined || ray.x === 0) return false;
  const along = ray.x > 0 ? (widthM + fins.gapM - x) / ray.x : (-fins.gapM - x) / ray.x;
  const height = y + along * ray.y;
  const top = heightM + (fins.aboveM ?? shading.overhang?.gapM ?? 0);
  return along * ray.n <= fins.depthM && height >= -(fins.belowM ?? 0) && height <= top;
}
