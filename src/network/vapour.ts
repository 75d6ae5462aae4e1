// Water in the air of every zone, step by step: releases, plants and soil, exchange with outdoors and between
// zones, one buffer node per zone for surfaces and furniture, dew and its drying on panes. Flows and temperatures
// of the step in; humidity ratios, latent heats and the water's own books out.
// Method: mass balance per zone, implicit in the humidity ratio (a dense system as small as the zones are few).
// Latent heat is handed to the thermal network for the next step. Buffer node: src/physics/moisture-buffer.ts;
// canopy: src/physics/transpiration.ts; dew: Lewis relation, src/physics/surface-condensation.ts.
// Left out: vapour through walls, latent heat of people's breath (their heat is a sensible gain), wet crops.

import type { Model } from '../model/model.ts';
import { dewPointUnchecked, saturationPressure, saturationPressureUnchecked } from '../physics/moist-air.ts';
import { bufferCapacity } from '../physics/moisture-buffer.ts';
import { massTransferCoefficient, PANE_FILM_G_M2 } from '../physics/surface-condensation.ts';
import { addToTable, type Moment, TABLE_PLACES } from './clock.ts';
import type { EngineRoom } from './engine-room.ts';
import type { Layout } from './layout.ts';
import { type Bed, LATENT_J_PER_KG, readyBed, restingBed } from './planted-bed.ts';

/** Exchange of surfaces with room air [h]: between paper (1) and thick plaster (8); common practice, no source. */
const BUFFER_HOURS = 4;
const BUFFER_S = BUFFER_HOURS * 3600;
/** Specific gas constant of water vapour [J/(kg·K)] */
const VAPOUR_GAS = 461.5;
const KELVIN = 273.15;
/** Convection at the inner face of a pane that dew forms on [W/(m²K)], ISO 6946 horizontal flow. */
const PANE_CONVECTION = 2.5;
const START_HUMIDITY = 0.5;
/** Holds fog-filled air at saturation in the balance: this many times the air's own water capacity a step. */
const FOG_PULL = 1000;

export interface Vapour {
  /** take a laid-out model in; air everywhere at half saturation */
  load(model: Model, layout: Layout, startC: number): void;
  /** [kg/kg dry air] */
  readonly ratio: Float64Array;
  /** vapour pressure [Pa] */
  readonly pressure: Float64Array;
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

/** places in the sums */
const RECEIVED = 0;
const ENTERED = 1;

export const PLANT_CAUSE = 'plants';
export const SOIL_CAUSE = 'soil and water';

/** Water of a run, with room for so much; load() before use. */
export function createVapour(room: EngineRoom, inputs: VapourInputs): Vapour {
  const { moment, outdoors, between, zoneC, ratio, humidity, floorLight, paneC } = inputs;
  let zones = 0;
  let panes = 0;
  let causes: readonly string[] = [];
  let plantings: readonly Model['zones'][number]['planting'][] = [];
  let beds: Bed[] = [];
  let plantCause = -1;
  let soilCause = -1;
  const perZone = () => new Float64Array(room.zones);
  const perPane = () => new Float64Array(room.panes);
  const airKg = perZone();
  /** storage of the air over the step, and of the buffer's exchange with it [kg/s] */
  const airPerS = perZone();
  const bufferPulls = perZone();
  const dewPointC = perZone();
  const bufferKg = perZone();
  const bufferHumidity = perZone();
  const pressure = perZone();
  const airW = perZone();
  const paneW = perPane();
  /** in the step [kg/s] */
  const released = perZone();
  const byCause = new Float64Array(room.zones * room.causes);
  /** what follows a schedule, by zone, cause and place [g in the hour] */
  const releases = new Float64Array(room.zones * room.causes * TABLE_PLACES);
  const dew = perZone();
  const film = perPane();
  const drained = perZone();
  const paneZone = new Int32Array(room.panes);
  const fullFilm = perPane();
  /** vapour it takes up by the pascal, times its kelvins [kg·K/(s·Pa)] */
  const transfer = perPane();
  /** panes that water meets in the step; 1 while it follows the air's vapour, 2 once the film's last drop dries */
  const wet = new Int32Array(room.panes);
  let wets = 0;
  const dewMode = new Uint8Array(room.panes);
  const dewPull = perPane();
  const paneSaturation = perPane();
  const matrix = new Float64Array(room.zones * room.zones);
  const rhs = perZone();
  const saturated = perZone();
  /** 1 while a zone's air is held at saturation, 2 once it turned out not to need it; that ratio [kg/kg] */
  const foggy = new Uint8Array(room.zones);
  const full = perZone();
  const isPlanted = new Uint8Array(room.zones);
  /** 1 while the deficit drives a zone's bed */
  const bedDries = new Uint8Array(room.zones);
  /** released by schedule [kg/s] */
  const scheduledKg = perZone();
  /** vapour pressure by humidity ratio, about the ratio a step starts from [Pa] */
  const perRatioOf = perZone();
  /** water received, and entered [kg] */
  const sums = new Float64Array(2);

  function load(model: Model, layout: Layout, startC: number): void {
    zones = model.zones.length;
    panes = layout.panes.length;
    plantings = model.zones.map(({ planting }) => planting);
    causes = moistureCauses(model);
    plantCause = causes.indexOf(PLANT_CAUSE);
    soilCause = causes.indexOf(SOIL_CAUSE);
    releases.fill(0);
    model.zones.forEach(({ moisture }, z) => {
      for (const { cause, rate } of moisture) {
        const row = z * causes.length + causes.indexOf(cause);
        addToTable(releases, row * TABLE_PLACES, rate, 1);
      }
    });
    beds = model.zones.map(restingBed);
    const startPa = START_HUMIDITY * saturationPressure(startC);
    for (const array of [airW, paneW, released, byCause, dew, film, drained, scheduledKg, sums])
      array.fill(0);
    wets = 0;
    bufferKg.set(bufferOf(model, layout));
    ratio.fill((0.622 * startPa) / (101_325 - startPa));
    pressure.fill(startPa);
    humidity.fill(START_HUMIDITY);
    bufferHumidity.fill(START_HUMIDITY);
    model.zones.forEach(({ volumeM3, planting }, z) => {
      airKg[z] = volumeM3 * layout.roomDensity;
      airPerS[z] = airKg[z]! / inputs.stepS;
      bufferPulls[z] = bufferKg[z]! / (BUFFER_S + inputs.stepS);
      isPlanted[z] = planting !== null && planting.bedM2 > 0 ? 1 : 0;
    });
    layout.panes.forEach(({ zoneTo, glassM2 }, p) => {
      paneZone[p] = zoneTo;
      transfer[p] = (massTransferCoefficient(PANE_CONVECTION) * glassM2) / VAPOUR_GAS;
      fullFilm[p] = (glassM2 * PANE_FILM_G_M2) / 1000;
    });
  }

  function step(): void {
    const { stepS, outdoorRatio, pressurePa } = inputs;
    for (let z = 0; z < zones; z++) {
      perRatioOf[z] = pressurePa / (0.622 + ratio[z]!);
      airW[z] = 0;
      dew[z] = 0;
      const saturation = saturationPressureUnchecked(clampC(zoneC[z]!));
      saturated[z] = saturation;
      full[z] = (0.622 * saturation) / (pressurePa - saturation);
      foggy[z] = 0;
      bedDries[z] = beds[z]!.plantsPerPa + beds[z]!.soilPerPa > 0 ? 1 : 0;
      dewPointC[z] = Number.NaN;
    }
    for (let w = 0; w < wets; w++) paneW[wet[w]!] = 0;
    wets = 0;
    for (let p = 0; p < panes; p++) {
      const z = paneZone[p]!;
      // A dry pane above the dew point takes no dew: no need to know its saturation; nor the dew point, by a warm pane.
      if (film[p] === 0) {
        if (paneC[p]! >= zoneC[z]!) continue;
        if (Number.isNaN(dewPointC[z]!)) dewPointC[z] = dewPointUnchecked(pressure[z]!);
        if (paneC[p]! > dewPointC[z]!) continue;
      }
      meetPane(p);
    }
    balance();
    // Each pass leaves one pane fewer to dry beyond its film, one bed fewer to dry into full air, one room fewer over it.
    for (let pass = 0; pass < wets + 3 * zones && corrects(); pass++) balance();
    for (let z = 0; z < zones; z++) {
      ratio[z] = rhs[z]!;
      settleBed(z);
      sums[RECEIVED]! += (outdoors[z]! * (outdoorRatio - ratio[z]!) + released[z]!) * stepS;
      sums[ENTERED]! += (outdoors[z]! * outdoorRatio + released[z]!) * stepS;
      settleZone(z);
    }
    for (let w = 0; w < wets; w++) settlePane(wet[w]!);
    for (let z = 0; z < zones; z++) settleFog(z);
  }

  /** The humidity ratios at the step's end, into `rhs`. */
  function balance(): void {
    const { outdoorRatio } = inputs;
    for (let z = 0; z < zones; z++) {
      const perRatio = perRatioOf[z]!;
      const bufferPull = bufferPulls[z]!;
      let diagonal = airPerS[z]! + outdoors[z]! + (bufferPull * perRatio) / saturated[z]!;
      let right = airPerS[z]! * ratio[z]! + outdoors[z]! * outdoorRatio + scheduledKg[z]!;
      right += bufferPull * bufferHumidity[z]!;
      if (isPlanted[z] === 1) right += beds[z]!.plantsW / LATENT_J_PER_KG + beds[z]!.soil;
      if (bedDries[z] === 1) {
        const pull = beds[z]!.plantsPerPa / LATENT_J_PER_KG + beds[z]!.soilPerPa;
        diagonal += pull * perRatio;
        right += pull * saturated[z]!;
      }
      if (foggy[z] === 1) {
        const pull = FOG_PULL * airPerS[z]!;
        diagonal += pull;
        right += pull * full[z]!;
      }
      for (let y = 0; y < zones; y++) {
        const flow = between[z * zones + y]!;
        diagonal += flow;
        matrix[z * zones + y] = -flow;
      }
      matrix[z * zones + z]! += diagonal;
      rhs[z] = right;
    }
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = paneZone[p]!;
      if (dewMode[p] === 1) {
        matrix[z * zones + z]! += dewPull[p]! * perRatioOf[z]!;
        rhs[z]! += dewPull[p]! * paneSaturation[p]!;
      } else {
        rhs[z]! += dewPull[p]!;
      }
    }
    solveSmall(matrix, rhs, zones);
  }

  /**
   * Panes that would give the air more than their film holds give it all and no more; beds whose air is past
   * saturation stop at what light drives. True if there was one.
   */
  function corrects(): boolean {
    const { stepS } = inputs;
    let found = false;
    for (let z = 0; z < zones; z++) {
      if (bedDries[z] === 0 || rhs[z]! * perRatioOf[z]! <= saturated[z]!) continue;
      bedDries[z] = 0;
      found = true;
    }
    for (let z = 0; z < zones; z++) {
      if (foggy[z] === 2 || rhs[z]! <= full[z]! === (foggy[z] === 0)) continue;
      foggy[z]!++;
      found = true;
    }
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      if (dewMode[p] !== 1) continue;
      const z = paneZone[p]!;
      const air = rhs[z]! * perRatioOf[z]!;
      if (dewPull[p]! * (air - paneSaturation[p]!) * stepS >= -film[p]!) continue;
      dewMode[p] = 2;
      dewPull[p] = film[p]! / stepS;
      found = true;
    }
    return found;
  }

  /** Dew, or drying of what is there, as a conductance to the pane's saturation; drying the last drop as a rate. */
  function meetPane(p: number): void {
    const { stepS } = inputs;
    const z = paneZone[p]!;
    const saturation = saturationPressureUnchecked(clampC(paneC[p]!));
    paneSaturation[p] = saturation;
    const pull = transfer[p]! / (paneC[p]! + KELVIN);
    const drying = pull * (saturation - pressure[z]!);
    wet[wets++] = p;
    if (film[p]! >= drying * stepS) {
      dewMode[p] = 1;
      dewPull[p] = pull;
    } else {
      dewMode[p] = 2;
      dewPull[p] = film[p]! / stepS;
    }
  }

  function settleZone(z: number): void {
    const saturation = saturated[z]!;
    const air = ratio[z]! * perRatioOf[z]!;
    const share = inputs.stepS / BUFFER_S;
    bufferHumidity[z] = (bufferHumidity[z]! + (share * air) / saturation) / (1 + share);
    // Linearised about the step before, so that the books close; the exact pressure follows from the ratio.
    pressure[z] = air;
  }

  function settlePane(p: number): void {
    const { stepS } = inputs;
    const z = paneZone[p]!;
    const rate = dewMode[p] === 1 ? dewPull[p]! * (pressure[z]! - paneSaturation[p]!) : -dewPull[p]!;
    film[p] = Math.max(0, film[p]! + rate * stepS);
    dew[z]! += rate;
    paneW[p] = rate * LATENT_J_PER_KG;
    if (film[p]! > fullFilm[p]!) {
      const run = film[p]! - fullFilm[p]!;
      film[p] = fullFilm[p]!;
      drained[z]! += run;
      sums[RECEIVED]! -= run;
    }
  }

  /**
   * Air past saturation drops the excess on the coldest surfaces, from where it drains: most of it within the
   * balance, so that what comes in from next door knows of it, the last thousandth after it.
   */
  function settleFog(z: number): void {
    const { stepS, pressurePa } = inputs;
    const within = foggy[z] === 1 ? FOG_PULL * airKg[z]! * (ratio[z]! - full[z]!) : 0;
    const beyond = Math.max(0, ratio[z]! - full[z]!) * airKg[z]!;
    const excess = within + beyond;
    if (excess > 0) {
      ratio[z] = full[z]!;
      drained[z]! += excess;
      sums[RECEIVED]! -= excess;
      dew[z]! += excess / stepS;
      airW[z]! += (excess / stepS) * LATENT_J_PER_KG;
    }
    pressure[z] = (ratio[z]! * pressurePa) / (0.622 + ratio[z]!);
    humidity[z] = pressure[z]! / saturated[z]!;
  }

  /** Releases that hold for an hour: schedules, and the bed's line in the deficit at the hour's start. */
  function beginHour(): void {
    const { pressurePa } = inputs;
    const { place } = moment;
    const count = causes.length;
    for (let z = 0; z < zones; z++) {
      let sum = 0;
      for (let i = z * count; i < (z + 1) * count; i++) {
        const kg = releases[i * TABLE_PLACES + place]! / 1000;
        byCause[i] = kg;
        sum += kg;
      }
      scheduledKg[z] = sum / 3600;
      if (isPlanted[z] === 0) continue;
      const tempC = clampC(zoneC[z]!);
      readyBed(beds[z]!, plantings[z]!, tempC, pressure[z]!, floorLight[z]!, pressurePa);
    }
  }

  /** What the bed gave in the step, by the air at its end; it takes its latent heat from the zone's air. */
  function settleBed(z: number): void {
    const bed = beds[z]!;
    released[z] = scheduledKg[z]!;
    if (isPlanted[z] === 0) return;
    const deficit = bedDries[z] === 1 ? saturated[z]! - ratio[z]! * perRatioOf[z]! : 0;
    const plants = (bed.plantsW + bed.plantsPerPa * deficit) / LATENT_J_PER_KG;
    const soil = bed.soil + bed.soilPerPa * deficit;
    byCause[z * causes.length + plantCause]! += plants * inputs.stepS;
    byCause[z * causes.length + soilCause]! += soil * inputs.stepS;
    released[z]! += plants + soil;
    airW[z]! -= (plants + soil) * LATENT_J_PER_KG;
  }

  function held(): number {
    let sum = 0;
    for (let z = 0; z < zones; z++) sum += airKg[z]! * ratio[z]! + bufferKg[z]! * bufferHumidity[z]!;
    for (let p = 0; p < panes; p++) sum += film[p]!;
    return sum;
  }

  return {
    load,
    ratio,
    pressure,
    humidity,
    airW,
    paneW,
    wetPanes: () => wets,
    byCause,
    causes: () => causes,
    dew,
    film,
    drained,
    held,
    received: () => sums[RECEIVED]!,
    entered: () => sums[ENTERED]!,
    startCounting() {
      sums.fill(0);
      drained.fill(0);
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

/** Buffers of faces and furniture by zone [kg per unit RH]. */
function bufferOf(model: Model, layout: Layout): Float64Array {
  const buffer = Float64Array.from(model.zones, (zone) => zone.furnitureMoisture);
  for (const { element, zoneB } of layout.elements) {
    if (element.moistureBuffer)
      buffer[zoneB]! += (bufferCapacity(element.moistureBuffer, BUFFER_HOURS) * element.areaM2) / 1000;
  }
  return buffer;
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
