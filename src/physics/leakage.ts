// Air that finds its way through cracks nobody drew. In: a blower-door result or a leakage area, the storeys and
// shelter of the house, temperature difference and wind. Out: leakage area, infiltration.
// Method: the power law of leakage, effective leakage area at 4 Pa, and the basic superposition of stack and wind
// (Sherman and Grimsrud 1980), as ASHRAE Handbook Fundamentals prints it. Flows are magnitudes, m³/s.

import { power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** Density of air at which leakage areas are stated, kg/m³: dry air near 21 °C at sea level. */
const REFERENCE_DENSITY = 1.2;

/** Pressure at which effective leakage area is defined, Pa: ASHRAE Fundamentals, ventilation and infiltration. */
const LEAKAGE_REFERENCE_PRESSURE_PA = 4;

/** Exponent of the power law when a blower-door report gives none; between slots (1) and orifices (0.5). */
export const DEFAULT_LEAKAGE_EXPONENT = 0.65;

export type Storeys = 1 | 2 | 3;

/** 1 open land without obstruction, 2 light local shelter, 3 moderate, 4 heavy, 5 very heavy (close by on all sides). */
export type ShelterClass = 1 | 2 | 3 | 4 | 5;

/** Stack coefficients by storeys [(L/s)²/(cm⁴·K)]. Source: ASHRAE Fundamentals, basic model; from memory, high confidence. */
const STACK_COEFFICIENTS: Readonly<Record<Storeys, number>> = { 1: 0.000145, 2: 0.00029, 3: 0.000435 };

/**
 * Wind coefficients by shelter class, columns 1, 2 and 3 storeys [(L/s)²/(cm⁴·(m/s)²)].
 * Source: ASHRAE Fundamentals 1989, basic model, as reprinted in a textbook's companion data.
 */
const WIND_COEFFICIENTS: Readonly<Record<ShelterClass, Readonly<Record<Storeys, number>>>> = {
  1: { 1: 0.000319, 2: 0.00042, 3: 0.000494 },
  2: { 1: 0.000246, 2: 0.000325, 3: 0.000382 },
  3: { 1: 0.000174, 2: 0.000231, 3: 0.000271 },
  4: { 1: 0.000104, 2: 0.000137, 3: 0.000161 },
  5: { 1: 0.000032, 2: 0.000042, 3: 0.000049 },
};

/** Stack coefficient of the basic model [(L/s)²/(cm⁴·K)] for a house of 1 to 3 storeys. */
export function stackCoefficient(storeys: Storeys): number {
  requireRange('storeys', storeys, 1, 3, '');
  return STACK_COEFFICIENTS[storeys];
}

/** Wind coefficient of the basic model [(L/s)²/(cm⁴·(m/s)²)] for storeys 1 to 3 and shelter class 1 (open) to 5 (very heavy). */
export function windCoefficient(storeys: Storeys, shelter: ShelterClass): number {
  requireRange('storeys', storeys, 1, 3, '');
  requireRange('shelter', shelter, 1, 5, '');
  return WIND_COEFFICIENTS[shelter][storeys];
}

/**
 * Flow of a leaky envelope at one pressure difference, from its blower-door number.
 *
 *   Q = V · n50 / 3600 · (|Δp| / 50)^n
 *
 * @param volumeM3 volume the test counts [m³]; ≥ 0
 * @param ach50 air changes an hour at 50 Pa [1/h]; 0…100
 * @param exponent of the power law [–]; 0.5…1
 * @param pressurePa pressure difference, either sign [Pa]; −500…500
 * @returns flow, a magnitude [m³/s]
 * Source: ASHRAE Fundamentals, residential ventilation and infiltration: power law of leakage.
 */
export function leakageFlow(volumeM3: number, ach50: number, exponent: number, pressurePa: number): number {
  requireRange('volumeM3', volumeM3, 0, 1e6, 'm³');
  requireRange('ach50', ach50, 0, 100, '1/h');
  requireRange('exponent', exponent, 0.5, 1, '');
  requireRange('pressurePa', pressurePa, -500, 500, 'Pa');
  return ((volumeM3 * ach50) / 3600) * power(Math.abs(pressurePa) / 50, exponent);
}

/**
 * Effective leakage area: the sharp hole (discharge coefficient 1) that leaks as much at 4 Pa.
 *
 *   A = Q₄ · √(ρ / (2 · 4 Pa)), ρ = 1.2 kg/m³
 *
 * @param volumeM3 volume the test counts [m³]; ≥ 0
 * @param ach50 air changes an hour at 50 Pa [1/h]; 0…100
 * @param exponent of the power law [–]; 0.5…1
 * @returns area [m²]; times 10⁴ for `crackFlow`, which wants cm²
 * Source: ASHRAE Fundamentals, residential ventilation and infiltration: effective air leakage area.
 */
export function leakageAreaM2(volumeM3: number, ach50: number, exponent: number): number {
  const flow = leakageFlow(volumeM3, ach50, exponent, LEAKAGE_REFERENCE_PRESSURE_PA);
  return flow * Math.sqrt(REFERENCE_DENSITY / (2 * LEAKAGE_REFERENCE_PRESSURE_PA));
}

/**
 * Infiltration of a house by the basic model.
 *
 *   Q [L/s] = A · √(Cs · |ΔT| + Cw · U²)
 *
 * Called every time step: no guards. Finite, non-negative areas and coefficients are the caller's duty.
 *
 * @param leakageAreaCm2 effective leakage area at 4 Pa [cm²]; ≥ 0
 * @param stackCoefficient from `stackCoefficient` [(L/s)²/(cm⁴·K)]
 * @param windCoefficient from `windCoefficient` [(L/s)²/(cm⁴·(m/s)²)]
 * @param deltaTempK inside less outside air, either sign [K]
 * @param windSpeed at the weather station, 10 m over open land [m/s]; ≥ 0
 * @returns flow, a magnitude [m³/s]
 * Error: the source puts the model's own scatter at several tens of per cent for a single hour and house.
 * Source: Sherman and Grimsrud 1980; ASHRAE Fundamentals, basic model.
 */
export function crackFlow(
  leakageAreaCm2: number,
  stackCoefficient: number,
  windCoefficient: number,
  deltaTempK: number,
  windSpeed: number,
): number {
  return (
    0.001 *
    leakageAreaCm2 *
    Math.sqrt(stackCoefficient * Math.abs(deltaTempK) + windCoefficient * windSpeed * windSpeed)
  );
}

/**
 * Of what cracks let through, the share that the stack drives: of the two that add in quadrature, its square by the sum's.
 * No guards.
 *
 * @param stackCoefficient, windCoefficient, deltaTempK, windSpeed as for `crackFlow`
 * @returns share [–]; 0…1, 0 in still air without a difference
 */
export function crackStackShare(
  stackCoefficient: number,
  windCoefficient: number,
  deltaTempK: number,
  windSpeed: number,
): number {
  const stack = stackCoefficient * Math.abs(deltaTempK);
  const both = stack + windCoefficient * windSpeed * windSpeed;
  return both > 0 ? stack / both : 0;
}
