// What the steps of an hour add up to, for the recorder's means and the heat balance alike: temperatures, heat held
// and carried by air, humidity, condensation, flows. What stands still within an hour is not summed here but read at its end.

import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import type { AirFlow } from '../air/air-flow-interface.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub } from '../layout/layout.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { HourlyGains } from '../sun/hourly-gains.ts';
import type { MoistureBalance } from '../water/moisture-balance.ts';

/** Sums over the steps of the hour so far; divide by `steps()` for means. */
export interface HourlySums {
  /** for so many zones and openings */
  load(zones: number, openings: number): void;
  steps(): number;
  /** by hub, means of the steps [°C] */
  readonly hubC: Float64Array;
  /** heat given, and taken out, to hold each zone [W] */
  readonly heatingW: Float64Array;
  readonly coolingW: Float64Array;
  /** latent heat in each zone's air [W] */
  readonly latentW: Float64Array;
  /** heat that outdoor air, as cold as it is, brings each zone, on its way through others too; and air that zones exchange [W] */
  readonly outdoorAirW: Float64Array;
  /** heat that exchangers give back to it, and that supply fans and heaters against frost give it [W] */
  readonly recoveredW: Float64Array;
  readonly fansW: Float64Array;
  readonly otherAirW: Float64Array;
  /** what comes into each zone from outdoors, and from other zones (zone · zones + zone it comes from) [kg/s] */
  readonly outdoorKg: Float64Array;
  readonly betweenKg: Float64Array;
  /** water that outdoor air and air of other zones brings each zone [kg/s] */
  readonly airWaterKg: Float64Array;
  /** relative humidity, 0…1; net condensation [kg/s] */
  readonly humidity: Float64Array;
  readonly condensation: Float64Array;
  /** by opening: volume flow [m³/s]; share open, 0…1 */
  readonly flow: Float64Array;
  readonly open: Float64Array;
  begin(): void;
  addStep(): void;
}

/** Sums with room for so much; load() before use. */
export function createHourlySums(
  capacity: EngineCapacity,
  stepper: Stepper,
  flows: AirFlow,
  moisture: MoistureBalance,
  gains: HourlyGains,
  /** heat of the hour that no thermostat puts into the air, by zone [W] */
  heaterW: Float64Array,
): HourlySums {
  let zones = 0;
  let openings = 0;
  let steps = 0;
  const perZone = () => new Float64Array(capacity.zones);
  const kept = {
    hubC: new Float64Array(2 * capacity.zones),
    heatingW: perZone(),
    coolingW: perZone(),
    latentW: perZone(),
    outdoorAirW: perZone(),
    recoveredW: perZone(),
    fansW: perZone(),
    otherAirW: perZone(),
    outdoorKg: perZone(),
    betweenKg: new Float64Array(capacity.zones * capacity.zones),
    airWaterKg: perZone(),
    humidity: perZone(),
    condensation: perZone(),
    flow: new Float64Array(capacity.openings),
    open: new Float64Array(capacity.openings),
  };

  function load(zoneCount: number, openingCount: number): void {
    zones = zoneCount;
    openings = openingCount;
  }

  function begin(): void {
    const { hubC, heatingW, coolingW, latentW, outdoorAirW, otherAirW, outdoorKg, humidity, condensation } =
      kept;
    const { airWaterKg, betweenKg, flow, open, recoveredW, fansW } = kept;
    const count = zones;
    steps = 0;
    for (let h = 0; h < 2 * count; h++) hubC[h] = 0;
    for (let z = 0; z < count; z++) {
      heatingW[z] = 0;
      coolingW[z] = 0;
      latentW[z] = 0;
      outdoorAirW[z] = 0;
      recoveredW[z] = 0;
      fansW[z] = 0;
      otherAirW[z] = 0;
      outdoorKg[z] = 0;
      airWaterKg[z] = 0;
      humidity[z] = 0;
      condensation[z] = 0;
    }
    for (let i = 0; i < count * count; i++) betweenKg[i] = 0;
    for (let o = 0; o < openings; o++) {
      flow[o] = 0;
      open[o] = 0;
    }
  }

  function addStep(): void {
    const { hubC, heatingW, coolingW, latentW, outdoorAirW, otherAirW, outdoorKg, betweenKg } = kept;
    const { airWaterKg, humidity, condensation, flow, open, recoveredW, fansW } = kept;
    const { hubMeanC: nowC, hubLineW, hubLineG, hubLink, hubBoundary, hubBoundaryC, heldW } = stepper;
    const { frameConductance } = gains;
    const { outdoors, recovered, givenW, lostW, between, volume, share } = flows;
    const { humidity: humidityNow, condensation: condensationNow, byAir } = moisture;
    const count = zones;
    steps++;
    for (let z = 0; z < count; z++) {
      const air = airHub(z, count);
      const airC = nowC[air]!;
      hubC[air]! += airC;
      hubC[z]! += nowC[z]!;
      const held = heldW[air]!;
      if (held > 0) heatingW[z]! += held;
      else coolingW[z]! -= held;
      heatingW[z]! += heaterW[z]!;
      latentW[z]! += hubLineW[air]! - hubLineG[air]! * airC;
      const warmerK = airC - hubBoundaryC[air]!;
      const givenBack = recovered[z]! * SPECIFIC_HEAT_AIR * warmerK;
      outdoorAirW[z]! -= (hubBoundary[air]! - frameConductance[z]!) * warmerK + givenBack;
      recoveredW[z]! += givenBack - lostW[z]!;
      fansW[z]! += givenW[z]!;
      outdoorKg[z]! += outdoors[z]!;
      airWaterKg[z]! += byAir[z]!;
      humidity[z]! += humidityNow[z]!;
      condensation[z]! += condensationNow[z]!;
      for (let y = z + 1; y < count; y++) {
        const next = airHub(y, count);
        const into = hubLink[air * 2 * count + next]!;
        const back = hubLink[next * 2 * count + air]!;
        // What passes one way goes on to leave the house: it counts with the outdoor air that it was.
        const watt = Math.min(into, back) * (nowC[next]! - airC);
        otherAirW[z]! += watt;
        otherAirW[y]! -= watt;
        if (into > back) outdoorAirW[z]! += (into - back) * (nowC[next]! - airC);
        else if (back > into) outdoorAirW[y]! += (back - into) * (airC - nowC[next]!);
        betweenKg[z * count + y]! += between[z * count + y]!;
        betweenKg[y * count + z]! += between[y * count + z]!;
      }
    }
    for (let o = 0; o < openings; o++) {
      flow[o]! += volume[o]!;
      open[o]! += share[o]!;
    }
  }

  return {
    load,
    steps: () => steps,
    ...kept,
    begin,
    addStep,
  };
}
