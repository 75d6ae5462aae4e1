// One year of one model in one climate: the model laid out and loaded, warmed up across the year's end, then
// run hour by hour with one to four steps each. A model and a prepared climate in, a Year out.
// Each hour renews films, sun and set-points; each step renews air flows and water, then steps the network.

import type { Model } from '../model/model.ts';
import { GAS_CONSTANT_AIR, ROOM_AIR_K, SPECIFIC_HEAT_AIR } from '../physics/constants.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS, rowOfHour } from '../weather/typical-year.ts';
import { createAirFlow } from './air/air-flow.ts';
import { createTemperatureSearch } from './air/temperature-search.ts';
import { createHeatBalance } from './books/heat-balance.ts';
import { createHeatedOpen } from './books/heated-open.ts';
import { createHourlySums } from './books/hourly-sums.ts';
import { createRecorder } from './books/recorder.ts';
import { createCovers } from './covers/covers.ts';
import { blankGivenHeat, createGivenSeries, type RowSeries } from './given-series.ts';
import { createHeaters } from './heaters/heaters.ts';
import { createThermostats } from './heaters/thermostats.ts';
import { blankMoment, momentOf } from './hour/clock.ts';
import { PARTS_OF_DAY } from './hour/day-part.ts';
import { blankHourWeather, readHourWeather } from './hour/hour-weather.ts';
import {
  capacityFor,
  type EngineCapacity,
  fits,
  largerCapacity,
  USUAL_CAPACITY,
} from './layout/engine-capacity.ts';
import { airHub, type Layout, layOut, radiantHub } from './layout/layout.ts';
import { markWeekendAway } from './people/occupant-control.ts';
import { createWill } from './people/will.ts';
import type { ZoneAir } from './people/zone-air.ts';
import { endB, slotOf } from './solver/network-index.ts';
import { createStepper } from './solver/stepper.ts';
import { createHourlyGains } from './sun/hourly-gains.ts';
import { createFilms } from './surfaces/surface-films.ts';
import { createBeds } from './water/beds.ts';
import { MOST_MOVES } from './water/joint-search.ts';
import { createLatentHeat } from './water/latent-heat.ts';
import { createMoistureBalance } from './water/moisture-balance.ts';
import { moistureCauses } from './water/moisture-sources.ts';
import { createMoistureState, type MoistureInputs } from './water/moisture-state.ts';
import type { Year } from './year.ts';
import { createYearStart } from './year-start.ts';

export interface SimulateOptions {
  /** keep node temperatures of every element by hour */
  readonly history?: boolean;
  /** steps an hour, 1…60; unless said one, two or four as the hour needs */
  readonly stepsPerHour?: number;
  /** follow the water in the air; true unless said. Without it humidity stands still: for measuring what it costs */
  readonly water?: boolean;
  /** the year's columns are lent: the next run of this thread writes over them. Saves a run's largest allocation */
  readonly lend?: boolean;
  /** days run before the year starts to count, after the years lived in long steps; 7 unless said, 0…365 */
  readonly warmUpDays?: number;
  /** rows of the climate that count, going on past its end; the whole year unless said. Others stay as they were made */
  readonly period?: { readonly firstRow: number; readonly hours: number };
  /** what is known of the period's days, in place of schedules and rules */
  readonly series?: readonly RowSeries[];
  /** heat, power or both fail at this hour since the period's start, and stay away */
  readonly outage?: Outage;
  /** start with everything at this temperature and nothing lived before but the warm-up days, of which there are then none unless said [°C] */
  readonly startC?: number;
}

export interface Outage {
  readonly fromHour: number;
  /** heaters give nothing more and nobody lights a fire; what a stove's body holds it still gives */
  readonly noHeat: boolean;
  /** fans stand still, and the motors of windows, doors and covers where they are; wax openers beside the rooms go on */
  readonly noPower: boolean;
}

/** Steps of an hour in which something that moves is open, in which the sun shines, and in which neither is so. */
const MOVING_STEPS = 4;
const SUNNY_STEPS = 2;
const QUIET_STEPS = 1;
const WARM_UP_DAYS = 7;
const START_C = 18;
/** Hours of a day that a long step of the start stands for. */
const LONG_STEP_H = 24 / PARTS_OF_DAY;
/** Trials of flow and temperature in a round, and rounds of those and water in a step, with beds in it; few are usual of each. */
const MOST_TRIALS = 30;
const MOST_ROUNDS = 5;
const MOST_ROUNDS_WITH_BEDS = MOST_MOVES + 1;

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
  const zoneC = new Float64Array(capacity.zones);
  const zoneRatio = new Float64Array(capacity.zones);
  const radiantC = new Float64Array(capacity.zones);
  const covers = createCovers(capacity, zoneC, radiantC);
  const films = createFilms(capacity, stepper, covers.drawn);
  const gains = createHourlyGains(capacity, stepper, covers.shading);
  const zoneHumidity = new Float64Array(capacity.zones);
  const weather = blankHourWeather();
  const co2Ppm = new Float64Array(capacity.zones);
  const air: ZoneAir = { zoneC, radiantC, zoneRatio, zoneHumidity, co2Ppm, weather };
  const will = createWill(capacity.zones, air);
  const openAsGiven = new Float64Array(capacity.openings).fill(Number.NaN);
  const flows = createAirFlow(capacity, air, will, openAsGiven);
  const paneC = new Float64Array(capacity.panes);
  const moment = blankMoment();
  const paneFilm = new Float64Array(capacity.panes);
  const water: MoistureInputs = {
    moment,
    weather,
    stepS: 0,
    outdoors: flows.outdoors,
    between: flows.between,
    zoneC,
    radiantC,
    ratio: zoneRatio,
    humidity: zoneHumidity,
    paneC,
    paneFilm,
  };
  const waterState = createMoistureState(capacity);
  const beds = createBeds(capacity, stepper, water, waterState);
  const moisture = createMoistureBalance(capacity, water, waterState, beds);
  /** what the network answers to the trial temperatures in zoneC [°C] */
  const answerC = new Float64Array(capacity.zones);
  const search = createTemperatureSearch(capacity, zoneC, answerC);
  const givenHeat = blankGivenHeat(capacity.zones);
  const heaters = createHeaters(capacity, stepper, will, air, givenHeat);
  const sums = createHourlySums(capacity, stepper, flows, moisture, gains, heaters.watt);
  const heatedOpen = createHeatedOpen(capacity, stepper, flows, will.rooms.isRoom, will.rooms.fireW);
  const recorder = createRecorder(capacity, stepper, flows, moisture, gains, sums, heatedOpen, co2Ppm);
  const latent = createLatentHeat(capacity, stepper, moisture, beds);
  const heatBalance = createHeatBalance(capacity, stepper, gains, sums, latent, beds);
  const paneChain = new Int32Array(capacity.panes);
  const start = createYearStart(
    {
      stepper,
      covers,
      gains,
      flows,
      moment,
      weather,
      setStep,
      readZones,
      renewFilms,
      beginHour() {
        readZones();
        will.beginHour(moment, LONG_STEP_H);
        will.beginStep(stepper.heldW, airHub(0, zones), LONG_STEP_H);
        flows.beginHour(moment);
        beginNetworkHour();
      },
      solveStep() {
        flows.beginStep(moment, true, 0);
        solveStep(true);
      },
    },
    capacity.zones,
  );
  let zones = 0;
  let panes = 0;
  /** fixed for the run, or 0; and those of the hour that runs */
  let fixedSteps = 0;
  let steps = MOVING_STEPS;
  let withWater = true;
  const given = createGivenSeries(
    capacity.zones,
    { ...gains.schedules, moisture: moisture.scheduled, breath: recorder.breath },
    openAsGiven,
    givenHeat,
  );
  const thermostats = createThermostats(capacity.zones, stepper, will, heaters.own, given, givenHeat);
  let anyGiven = false;
  let anyHeater = false;
  let outage: Outage | null = null;
  let anyMoved = false;
  let awayWeekends = false;
  /** of the hour that runs, since the period's start; below 0 in the warm-up */
  let hourIn = 0;

  function runHour(climate: PreparedClimate, hour: number, counting: boolean): void {
    momentOf(hour, moment);
    if (awayWeekends) markWeekendAway(moment);
    if (anyGiven) beginGiven();
    readHourWeather(climate, hour, weather);
    readZones();
    will.beginHour(moment, 1);
    will.beginStep(stepper.heldW, airHub(0, zones), 1 / steps);
    if (outage !== null) cutPower(outage.noPower && hourIn >= outage.fromHour);
    if (anyHeater) heaters.decide(moment, !isCold());
    flows.beginHour(moment);
    chooseSteps();
    covers.renew(moment, weather);
    gains.renew(hour, moment, weather);
    if (anyHeater) heaters.putOn();
    renewFilms();
    beginNetworkHour();
    sums.begin();
    heatBalance.beginHour(moment.month);
    for (let n = 0; n < steps; n++) {
      runStep(n);
      sums.addStep();
      if (counting) heatedOpen.addStep(weather);
    }
    recorder.breathe(moment);
    if (counting) {
      recorder.endHour(hour, moment, weather);
      covers.record(hour);
      if (anyHeater) heaters.record(hour);
      heatBalance.endHour(weather);
    }
  }

  /** What is known of the hour and of where openings stand as it begins. */
  function beginGiven(): void {
    given.beginHour(moment);
    if (anyMoved) given.readPositions(hourIn);
  }

  /** Conductances of the hour, once its sun is written, which opens leaves. */
  function renewFilms(): void {
    films.renew(weather);
    for (let p = 0; p < panes; p++) paneFilm[p] = stepper.endHubG[slotOf(endB(paneChain[p]!), 0)]!;
    beds.renew(withWater);
    latent.renewFaces(withWater);
    stepper.refreshEnds();
  }

  function runStep(n: number): void {
    if (n > 0) readZones();
    will.beginStep(stepper.heldW, airHub(0, zones), n === 0 ? 0 : 1 / steps);
    thermostats.set(moment, n, steps, isCold());
    if (anyGiven) thermostats.holdGiven();
    if (anyMoved) given.readPositions(hourIn + (n + 0.5) / steps);
    flows.beginStep(moment, (4 * n) % steps === 0, (n * 3600) / steps);
    solveStep(n === 0);
  }

  function cutPower(isOut: boolean): void {
    flows.cutPower(isOut);
    covers.cutPower(isOut);
  }

  /** No heater gives anything. */
  function isCold(): boolean {
    return outage?.noHeat === true && hourIn >= outage.fromHour;
  }

  function chooseSteps(): void {
    const mayMove = flows.mayMove() || (anyMoved && given.opensWithin(hourIn));
    const needed = mayMove ? MOVING_STEPS : weather.darkShare < 1 ? SUNNY_STEPS : QUIET_STEPS;
    const chosen = fixedSteps > 0 ? fixedSteps : needed;
    if (chosen === steps) return;
    steps = chosen;
    setStep(3600 / steps);
  }

  function setStep(seconds: number): void {
    water.stepS = seconds;
    stepper.setStep(seconds);
    flows.setStep(seconds);
    moisture.setStep();
  }

  /** Sources, outdoor air and water of the hour, once its weather and gains are written. */
  function beginNetworkHour(): void {
    const { givenW, lostW } = flows;
    for (let z = 0; z < zones; z++) {
      const hub = airHub(z, zones);
      stepper.hubBoundaryC[hub] = weather.dryBulbC;
      stepper.hubW[hub]! += givenW[z]! - lostW[z]!;
    }
    stepper.refreshSources();
    latent.beginHour();
    if (withWater) moisture.beginHour();
  }

  /** One step of any length: temperatures, flows and water that agree. */
  function solveStep(isFirst: boolean): void {
    if (withWater) latent.beginStep();
    stepper.sweep();
    if (withWater && beds.count() > 0) foreseeBeds();
    stepper.beginSolving();
    const mostRounds = beds.count() > 0 ? MOST_ROUNDS_WITH_BEDS : MOST_ROUNDS;
    for (let round = 1; ; round++) {
      findTemperatures(isFirst && round === 1);
      stepper.finish();
      if (!withWater) break;
      readMeans();
      moisture.tryStep();
      if (round === mostRounds || latent.agrees()) break;
    }
    stepper.endStep();
    if (!withWater) return;
    latent.endStep();
    moisture.endStep();
  }

  /** Beds with what they will give, from where their faces are on the way to; it spares most steps a second round. */
  function foreseeBeds(): void {
    beds.readMeans();
    moisture.foresee();
    beds.addMissing();
  }

  /** Air temperatures and flows that agree with each other. */
  function findTemperatures(isFirst: boolean): void {
    search.begin();
    for (let trial = 0; trial < MOST_TRIALS; trial++) {
      const depends = flows.renew();
      if (flows.isNew() || (isFirst && trial === 0)) linkAir();
      stepper.solve();
      readAnswers();
      if (!depends && !flows.wouldOpen(answerC)) break;
      if (search.converged()) break;
    }
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
    if (withWater) moisture.readHumidity();
  }

  function readAnswers(): void {
    const { hubMeanC } = stepper;
    const answers = answerC;
    const count = zones;
    for (let z = 0; z < count; z++) answers[z] = hubMeanC[airHub(z, count)]!;
  }

  /** Means of the step as it is solved, for the water. */
  function readMeans(): void {
    const { hubMeanC } = stepper;
    const airC = zoneC;
    const meanC = radiantC;
    const answers = answerC;
    const zoneCount = zones;
    for (let z = 0; z < zoneCount; z++) {
      airC[z] = answers[z]!;
      meanC[z] = hubMeanC[radiantHub(z)]!;
    }
    stepper.readInnerMeans(paneChain, panes, paneC);
    beds.readMeans();
  }

  function linkAir(): void {
    const { hubBoundary, hubLink } = stepper;
    const { outdoors, recovered, spared, between } = flows;
    const { frameConductance } = gains;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const air = airHub(z, count);
      hubBoundary[air] =
        (outdoors[z]! - recovered[z]! - spared[z]!) * SPECIFIC_HEAT_AIR + frameConductance[z]!;
      for (let y = 0; y < count; y++) {
        if (y === z) continue;
        hubLink[air * 2 * count + airHub(y, count)] = between[z * count + y]! * SPECIFIC_HEAT_AIR;
      }
    }
  }

  function load(model: Model, layout: Layout, climate: PreparedClimate, options: SimulateOptions): void {
    fixedSteps = options.stepsPerHour ?? 0;
    steps = options.stepsPerHour ?? MOVING_STEPS;
    withWater = options.water ?? true;
    zones = model.zones.length;
    panes = layout.panes.length;
    moment.calendar = climate.calendar;
    water.stepS = 3600 / steps;
    const startC = options.startC ?? START_C;
    stepper.load(layout.network, water.stepS, startC);
    films.load(model, layout);
    beds.load(model, layout);
    gains.load(model, layout, climate);
    covers.load(layout, gains.paneLight());
    moisture.load(model, layout, startC);
    will.load(model);
    flows.load(model, layout.roomDensity, water.stepS);
    sums.load(zones, model.openings.length);
    heatedOpen.load(model);
    heaters.load(model, layout);
    anyHeater = heaters.any();
    outage = options.outage ?? null;
    awayWeekends = model.awayWeekends === true;
    moment.absent = false;
    moment.leaves = false;
    cutPower(false);
    recorder.load(model, layout, options.history === true, options.lend === true);
    heatBalance.load(model, layout);
    zoneC.fill(startC);
    search.load(zones);
    paneC.fill(0);
    latent.load(layout);
    given.load(options.series ?? [], model, moisture.causes(), recorder.breathPerPerson());
    anyGiven = given.any();
    anyMoved = given.moves();
    thermostats.load(model.zones);
    layout.panes.forEach(({ chain }, p) => {
      paneChain[p] = chain;
    });
  }

  function run(model: Model, layout: Layout, climate: PreparedClimate, options: SimulateOptions): Year {
    load(model, layout, climate, options);
    const { firstRow, hours } = options.period ?? { firstRow: 0, hours: HOURS };
    const isGivenStart = options.startC !== undefined;
    const warmUpDays = Math.min(365, Math.max(0, options.warmUpDays ?? (isGivenStart ? 0 : WARM_UP_DAYS)));
    if (!isGivenStart) start.liveUntil(365 + Math.floor(firstRow / 24) - warmUpDays, climate, model.zones);
    setStep(3600 / steps);
    const warmUpHours = 24 * warmUpDays + (isGivenStart ? 0 : firstRow % 24);
    for (hourIn = -warmUpHours; hourIn < 0; hourIn++) runHour(climate, rowOfHour(firstRow, hourIn), false);
    flows.startCounting();
    covers.startCounting();
    moisture.startCounting();
    heatBalance.open();
    for (hourIn = 0; hourIn < hours; hourIn++) runHour(climate, rowOfHour(firstRow, hourIn), true);
    const drawn = covers.years();
    const stoves = heaters.years();
    const recorded = recorder.year();
    return {
      ...recorded,
      ...(drawn.length > 0 && { covers: drawn }),
      ...(stoves.length > 0 && { stoves }),
      heat: heatBalance.byCause(),
      books: heatBalance.close({
        held: recorded.zones.reduce((sum, { waterGainKg }) => sum + waterGainKg, 0),
        received: moisture.received(),
        released: recorder.releasedKg(),
        entered: moisture.entered(),
      }),
    };
  }

  return { capacity, run };
}
