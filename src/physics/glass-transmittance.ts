// What flat clear panes do with sunlight at an angle: index, extinction and thickness of each pane in; share let
// through, thrown back and kept in each pane out. Exact: Fresnel reflection at every face, Bouguer absorption along
// the refracted path, all inter-reflections within and between panes, each polarisation carried through the whole
// stack and averaged only at the end (averaging before costs 0.03 at 60° for two panes). Outer pane first.
// Source: Duffie and Beckman, Solar Engineering of Thermal Processes, chapter 5; ISO 9050.

import { cos, exp, sin, square } from './elementary.ts';
import { requireRange } from './require-range.ts';

const DEG = Math.PI / 180;

/** Intervals of Simpson's rule over 0…90° for diffuse light; error below 1e-7. */
const DIFFUSE_INTERVALS = 180;

/** Closer to 90° than this no light enters. */
const GRAZING_COSINE = 1e-9;

export interface ClearPane {
  /** refractive index, 1.01…3; 1.526 for window glass */
  readonly refractiveIndex: number;
  /** extinction coefficient [1/m]; 4 (low iron) to 32 (greenish) */
  readonly extinctionPerM: number;
  /** [m] */
  readonly thicknessM: number;
}

/** Shares of the incident light; transmittance + reflectance + all absorptances = 1. */
export interface GlassOptics {
  readonly transmittance: number;
  readonly reflectance: number;
  /** of each pane, outer first */
  readonly absorptance: readonly number[];
}

/**
 * Optical shares of a stack of panes for unpolarised light at one angle.
 *
 * @param panes outer first; 1…6
 * @param incidenceDeg angle from the normal [°]; 0…90
 * @returns shares of the incident light, 0…1
 * Error: below 1e-6 of an independent solution for 1–3 panes (tests/published/glass-transmittance.test.ts).
 */
export function glassAtAngle(panes: readonly ClearPane[], incidenceDeg: number): GlassOptics {
  requireRange('number of panes', panes.length, 1, 6, '');
  requireRange('incidenceDeg', incidenceDeg, 0, 90, '°');
  for (const pane of panes) {
    requireRange('refractiveIndex', pane.refractiveIndex, 1.01, 3, '');
    requireRange('extinctionPerM', pane.extinctionPerM, 0, 1000, '1/m');
    requireRange('thicknessM', pane.thicknessM, 0, 0.1, 'm');
  }
  const cosine = cos(incidenceDeg * DEG);
  // At 90° every face throws all light back and the sums over reflections turn into 0/0.
  if (cosine < GRAZING_COSINE) return { transmittance: 0, reflectance: 1, absorptance: panes.map(() => 0) };
  const across = stack(panes.map((pane) => paneOptics(pane, cosine, 'across')));
  const along = stack(panes.map((pane) => paneOptics(pane, cosine, 'along')));
  return {
    transmittance: (across.transmittance + along.transmittance) / 2,
    reflectance: (across.reflectance + along.reflectance) / 2,
    absorptance: across.absorptance.map((share, pane) => (share + along.absorptance[pane]!) / 2),
  };
}

/**
 * Optical shares for light that comes from the whole hemisphere alike.
 *
 *   x_diffuse = 2 ∫ x(θ) sin θ cos θ dθ, 0 to 90°
 *
 * @param panes outer first; 1…6
 * @returns shares of the incident light, 0…1
 */
export function glassDiffuse(panes: readonly ClearPane[]): GlassOptics {
  const step = 90 / DIFFUSE_INTERVALS;
  let transmittance = 0;
  let reflectance = 0;
  const absorptance = panes.map(() => 0);
  for (let i = 0; i <= DIFFUSE_INTERVALS; i++) {
    const angle = i * step;
    const simpson = i === 0 || i === DIFFUSE_INTERVALS ? 1 : i % 2 === 1 ? 4 : 2;
    const weight = (sin(2 * angle * DEG) * simpson * step * DEG) / 3;
    const at = glassAtAngle(panes, angle);
    transmittance += weight * at.transmittance;
    reflectance += weight * at.reflectance;
    for (const [pane, share] of at.absorptance.entries()) absorptance[pane]! += weight * share;
  }
  return { transmittance, reflectance, absorptance };
}

interface Pass {
  readonly transmittance: number;
  readonly reflectance: number;
}

/** One pane for light polarised across (s) or along (p) the plane of incidence, by the sum of its reflections. */
function paneOptics(pane: ClearPane, cosine: number, polarisation: 'across' | 'along'): Pass {
  const index = pane.refractiveIndex;
  const cosInside = Math.sqrt(1 - (1 - square(cosine)) / square(index));
  const amplitude =
    polarisation === 'across'
      ? (cosine - index * cosInside) / (cosine + index * cosInside)
      : (index * cosine - cosInside) / (index * cosine + cosInside);
  const face = square(amplitude);
  const path = exp((-pane.extinctionPerM * pane.thicknessM) / cosInside);
  const transmittance = (square(1 - face) * path) / (1 - square(face * path));
  return { transmittance, reflectance: face * (1 + path * transmittance) };
}

/** Panes one behind the other: reflectances from the back forward, then the light followed inward. */
function stack(panes: readonly Pass[]): GlassOptics {
  const behind = new Array<number>(panes.length + 1).fill(0);
  for (let i = panes.length - 1; i >= 0; i--) {
    const { transmittance, reflectance } = panes[i]!;
    behind[i] = reflectance + (square(transmittance) * behind[i + 1]!) / (1 - reflectance * behind[i + 1]!);
  }
  let arriving = 1;
  const absorptance = panes.map(({ transmittance, reflectance }, i) => {
    const leaving = (arriving * transmittance) / (1 - reflectance * behind[i + 1]!);
    const absorbed = (1 - transmittance - reflectance) * (arriving + leaving * behind[i + 1]!);
    arriving = leaving;
    return absorbed;
  });
  return { transmittance: arriving, reflectance: behind[0]!, absorptance };
}
