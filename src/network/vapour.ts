// Water in the air of every zone, step by step: releases, plants and soil, exchange with outdoors and between
// zones, one buffer node per zone for surfaces and furniture, dew and its drying on panes. Flows and temperatures
// of the step in; humidity ratios, latent heats and the water's own books out.
// Method: mass balance per zone, implicit in the humidity ratio (a dense system as small as the zones are few).
// Latent heat is handed to the thermal network for the next step. Buffer node: src/physics/moisture-buffer.ts;
// canopy: src/physics/transpiration.ts; dew: Lewis relation, src/physics/surface-condensation.ts.
// Left out: vapour through walls, latent heat of people's breath (their heat is a sensible gain), wet crops.

import type { Model } from '../model/model.ts';
import { dewPointUnchecked, saturationPressureUnchecked } from '../physics/moist-air.ts';
import { addToTable, type Moment, TABLE_PLACES } from './clock.ts';
import type { EngineRoom } from './engine-room.ts';
import type { Layout } from './layout.ts';
import { type Bed, bedOf, LATENT_J_PER_KG, readyBed } from './planted-bed.ts';
import { BUFFER_S, createVapourState, loadVapourState, START_HUMIDITY } from './vapour-state.ts';

const KELVIN = 273.15;
/** Holds fog-filled air at saturation in the balance: this many times the air's own water capacity a step. */
const FOG_PULL = 1000;

export interface Vapour {
  /** take a laid-out model in; air everywhere at half saturation */
  load(model: Model, layout: Layout, startC: number): void;
  /** relative humidity over water at the end of the step, 0…1 */
  readonly humidity: Float64Array;
  /** latent heat to each zone's air [W], to be applied in the next step */
  readonly airW: Float64Array;
  /** latent heat to each pane's inner node [W], to be applied in the next step */
  readonly paneW: Float64Array;
  /** panes that water met in the last step; with none, paneW is 0 */
  wetPanes(): number;
  /** by zone · causes + cause, given off in the hour so far; what follows a schedule, in the whole hour [kg] */
  readonly byCause: Float64Array;
  /** what gives off water */
  causes(): readonly string[];
  /** net dew of the last step by zone [kg/s] */
  readonly dew: Float64Array;
  /** film on each pane [kg] */
  readonly film: Float64Array;
  readonly drained: Float64Array;
  /** water now held by air, buffers and films [kg] */
  held(): number;
  /** water received from outdoors less sent, less drained, plus released, since the start of counting [kg] */
  received(): number;
  /** water that entered, by air and by release, since the start of counting [kg] */
  entered(): number;
  startCounting(): void;
  /** before the steps of an hour */
  beginHour(): void;
  step(): void;
}

/** What the water depends on, written by the run: scalars before each hour, arrays before each step. */
export interface VapourInputs {
  readonly moment: Moment;
  stepS: number;
  outdoorRatio: number;
  pressurePa: number;
  /** exchange of each zone with outdoors, and between zones [kg/s] */
  readonly outdoors: Float64Array;
  readonly between: Float64Array;
  readonly zoneC: Float64Array;
  /** humidity ratio of each zone, moved on by the step [kg/kg dry air] */
  readonly ratio: Float64Array;
  /** relative humidity of each zone over water, written by the step, 0…1 */
  readonly humidity: Float64Array;
  /** light on each zone's floor [W/m²] */
  readonly floorLight: Float64Array;
  /** inner face of each pane [°C] */
  readonly paneC: Float64Array;
}

export const PLANT_CAUSE = 'plants';
export const SOIL_CAUSE = 'soil and water';

/** Water of a run, with room for so much; load() before use. */
export function createVapour(room: EngineRoom, inputs: VapourInputs): Vapour {
  const state = createVapourState(room);
  let zones = 0;
  let panes = 0;
  let wets = 0;
  let causes: readonly string[] = [];
  let beds: (Bed | null)[] = [];
  let plantCause = -1;
  let soilCause = -1;
  const byCause = new Float64Array(room.zones * room.causes);
  /** what follows a schedule, by zone, cause and place [g in the hour] */
  const releases = new Float64Array(room.zones * room.causes * TABLE_PLACES);
  const matrix = new Float64Array(room.zones * room.zones);
  const rhs = new Float64Array(room.zones);

  function load(model: Model, layout: Layout, startC: number): void {
    zones = model.zones.length;
    panes = layout.panes.length;
    wets = 0;
    beds = model.zones.map(({ planting }) => (planting === null ? null : bedOf(planting)));
    causes = moistureCauses(model);
    plantCause = causes.indexOf(PLANT_CAUSE);
    soilCause = causes.indexOf(SOIL_CAUSE);
    for (const array of [releases, byCause]) array.fill(0);
    model.zones.forEach(({ moisture }, z) => {
      for (const { cause, rate } of moisture) {
        const row = z * causes.length + causes.indexOf(cause);
        addToTable(releases, row * TABLE_PLACES, rate, 1);
      }
    });
    loadVapourState(state, model, layout, startC, inputs.stepS);
    const startPa = state.zone.pressure[0]!;
    inputs.ratio.fill((0.622 * startPa) / (101_325 - startPa));
    inputs.humidity.fill(START_HUMIDITY);
  }

  function step(): void {
    beginStep();
    balance();
    // Each pass leaves one pane fewer to dry beyond its film, one bed fewer to dry into full air, one room fewer over it.
    for (let pass = 0; pass < wets + 3 * zones && corrects(); pass++) balance();
    settleZones();
    settlePanes();
    settleFog();
  }

  /** What is known at the step's start: saturation of the zones, and which panes water meets. */
  function beginStep(): void {
    const { perRatio, airW, dew, saturated, full, foggy, bedDries, plantsPull, soilPull } = state.zone;
    const { dewPointC, pressure } = state.zone;
    const { zoneOf, film, paneW, wet } = state.pane;
    const { pressurePa, zoneC, ratio, paneC } = inputs;
    const zoneCount = zones;
    const paneCount = panes;
    for (let z = 0; z < zoneCount; z++) {
      perRatio[z] = pressurePa / (0.622 + ratio[z]!);
      airW[z] = 0;
      dew[z] = 0;
      const saturation = saturationPressureUnchecked(clampC(zoneC[z]!));
      saturated[z] = saturation;
      full[z] = (0.622 * saturation) / (pressurePa - saturation);
      foggy[z] = 0;
      bedDries[z] = plantsPull[z]! + soilPull[z]! > 0 ? 1 : 0;
      dewPointC[z] = Number.NaN;
    }
    for (let w = 0; w < wets; w++) paneW[wet[w]!] = 0;
    wets = 0;
    for (let p = 0; p < paneCount; p++) {
      // A dry pane above the dew point takes no dew: no need to know its saturation; nor the dew point, by a warm pane.
      if (film[p] === 0) {
        const z = zoneOf[p]!;
        if (paneC[p]! >= zoneC[z]!) continue;
        if (Number.isNaN(dewPointC[z]!)) dewPointC[z] = dewPointUnchecked(pressure[z]!);
        if (paneC[p]! > dewPointC[z]!) continue;
      }
      meetPane(p);
    }
  }

  /** Dew, or drying of what is there, as a conductance to the pane's saturation; drying the last drop as a rate. */
  function meetPane(p: number): void {
    const { zoneOf, film, transfer, wet, dewMode, dewPull, saturation } = state.pane;
    const { stepS, paneC } = inputs;
    const full = saturationPressureUnchecked(clampC(paneC[p]!));
    saturation[p] = full;
    const pull = transfer[p]! / (paneC[p]! + KELVIN);
    const drying = pull * (full - state.zone.pressure[zoneOf[p]!]!);
    wet[wets++] = p;
    if (film[p]! >= drying * stepS) {
      dewMode[p] = 1;
      dewPull[p] = pull;
    } else {
      dewMode[p] = 2;
      dewPull[p] = film[p]! / stepS;
    }
  }

  /** The humidity ratios at the step's end, into `rhs`. */
  function balance(): void {
    const { airPerS, bufferPulls, bufferHumidity, scheduledKg, perRatio, saturated, full, foggy } =
      state.zone;
    const { plantsKg, plantsPull, soilKg, soilPull, bedDries } = state.zone;
    const { outdoorRatio, outdoors, between, ratio } = inputs;
    const rows = matrix;
    const right = rhs;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const buffer = bufferPulls[z]!;
      const air = airPerS[z]!;
      const outdoor = outdoors[z]!;
      let diagonal = air + outdoor + (buffer * perRatio[z]!) / saturated[z]!;
      let given = air * ratio[z]! + outdoor * outdoorRatio + scheduledKg[z]!;
      given += buffer * bufferHumidity[z]! + (plantsKg[z]! + soilKg[z]!);
      if (bedDries[z] === 1) {
        const pull = plantsPull[z]! + soilPull[z]!;
        diagonal += pull * perRatio[z]!;
        given += pull * saturated[z]!;
      }
      if (foggy[z] === 1) {
        const pull = FOG_PULL * air;
        diagonal += pull;
        given += pull * full[z]!;
      }
      for (let y = 0; y < count; y++) {
        const flow = between[z * count + y]!;
        diagonal += flow;
        rows[z * count + y] = -flow;
      }
      rows[z * count + z]! += diagonal;
      right[z] = given;
    }
    if (wets > 0) balancePanes();
    solveSmall(rows, right, count);
  }

  function balancePanes(): void {
    const { zoneOf, wet, dewMode, dewPull, saturation } = state.pane;
    const { perRatio } = state.zone;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      if (dewMode[p] === 1) {
        matrix[z * zones + z]! += dewPull[p]! * perRatio[z]!;
        rhs[z]! += dewPull[p]! * saturation[p]!;
      } else {
        rhs[z]! += dewPull[p]!;
      }
    }
  }

  /**
   * Panes that would give the air more than their film holds give it all and no more; beds whose air is past
   * saturation stop at what light drives. True if there was one.
   */
  function corrects(): boolean {
    const { bedDries, perRatio, saturated, full, foggy } = state.zone;
    const right = rhs;
    const count = zones;
    let found = false;
    for (let z = 0; z < count; z++) {
      const ratio = right[z]!;
      if (bedDries[z] === 1 && ratio * perRatio[z]! > saturated[z]!) {
        bedDries[z] = 0;
        found = true;
      }
      if (foggy[z] !== 2 && ratio <= full[z]! !== (foggy[z] === 0)) {
        foggy[z]!++;
        found = true;
      }
    }
    for (let w = 0; w < wets; w++) if (driesUp(state.pane.wet[w]!)) found = true;
    return found;
  }

  /** A pane that would give more than its film gives it all. */
  function driesUp(p: number): boolean {
    const { zoneOf, film, dewMode, dewPull, saturation } = state.pane;
    if (dewMode[p] !== 1) return false;
    const z = zoneOf[p]!;
    const air = rhs[z]! * state.zone.perRatio[z]!;
    if (dewPull[p]! * (air - saturation[p]!) * inputs.stepS >= -film[p]!) return false;
    dewMode[p] = 2;
    dewPull[p] = film[p]! / inputs.stepS;
    return true;
  }

  function settleZones(): void {
    const { scheduledKg, released, saturated, perRatio, bufferHumidity, pressure, isPlanted } = state.zone;
    const { received, entered } = state.zone;
    const { stepS, outdoorRatio, outdoors, ratio } = inputs;
    const right = rhs;
    const count = zones;
    const share = stepS / BUFFER_S;
    for (let z = 0; z < count; z++) {
      ratio[z] = right[z]!;
      const air = right[z]! * perRatio[z]!;
      released[z] = scheduledKg[z]!;
      if (isPlanted[z] === 1) settleBed(z);
      received[z]! += (outdoors[z]! * (outdoorRatio - ratio[z]!) + released[z]!) * stepS;
      entered[z]! += (outdoors[z]! * outdoorRatio + released[z]!) * stepS;
      bufferHumidity[z] = (bufferHumidity[z]! + (share * air) / saturated[z]!) / (1 + share);
      // Linearised about the step before, so that the books close; the exact pressure follows from the ratio.
      pressure[z] = air;
    }
  }

  /** What the bed gave in the step, by the air at its end; it takes its latent heat from the zone's air. */
  function settleBed(z: number): void {
    const { saturated, perRatio, bedDries, plantsKg, plantsPull, soilKg, soilPull, released, airW } =
      state.zone;
    const { stepS } = inputs;
    const deficit = bedDries[z] === 1 ? saturated[z]! - rhs[z]! * perRatio[z]! : 0;
    const plants = plantsKg[z]! + plantsPull[z]! * deficit;
    const soil = soilKg[z]! + soilPull[z]! * deficit;
    byCause[z * causes.length + plantCause]! += plants * stepS;
    byCause[z * causes.length + soilCause]! += soil * stepS;
    released[z]! += plants + soil;
    airW[z]! -= (plants + soil) * LATENT_J_PER_KG;
  }

  function settlePanes(): void {
    const { zoneOf, film, fullFilm, paneW, wet, dewMode, dewPull, saturation } = state.pane;
    const { pressure, dew, drained, received } = state.zone;
    const { stepS } = inputs;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      const rate = dewMode[p] === 1 ? dewPull[p]! * (pressure[z]! - saturation[p]!) : -dewPull[p]!;
      film[p] = Math.max(0, film[p]! + rate * stepS);
      dew[z]! += rate;
      paneW[p] = rate * LATENT_J_PER_KG;
      if (film[p]! > fullFilm[p]!) {
        const run = film[p]! - fullFilm[p]!;
        film[p] = fullFilm[p]!;
        drained[z]! += run;
        received[z]! -= run;
      }
    }
  }

  /**
   * Air past saturation drops the excess on the coldest surfaces, from where it drains: most of it within the
   * balance, so that what comes in from next door knows of it, the last thousandth after it.
   */
  function settleFog(): void {
    const { airKg, full, foggy, drained, received, dew, airW, pressure, saturated } = state.zone;
    const { stepS, pressurePa, ratio, humidity } = inputs;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const over = ratio[z]! - full[z]!;
      const excess = airKg[z]! * ((foggy[z] === 1 ? FOG_PULL * over : 0) + Math.max(0, over));
      if (excess > 0) {
        ratio[z] = full[z]!;
        drained[z]! += excess;
        received[z]! -= excess;
        dew[z]! += excess / stepS;
        airW[z]! += (excess / stepS) * LATENT_J_PER_KG;
      }
      pressure[z] = (ratio[z]! * pressurePa) / (0.622 + ratio[z]!);
      humidity[z] = pressure[z]! / saturated[z]!;
    }
  }

  /** Releases that hold for an hour: schedules, and the bed's line in the deficit at the hour's start. */
  function beginHour(): void {
    const { scheduledKg, isPlanted } = state.zone;
    const table = releases;
    const given = byCause;
    const { place } = inputs.moment;
    const count = causes.length;
    const zoneCount = zones;
    for (let z = 0; z < zoneCount; z++) {
      let sum = 0;
      for (let i = z * count; i < (z + 1) * count; i++) {
        const kg = table[i * TABLE_PLACES + place]! / 1000;
        given[i] = kg;
        sum += kg;
      }
      scheduledKg[z] = sum / 3600;
      if (isPlanted[z] === 1) beginBed(z);
    }
  }

  function beginBed(z: number): void {
    const { plantsKg, plantsPull, soilKg, soilPull, pressure } = state.zone;
    const { zoneC, floorLight, pressurePa } = inputs;
    const bed = beds[z]!;
    readyBed(bed, clampC(zoneC[z]!), pressure[z]!, floorLight[z]!, pressurePa);
    plantsKg[z] = bed.plantsW / LATENT_J_PER_KG;
    plantsPull[z] = bed.plantsPerPa / LATENT_J_PER_KG;
    soilKg[z] = bed.soil;
    soilPull[z] = bed.soilPerPa;
  }

  function held(): number {
    const { airKg, bufferKg, bufferHumidity } = state.zone;
    let sum = 0;
    for (let z = 0; z < zones; z++) sum += airKg[z]! * inputs.ratio[z]! + bufferKg[z]! * bufferHumidity[z]!;
    for (let p = 0; p < panes; p++) sum += state.pane.film[p]!;
    return sum;
  }

  const { airW, dew, drained, received, entered } = state.zone;
  const sumOf = (byZone: Float64Array) => byZone.reduce((sum, kg) => sum + kg, 0);
  return {
    load,
    humidity: inputs.humidity,
    airW,
    paneW: state.pane.paneW,
    wetPanes: () => wets,
    byCause,
    causes: () => causes,
    dew,
    film: state.pane.film,
    drained,
    held,
    received: () => sumOf(received),
    entered: () => sumOf(entered),
    startCounting() {
      for (const array of [drained, received, entered]) array.fill(0);
    },
    beginHour,
    step,
  };
}

/** What gives off water in a model. */
export function moistureCauses(model: Model): string[] {
  const causes = new Set<string>();
  for (const zone of model.zones) {
    for (const source of zone.moisture) causes.add(source.cause);
    if (zone.planting !== null && zone.planting.bedM2 > 0) causes.add(PLANT_CAUSE).add(SOIL_CAUSE);
  }
  return [...causes];
}

/** The saturation formula's own range; a sunspace that hot or cold has other worries. */
function clampC(tempC: number): number {
  return Math.min(60, Math.max(-45, tempC));
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
