// How far a temperature that swings with a period reaches into a layer, and how thick a layer still helps over a day.
// Source: ISO 13786:2017 (penetration depth); the peak of the diurnal heat capacity, US national-laboratory method of 1983.
import { requireRange } from './require-range.ts';

const DAY_S = 86_400;

/** The diurnal heat capacity of a slab with an insulated back is largest at so many penetration depths. */
const USEFUL_DEPTHS = 1.18;

/** What a wave in a layer depends on. */
export interface ConductingLayer {
  /** [W/(m·K)] */
  readonly conductivity: number;
  /** [kg/m³]; 0 for a layer without mass, such as an air gap by its resistance */
  readonly density: number;
  /** [J/(kg·K)] */
  readonly specificHeat: number;
}

/**
 * Depth at which a swing of the surface has shrunk to 1/e.
 *
 *   δ = √(λ P/(π ρ c))
 *
 * @param layer with mass
 * @param periodS [s]
 * @returns [m]: 0.11 m for adobe, 0.15 m for concrete over a day
 */
export function penetrationDepth(layer: ConductingLayer, periodS: number): number {
  requireRange('density', layer.density, Number.MIN_VALUE, 30_000, 'kg/m³');
  return Math.sqrt((layer.conductivity * periodS) / (Math.PI * (layer.density * layer.specificHeat)));
}

/** Penetration depth of a day [m]; Infinity for a layer without mass. */
export function dailyDepth(layer: ConductingLayer): number {
  const hasMass = layer.density * layer.specificHeat > 0;
  return hasMass ? penetrationDepth(layer, DAY_S) : Number.POSITIVE_INFINITY;
}

/** Thickness beyond which a bare layer takes up no more of a day's heat [m]: 1.18 daily penetration depths. */
export function usefulThickness(layer: ConductingLayer): number {
  return USEFUL_DEPTHS * dailyDepth(layer);
}
