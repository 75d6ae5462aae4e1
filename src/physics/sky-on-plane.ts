// Diffuse light on a plane: horizontal and beam irradiance of an hour in; sky light in three parts and light
// reflected from the ground out, all W/m² on the plane. The circumsolar part comes from beside the sun and is
// shaded as the beam is; the other two come from the dome and its rim.
// Source: Perez, Ineichen, Seals, Michalsky and Stewart, Modeling daylight availability and irradiance components
// from direct and global irradiance, Solar Energy 44, 1990, all-sites composite coefficients.
import { relativeAirMass } from './air-mass.ts';
import { cos, power, sin } from './elementary.ts';

const DEG = Math.PI / 180;
const COS_85 = cos(85 * DEG);

/** Zenith term of the clearness index, κ z³ with z in radians. */
const KAPPA = 1.041;

/** Upper clearness bounds of the first seven bins. */
const CLEARNESS_BOUNDS = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2] as const;

/** Table 6: F11 F12 F13 F21 F22 F23 for each clearness bin, overcast first. */
const BRIGHTNESS = [
  [-0.008, 0.588, -0.062, -0.06, 0.072, -0.022],
  [0.13, 0.683, -0.151, -0.019, 0.066, -0.029],
  [0.33, 0.487, -0.221, 0.055, -0.064, -0.026],
  [0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
  [0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
  [1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
  [1.06, -1.6, -0.359, 0.264, -1.127, 0.131],
  [0.678, -0.327, -0.25, 0.156, -1.377, 0.251],
] as const;

/** Share of the diffuse light that comes from beside the sun (f1) and from the horizon band (f2). */
export interface SkyBrightness {
  /** 0… about 1 */
  readonly f1: number;
  /** may be negative: a horizon darker than the dome */
  readonly f2: number;
}

/** Sky light on a plane [W/m²]; the three add up to the model's sky diffuse, which is never negative. */
export interface SkyLight {
  /** from the whole dome alike */
  readonly isotropic: number;
  /** from beside the sun */
  readonly circumsolar: number;
  /** from the band along the horizon; may be negative */
  readonly horizon: number;
}

/**
 * Brightness coefficients of an hour's sky, the same for every plane.
 *
 * Called 8760 times a climate, so it checks nothing beyond what keeps it finite: without diffuse light or with
 * the sun at or below the horizon the sky is taken as even (both 0).
 *
 * @param beamNormal beam irradiance normal to the rays [W/m²]; ≥ 0
 * @param diffuseHorizontal [W/m²]; ≥ 0
 * @param extraNormal extraterrestrial normal irradiance [W/m²]; > 0
 * @param zenithDeg TRUE zenith angle of the sun [°]
 * @returns f1 ≥ 0 and f2
 */
export function perezCoefficients(
  beamNormal: number,
  diffuseHorizontal: number,
  extraNormal: number,
  zenithDeg: number,
): SkyBrightness {
  if (diffuseHorizontal <= 0 || zenithDeg >= 90) return { f1: 0, f2: 0 };
  const zenith = zenithDeg * DEG;
  const cubic = KAPPA * power(zenith, 3);
  const clearness = ((diffuseHorizontal + beamNormal) / diffuseHorizontal + cubic) / (1 + cubic);
  const brightness = (diffuseHorizontal * relativeAirMass(zenithDeg)) / extraNormal;
  let bin = 0;
  while (bin < CLEARNESS_BOUNDS.length && clearness >= CLEARNESS_BOUNDS[bin]!) bin++;
  const [f11, f12, f13, f21, f22, f23] = BRIGHTNESS[bin]!;
  return {
    f1: Math.max(f11 + f12 * brightness + f13 * zenith, 0),
    f2: f21 + f22 * brightness + f23 * zenith,
  };
}

/**
 * Sky light on one plane from an hour's brightness coefficients. No checks: called for every plane and hour.
 *
 *   isotropic = D (1 − F1)(1 + cos β)/2,  circumsolar = D F1 max(cos θ, 0)/max(cos z, cos 85°),
 *   horizon = D F2 sin β;  where their sum falls below 0 all three are 0
 *
 * @param diffuseHorizontal D [W/m²]
 * @param f1 circumsolar brightness
 * @param f2 horizon brightness
 * @param cosInc cosine of the sun's incidence on the plane
 * @param cosZenith cosine of the sun's true zenith angle
 * @param tiltDeg β [°]; 0 flat facing up, 90 upright
 * @returns the three parts [W/m²]
 */
export function skyFromCoefficients(
  diffuseHorizontal: number,
  f1: number,
  f2: number,
  cosInc: number,
  cosZenith: number,
  tiltDeg: number,
): SkyLight {
  const tilt = tiltDeg * DEG;
  const isotropic = (diffuseHorizontal * (1 - f1) * (1 + cos(tilt))) / 2;
  const circumsolar = (diffuseHorizontal * f1 * Math.max(cosInc, 0)) / Math.max(cosZenith, COS_85);
  const horizon = diffuseHorizontal * f2 * sin(tilt);
  if (isotropic + circumsolar + horizon <= 0) return { isotropic: 0, circumsolar: 0, horizon: 0 };
  return { isotropic, circumsolar, horizon };
}

/**
 * Light reflected from level, evenly bright ground.
 *
 * @param global global horizontal irradiance [W/m²]
 * @param albedo reflectance of the ground; 0…1
 * @param tiltDeg [°]
 * @returns [W/m²] on the plane: global · albedo · (1 − cos β)/2
 */
export function groundOnPlane(global: number, albedo: number, tiltDeg: number): number {
  return (global * albedo * (1 - cos(tiltDeg * DEG))) / 2;
}
