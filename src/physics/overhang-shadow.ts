// The part of a rectangular window the sun reaches under a horizontal overhang and between two side fins: geometry and
// the sun's place in, sunlit share out. Upright and leaning glass alike; exact: shadows are parallelograms, projected
// along the sun onto the glass and cut with its rectangle.
// In the plane of the glass: x level, to the right when looking the way the glass faces; y up the slope; n outward.
// The overhang springs level from a line in the glass plane; the fins stand square on the glass along its sides. The
// sun is a point here; walls beyond the given shades and the ground throw no shadow.

import { cos, sin } from './elementary.ts';

const DEG = Math.PI / 180;

export interface WindowShading {
  readonly widthM: number;
  /** along the slope */
  readonly heightM: number;
  /** depth out from the glass plane, level; gap between it and the head, along the slope; overlap past each side */
  readonly overhang?: { readonly depthM: number; readonly gapM: number; readonly extendM: number };
  /**
   * depth square to the glass; gap between fin and the window's side; reach past head and sill along the slope (absent:
   * up to the overhang, or the head without one; down to the sill)
   */
  readonly fins?: {
    readonly depthM: number;
    readonly gapM: number;
    readonly aboveM?: number;
    readonly belowM?: number;
  };
}

/** Keeps the points with c + a x + b y ≥ 0. */
interface HalfPlane {
  readonly c: number;
  readonly a: number;
  readonly b: number;
}

/**
 * Share of the window in the sun.
 *
 * Called for every daylight hour of every pane, so it does not check its input.
 *
 * @param shading lengths [m]; extendM may be Infinity
 * @param tiltDeg tilt of the glass [°]; 0 flat facing up, 90 upright
 * @param planeAzimuthDeg azimuth the glass faces [° clockwise from north]
 * @param elevationDeg sun's true elevation [°]
 * @param azimuthDeg sun's azimuth [° clockwise from north]
 * @returns 0…1; 0 with the sun below the horizon or behind the glass
 */
export function sunlitFraction(
  shading: WindowShading,
  tiltDeg: number,
  planeAzimuthDeg: number,
  elevationDeg: number,
  azimuthDeg: number,
): number {
  const up = sin(elevationDeg * DEG);
  if (up <= 0) return 0;
  const [sinTilt, cosTilt] = [sin(tiltDeg * DEG), cos(tiltDeg * DEG)];
  const turned = (azimuthDeg - planeAzimuthDeg) * DEG;
  const level = cos(elevationDeg * DEG);
  const toward = level * cos(turned);
  const normal = toward * sinTilt + up * cosTilt;
  if (normal <= 1e-9) return 0;
  const sidewaysSlope = (level * sin(turned)) / normal;
  const upwardSlope = (up * sinTilt - toward * cosTilt) / normal;

  const overhang = overhangShadow(shading, sinTilt, sidewaysSlope, up / normal);
  const fin = finShadow(shading, sidewaysSlope, upwardSlope);
  const { widthM, heightM } = shading;
  const window = [0, 0, widthM, 0, widthM, heightM, 0, heightM];
  let shaded = 0;
  const under = overhang && cut(window, overhang);
  if (under) shaded += area(under);
  const beside = fin && cut(window, fin);
  if (beside) shaded += area(beside);
  if (under && fin) shaded -= area(cut(under, fin));
  return Math.min(Math.max(1 - shaded / (widthM * heightM), 0), 1);
}

/** Shadow of the overhang on the glass plane, as half-planes; null when there is none. */
function overhangShadow(
  shading: WindowShading,
  sinTilt: number,
  sidewaysSlope: number,
  drop: number,
): readonly HalfPlane[] | null {
  const { overhang, widthM, heightM } = shading;
  if (overhang === undefined || overhang.depthM <= 0) return null;
  const springing = heightM + overhang.gapM;
  const fallen = overhang.depthM * drop;
  const band: HalfPlane[] = [
    { c: springing, a: 0, b: -1 },
    { c: fallen - springing, a: 0, b: 1 },
  ];
  if (!Number.isFinite(overhang.extendM)) return band;
  // The slanted edges: at y the shadow has moved sideways in proportion to its fall from the springing line.
  const drift = (-overhang.depthM * sinTilt * sidewaysSlope) / fallen;
  return [
    ...band,
    { c: overhang.extendM - drift * springing, a: 1, b: drift },
    { c: widthM + overhang.extendM + drift * springing, a: -1, b: -drift },
  ];
}

/** Shadow of the fin on the sun's side, as half-planes; the other fin's shadow falls away from the window. */
function finShadow(
  shading: WindowShading,
  sidewaysSlope: number,
  upwardSlope: number,
): readonly HalfPlane[] | null {
  const { fins, overhang, widthM, heightM } = shading;
  if (fins === undefined || fins.depthM <= 0 || sidewaysSlope === 0) return null;
  const isFromRight = sidewaysSlope > 0;
  const foot = isFromRight ? widthM + fins.gapM : -fins.gapM;
  const reach = fins.depthM * Math.abs(sidewaysSlope);
  const side = isFromRight ? -1 : 1;
  const top = heightM + (fins.aboveM ?? overhang?.gapM ?? 0);
  const bottom = -(fins.belowM ?? 0);
  // Going a metre away from the fin, its shadow has moved up the slope by this much.
  const climb = -upwardSlope / Math.abs(sidewaysSlope);
  const distance = { c: -side * foot, a: side };
  return [
    { ...distance, b: 0 },
    { c: reach + side * foot, a: -side, b: 0 },
    { c: top + climb * distance.c, a: climb * distance.a, b: -1 },
    { c: -bottom - climb * distance.c, a: -climb * distance.a, b: 1 },
  ];
}

/** A convex polygon [x0, y0, x1, y1, …] cut down to what lies in all half-planes. */
function cut(polygon: readonly number[], halfPlanes: readonly HalfPlane[]): readonly number[] {
  let current = polygon;
  for (const { c, a, b } of halfPlanes) {
    const kept: number[] = [];
    for (let i = 0; i < current.length; i += 2) {
      const j = (i + 2) % current.length;
      const [x, y, nextX, nextY] = [current[i]!, current[i + 1]!, current[j]!, current[j + 1]!];
      const here = c + a * x + b * y;
      const next = c + a * nextX + b * nextY;
      if (here >= 0) kept.push(x, y);
      if (here >= 0 !== next >= 0) {
        const share = here / (here - next);
        kept.push(x + share * (nextX - x), y + share * (nextY - y));
      }
    }
    if (kept.length === 0) return kept;
    current = kept;
  }
  return current;
}

/** Area of a polygon [x0, y0, x1, y1, …]. */
function area(polygon: readonly number[]): number {
  let twice = 0;
  for (let i = 0; i < polygon.length; i += 2) {
    const j = (i + 2) % polygon.length;
    twice += polygon[i]! * polygon[j + 1]! - polygon[j]! * polygon[i + 1]!;
  }
  return Math.abs(twice) / 2;
}
