// Runs the fabric cases on their weather: a case in, the quantities the published ranges are about out.
// Weather: TMY3 file of station 725650 (Denver International Airport), tests/data/weather/, with two things that the
// cases prescribe: ground reflectance 0.2 (the file's own values lie between 0.19 and 0.22), and air of one density, such
// that half an air change comes to 18.440 W/K at all hours (the file's own density does so on the mean of the year, with
// 5 % more in frost and less in heat).
import type { Model } from '../../../src/model/model.ts';
import { simulate } from '../../../src/network/simulate.ts';
import type { Year } from '../../../src/network/year.ts';
import { SPECIFIC_HEAT_AIR } from '../../../src/physics/constants.ts';
import { type PreparedClimate, prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { HOURS } from '../../../src/weather/typical-year.ts';
import { fileYear } from '../../weather/weather-files.ts';
import { CASES, type FabricCase, INFILTRATION_ACH, INFILTRATION_W_PER_K, ROOM } from './cases.ts';
import { modelOfCase } from './model-of-case.ts';
import type { Quantity } from './ranges.ts';

export const WEATHER_FILE = '725650TYA.CSV';
const GROUND_REFLECTANCE = 0.2;

export interface CaseOutcome {
  readonly of: FabricCase;
  readonly values: Readonly<Record<Quantity, number>>;
  readonly meanAirC: number;
  readonly year: Year;
}

/** Of air of which half an air change an hour comes to 18.440 W/K in the room [kg/m³]. */
export function roomDensity(): number {
  const volumeM3 = ROOM.eastWestM * ROOM.northSouthM * ROOM.heightM;
  const flow = (INFILTRATION_ACH * volumeM3) / 3600;
  return INFILTRATION_W_PER_K / (flow * SPECIFIC_HEAT_AIR);
}

/** The cases' climate. */
export async function fabricClimate(): Promise<PreparedClimate> {
  const year = await fileYear(WEATHER_FILE);
  const climate = prepareClimate({ ...year, albedo: new Float64Array(HOURS).fill(GROUND_REFLECTANCE) });
  return { ...climate, airDensity: new Float64Array(HOURS).fill(roomDensity()) };
}

/** Run one case as reported. */
export function runCase(of: FabricCase, climate: PreparedClimate): CaseOutcome {
  return outcomeOf(of, modelOfCase(of), climate);
}

/** Run a case's model; heating, cooling and temperatures are those of the first zone. */
export function outcomeOf(of: FabricCase, model: Model, climate: PreparedClimate): CaseOutcome {
  const year = simulate(model, climate);
  const first = year.zones[0]!;
  return {
    of,
    year,
    meanAirC: first.airC.reduce((sum, value) => sum + value, 0) / HOURS,
    values: {
      heating: sumOf(first.heatingW) / 1e6,
      cooling: sumOf(first.coolingW) / 1e6,
      'peak heating': Math.max(...first.heatingW) / 1e3,
      'peak cooling': Math.max(...first.coolingW) / 1e3,
      'highest air': Math.max(...first.airC),
      'lowest air': Math.min(...first.airC),
    },
  };
}

/** All cases of the table, in its order. */
export function runAll(climate: PreparedClimate): readonly CaseOutcome[] {
  return CASES.map((of) => runCase(of, climate));
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}
