// Heat thrown out: for how long the heater of a room ran while a window stood open there to cool it, or a vent of a zone
// beside the rooms below the temperature at which that should be shut; and what heat the air that came in took. The first
// step of it is left out, in which whoever is there notices, and so is airing, which is short and wanted. Steps of a run in;
// seconds and joules by opening out.

import type { Model } from '../../model/model.ts';
import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import type { AirFlow } from '../air/air-flow-interface.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub } from '../layout/layout.ts';
import type { Stepper } from '../solver/stepper-interface.ts';

/** A window less open than this is shut: an opener takes hours to close its last hundredth. */
const OPEN_SHARE = 0.02;
/** A vent beside the rooms stands wrongly open once its zone is this far below where it should be shut [K]. */
const FALLEN_K = 2;
/** Heat below this is round-off [W]. */
const LEAST_W = 1;

export interface HeatedOpen {
  load(model: Model): void;
  /** a step that counts */
  addStep(weather: HourWeather): void;
  /** by opening: with the heater on and the window open [s]; heat lost by it, at most what the heater gave [J] */
  readonly seconds: Float64Array;
  readonly joules: Float64Array;
}

/** Sums with room for so many openings; load() before use. `rooms` holds 1 for zones that are rooms. */
export function createHeatedOpen(
  capacity: EngineCapacity,
  stepper: Stepper,
  flows: AirFlow,
  rooms: Float64Array,
  /** heat of stoves and heated floors, by zone [W] */
  fireW: Float64Array,
): HeatedOpen {
  const seconds = new Float64Array(capacity.openings);
  const joules = new Float64Array(capacity.openings);
  const zoneOf = new Int32Array(capacity.openings);
  /** 1 where a heater ran while it stood open in the step before */
  const isSo = new Int32Array(capacity.openings);
  const vents = new Int32Array(capacity.openings);
  let count = 0;
  let zones = 0;

  function load(model: Model): void {
    count = 0;
    zones = model.zones.length;
    seconds.fill(0);
    joules.fill(0);
    isSo.fill(0);
    model.openings.forEach(({ kind, zone }, i) => {
      zoneOf[i] = model.zones.findIndex(({ id }) => id === zone);
      if (kind === 'vent') vents[count++] = i;
    });
  }

  function addStep({ dryBulbC, airDensity }: HourWeather): void {
    const { heldW, hubMeanC, stepS } = stepper;
    const { volume } = flows;
    const states = flows.openingStates();
    const last = count;
    const places = vents;
    let total = 0;
    for (let z = 0; z < zones; z++) total += Math.max(0, heldW[airHub(z, zones)]!) + fireW[z]!;
    for (let k = 0; k < last; k++) {
      const i = places[k]!;
      const air = airHub(zoneOf[i]!, zones);
      const { open, floorC } = states[i]!;
      const isRoom = rooms[zoneOf[i]!]! === 1;
      const held = isRoom ? heldW[air]! + fireW[zoneOf[i]!]! : total;
      const wasSo = isSo[i] === 1;
      isSo[i] = open > OPEN_SHARE && held > LEAST_W && (isRoom || hubMeanC[air]! < floorC - FALLEN_K) ? 1 : 0;
      if (!wasSo || isSo[i] === 0) continue;
      const lost = volume[i]! * airDensity * SPECIFIC_HEAT_AIR * (hubMeanC[air]! - dryBulbC);
      seconds[i]! += stepS;
      joules[i]! += Math.max(0, Math.min(held, lost)) * stepS;
    }
  }

  return { load, addStep, seconds, joules };
}
