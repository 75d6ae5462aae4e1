// What the air of each zone is held between, and with how much heat: by its thermostat as the schedule and the will of the
// people have it, by nothing where a stove or a heated floor warms it or nothing heats at all, or as it was measured. Zones, the
// moment and set-points in; the stepper's holds out.

import type { Model } from '../../model/model.ts';
import { type GivenHeat, HOLDING_W, OUT_OF_REACH_C } from '../given-series.ts';
import { type Moment, scheduled, scheduledWithin } from '../hour/clock.ts';
import { airHub } from '../layout/layout.ts';
import type { Will } from '../people/will.ts';
import type { Stepper } from '../solver/stepper-interface.ts';

/** Air as it was measured. */
export interface HeldAir {
  /** in this run any zone's air is held, or heat of its heater given */
  holds(): boolean;
  /** by zone, NaN where it is not known [°C] */
  readonly heldC: Float64Array;
}

export interface Thermostats {
  load(zones: Model['zones']): void;
  /**
   * Holds of a step.
   *
   * @param n of the steps of the hour, 0…steps − 1
   * @param allCold no heater gives anything
   */
  set(moment: Moment, n: number, steps: number, allCold: boolean): void;
  /** Air that is held, and heat that is given, as it was measured; no longer where that is not known. After set(). */
  holdGiven(): void;
}

/** Thermostats of up to so many zones; load() before use. */
export function createThermostats(
  capacity: number,
  stepper: Stepper,
  will: Will,
  /** 1 for zones whose air no thermostat warms */
  own: Float64Array,
  given: HeldAir,
  heat: GivenHeat,
): Thermostats {
  /** whose heating follows its schedule within the hour */
  const ramps = new Float64Array(capacity);
  let zones: Model['zones'] = [];

  function load(of: Model['zones']): void {
    zones = of;
    of.forEach(({ thermostat }, z) => {
      ramps[z] = thermostat?.heatC?.ramp ? 1 : 0;
    });
  }

  /** Set-points hold for the hour, unless they rise within it or the will of the people moves them. */
  function set(moment: Moment, n: number, steps: number, allCold: boolean): void {
    const { holdLowC, holdHighC, holdMaxW, holdMinW, holdRamps } = stepper;
    const count = zones.length;
    for (let z = 0; z < count; z++) {
      const { thermostat } = zones[z]!;
      if (thermostat === null) continue;
      const hub = airHub(z, count);
      if (allCold || own[z] === 1) {
        hold(hub, -Infinity, Infinity, 0, 0);
        continue;
      }
      if (n > 0 && ramps[z] === 0) {
        holdLowC[hub] = will.rooms.holdC[z]!;
        continue;
      }
      const through = (n + 1) / steps;
      const { heatC } = thermostat;
      holdLowC[hub] = !heatC
        ? -Infinity
        : ramps[z] === 1
          ? scheduledWithin(heatC, moment, through)
          : will.rooms.holdC[z]!;
      holdHighC[hub] = thermostat.coolC ? scheduled(thermostat.coolC, moment) : Infinity;
      holdMaxW[hub] = thermostat.heatCapacityW;
      holdMinW[hub] = -thermostat.coolCapacityW;
      holdRamps[hub] = ramps[z]!;
    }
  }

  function holdGiven(): void {
    if (!given.holds()) return;
    const { heldC } = given;
    const count = zones.length;
    for (let z = 0; z < count; z++) {
      const hub = airHub(z, count);
      const givenW = own[z] === 1 ? Number.NaN : heat.watt[z]!;
      if (!Number.isNaN(heldC[z]!)) hold(hub, heldC[z]!, heldC[z]!, HOLDING_W, -HOLDING_W);
      else if (!Number.isNaN(givenW)) hold(hub, OUT_OF_REACH_C, Infinity, givenW, 0);
      else if (zones[z]!.thermostat === null) hold(hub, -Infinity, Infinity, 0, 0);
    }
  }

  function hold(hub: number, lowC: number, highC: number, mostW: number, leastW: number): void {
    stepper.holdLowC[hub] = lowC;
    stepper.holdHighC[hub] = highC;
    stepper.holdMaxW[hub] = mostW;
    stepper.holdMinW[hub] = leastW;
    stepper.holdRamps[hub] = 0;
  }

  return { load, set, holdGiven };
}
