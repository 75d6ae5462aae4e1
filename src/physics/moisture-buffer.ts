// How walls, furniture and earth plaster take up damp air and give it back. In: moisture buffer value of a finish, area,
// humidity swing. Out: grams stored, the depth that takes part, and a one-node capacity for an hourly balance.
// Method: the NORDTEST moisture buffer value (2005): 8 h at 75 % and 16 h at 33 % relative humidity, read in
// g per m² and per % of relative humidity. Humidity is a fraction 0–1 except in that unit.
import { requireRange } from './require-range.ts';

export type BufferClass = 'negligible' | 'limited' | 'moderate' | 'good' | 'excellent';

/** Finish, its practical buffer value [g/(m²·%RH)], the range seen, and where it is from. */
export interface BufferFinish {
  readonly finish: string;
  readonly value: number;
  readonly range: readonly [number, number];
  readonly source: string;
}

const REVIEWS = 'published NORDTEST measurements; from memory, medium confidence';

/** Practical moisture buffer values of common finishes; the value is the middle of the range. */
export const BUFFER_FINISHES: readonly BufferFinish[] = [
  { finish: 'concrete', value: 0.37, range: [0.37, 0.37], source: REVIEWS },
  { finish: 'brick', value: 0.45, range: [0.4, 0.5], source: REVIEWS },
  { finish: 'laminated wood', value: 0.5, range: [0.5, 0.5], source: REVIEWS },
  { finish: 'gypsum board', value: 0.6, range: [0.6, 0.6], source: REVIEWS },
  { finish: 'lime plaster', value: 0.7, range: [0.5, 0.9], source: REVIEWS },
  { finish: 'aerated concrete', value: 1.0, range: [1.0, 1.0], source: REVIEWS },
  { finish: 'spruce', value: 1.15, range: [1.1, 1.2], source: REVIEWS },
  { finish: 'clay plaster', value: 1.6, range: [1.3, 2.0], source: REVIEWS },
  {
    finish: 'straw or hemp-lime',
    value: 2.4,
    range: [2.0, 2.8],
    source: `${REVIEWS}; hemp-lime mean 2.78 in Materials, 2020`,
  },
];

/** Room-air vapour capacity is multiplied by this when nothing is known of the finishes [–]; from memory, medium confidence. */
export const AIR_CAPACITY_FACTORS: Readonly<Record<'bare' | 'ordinary' | 'furnished', number>> = {
  bare: 5,
  ordinary: 10,
  furnished: 20,
};

const TEST_WET_H = 8;
const TEST_DRY_H = 16;

/**
 * Class of a moisture buffer value.
 *
 * @param bufferValue [g/(m²·%RH)]; ≥ 0
 * Source: NORDTEST project on moisture buffering, 2005, its classes; from memory, high confidence.
 */
export function bufferClass(bufferValue: number): BufferClass {
  requireRange('bufferValue', bufferValue, 0, 20, 'g/(m²·%RH)');
  if (bufferValue < 0.2) return 'negligible';
  if (bufferValue < 0.5) return 'limited';
  if (bufferValue < 1) return 'moderate';
  return bufferValue <= 2 ? 'good' : 'excellent';
}

/**
 * Water a surface takes up over a day whose humidity swings: A · MBV · 100 · Δφ.
 *
 * @param areaM2 [m²]; ≥ 0
 * @param bufferValue [g/(m²·%RH)]; ≥ 0
 * @param humiditySwing peak to trough, fraction [–]; 0…1
 * @returns water [g]
 */
export function bufferedWater(areaM2: number, bufferValue: number, humiditySwing: number): number {
  requireRange('areaM2', areaM2, 0, 1e6, 'm²');
  requireRange('bufferValue', bufferValue, 0, 20, 'g/(m²·%RH)');
  requireRange('humiditySwing', humiditySwing, 0, 1, '');
  return areaM2 * bufferValue * 100 * humiditySwing;
}

/**
 * Water the air itself takes up over the same swing: V · v_sat · Δφ [g]; volume [m³], saturation [g/m³], swing [–].
 */
export function airWater(volumeM3: number, saturatedVapour: number, humiditySwing: number): number {
  requireRange('volumeM3', volumeM3, 0, 1e6, 'm³');
  requireRange('saturatedVapour', saturatedVapour, 0, 600, 'g/m³');
  requireRange('humiditySwing', humiditySwing, 0, 1, '');
  return volumeM3 * saturatedVapour * humiditySwing;
}

/**
 * Depth that takes part in a humidity cycle: d = √(δ · psat · P / (π · ξ)).
 *
 * @param permeability δ of the material [kg/(m·s·Pa)]; > 0
 * @param moistureCapacity ξ, water taken up per unit of relative humidity [kg/m³]; > 0
 * @param saturationPa psat at the material's temperature [Pa]; > 0
 * @param periodS of the cycle [s]; 86 400 for a day
 * @returns depth at which the swing has fallen to 1/e [m]
 * Source: the diffusion analogue of the thermal penetration depth.
 */
export function penetrationDepth(
  permeability: number,
  moistureCapacity: number,
  saturationPa: number,
  periodS: number,
): number {
  requireBuffer(permeability, moistureCapacity, saturationPa, periodS);
  return Math.sqrt((permeability * saturationPa * periodS) / (Math.PI * moistureCapacity));
}

/**
 * Buffer value a thick, film-free piece of the material would show: 0.00568 · psat · b · √P, b = √(δ · ξ / psat).
 * The number is h(1/3) / (100·√π), h the Fourier sum of a wave that is high for a third of its period.
 *
 * @param permeability δ [kg/(m·s·Pa)]; > 0
 * @param moistureCapacity ξ [kg/m³ per unit of relative humidity]; > 0
 * @param saturationPa psat [Pa]; > 0
 * @param periodS [s]; 86 400 in the test
 * @returns ideal moisture buffer value [g/(m²·%RH)]
 * Source: NORDTEST project on moisture buffering, 2005; from memory, medium confidence.
 */
export function idealBufferValue(
  permeability: number,
  moistureCapacity: number,
  saturationPa: number,
  periodS: number,
): number {
  requireBuffer(permeability, moistureCapacity, saturationPa, periodS);
  const effusivity = Math.sqrt((permeability * moistureCapacity) / saturationPa);
  return 1000 * 0.00568 * saturationPa * effusivity * Math.sqrt(periodS);
}

/**
 * Capacity of the one node that stands for a finish in an hourly balance. Driven by the test's wave through its time
 * constant τ, a node of capacity C swings by C · (1 − e^(−8/τ)) · (1 − e^(−16/τ)) / (1 − e^(−24/τ)) in a settled day;
 * that is set equal to the buffer value. Its conductance is then C/τ.
 *
 * @param bufferValue [g/(m²·%RH)]; ≥ 0
 * @param timeConstantH τ of the exchange with the room [h]; 0.1…48; a few hours for plaster
 * @returns capacity [g/m² per unit of relative humidity]
 * Source: own derivation; the wave is the NORDTEST one.
 */
export function bufferCapacity(bufferValue: number, timeConstantH: number): number {
  requireRange('bufferValue', bufferValue, 0, 20, 'g/(m²·%RH)');
  requireRange('timeConstantH', timeConstantH, 0.1, 48, 'h');
  const up = 1 - Math.exp(-TEST_WET_H / timeConstantH);
  const down = 1 - Math.exp(-TEST_DRY_H / timeConstantH);
  const day = 1 - Math.exp(-(TEST_WET_H + TEST_DRY_H) / timeConstantH);
  return (100 * bufferValue * day) / (up * down);
}

function requireBuffer(
  permeability: number,
  moistureCapacity: number,
  saturationPa: number,
  periodS: number,
): void {
  requireRange('permeability', permeability, 1e-16, 1e-8, 'kg/(m·s·Pa)');
  requireRange('moistureCapacity', moistureCapacity, 1e-3, 1e3, 'kg/m³');
  requireRange('saturationPa', saturationPa, 1, 2e4, 'Pa');
  requireRange('periodS', periodS, 60, 4e7, 's');
}
