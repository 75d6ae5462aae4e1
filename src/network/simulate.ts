// One year of one model in one climate: the model laid out and loaded, warmed up across the year's end, then
// run hour by hour with four steps each. A model and a prepared climate in, a Year out.
// Each hour renews films, sun and set-points; each step renews air flows and water, then steps the network.

import type { Model } from '../model/model.ts';
import { GAS_CONSTANT_AIR, ROOM_AIR_K, SPECIFIC_HEAT_AIR } from '../physics/constants.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { createAirFlow } from './air/air-flow.ts';
import { createTemperatureSearch } from './air/temperature-search.ts';
import type { ZoneAir } from './air/zone-air.ts';
import { createHeatBalance } from './books/heat-balance.ts';
import { createHourlySums } from './books/hourly-sums.ts';
import { createRecorder } from './books/recorder.ts';
import { blankMoment, momentOf, scheduled, scheduledWithin } from './hour/clock.ts';
import { blankHourWeather, readHourWeather } from './hour/hour-weather.ts';
import {
  capacityFor,
  type EngineCapacity,
  fits,
  largerCapacity,
  USUAL_CAPACITY,
} from './layout/engine-capacity.ts';
import { airHub, type Layout, layOut, radiantHub } from './layout/layout.ts';
import { nodeB } from './solver/network-index.ts';
import { createStepper } from './solver/stepper.ts';
import { createHourlyGains } from './sun/hourly-gains.ts';
import { createFilms } from './surfaces/surface-films.ts';
import { createLatentHeat } from './water/latent-heat.ts';
import { createMoistureBalance } from './water/moisture-balance.ts';
import { moistureCauses } from './water/moisture-sources.ts';
import type { MoistureInputs } from './water/moisture-state.ts';
import type { Year } from './year.ts';

export interface SimulateOptions {
  /** keep node temperatures of every element by hour */
  readonly history?: boolean;
  /** steps an hour; 4 unless said, 1…60 */
  readonly stepsPerHour?: number;
  /** follow the water in the air; true unless said. Without it humidity stands still: for measuring what it costs */
  readonly water?: boolean;
  /** the year's columns are lent: the next run of this thread writes over them. Saves a run's largest allocation */
  readonly lend?: boolean;
  /** days run before the year starts to count; 28 unless said, 0…365 */
  readonly warmUpDays?: number;
}

const STEPS_PER_HOUR = 4;
const WARM_UP_DAYS = 28;
const START_C = 18;
/** Rounds of flow and temperature in a step; two to four are usual. */
const MOST_TRIALS = 30;

/** The engine of this thread; every run loads it anew. */
let engine: Engine | null = null;

/**
 * Run a year.
 *
 * @param model zones, elements, panes, openings; checked by requireModel
 * @param climate prepared once per climate, shared by all runs
 * @returns the hourly year with its books
 */
export function simulate(model: Model, climate: PreparedClimate, options: SimulateOptions = {}): Year {
  const layout = layOut(model, climate.year.pressurePa[0]! / (GAS_CONSTANT_AIR * ROOM_AIR_K));
  const needed = capacityFor(model, layout, moistureCauses(model).length);
  if (engine === null || !fits(needed, engine.capacity)) {
    engine = createEngine(largerCapacity(needed, engine?.capacity ?? USUAL_CAPACITY));
  }
  return engine.run(model, layout, climate, options);
}

interface Engine {
  readonly capacity: EngineCapacity;
  run(model: Model, layout: Layout, climate: PreparedClimate, options: SimulateOptions): Year;
}

function createEngine(capacity: EngineCapacity): Engine {
  const stepper = createStepper({ nodes: capacity.nodes, chains: capacity.chains, hubs: 2 * capacity.zones });
  const films = createFilms(capacity, stepper);
  const gains = createHourlyGains(capacity, stepper);
  const zoneC = new Float64Array(capacity.zones);
  const zoneRatio = new Float64Array(capacity.zones);
  const radiantC = new Float64Array(capacity.zones);
  const zoneHumidity = new Float64Array(capacity.zones);
  const weather = blankHourWeather();
  const air: ZoneAir = { zoneC, radiantC, zoneRatio, zoneHumidity, weather };
  const flows = createAirFlow(capacity, air);
  const paneC = new Float64Array(capacity.panes);
  const moment = blankMoment();
  const water: MoistureInputs = {
    moment,
    weather,
    stepS: 0,
    outdoors: flows.outdoors,
    between: flows.between,
    zoneC,
    ratio: zoneRatio,
    humidity: zoneHumidity,
    floorLight: gains.floorLight,
    paneC,
  };
  const moisture = createMoistureBalance(capacity, water);
  /** what the network answers to the trial temperatures in zoneC [°C] */
  const answerC = new Float64Array(capacity.zones);
  const search = createTemperatureSearch(capacity, zoneC, answerC);
  const sums = createHourlySums(capacity, stepper, flows, moisture, gains);
  const recorder = createRecorder(capacity, stepper, flows, moisture, gains, sums);
  const latent = createLatentHeat(capacity, stepper, gains, moisture);
  const heatBalance = createHeatBalance(capacity, stepper, gains, sums, latent);
  /** node of each pane's inner face */
  const paneInner = new Int32Array(capacity.panes);
  /** whose heating follows its schedule within the hour */
  const ramps = new Float64Array(capacity.zones);
  let anyRamp = false;
  let zones = 0;
  let panes = 0;
  let stepsPerHour = STEPS_PER_HOUR;
  let withWater = true;
  let modelZones: Model['zones'] = [];

  function runHour(climate: PreparedClimate, hour: number, counting: boolean): void {
    momentOf(hour, moment);
    latent.beginHour();
    readHourWeather(climate, hour, weather);
    films.renew(weather);
    gains.renew(hour, moment, weather);
    for (let z = 0; z < zones; z++) stepper.hubBoundaryC[airHub(z, zones)] = weather.dryBulbC;
    stepper.refreshSources();
    readZones();
    flows.beginHour(moment);
    if (withWater) moisture.beginHour();
    sums.begin();
    heatBalance.beginHour(moment.month);
    for (let n = 0; n < stepsPerHour; n++) {
      runStep(n);
      if (counting) sums.addStep();
    }
    if (counting) {
      recorder.endHour(hour, moment, weather);
      heatBalance.endHour(weather);
    }
  }

  function runStep(n: number): void {
    readZones();
    if (n === 0 || anyRamp) setThermostats(n);
    flows.beginStep(moment, (4 * n) % stepsPerHour === 0);
    if (withWater) latent.apply();
    stepper.beginStep();
    search.begin();
    for (let trial = 0; trial < MOST_TRIALS; trial++) {
      const depends = flows.renew(moment);
      if (flows.isNew() || (n === 0 && trial === 0)) linkAir();
      stepper.solve();
      readAnswers();
      if (!depends && !flows.wouldOpen(moment, answerC)) break;
      if (search.converged()) break;
    }
    stepper.endStep();
    readStepEnd();
    if (withWater) moisture.step();
  }

  function readZones(): void {
    const { hubC } = stepper;
    const airC = zoneC;
    const meanC = radiantC;
    const count = zones;
    for (let z = 0; z < count; z++) {
      airC[z] = hubC[airHub(z, count)]!;
      meanC[z] = hubC[radiantHub(z)]!;
    }
  }

  function readAnswers(): void {
    const { trialC } = stepper;
    const answers = answerC;
    const count = zones;
    for (let z = 0; z < count; z++) answers[z] = trialC[airHub(z, count)]!;
  }

  /** What the step ends at, for the water. */
  function readStepEnd(): void {
    const { nodeC } = stepper;
    const airC = zoneC;
    const answers = answerC;
    const faceC = paneC;
    const nodes = paneInner;
    const zoneCount = zones;
    const paneCount = panes;
    for (let z = 0; z < zoneCount; z++) airC[z] = answers[z]!;
    for (let p = 0; p < paneCount; p++) faceC[p] = nodeC[nodes[p]!]!;
  }

  function linkAir(): void {
    const { hubBoundary, hubLink } = stepper;
    const { outdoors, between } = flows;
    const { frameConductance } = gains;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const air = airHub(z, count);
      hubBoundary[air] = outdoors[z]! * SPECIFIC_HEAT_AIR + frameConductance[z]!;
      for (let y = 0; y < count; y++) {
        if (y === z) continue;
        hubLink[air * 2 * count + airHub(y, count)] = between[z * count + y]! * SPECIFIC_HEAT_AIR;
      }
    }
  }

  /** Set-points hold for the hour, unless they rise within it. */
  function setThermostats(n: number): void {
    const { holdLowC, holdHighC, holdMaxW, holdMinW } = stepper;
    for (let z = 0; z < zones; z++) {
      if (n > 0 && ramps[z] === 0) continue;
      const { thermostat } = modelZones[z]!;
      if (thermostat === null) continue;
      const hub = airHub(z, zones);
      const through = (n + 1) / stepsPerHour;
      holdLowC[hub] = thermostat.heatC ? scheduledWithin(thermostat.heatC, moment, through) : -Infinity;
      holdHighC[hub] = thermostat.coolC ? scheduled(thermostat.coolC, moment) : Infinity;
      holdMaxW[hub] = thermostat.heatCapacityW;
      holdMinW[hub] = -thermostat.coolCapacityW;
    }
  }

  function load(model: Model, layout: Layout, climate: PreparedClimate, options: SimulateOptions): void {
    stepsPerHour = options.stepsPerHour ?? STEPS_PER_HOUR;
    withWater = options.water ?? true;
    zones = model.zones.length;
    panes = layout.panes.length;
    modelZones = model.zones;
    water.stepS = 3600 / stepsPerHour;
    stepper.load(layout.network, water.stepS, START_C);
    films.load(model, layout);
    gains.load(model, layout, climate);
    moisture.load(model, layout, START_C);
    flows.load(model, water.stepS);
    sums.load(zones, model.openings.length);
    recorder.load(model, layout, options.history === true, options.lend === true);
    heatBalance.load(model, layout);
    zoneC.fill(START_C);
    search.load(zones);
    paneC.fill(0);
    latent.load(layout);
    modelZones.forEach(({ thermostat }, z) => {
      ramps[z] = thermostat?.heatC?.ramp ? 1 : 0;
    });
    anyRamp = modelZones.some(({ thermostat }) => thermostat?.heatC?.ramp);
    layout.panes.forEach(({ chain }, p) => {
      paneInner[p] = nodeB(stepper.first, chain);
    });
  }

  function run(model: Model, layout: Layout, climate: PreparedClimate, options: SimulateOptions): Year {
    load(model, layout, climate, options);
    const warmUpHours = Math.min(365, Math.max(0, options.warmUpDays ?? WARM_UP_DAYS)) * 24;
    for (let n = warmUpHours; n > 0; n--) runHour(climate, HOURS - n, false);
    flows.startCounting();
    moisture.startCounting();
    heatBalance.open();
    const heldBefore = moisture.held();
    for (let hour = 0; hour < HOURS; hour++) runHour(climate, hour, true);
    return {
      ...recorder.year(),
      heat: heatBalance.byCause(),
      books: heatBalance.close({
        held: moisture.held() - heldBefore,
        received: moisture.received(),
        released: recorder.releasedKg(),
        entered: moisture.entered(),
      }),
    };
  }

  return { capacity, run };
}
