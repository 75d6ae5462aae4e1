// What lies under floors and behind bermed walls: half a metre of soil, a resistance beyond it, and the yearly wave at
// its far side. Plan, layers and the year's outdoor wave in; layers and a ground face out.
// Method: ISO 13370 gives the whole steady U-value and how much of the outdoor wave reaches the room; as in
// ISO 52016-1, soil and a massless rest stand in series with the construction so that the whole equals 1/U.
// Bermed walls: ISO 13370 basement wall, and undisturbed soil at half their height (Kusuda and Achenbach).

import { materialById } from '../design/materials.ts';
import {
  basementWallUValue,
  characteristicDimension,
  edgeInsulationPsi,
  type FloorPlan,
  GROUNDS,
  periodicCoupling,
  periodicDepth,
  slabUValue,
} from '../physics/ground-floor.ts';
import { annualWave } from '../physics/ground-temperature.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import { layerOf, resistanceOf } from './layers.ts';
import type { GroundFace, Layer } from './model.ts';

/** Soil modelled with its mass under a floor or behind a wall [m]: ISO 52016-1. */
const SOIL_M = 0.5;
const SOIL = 'soil';
const GROUND = GROUNDS.clay;
/** How far edge insulation reaches down [m]; common practice, no source. */
const EDGE_DEPTH_M = 0.6;
const EDGE_MATERIAL = 'xps';
const FLOOR_RSI = 0.17;
const WALL_RSI = 0.13;
const DAYS_A_MONTH = 365 / 12;
/** More than this changes nothing that can be told, and the standard's formulas are not meant for it [m²K/W]. */
const MOST_RESISTANCE = 40;
/** Clay, in the middle of 0.04–0.05 [m²/day]; from memory, medium confidence. */
const DIFFUSIVITY = 0.045;

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
 * @param plan area, exposed perimeter, wall thickness; its floorResistance is taken from `layers`
 * @param layers of the floor, from the ground up
 * @param edgeResistance of insulation at the edge [m²K/W]; 0 for none
 * @param ground outdoor wave of the year
 * @returns U-value, soil and ground face
 */
export function slabOnGround(
  plan: Omit<FloorPlan, 'floorResistance'>,
  layers: readonly Layer[],
  edgeResistance: number,
  ground: DeepGround,
): GroundContact {
  const floor = capped({ ...plan, floorResistance: resistanceOf(layers) });
  const thicknessM = edgeResistance * materialById(EDGE_MATERIAL).conductivity;
  const strip = { lies: 'upright', reachM: EDGE_DEPTH_M, resistance: edgeResistance, thicknessM } as const;
  const added = Math.max(0, edgeResistance - thicknessM / GROUND.conductivity);
  const edge = (2 * edgeInsulationPsi(floor, GROUND, strip)) / characteristicDimension(floor);
  // Insulation at the edge does no more than as much under the whole floor would; on a tiny plan the formula says so.
  const everywhere = capped({ ...floor, floorResistance: floor.floorResistance + added });
  const uValue = Math.max(slabUValue(floor, GROUND) + edge, slabUValue(everywhere, GROUND));
  const coupling = edgedCoupling(floor, everywhere);
  // No floor follows the year more closely than the air outside it does.
  const share = Math.min(1, coupling.outsideWPerK / (floor.areaM2 * uValue));
  return beyond(uValue, FLOOR_RSI, layers, {
    meanC: ground.meanC,
    amplitudeK: ground.amplitudeK * share,
    coldestDay: ground.coldestDay + coupling.outsideLagMonths * DAYS_A_MONTH,
  });
}

/**
 * A wall against earth.
 *
 * @param floor plan of the floor at its foot
 * @param layers of the wall, from the earth inwards
 * @param heightM of earth against it [m]; at least 0.01
 * @param ground outdoor wave of the year
 * @returns U-value (mean over the height), soil and ground face
 */
export function wallInGround(
  floor: FloorPlan,
  layers: readonly Layer[],
  heightM: number,
  ground: DeepGround,
): GroundContact {
  const wall = { depthM: heightM, wallResistance: Math.min(MOST_RESISTANCE, resistanceOf(layers)) };
  const foot = capped(floor);
  const { damping, lagDays } = annualWave(DIFFUSIVITY, heightM / 2);
  return beyond(basementWallUValue(foot, GROUND, wall), WALL_RSI, layers, {
    meanC: ground.meanC,
    amplitudeK: ground.amplitudeK * damping,
    coldestDay: ground.coldestDay + lagDays,
  });
}

/**
 * Yearly coupling with upright edge insulation: down to 2D the floor answers as one thickened by R'λ, beyond as it is.
 * Source: ISO 13370:2017 annex, periodic coefficients with vertical edge insulation; from memory, medium confidence.
 */
function edgedCoupling(floor: FloorPlan, everywhere: FloorPlan) {
  const bare = periodicCoupling(floor, GROUND, null);
  const edged = periodicCoupling(everywhere, GROUND, null);
  const reach = Math.exp((-2 * EDGE_DEPTH_M) / periodicDepth(GROUND));
  return {
    outsideWPerK: (1 - reach) * edged.outsideWPerK + reach * bare.outsideWPerK,
    outsideLagMonths: bare.outsideLagMonths,
  };
}

function capped(floor: FloorPlan): FloorPlan {
  return { ...floor, floorResistance: Math.min(MOST_RESISTANCE, floor.floorResistance) };
}

/** Soil and rest such that film, construction, soil and rest add up to 1/U; thin soil where there is little left. */
function beyond(
  uValue: number,
  rsi: number,
  layers: readonly Layer[],
  wave: GroundFace['wave'],
): GroundContact {
  const left = 1 / uValue - rsi - resistanceOf(layers);
  const soilM = Math.min(SOIL_M, Math.max(0, left) * materialById(SOIL).conductivity);
  const soil = soilM > 0.01 ? [layerOf(SOIL, soilM)] : [];
  const resistance = Math.max(0, left - resistanceOf(soil));
  const coldestDay = ((wave.coldestDay % 365) + 365) % 365;
  return { uValue, soil, face: { kind: 'ground', wave: { ...wave, coldestDay }, resistance } };
}
