// The ten walls of wall-response.json, whose 24 h response is known exactly (ISO 13786), as elements of ours.
// Source: wall-response.json (computed, checked two ways).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Element, Layer, ZoneFace } from '../../src/model/model.ts';

/** Below this the node table of the reference makes no promise for a third of the depth (earth berm, slab). */
export const LEAST_DECREMENT = 0.03;

export interface Periodic {
  readonly name: string;
  readonly Rsi: number;
  readonly Rse: number;
  readonly layers_inside_to_outside: {
    readonly type: string;
    readonly material: string;
    readonly d: number;
    readonly lambda: number;
    readonly rho: number;
    readonly c: number;
    readonly R?: number;
  }[];
  readonly U: number;
  readonly admittance_Y11: { readonly modulus: number };
  readonly decrement_factor: number;
  readonly time_shift_unwrapped_h: number;
}
export const periodicWalls = JSON.parse(
  readFileSync(join(import.meta.dirname, '../data/wall-response.json'), 'utf8'),
).periodic_24h as Periodic[];

const FACE: ZoneFace = {
  kind: 'zone',
  zone: 'room',
  absorptance: 0.6,
  emissivity: 0.9,
  film: { kind: 'computed' },
  lit: 'none',
  faceTiltDeg: 90,
};

/** One square metre of it between outdoors and a room. */
export function elementOf(wall: Periodic): Element {
  const layers: Layer[] = wall.layers_inside_to_outside
    .map((layer) =>
      layer.type !== 'resistance'
        ? {
            name: layer.material,
            thicknessM: layer.d,
            conductivity: layer.lambda ?? 0.6,
            density: layer.rho,
            specificHeat: layer.c,
            mixed: layer.type === 'mixed',
          }
        : {
            name: layer.material ?? 'cavity',
            thicknessM: 0.02,
            conductivity: 0.02 / layer.R!,
            density: 0,
            specificHeat: 0,
          },
    )
    .reverse();
  return {
    id: wall.name,
    areaM2: 1,
    layers,
    a: {
      kind: 'outdoors',
      absorptance: 0,
      emissivity: 0,
      tiltDeg: 90,
      azimuthDeg: 0,
      film: { kind: 'fixed', convection: 25, radiation: 0 },
      exposed: false,
    },
    b: FACE,
  };
}
