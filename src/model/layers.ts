// Layers of the constructions a design leaves unsaid, and faces with their usual finish. Material ids, thicknesses
// and resistances in; layers and faces out. Insulation of a stated resistance is blown cellulose fibre of the
// thickness that gives it; skins are common practice, no source.

import { materialById } from '../design/materials.ts';
import type { Film, Layer, OutdoorFace, ZoneFace } from './model.ts';

/** Long-wave emissivity of building surfaces: 0.90–0.95, from memory, high confidence. */
const EMISSIVITY = 0.9;
const COMPUTED: Film = { kind: 'computed' };
const INSULATION = 'cellulose';
const SKIN = 'lime-plaster';
const SKIN_M = 0.015;
/** Areas [m²] and resistances [m²K/W] below these are the dust of rounding, not parts of a house. */
export const LEAST_AREA_M2 = 1e-6;
const LEAST_RESISTANCE = 1e-4;
const DECK = 'softwood';
const DECK_M = 0.018;
const CEILING = 'plasterboard';
const CEILING_M = 0.013;
/** Outside of walls (medium colour) and roofs (weathered): middle of the handbook ranges. */
const WALL_ABSORPTANCE = 0.6;
const ROOF_ABSORPTANCE = 0.7;

/** A layer of a catalogue material, so thick [m]; water stirs itself. */
export function layerOf(materialId: string, thicknessM: number): Layer {
  const { name, conductivity, density, specificHeat } = materialById(materialId);
  const layer = { name, thicknessM, conductivity, density, specificHeat };
  return materialId === 'water' ? { ...layer, mixed: true } : layer;
}

/** Insulation of a resistance [m²K/W]; none for 0. */
export function insulationOf(resistance: number, materialId: string = INSULATION): Layer[] {
  if (resistance < LEAST_RESISTANCE) return [];
  return [layerOf(materialId, resistance * materialById(materialId).conductivity)];
}

/** Outside to inside: skin, insulation of a resistance [m²K/W], inner leaf so thick [m]. */
export function wallLayers(resistance: number, liningId: string, liningM: number): Layer[] {
  return [layerOf(SKIN, SKIN_M), ...insulationOf(resistance), layerOf(liningId, liningM)];
}

/** Outside to inside: boards, insulation of a resistance [m²K/W], ceiling lining. */
export function roofLayers(resistance: number): Layer[] {
  return [layerOf(DECK, DECK_M), ...insulationOf(resistance), layerOf(CEILING, CEILING_M)];
}

/** A timber floor between storeys, from the ceiling below to the boards. */
export function upperFloorLayers(): Layer[] {
  return [layerOf(CEILING, CEILING_M), ...insulationOf(1, 'mineral-wool'), layerOf(DECK, 0.022)];
}

/** Whole thickness [m]. */
export function thicknessOf(layers: readonly Layer[]): number {
  return layers.reduce((sum, layer) => sum + layer.thicknessM, 0);
}

/** Resistance of layers without films [m²K/W]; a stirred layer has none. */
export function resistanceOf(layers: readonly Layer[]): number {
  return layers.reduce((sum, layer) => sum + (layer.mixed ? 0 : layer.thicknessM / layer.conductivity), 0);
}

/** Face of a zone in a catalogue material; its tilt is 0 for a floor, 90 upright, 180 for a ceiling [°]. */
export function faceIn(
  zone: string,
  materialId: string,
  faceTiltDeg: number,
  lit: ZoneFace['lit'],
): ZoneFace {
  const { absorptance } = materialById(materialId);
  return { kind: 'zone', zone, absorptance, emissivity: EMISSIVITY, film: COMPUTED, lit, faceTiltDeg };
}

/** The ceiling's face. */
export function ceilingFace(zone: string): ZoneFace {
  return faceIn(zone, CEILING, 180, 'none');
}

/** Moisture buffer of the ceiling lining [g/(m²·%RH)]. */
export function ceilingBuffer(): number {
  return materialById(CEILING).moistureBuffer;
}

/** Outer face of a wall or, below 45°, of a roof. */
export function outdoorFace(tiltDeg: number, azimuthDeg: number): OutdoorFace {
  const absorptance = tiltDeg < 45 ? ROOF_ABSORPTANCE : WALL_ABSORPTANCE;
  return {
    kind: 'outdoors',
    absorptance,
    emissivity: EMISSIVITY,
    tiltDeg,
    azimuthDeg,
    film: COMPUTED,
    exposed: true,
  };
}
