// What overhang and fins leave of the sun on a pane: the share of the beam hour by hour, and the constant shares
// of sky and ground light. Remembered per climate, since the same shade comes back in run after run.

import type { Pane } from '../../model/model.ts';
import { sunlitFraction, type WindowShading } from '../../physics/overhang-shadow.ts';
import { keptLight } from '../../physics/shade-view.ts';
import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { HOURS } from '../../weather/typical-year.ts';

export interface ShadeFactors {
  /** share of beam and circumsolar light that reaches the glass, by hour, 0…1 */
  readonly beam: Float64Array;
  readonly sky: number;
  readonly ground: number;
}

const UNSHADED: ShadeFactors = { beam: new Float64Array(HOURS).fill(1), sky: 1, ground: 1 };
const MOST_REMEMBERED = 48;
const LEAST_SIZE_M = 0.01;
const remembered = new WeakMap<PreparedClimate, Map<string, ShadeFactors>>();

/** Shade of a pane in a climate. */
export function shadeOf(pane: Pane, climate: PreparedClimate): ShadeFactors {
  const { shading } = pane;
  if (shading === null || (!shading.overhang && !shading.fins)) return UNSHADED;
  const { overhang, fins } = shading;
  // A strip lower than a finger's width is shaded as one of that width.
  const heightM = Math.max(LEAST_SIZE_M, shading.heightM);
  const widthM = Math.max(LEAST_SIZE_M, shading.widthM);
  const window: WindowShading = { widthM, heightM, ...(overhang && { overhang }), ...(fins && { fins }) };
  const key = JSON.stringify([
    widthM,
    heightM,
    overhang,
    fins,
    pane.tiltDeg,
    pane.azimuthDeg,
    overhang?.extendM === Infinity,
  ]);
  const shades = remembered.get(climate) ?? new Map<string, ShadeFactors>();
  remembered.set(climate, shades);
  const known = shades.get(key);
  if (known) return known;
  if (shades.size >= MOST_REMEMBERED) shades.delete(shades.keys().next().value!);
  const beam = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    if (climate.cosZenith[hour]! <= 0) continue;
    const elevation = climate.sunElevationDeg[hour]!;
    beam[hour] = sunlitFraction(
      window,
      pane.tiltDeg,
      pane.azimuthDeg,
      elevation,
      climate.sunAzimuthDeg[hour]!,
    );
  }
  const made = { beam, ...keptLight(window, pane.tiltDeg) };
  shades.set(key, made);
  return made;
}
