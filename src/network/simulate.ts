// One year of one model in one climate: the model laid out and compiled, warmed up across the year's end, then
// run hour by hour with four steps each. A model and a prepared climate in, a Year out; nothing else is touched.
// Each hour renews films, sun and set-points; each step renews air flows and water, then steps the network.

import type { Model } from '../model/model.ts';
import type { PreparedClimate } from '../weather/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { type AirState, compileAirFlow } from './air-flow.ts';
import { momentOf, scheduled, scheduledWithin } from './clock.ts';
import { compileDrivers } from './drivers.ts';
import { AIR_SPECIFIC_HEAT, airHub, layOut } from './layout.ts';
import { compileLedger } from './ledger.ts';
import { compileRecorder } from './recorder.ts';
import { compileStepper } from './stepper.ts';
import { compileFilms, type OutdoorHour } from './surface-films.ts';
import { compileVapour } from './vapour.ts';
import type { Year } from './year.ts';

export interface SimulateOptions {
  /** keep node temperatures of every element by hour */
  readonly history?: boolean;
  /** steps an hour; 4 unless said, 1…60 */
  readonly stepsPerHour?: number;
  /** follow the water in the air; true unless said. Without it humidity stands still: for measuring what it costs */
  readonly water?: boolean;
  /** days run before the year starts to count; 28 unless said, 0…365 */
  readonly warmUpDays?: number;
}

const STEPS_PER_HOUR = 4;
const WARM_UP_DAYS = 28;
const START_C = 18;
/** Share of the latent heat owed that a step pays; of 0.5 to 1 the one whose year changed least with a finer step. */
const LATENT_SHARE = 0.6;
/** Rounds of flow and temperature in a step; two or three are usual, an opener on the move takes up to ten. */
const MOST_TRIALS = 12;

/**
 * Run a year.
 *
 * @param model zones, elements, panes, openings; checked by requireModel
 * @param climate prepared once per climate, shared by all runs
 * @returns the hourly year with its books
 */
export function simulate(model: Model, climate: PreparedClimate, options: SimulateOptions = {}): Year {
  const stepsPerHour = options.stepsPerHour ?? STEPS_PER_HOUR;
  const warmUpHours = Math.min(365, Math.max(0, options.warmUpDays ?? WARM_UP_DAYS)) * 24;
  const stepS = 3600 / stepsPerHour;
  const withWater = options.water ?? true;
  const zones = model.zones.length;
  const roomDensity = climate.year.pressurePa[0]! / (287.05 * 293.15);
  const layout = layOut(model, roomDensity);
  const stepper = compileStepper(layout.network, stepS, START_C);
  const films = compileFilms(model, layout, stepper);
  const drivers = compileDrivers(model, layout, stepper, climate);
  const zoneC = new Float64Array(zones).fill(START_C);
  const vapour = compileVapour(model, layout, roomDensity, START_C);
  const air: AirState = { zoneC, zoneRatio: vapour.ratio, outdoorC: START_C, wind: 0, density: roomDensity };
  const flows = compileAirFlow(model, air);
  const recorder = compileRecorder(model, layout, stepper, flows, vapour, drivers, options.history === true);
  /** latent heat on each pane's inner node in the step that runs [W] */
  const latentInNodes = new Float64Array(layout.panes.length);
  const ledger = compileLedger(model, layout, stepper, drivers, latentInNodes);
  const outdoor: OutdoorHour = { dryBulbC: 0, skyC: 0, wind: 0, groundC: 0, dark: true };
  const paneC = new Float64Array(layout.panes.length);
  const paneInner = Int32Array.from(layout.panes, ({ chain }) => stepper.first[chain + 1]! - 1);
  const frames = drivers.frameConductance;
  const owedAir = new Float64Array(zones);
  const owedPanes = new Float64Array(layout.panes.length);
  const moment = { hour: 0, hourOfDay: 0, day: 0, month: 0, weekend: false };
  const vapourInputs = {
    moment,
    stepS,
    outdoorRatio: 0,
    pressurePa: 0,
    outdoors: flows.outdoors,
    between: flows.between,
    zoneC,
    floorLight: drivers.floorLight,
    paneC,
  };

  function runHour(hour: number, counting: boolean): void {
    momentOf(hour, moment);
    outdoor.dryBulbC = climate.year.dryBulbC[hour]!;
    outdoor.groundC = outdoor.dryBulbC;
    outdoor.skyC = climate.skyTempC[hour]!;
    outdoor.wind = climate.year.windSpeed[hour]!;
    outdoor.dark = climate.cosZenith[hour]! <= 0;
    air.outdoorC = outdoor.dryBulbC;
    air.wind = outdoor.wind;
    air.density = climate.airDensity[hour]!;
    vapourInputs.outdoorRatio = climate.humidityRatio[hour]!;
    vapourInputs.pressurePa = climate.year.pressurePa[hour]!;
    films.renew(outdoor);
    drivers.renew(hour, moment);
    for (let z = 0; z < zones; z++) stepper.hubBoundaryC[airHub(z, zones)] = outdoor.dryBulbC;
    stepper.refreshSources();
    for (let z = 0; z < zones; z++) zoneC[z] = stepper.hubC[airHub(z, zones)]!;
    flows.beginHour(moment);
    if (withWater) vapour.beginHour(vapourInputs);
    recorder.beginHour();
    ledger.beginHour();
    for (let n = 0; n < stepsPerHour; n++) {
      runStep((n + 1) / stepsPerHour);
      if (!counting) continue;
      recorder.addStep();
      ledger.addStep();
    }
    if (counting) {
      recorder.endHour(hour, moment, outdoor.dryBulbC);
      ledger.endHour(moment.month);
    }
  }

  function runStep(through: number): void {
    for (let z = 0; z < zones; z++) {
      zoneC[z] = stepper.hubC[airHub(z, zones)]!;
      setThermostat(z, through);
    }
    flows.beginStep(moment, stepS, ((through - 1 / stepsPerHour) * 4) % 1 === 0);
    applyLatent();
    stepper.beginStep();
    for (let trial = 0; trial < MOST_TRIALS; trial++) {
      linkAir();
      stepper.solve();
      for (let z = 0; z < zones; z++) zoneC[z] = stepper.trialC[airHub(z, zones)]!;
      if (flows.refine(moment)) break;
    }
    stepper.endStep();
    for (let p = 0; p < paneC.length; p++) paneC[p] = stepper.nodeC[paneInner[p]!]!;
    if (withWater) vapour.step(vapourInputs);
  }

  function linkAir(): void {
    for (let z = 0; z < zones; z++) {
      stepper.hubBoundary[airHub(z, zones)] = flows.outdoors[z]! * AIR_SPECIFIC_HEAT + frames[z]!;
      for (let y = 0; y < zones; y++) {
        if (y === z) continue;
        stepper.hubLink[airHub(z, zones) * 2 * zones + airHub(y, zones)] =
          flows.between[z * zones + y]! * AIR_SPECIFIC_HEAT;
      }
    }
  }

  /**
   * Latent heat of the water, owed by one step and paid over the next ones, most of it in the first. Paid all at
   * once it would answer a step late to itself, and a wet, closed room would ring.
   */
  function applyLatent(): void {
    for (let z = 0; z < zones; z++) {
      owedAir[z]! += vapour.airW[z]!;
      const paid = owedAir[z]! * LATENT_SHARE;
      owedAir[z]! -= paid;
      stepper.hubW[airHub(z, zones)] = drivers.airGain[z]! + paid;
    }
    let changed = false;
    for (let p = 0; p < paneC.length; p++) {
      owedPanes[p]! += vapour.paneW[p]!;
      const paid = owedPanes[p]! * LATENT_SHARE;
      owedPanes[p]! -= paid;
      if (paid === latentInNodes[p]!) continue;
      stepper.nodeW[paneInner[p]!]! += paid - latentInNodes[p]!;
      latentInNodes[p] = paid;
      changed = true;
    }
    if (changed) stepper.refreshSources();
  }

  function setThermostat(z: number, through: number): void {
    const { thermostat } = model.zones[z]!;
    if (thermostat === null) return;
    const hub = airHub(z, zones);
    stepper.holdLowC[hub] = thermostat.heatC ? scheduledWithin(thermostat.heatC, moment, through) : -Infinity;
    stepper.holdHighC[hub] = thermostat.coolC ? scheduled(thermostat.coolC, moment) : Infinity;
    stepper.holdMaxW[hub] = thermostat.heatCapacityW;
    stepper.holdMinW[hub] = -thermostat.coolCapacityW;
  }

  for (let n = warmUpHours; n > 0; n--) {
    latentInNodes.fill(0);
    runHour(HOURS - n, false);
  }
  flows.startCounting();
  vapour.startCounting();
  ledger.open();
  const heldBefore = vapour.held();
  for (let hour = 0; hour < HOURS; hour++) {
    latentInNodes.fill(0);
    runHour(hour, true);
  }
  const water = vapour.held() - heldBefore;
  return {
    ...recorder.year(),
    heat: ledger.byCause(),
    books: ledger.close({
      held: water,
      received: vapour.received(),
      released: recorder.releasedKg(),
      entered: vapour.entered(),
    }),
  };
}
