// What lies under floors and behind bermed walls: soil that stores a year, a resistance beyond it, and the yearly wave at
// its far side. Plan, layers and the year's outdoor wave in; layers and a ground face out.
// Method: ISO 13370 gives the whole steady U-value, walls by its basement wall. Soil stands in series with the
// construction as a widening column (ground-column.ts), so that the whole equals 1/U and a swing indoors is answered as
// by the ground itself. The wave at the column's far side is the one that, come through column and construction, brings
// the heat that the outdoor wave brings through the ground (ground-outdoor-wave.ts): a virtual temperature, which may swing
// more than the year's and come before it.

import { materialById } from '../design/materials.ts';
import { type Complex, divide, modulus, multiply, scale } from '../physics/complex.ts';
import { atan2 } from '../physics/elementary.ts';
import {
  type SoilColumn,
  soilColumn,
  wideningBehindWall,
  wideningUnderFloor,
} from '../physics/ground-column.ts';
import {
  basementWallUValue,
  characteristicDimension,
  edgeInsulationPsi,
  type FloorPlan,
  GROUNDS,
  type Ground,
  slabUValue,
} from '../physics/ground-floor.ts';
import {
  outdoorWaveThroughSlab,
  outdoorWaveThroughWall,
  waveUnderBerm,
  YEAR_S,
} from '../physics/ground-outdoor-wave.ts';
import { wallTransfer } from '../physics/heat-transfer-matrix.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import { layerOf, resistanceOf } from './layers.ts';
import type { GroundFace, Layer } from './model.ts';

const SOIL = 'soil';
const GROUND = GROUNDS.clay;
/** How far edge insulation reaches down [m]; common practice, no source. */
export const EDGE_DEPTH_M = 0.6;
export const EDGE_MATERIAL = 'xps';
/** ISO 13370 inside films [m²K/W]. */
const FLOOR_RSI = 0.17;
const WALL_RSI = 0.13;
const DAYS = 365;
/** More than this changes nothing that can be told, and the standard's formulas are not meant for it [m²K/W]. */
const MOST_RESISTANCE = 40;

/** In place of a year's wave, for a model that is counted and never run: what lies in the ground is not worked out. */
export const NEVER_RUN: DeepGround = { meanC: 0, amplitudeK: 0, coldestDay: 0 };

export interface GroundContact {
  /** with its inside film, as ISO 13370 gives it [W/(m²K)] */
  readonly uValue: number;
  /** soil outside the construction, from the ground inwards */
  readonly soil: readonly Layer[];
  readonly face: GroundFace;
}

/**
 * A slab on the ground.
 *
 * @param plan area, exposed perimeter, wall thickness, earth against the walls; its floorResistance is taken from `layers`
 * @param layers of the floor, from the ground up
 * @param edgeResistance of insulation at the edge [m²K/W]; 0 for none
 * @param climate outdoor wave of the year
 * @param ground kind of soil
 * @returns U-value, soil and ground face
 */
export function slabOnGround(
  plan: Omit<FloorPlan, 'floorResistance'>,
  layers: readonly Layer[],
  edgeResistance: number,
  climate: DeepGround,
  ground: Ground = GROUND,
): GroundContact {
  if (climate === NEVER_RUN) return NO_SOIL;
  const floor = capped({ ...plan, floorResistance: resistanceOf(layers) });
  const thicknessM = edgeResistance * materialById(EDGE_MATERIAL).conductivity;
  const strip = { lies: 'upright', reachM: EDGE_DEPTH_M, resistance: edgeResistance, thicknessM } as const;
  const added = Math.max(0, edgeResistance - thicknessM / ground.conductivity);
  const dimensionM = characteristicDimension(floor);
  const edge = (2 * edgeInsulationPsi(floor, ground, strip)) / dimensionM;
  // Insulation at the edge does no more than as much under the whole floor would; on a tiny plan the formula says so.
  const everywhere = capped({ ...floor, floorResistance: floor.floorResistance + added });
  const uValue = Math.max(slabUValue(floor, ground) + edge, slabUValue(everywhere, ground));
  const wave = (wallThicknessM: number, resistance: number) =>
    outdoorWaveThroughSlab({ dimensionM, wallThicknessM }, layers.toReversed(), FLOOR_RSI, ground, {
      depthM: EDGE_DEPTH_M,
      resistance,
    });
  const atGrade = wave(plan.wallThicknessM, added);
  const outdoor = plan.berm === undefined ? atGrade : multiply(atGrade, waveUnderBerm(plan.berm, ground));
  return beyond({
    uValue,
    rsi: FLOOR_RSI,
    layers,
    outdoor,
    widening: wideningUnderFloor(dimensionM, modulus(atGrade) / modulus(wave(0, 0))),
    ground,
    climate,
  });
}

/**
 * A wall against earth.
 *
 * @param floor plan of the floor at its foot
 * @param layers of the wall, from the earth inwards
 * @param heightM of earth against it [m]; at least 0.01
 * @param climate outdoor wave of the year
 * @param ground kind of soil
 * @returns U-value (mean over the height), soil and ground face
 */
export function wallInGround(
  floor: FloorPlan,
  layers: readonly Layer[],
  heightM: number,
  climate: DeepGround,
  ground: Ground = GROUND,
): GroundContact {
  if (climate === NEVER_RUN) return NO_SOIL;
  const wall = { depthM: heightM, wallResistance: Math.min(MOST_RESISTANCE, resistanceOf(layers)) };
  const uValue = basementWallUValue(capped(floor), ground, wall);
  const whole = outdoorWaveThroughWall(heightM, layers.toReversed(), WALL_RSI, ground);
  return beyond({
    uValue,
    rsi: WALL_RSI,
    layers,
    outdoor: whole,
    widening: wideningBehindWall(heightM),
    ground,
    climate,
  });
}

const NO_SOIL: GroundContact = {
  uValue: 1,
  soil: [],
  face: { kind: 'ground', wave: NEVER_RUN, resistance: 1 },
};

function capped(floor: FloorPlan): FloorPlan {
  return { ...floor, floorResistance: Math.min(MOST_RESISTANCE, floor.floorResistance) };
}

interface Contact {
  readonly uValue: number;
  readonly rsi: number;
  readonly layers: readonly Layer[];
  /** heat the outdoor wave brings [W/(m²K)] */
  readonly outdoor: Complex;
  readonly widening: number;
  readonly ground: Ground;
  readonly climate: DeepGround;
}

/** Soil and rest such that film, construction, soil and rest add up to 1/U, and the wave at their far side. */
function beyond({ uValue, rsi, layers, outdoor, widening, ground, climate }: Contact): GroundContact {
  const cover = rsi + resistanceOf(layers);
  const column = soilColumn(1 / uValue - cover, cover, widening, ground);
  const soil = soilLayers(column, ground);
  const inwards = [...layers.toReversed(), ...soil.toReversed()];
  const through = wallTransfer(inwards, rsi, column.rest, YEAR_S).y12;
  // No floor follows the year more closely than the air outside it does.
  const most = Math.min(1, uValue / modulus(outdoor));
  const ratio = divide(scale(outdoor, most), through);
  const lagDays = (-atan2(ratio.im, ratio.re) * DAYS) / (2 * Math.PI);
  const wave = {
    meanC: climate.meanC,
    amplitudeK: climate.amplitudeK * modulus(ratio),
    coldestDay: (((climate.coldestDay + lagDays) % DAYS) + DAYS) % DAYS,
  };
  const soilM = soil.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
  return { uValue, soil, face: { kind: 'ground', wave, resistance: column.rest, soilM } };
}

/** Slices as layers of soil from the ground inwards, each conducting and storing by its share of the face's area. */
function soilLayers({ slices }: SoilColumn, { conductivity, heatCapacity }: Ground): Layer[] {
  const { specificHeat } = materialById(SOIL);
  return slices.toReversed().map(({ thicknessM, conducting, storing }) => ({
    ...layerOf(SOIL, thicknessM),
    conductivity: conductivity * conducting,
    density: (heatCapacity / specificHeat) * storing,
  }));
}
