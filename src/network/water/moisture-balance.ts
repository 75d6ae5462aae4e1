// Water in the air of every zone, step by step: releases, plants and soil, exchange with outdoors and between
// zones, one buffer node per zone for surfaces and furniture, condensation on panes and its drying. Flows and temperatures
// of the step in; humidity ratios, latent heats and the water's own books out.
// Method: mass balance per zone, solved for the mean of the step (a dense system as small as the zones are few), each zone
// going from its start to its end as the exponential of all that it is exchanged with does.
// A step is tried at temperatures and flows as they stand until its latent heat is the one the thermal network was solved
// with (latent-heat.ts), and then taken. Buffer node: src/physics/moisture-buffer.ts;
// it follows the humidity at the mean temperature of the faces, and what it takes leaves its latent heat on them;
// beds: beds.ts; dew: Lewis relation, src/physics/surface-condensation.ts.
// Left out: vapour through walls, latent heat of people's breath (their heat is a sensible gain), dew on leaves.

import type { Model } from '../../model/model.ts';
import { LATENT_HEAT, SEA_LEVEL_PRESSURE, VAPOUR_MASS_RATIO } from '../../physics/constants.ts';
import {
  humidityRatioUnchecked,
  saturationPressureHeld,
  vapourPressureFromRatio,
} from '../../physics/moist-air.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { Layout } from '../layout/layout.ts';
import { endByExactMean } from '../solver/step-mean.ts';
import type { Beds } from './beds.ts';
import { respondByLatentHeat } from './latent-response.ts';
import { createMoistureSources } from './moisture-sources.ts';
import {
  bufferedInStep,
  loadMoistureState,
  type MoistureInputs,
  type MoistureState,
  START_HUMIDITY,
  setStateStep,
} from './moisture-state.ts';
import { createPaneCondensation } from './pane-condensation.ts';
import { drainedInStep, SATURATION_EXCHANGE } from './saturated-air.ts';

export interface MoistureBalance {
  /** take a laid-out model in; air everywhere at half saturation */
  load(model: Model, layout: Layout, startC: number): void;
  /** relative humidity over water in the mean of the step, 0…1 */
  readonly humidity: Float64Array;
  /** latent heat of the tried step to each zone's air [W], and what a kelvin more there would add [W/K] */
  readonly airW: Float64Array;
  readonly airWPerK: Float64Array;
  /** latent heat of the tried step to each pane's inner node [W] */
  readonly paneW: Float64Array;
  /** panes that water met in the tried step; with none, paneW is 0 */
  wetPanes(): number;
  /** by zone · causes + cause, given off in the hour so far; what follows a schedule, in the whole hour [kg] */
  readonly byCause: Float64Array;
  /** what follows a schedule, by zone, cause and schedule index [g in the hour] */
  readonly scheduled: Float64Array;
  /** what gives off water */
  causes(): readonly string[];
  /** net condensation of the last step by zone [kg/s] */
  readonly condensation: Float64Array;
  /** brought by air from outdoors and other zones in the last step, by zone [kg/s] */
  readonly byAir: Float64Array;
  /** since the start of counting, by zone · zones + other zone: what air from the other brought beyond what it replaced [kg] */
  readonly broughtFrom: Float64Array;
  /** latent heat of what faces and furniture took up, still to be given to them, by zone [J] */
  readonly facesJ: Float64Array;
  /** about how much less heat they take by the kelvin they are warmer [W/K] */
  readonly facesWPerK: Float64Array;
  /** film on each pane [kg] */
  readonly film: Float64Array;
  readonly drained: Float64Array;
  /** water that a zone's air, buffer and panes hold more than at the start of counting [kg] */
  gained(zone: number): number;
  /** water received from outdoors less sent, less drained, plus released, since the start of counting [kg] */
  received(): number;
  /** water that entered, by air and by release, since the start of counting [kg] */
  entered(): number;
  startCounting(): void;
  /** after inputs.stepS changed */
  setStep(): void;
  /** relative humidity of the zones as they are now, into the inputs */
  readHumidity(): void;
  /** before the steps of an hour */
  beginHour(): void;
  /** the step's water at temperatures and flows as they stand; nothing moves on */
  tryStep(): void;
  /** what beds will give, their faces as foreseen, zones and panes as in the step before; nothing moves on */
  foresee(): void;
  /** take the tried step */
  endStep(): void;
}

/** Water of a run, with room for so much; load() before use. */
export function createMoistureBalance(
  capacity: EngineCapacity,
  inputs: MoistureInputs,
  state: MoistureState,
  beds: Beds,
): MoistureBalance {
  const paneCondensation = createPaneCondensation(state, inputs);
  const sources = createMoistureSources(capacity, state, inputs);
  let zones = 0;
  let panes = 0;
  /** share of the way to the air's humidity that buffers go in a step */
  let buffered = 0;
  const matrix = new Float64Array(capacity.zones * capacity.zones);
  const rhs = new Float64Array(capacity.zones);
  const broughtFrom = new Float64Array(capacity.zones * capacity.zones);

  function load(model: Model, layout: Layout, startC: number): void {
    zones = model.zones.length;
    panes = layout.panes.length;
    paneCondensation.load(zones, panes);
    sources.load(model);
    loadMoistureState(state, model, layout, startC, inputs.stepS);
    buffered = bufferedInStep(inputs.stepS);
    const startPa = state.zone.vapourPa[0]!;
    inputs.ratio.fill(humidityRatioUnchecked(startPa, SEA_LEVEL_PRESSURE));
    inputs.humidity.fill(START_HUMIDITY);
  }

  function tryStep(): void {
    beginStep();
    balance();
    // Each pass leaves one pane fewer to dry beyond its film, one face of a bed fewer to give, one room fewer past saturation.
    const most = paneCondensation.count() + beds.count() + 2 * zones;
    for (let pass = 0; pass < most && needsCorrection(); pass++) balance();
    if (beds.count() > 0) beds.respond(rhs);
    respondByLatentHeat(state, inputs, zones);
    paneCondensation.respond(rhs);
  }

  function foresee(): void {
    balance();
    beds.limit(rhs);
    beds.respond(rhs);
  }

  function endStep(): void {
    endZoneSteps();
    paneCondensation.endStep();
    drainExcess();
  }

  /** What is known at the step's start: saturation of the zones, and which panes water meets. */
  function beginStep(): void {
    const { pressurePerRatio, saturationPa, saturationRatio, heldAtSaturation, dewPointC, facesPa } =
      state.zone;
    const { zoneC, radiantC, ratio } = inputs;
    const { pressurePa } = inputs.weather;
    const zoneCount = zones;
    for (let z = 0; z < zoneCount; z++) {
      pressurePerRatio[z] = pressurePa / (VAPOUR_MASS_RATIO + ratio[z]!);
      const saturation = saturationPressureHeld(zoneC[z]!);
      saturationPa[z] = saturation;
      facesPa[z] = saturationPressureHeld(radiantC[z]!);
      saturationRatio[z] = humidityRatioUnchecked(saturation, pressurePa);
      heldAtSaturation[z] = 0;
      dewPointC[z] = Number.NaN;
    }
    paneCondensation.begin();
  }

  /** The humidity ratios in the mean of the step, into `rhs`, and at its end. */
  function balance(): void {
    const {
      airPerS,
      bufferExchange,
      bufferHumidity,
      scheduledKg,
      pressurePerRatio,
      saturationRatio,
      heldAtSaturation,
      freeExchange,
      endByMean: ways,
      endRatio,
      facesPa,
    } = state.zone;
    const { givenKg, perPa } = beds;
    const hasBeds = beds.count() > 0;
    const { outdoors, between, ratio } = inputs;
    const outdoorRatio = inputs.weather.humidityRatio;
    const rows = matrix;
    const right = rhs;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const buffer = bufferExchange[z]!;
      const air = airPerS[z]!;
      const outdoor = outdoors[z]!;
      let diagonal = outdoor + (buffer * pressurePerRatio[z]!) / facesPa[z]!;
      let given = outdoor * outdoorRatio + scheduledKg[z]!;
      given += buffer * bufferHumidity[z]!;
      if (hasBeds) {
        diagonal += perPa[z]! * pressurePerRatio[z]!;
        given += givenKg[z]!;
      }
      let apart = diagonal;
      for (let y = 0; y < count; y++) apart += between[z * count + y]!;
      const way = endByExactMean(apart, air);
      const old = ratio[z]!;
      ways[z] = way;
      diagonal += way * air;
      given += way * air * old;
      endRatio[z] = (1 - way) * old;
      freeExchange[z] = diagonal;
      if (heldAtSaturation[z] === 1) {
        const exchange = SATURATION_EXCHANGE * air;
        diagonal += exchange;
        given += exchange * (old + (saturationRatio[z]! - old) / way);
      }
      for (let y = 0; y < count; y++) {
        const flow = between[z * count + y]!;
        diagonal += flow;
        rows[z * count + y] = -flow;
      }
      rows[z * count + z]! += diagonal;
      right[z] = given;
    }
    if (paneCondensation.count() > 0) paneCondensation.addTo(rows, right);
    solveSmall(rows, right, count);
    for (let z = 0; z < count; z++) endRatio[z]! += ways[z]! * right[z]!;
  }

  /**
   * Panes that would give the air more than their film holds give it all and no more; faces of beds in air past their own
   * saturation give nothing. True if there was one.
   */
  function needsCorrection(): boolean {
    const { saturationRatio, heldAtSaturation, endRatio } = state.zone;
    const right = rhs;
    const count = zones;
    let found = beds.count() > 0 && beds.limit(right);
    for (let z = 0; z < count; z++) {
      const ratio = endRatio[z]!;
      if (heldAtSaturation[z] !== 2 && ratio <= saturationRatio[z]! !== (heldAtSaturation[z] === 0)) {
        heldAtSaturation[z]!++;
        found = true;
      }
    }
    return paneCondensation.limitDrying(right) || found;
  }

  function endZoneSteps(): void {
    const { scheduledKg, released, saturationPa, pressurePerRatio, bufferHumidity, vapourPa } = state.zone;
    const { received, entered, condensation, byAir, endRatio, meanHumidity, saturationRatio } = state.zone;
    const { facesJ, bufferKg, facesPa } = state.zone;
    const { stepS, outdoors, between, ratio } = inputs;
    const { pressurePa, humidityRatio: outdoorRatio } = inputs.weather;
    const fromZones = broughtFrom;
    const right = rhs;
    const count = zones;
    const hasBeds = beds.count() > 0;
    const share = buffered;
    for (let z = 0; z < count; z++) {
      ratio[z] = endRatio[z]!;
      condensation[z] = 0;
      const air = right[z]! * pressurePerRatio[z]!;
      // Linearised about the step before, so that the books close; the exact pressure follows from the ratio.
      vapourPa[z] = air;
      const most = Math.min(right[z]!, saturationRatio[z]!);
      meanHumidity[z] = vapourPressureFromRatio(most, pressurePa) / saturationPa[z]!;
      released[z] = scheduledKg[z]!;
      if (hasBeds) sources.endBedStep(z);
      let brought = outdoors[z]! * (outdoorRatio - right[z]!);
      received[z]! += (brought + released[z]!) * stepS;
      for (let y = 0; y < count; y++) {
        const fromNext = between[z * count + y]! * (right[y]! - right[z]!);
        brought += fromNext;
        fromZones[z * count + y]! += fromNext * stepS;
        // What passes one way came from outdoors and leaves for it, damper or drier by the zones on its way.
        const oneWay = between[z * count + y]! - between[y * count + z]!;
        if (oneWay > 0) received[z]! += oneWay * (right[y]! - right[z]!) * stepS;
      }
      byAir[z] = brought;
      entered[z]! += (outdoors[z]! * outdoorRatio + released[z]!) * stepS;
      const taken = share * (air / facesPa[z]! - bufferHumidity[z]!);
      bufferHumidity[z]! += taken;
      facesJ[z]! += LATENT_HEAT * bufferKg[z]! * taken;
    }
  }

  function drainExcess(): void {
    const { saturationRatio, drained, received, condensation, vapourPa } = state.zone;
    const { stepS, ratio } = inputs;
    const { pressurePa } = inputs.weather;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const excess = drainedInStep(state.zone, z, ratio[z]!);
      if (excess > 0) {
        ratio[z] = saturationRatio[z]!;
        drained[z]! += excess;
        received[z]! -= excess;
        condensation[z]! += excess / stepS;
      }
      vapourPa[z] = vapourPressureFromRatio(ratio[z]!, pressurePa);
    }
  }

  function readHumidity(): void {
    const { vapourPa } = state.zone;
    const { humidity, zoneC } = inputs;
    for (let z = 0; z < zones; z++) humidity[z] = vapourPa[z]! / saturationPressureHeld(zoneC[z]!);
  }

  function heldIn(zone: number): number {
    const { airKg, bufferKg, bufferHumidity } = state.zone;
    const { zoneOf, film } = state.pane;
    let held = airKg[zone]! * inputs.ratio[zone]! + bufferKg[zone]! * bufferHumidity[zone]!;
    for (let p = 0; p < panes; p++) if (zoneOf[p] === zone) held += film[p]!;
    return held;
  }

  const { airW, condensation, byAir, drained, received, entered, heldAtStart } = state.zone;
  const sumOf = (byZone: Float64Array) => byZone.reduce((sum, kg) => sum + kg, 0);
  return {
    load,
    humidity: state.zone.meanHumidity,
    airW,
    airWPerK: state.zone.airWPerK,
    paneW: state.pane.paneW,
    wetPanes: paneCondensation.count,
    byCause: sources.byCause,
    scheduled: sources.scheduled,
    causes: sources.causes,
    condensation,
    byAir,
    broughtFrom,
    facesJ: state.zone.facesJ,
    facesWPerK: state.zone.facesWPerK,
    film: state.pane.film,
    drained,
    gained: (zone) => heldIn(zone) - heldAtStart[zone]!,
    received: () => sumOf(received),
    entered: () => sumOf(entered),
    startCounting() {
      for (const array of [drained, received, entered, broughtFrom]) array.fill(0);
      for (let z = 0; z < zones; z++) heldAtStart[z] = heldIn(z);
    },
    setStep() {
      setStateStep(state, inputs.stepS, zones);
      buffered = bufferedInStep(inputs.stepS);
    },
    readHumidity,
    beginHour: sources.beginHour,
    tryStep,
    foresee,
    endStep,
  };
}

/** Gaussian elimination in place; the matrix is diagonally dominant, so no pivoting. */
function solveSmall(matrix: Float64Array, rhs: Float64Array, size: number): void {
  for (let k = 0; k < size; k++) {
    for (let i = k + 1; i < size; i++) {
      const factor = matrix[i * size + k]! / matrix[k * size + k]!;
      if (factor === 0) continue;
      for (let j = k; j < size; j++) matrix[i * size + j]! -= factor * matrix[k * size + j]!;
      rhs[i]! -= factor * rhs[k]!;
    }
  }
  for (let i = size - 1; i >= 0; i--) {
    let value = rhs[i]!;
    for (let j = i + 1; j < size; j++) value -= matrix[i * size + j]! * rhs[j]!;
    rhs[i] = value / matrix[i * size + i]!;
  }
}
