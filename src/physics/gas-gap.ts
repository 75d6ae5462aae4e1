// Heat across the gas between two panes: gas, width, tilt, temperatures and emissivities in; conductance out.
// Convection grows as the pane leans, so leaning glass loses more heat than upright glass.
// Source: EN 673:2011, its Nusselt constants for upright, 45° and flat glazing and its gas table (from memory: air and
// argon high confidence, krypton medium). Heat flowing down (warm pane above): ISO 15099, Nu = 1 + (Nu₉₀ − 1) sin β.
import { GRAVITY, ZERO_CELSIUS_K } from './constants.ts';
import { power, sin, square } from './elementary.ts';
import { blackBodyConductance } from './films.ts';
import { requireRange } from './require-range.ts';

export type GapGas = 'air' | 'argon' | 'krypton';

export interface GasGap {
  readonly gas: GapGas;
  /** share of the gas, the rest air; 0…1, absent = 1. Makers fill to about 0.9 */
  readonly fill?: number;
  /** [m]; 0.002…0.1 */
  readonly widthM: number;
  /** [°]; 0 flat facing up, 90 upright, 180 facing down */
  readonly tiltDeg: number;
  /** mean of the two panes [K]; 220…370 */
  readonly meanTempK: number;
  /** inner pane minus outer pane [K]; −100…100. Positive: heat flows outward, and so upward in leaning glass */
  readonly deltaTempK: number;
  /** corrected emissivities of the two faces to the gap; 0.837 bare glass */
  readonly emissivity1: number;
  readonly emissivity2: number;
}

/** [W/(m²·K)] */
export interface GapConductance {
  readonly convective: number;
  readonly radiative: number;
  readonly total: number;
}

interface GasData {
  /** at 10 °C [kg/m³]; as an ideal gas elsewhere, which is what the standard's table shows to its digits */
  readonly density10: number;
  /** at 0 °C and its slope [Pa·s], [Pa·s/K] */
  readonly viscosity0: number;
  readonly viscositySlope: number;
  /** at 0 °C and its slope [W/(m·K)], [W/(m·K²)] */
  readonly conductivity0: number;
  readonly conductivitySlope: number;
  /** [J/(kg·K)] */
  readonly specificHeat: number;
}

/** EN 673:2011 table 1, straight lines through 0 and 20 °C. */
const GASES: Record<GapGas, GasData> = {
  air: {
    density10: 1.232,
    viscosity0: 1.711e-5,
    viscositySlope: 5.0e-8,
    conductivity0: 2.416e-2,
    conductivitySlope: 8.0e-5,
    specificHeat: 1008,
  },
  argon: {
    density10: 1.699,
    viscosity0: 2.101e-5,
    viscositySlope: 6.35e-8,
    conductivity0: 1.634e-2,
    conductivitySlope: 5.0e-5,
    specificHeat: 519,
  },
  krypton: {
    density10: 3.56,
    viscosity0: 2.33e-5,
    viscositySlope: 7.0e-8,
    conductivity0: 0.87e-2,
    conductivitySlope: 2.8e-5,
    specificHeat: 245,
  },
};

/** EN 673: Nu = A (Gr·Pr)ⁿ; between these tilts A and n are taken along a straight line. */
const NUSSELT = [
  { tiltDeg: 0, factor: 0.16, exponent: 0.28 },
  { tiltDeg: 45, factor: 0.1, exponent: 0.31 },
  { tiltDeg: 90, factor: 0.035, exponent: 0.38 },
] as const;

/**
 * Conductance of a gas gap.
 *
 *   total = Nu λ/s + 4 σ T³/(1/ε₁ + 1/ε₂ − 1)
 *
 * @param gap see GasGap
 * @returns convective, radiative and total [W/(m²·K)]
 */
export function gapConductance(gap: GasGap): GapConductance {
  requireRange('widthM', gap.widthM, 0.002, 0.1, 'm');
  requireRange('tiltDeg', gap.tiltDeg, 0, 180, '°');
  requireRange('meanTempK', gap.meanTempK, 220, 370, 'K');
  requireRange('deltaTempK', gap.deltaTempK, -100, 100, 'K');
  requireRange('emissivity1', gap.emissivity1, 0.01, 1, '');
  requireRange('emissivity2', gap.emissivity2, 0.01, 1, '');
  const data = mixture(gap.gas, gap.fill ?? 1);
  const aboveZero = gap.meanTempK - ZERO_CELSIUS_K;
  const conductivity = data.conductivity0 + data.conductivitySlope * aboveZero;
  const convective = (nusselt(gap, data, conductivity) * conductivity) / gap.widthM;
  const exchange = 1 / (1 / gap.emissivity1 + 1 / gap.emissivity2 - 1);
  const radiative = blackBodyConductance(gap.meanTempK) * exchange;
  return { convective, radiative, total: convective + radiative };
}

/** Gas with air in it: each property by volume share, as EN 673 does. */
function mixture(gas: GapGas, fill: number): GasData {
  requireRange('fill', fill, 0, 1, '');
  if (fill === 1) return GASES[gas];
  const [filling, air] = [GASES[gas], GASES.air];
  const mixed = (key: keyof GasData) => fill * filling[key] + (1 - fill) * air[key];
  return {
    density10: mixed('density10'),
    viscosity0: mixed('viscosity0'),
    viscositySlope: mixed('viscositySlope'),
    conductivity0: mixed('conductivity0'),
    conductivitySlope: mixed('conductivitySlope'),
    specificHeat: mixed('specificHeat'),
  };
}

/** Nusselt number, at least 1 (still gas). */
function nusselt(gap: GasGap, data: GasData, conductivity: number): number {
  const viscosity = data.viscosity0 + data.viscositySlope * (gap.meanTempK - ZERO_CELSIUS_K);
  const density = (data.density10 * 283.15) / gap.meanTempK;
  const grashof =
    (GRAVITY * power(gap.widthM, 3) * Math.abs(gap.deltaTempK) * square(density)) /
    (gap.meanTempK * square(viscosity));
  const rayleigh = (grashof * viscosity * data.specificHeat) / conductivity;
  // Glass facing down is glass facing up with the flow turned round.
  const facingUp = gap.tiltDeg <= 90;
  const leanDeg = facingUp ? gap.tiltDeg : 180 - gap.tiltDeg;
  const isUpward = gap.deltaTempK >= 0 === facingUp;
  if (isUpward) return Math.max(nusseltUpward(leanDeg, rayleigh), 1);
  const upright = Math.max(nusseltUpward(90, rayleigh), 1);
  return 1 + (upright - 1) * sin((leanDeg * Math.PI) / 180);
}

/** EN 673's correlation at a tilt of 0…90°, heat flowing upward or level. */
function nusseltUpward(tiltDeg: number, rayleigh: number): number {
  const [from, to] = tiltDeg < 45 ? [NUSSELT[0], NUSSELT[1]] : [NUSSELT[1], NUSSELT[2]];
  const share = (tiltDeg - from.tiltDeg) / (to.tiltDeg - from.tiltDeg);
  const factor = from.factor + share * (to.factor - from.factor);
  const exponent = from.exponent + share * (to.exponent - from.exponent);
  return factor * power(rayleigh, exponent);
}
