// Splits global horizontal irradiance into beam and diffuse where a weather file gives only the sum.
// Source: Erbs, Klein and Duffie, Estimation of the diffuse radiation fraction for hourly, daily and
// monthly-average global radiation, Solar Energy 28, 1982.

import { cos } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** Sun lower than about 3° (the same limit as the DISC model's 87°): the whole is taken as diffuse. */
const MIN_COS_ZENITH = cos((87 * Math.PI) / 180);

export interface SplitIrradiance {
  /** beam normal to the rays [W/m²] */
  readonly beamNormal: number;
  /** diffuse on the horizontal [W/m²] */
  readonly diffuse: number;
}

/**
 * Hourly diffuse fraction, diffuse over global on the horizontal.
 *
 * @param kt hourly clearness index, global over extraterrestrial on the horizontal; ≥ 0
 * @returns 0.165…1; the published curve jumps by about 0.0003 at its breaks 0.22 and 0.80
 */
export function erbsDiffuseFraction(kt: number): number {
  requireRange('kt', kt, 0, Number.POSITIVE_INFINITY, '');
  if (kt <= 0.22) return 1 - 0.09 * kt;
  if (kt > 0.8) return 0.165;
  return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)));
}

/**
 * Beam and diffuse that add up to the global: global = beamNormal · cos z + diffuse, exactly.
 *
 * The beam is never stronger than outside the atmosphere; what would exceed it stays diffuse, as does everything
 * while the sun stands less than 3° above the horizon, where the division by cos z means nothing.
 *
 * @param global global horizontal irradiance [W/m²]; ≥ 0
 * @param cosZenith cosine of the sun's true zenith angle, of the sunlit part of the hour; −1…1
 * @param extraNormal extraterrestrial normal irradiance [W/m²]; > 0
 * @returns beam normal and diffuse horizontal [W/m²]
 */
export function splitGlobal(global: number, cosZenith: number, extraNormal: number): SplitIrradiance {
  requireRange('global', global, 0, Number.POSITIVE_INFINITY, 'W/m²');
  requireRange('cosZenith', cosZenith, -1, 1, '');
  requireRange('extraNormal', extraNormal, 1, 2000, 'W/m²');
  if (cosZenith < MIN_COS_ZENITH) return { beamNormal: 0, diffuse: global };
  const fraction = erbsDiffuseFraction(global / (extraNormal * cosZenith));
  const beamNormal = Math.min((global * (1 - fraction)) / cosZenith, extraNormal);
  return { beamNormal, diffuse: global - beamNormal * cosZenith };
}
