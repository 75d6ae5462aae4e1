// Water in the air of every zone, step by step: releases, plants and soil, exchange with outdoors and between
// zones, one buffer node per zone for surfaces and furniture, dew and its drying on panes. Flows and temperatures
// of the step in; humidity ratios, latent heats and the water's own books out.
// Method: mass balance per zone, implicit in the humidity ratio (a dense system as small as the zones are few).
// Latent heat is handed to the thermal network for the next step. Buffer node: src/physics/moisture-buffer.ts;
// canopy: src/physics/transpiration.ts; dew: Lewis relation, src/physics/surface-condensation.ts.
// Left out: vapour through walls, latent heat of people's breath (their heat is a sensible gain), wet crops.

import type { Model } from '../model/model.ts';
import { saturationPressure, saturationPressureUnchecked } from '../physics/moist-air.ts';
import { bufferCapacity } from '../physics/moisture-buffer.ts';
import { massTransferCoefficient, PANE_FILM_G_M2 } from '../physics/surface-condensation.ts';
import { type Moment, scheduled } from './clock.ts';
import type { Layout } from './layout.ts';
import { LATENT_J_PER_KG, readyBed, restingBed } from './planted-bed.ts';

/** Exchange of surfaces with room air [h]: between paper (1) and thick plaster (8); common practice, no source. */
const BUFFER_HOURS = 4;
/** Specific gas constant of water vapour [J/(kg·K)] */
const VAPOUR_GAS = 461.5;
const KELVIN = 273.15;
/** Convection at the inner face of a pane that dew forms on [W/(m²K)], ISO 6946 horizontal flow. */
const PANE_CONVECTION = 2.5;
const START_HUMIDITY = 0.5;
/** Holds fog-filled air at saturation in the balance: this many times the air's own water capacity a step. */
const FOG_PULL = 1000;

export interface Vapour {
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
  /** released in the last step by zone [kg/s] */
  readonly released: Float64Array;
  /** by zone · causes + cause [kg/s] */
  readonly byCause: Float64Array;
  readonly causes: readonly string[];
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
  beginHour(inputs: VapourInputs): void;
  step(inputs: VapourInputs): void;
}

export interface VapourInputs {
  readonly moment: Moment;
  readonly stepS: number;
  readonly outdoorRatio: number;
  readonly pressurePa: number;
  /** exchange of each zone with outdoors, and between zones [kg/s] */
  readonly outdoors: Float64Array;
  readonly between: Float64Array;
  readonly zoneC: Float64Array;
  /** light on each zone's floor [W/m²] */
  readonly floorLight: Float64Array;
  /** inner face of each pane [°C] */
  readonly paneC: Float64Array;
}

export const PLANT_CAUSE = 'plants';
export const SOIL_CAUSE = 'soil and water';

/** Compile a model's water. */
export function compileVapour(model: Model, layout: Layout, airDensity: number, startC: number): Vapour {
  const zones = model.zones.length;
  const panes = layout.panes.length;
  const causes = causesOf(model);
  const airKg = Float64Array.from(model.zones, (zone) => zone.volumeM3 * airDensity);
  const bufferKg = bufferOf(model, layout);
  const bufferHumidity = new Float64Array(zones).fill(START_HUMIDITY);
  const startPa = START_HUMIDITY * saturationPressure(startC);
  const ratio = new Float64Array(zones).fill((0.622 * startPa) / (101_325 - startPa));
  const pressure = new Float64Array(zones).fill(startPa);
  const airW = new Float64Array(zones);
  const paneW = new Float64Array(panes);
  const released = new Float64Array(zones);
  const byCause = new Float64Array(zones * causes.length);
  const dew = new Float64Array(zones);
  const film = new Float64Array(panes);
  const drained = new Float64Array(zones);
  const fullFilm = Float64Array.from(layout.panes, (place) => (place.glassM2 * PANE_FILM_G_M2) / 1000);
  const dewMode = new Uint8Array(panes);
  const dewPull = new Float64Array(panes);
  const paneSaturation = new Float64Array(panes);
  const matrix = new Float64Array(zones * zones);
  const rhs = new Float64Array(zones);
  const saturated = new Float64Array(zones);
  const humidity = new Float64Array(zones).fill(START_HUMIDITY);
  /** 1 while a zone's air is held at saturation, 2 once it turned out not to need it; that ratio [kg/kg] */
  const foggy = new Uint8Array(zones);
  const full = new Float64Array(zones);
  const beds = model.zones.map(restingBed);
  const isPlanted = model.zones.map(({ planting }) => planting !== null && planting.bedM2 > 0);
  /** 1 while the deficit drives a zone's bed */
  const bedDries = new Uint8Array(zones);
  const scheduledKg = new Float64Array(zones);
  const sourceCause = model.zones.map((zone) => zone.moisture.map(({ cause }) => causes.indexOf(cause)));
  const plantCause = causes.indexOf(PLANT_CAUSE);
  const soilCause = causes.indexOf(SOIL_CAUSE);
  const before = new Float64Array(zones);
  let received = 0;
  let entered = 0;

  function step(inputs: VapourInputs): void {
    const { stepS, outdoors, zoneC } = inputs;
    for (let p = 0; p < panes; p++) paneW[p] = 0;
    for (let z = 0; z < zones; z++) {
      before[z] = ratio[z]!;
      airW[z] = 0;
      dew[z] = 0;
    }
    for (let z = 0; z < zones; z++) saturated[z] = saturationPressureUnchecked(clampC(zoneC[z]!));
    for (let z = 0; z < zones; z++) bedDries[z] = beds[z]!.plantsPerPa + beds[z]!.soilPerPa > 0 ? 1 : 0;
    for (let z = 0; z < zones; z++) {
      foggy[z] = 0;
      full[z] = (0.622 * saturated[z]!) / (inputs.pressurePa - saturated[z]!);
    }
    for (let p = 0; p < panes; p++) meetPane(p, inputs);
    balance(inputs);
    // Each pass leaves one pane fewer to dry beyond its film, one bed fewer to dry into full air, one room fewer over it.
    for (let pass = 0; pass < panes + 3 * zones && corrects(inputs); pass++) balance(inputs);
    for (let z = 0; z < zones; z++) ratio[z] = rhs[z]!;
    for (let z = 0; z < zones; z++) {
      settleBed(z, before[z]!, inputs);
      received += outdoors[z]! * (inputs.outdoorRatio - ratio[z]!) * stepS + released[z]! * stepS;
      entered += (outdoors[z]! * inputs.outdoorRatio + released[z]!) * stepS;
      settleZone(z, before[z]!, inputs);
    }
    for (let p = 0; p < panes; p++) settlePane(p, inputs);
    for (let z = 0; z < zones; z++) settleFog(z, inputs);
  }

  /** The humidity ratios at the step's end, into `rhs`. */
  function balance({ stepS, pressurePa, outdoors, between, outdoorRatio }: VapourInputs): void {
    for (let i = 0; i < zones * zones; i++) matrix[i] = 0;
    for (let z = 0; z < zones; z++) {
      const perRatio = pressurePa / (0.622 + ratio[z]!);
      const bufferPull = buffering(z, stepS);
      let diagonal = airKg[z]! / stepS + outdoors[z]! + (bufferPull * perRatio) / saturated[z]!;
      let right = (airKg[z]! / stepS) * ratio[z]! + outdoors[z]! * outdoorRatio + scheduledKg[z]!;
      right += bufferPull * bufferHumidity[z]! + beds[z]!.plantsW / LATENT_J_PER_KG + beds[z]!.soil;
      if (bedDries[z] === 1) {
        const pull = beds[z]!.plantsPerPa / LATENT_J_PER_KG + beds[z]!.soilPerPa;
        diagonal += pull * perRatio;
        right += pull * saturated[z]!;
      }
      if (foggy[z] === 1) {
        const pull = (FOG_PULL * airKg[z]!) / stepS;
        diagonal += pull;
        right += pull * full[z]!;
      }
      for (let y = 0; y < zones; y++) {
        const flow = between[z * zones + y]!;
        diagonal += flow;
        matrix[z * zones + y]! -= flow;
      }
      matrix[z * zones + z]! += diagonal;
      rhs[z] = right;
    }
    for (let p = 0; p < panes; p++) {
      const z = layout.panes[p]!.zoneTo;
      if (dewMode[p] === 1) {
        matrix[z * zones + z]! += (dewPull[p]! * pressurePa) / (0.622 + ratio[z]!);
        rhs[z]! += dewPull[p]! * paneSaturation[p]!;
      } else if (dewMode[p] === 2) {
        rhs[z]! += dewPull[p]!;
      }
    }
    solveSmall(matrix, rhs, zones);
  }

  /**
   * Panes that would give the air more than their film holds give it all and no more; beds whose air is past
   * saturation stop at what light drives. True if there was one.
   */
  function corrects({ stepS, pressurePa }: VapourInputs): boolean {
    let found = false;
    for (let z = 0; z < zones; z++) {
      if (bedDries[z] === 0 || (rhs[z]! * pressurePa) / (0.622 + ratio[z]!) <= saturated[z]!) continue;
      bedDries[z] = 0;
      found = true;
    }
    for (let z = 0; z < zones; z++) {
      if (foggy[z] === 2 || rhs[z]! <= full[z]! === (foggy[z] === 0)) continue;
      foggy[z]!++;
      found = true;
    }
    for (let p = 0; p < panes; p++) {
      if (dewMode[p] !== 1) continue;
      const z = layout.panes[p]!.zoneTo;
      const air = (rhs[z]! * pressurePa) / (0.622 + ratio[z]!);
      if (dewPull[p]! * (air - paneSaturation[p]!) * stepS >= -film[p]!) continue;
      dewMode[p] = 2;
      dewPull[p] = film[p]! / stepS;
      found = true;
    }
    return found;
  }

  /** Conductance of the buffer in humidity terms [kg/s per unit RH]. */
  function buffering(z: number, stepS: number): number {
    const share = stepS / (BUFFER_HOURS * 3600);
    return ((bufferKg[z]! / stepS) * share) / (1 + share);
  }

  /** Dew, or drying of what is there, as a conductance to the pane's saturation; drying the last drop as a rate. */
  function meetPane(p: number, { stepS, paneC, zoneC }: VapourInputs): void {
    const z = layout.panes[p]!.zoneTo;
    // A dry pane as warm as the air takes no dew: no need to know its saturation.
    if (film[p] === 0 && paneC[p]! >= zoneC[z]!) {
      dewMode[p] = 0;
      return;
    }
    const saturation = saturationPressureUnchecked(clampC(paneC[p]!));
    paneSaturation[p] = saturation;
    const pull =
      (massTransferCoefficient(PANE_CONVECTION) * layout.panes[p]!.glassM2) /
      (VAPOUR_GAS * (paneC[p]! + KELVIN));
    const drying = pull * (saturation - pressure[z]!);
    if (drying <= 0 || film[p]! >= drying * stepS) {
      dewMode[p] = drying <= 0 || film[p]! > 0 ? 1 : 0;
      dewPull[p] = pull;
    } else {
      dewMode[p] = 2;
      dewPull[p] = film[p]! / stepS;
    }
  }

  function settleZone(z: number, before: number, { stepS, pressurePa }: VapourInputs): void {
    const saturation = saturated[z]!;
    const air = ratio[z]! * (pressurePa / (0.622 + before));
    const share = stepS / (BUFFER_HOURS * 3600);
    bufferHumidity[z] = (bufferHumidity[z]! + (share * air) / saturation) / (1 + share);
    // Linearised about the step before, so that the books close; the exact pressure follows from the ratio.
    pressure[z] = air;
  }

  function settlePane(p: number, { stepS }: VapourInputs): void {
    if (dewMode[p] === 0) return;
    const z = layout.panes[p]!.zoneTo;
    const rate = dewMode[p] === 1 ? dewPull[p]! * (pressure[z]! - paneSaturation[p]!) : -dewPull[p]!;
    film[p] = Math.max(0, film[p]! + rate * stepS);
    dew[z]! += rate;
    paneW[p] = rate * LATENT_J_PER_KG;
    if (film[p]! > fullFilm[p]!) {
      const run = film[p]! - fullFilm[p]!;
      film[p] = fullFilm[p]!;
      drained[z]! += run;
      received -= run;
    }
  }

  /**
   * Air past saturation drops the excess on the coldest surfaces, from where it drains: most of it within the
   * balance, so that what comes in from next door knows of it, the last thousandth after it.
   */
  function settleFog(z: number, { stepS, pressurePa }: VapourInputs): void {
    const within = foggy[z] === 1 ? FOG_PULL * airKg[z]! * (ratio[z]! - full[z]!) : 0;
    const beyond = Math.max(0, ratio[z]! - full[z]!) * airKg[z]!;
    const excess = within + beyond;
    if (excess > 0) {
      ratio[z] = full[z]!;
      drained[z]! += excess;
      received -= excess;
      dew[z]! += excess / stepS;
      airW[z]! += (excess / stepS) * LATENT_J_PER_KG;
    }
    pressure[z] = (ratio[z]! * pressurePa) / (0.622 + ratio[z]!);
    humidity[z] = pressure[z]! / saturated[z]!;
  }

  /** Releases that hold for an hour: schedules, and the bed's line in the deficit at the hour's start. */
  function beginHour({ moment, zoneC, floorLight, pressurePa }: VapourInputs): void {
    byCause.fill(0);
    for (let z = 0; z < zones; z++) {
      const row = z * causes.length;
      const zone = model.zones[z]!;
      for (let i = 0; i < zone.moisture.length; i++) {
        byCause[row + sourceCause[z]![i]!]! += scheduled(zone.moisture[i]!.rate, moment) / 3.6e6;
      }
      let sum = 0;
      for (let c = 0; c < causes.length; c++) sum += byCause[row + c]!;
      scheduledKg[z] = sum;
      if (zone.planting !== null && isPlanted[z]) {
        const tempC = clampC(zoneC[z]!);
        readyBed(beds[z]!, zone.planting, tempC, pressure[z]!, floorLight[z]!, pressurePa);
      }
    }
  }

  /** What the bed gave in the step, by the air at its end; it takes its latent heat from the zone's air. */
  function settleBed(z: number, before: number, { pressurePa }: VapourInputs): void {
    const bed = beds[z]!;
    released[z] = scheduledKg[z]!;
    if (!isPlanted[z]) return;
    const deficit = bedDries[z] === 1 ? saturated[z]! - (ratio[z]! * pressurePa) / (0.622 + before) : 0;
    const plants = (bed.plantsW + bed.plantsPerPa * deficit) / LATENT_J_PER_KG;
    const soil = bed.soil + bed.soilPerPa * deficit;
    byCause[z * causes.length + plantCause] = plants;
    byCause[z * causes.length + soilCause] = soil;
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
    ratio,
    pressure,
    humidity,
    airW,
    paneW,
    released,
    byCause,
    causes,
    dew,
    film,
    drained,
    held,
    received: () => received,
    entered: () => entered,
    startCounting() {
      received = 0;
      entered = 0;
      drained.fill(0);
    },
    beginHour,
    step,
  };
}

function causesOf(model: Model): string[] {
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
