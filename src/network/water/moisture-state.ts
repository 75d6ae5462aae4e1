// What the water balance keeps of every zone and pane, and how a model is laid into it: flat arrays, made once per
// engine. Written by moisture-balance.ts and its parts (moisture-sources.ts, pane-condensation.ts), read by whoever it hands them to.

import type { Model } from '../../model/model.ts';
import { LATENT_HEAT } from '../../physics/constants.ts';
import { expm1 } from '../../physics/elementary.ts';
import { saturationPressure } from '../../physics/moist-air.ts';
import { bufferCapacity } from '../../physics/moisture-buffer.ts';
import { PANE_FILM_G_M2 } from '../../physics/surface-condensation.ts';
import type { Moment } from '../hour/clock.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { Layout } from '../layout/layout.ts';

/** Exchange of surfaces with room air [h]: between paper (1) and thick plaster (8); common practice, no source. */
const BUFFER_HOURS = 4;
const BUFFER_S = BUFFER_HOURS * 3600;
export const START_HUMIDITY = 0.5;
/** Saturation grows by this share for each kelvin at 15 to 30 °C, and buffers' humidity: they only steady the step. */
const SATURATION_GROWTH_PER_K = 0.06;
const USUAL_HUMIDITY = 0.65;

/** What the water depends on, written by the run: moment and weather before each hour, arrays before each step. */
export interface MoistureInputs {
  readonly moment: Moment;
  readonly weather: HourWeather;
  stepS: number;
  /** exchange of each zone with outdoors, and between zones [kg/s] */
  readonly outdoors: Float64Array;
  readonly between: Float64Array;
  readonly zoneC: Float64Array;
  /** mean of each zone's faces, in the mean of the step [°C] */
  readonly radiantC: Float64Array;
  /** humidity ratio of each zone, moved on by the step [kg/kg dry air] */
  readonly ratio: Float64Array;
  /** relative humidity of each zone over water as a step begins, 0…1 */
  readonly humidity: Float64Array;
  /** inner face of each pane, mean of the step [°C]; its convection to the room in the hour, past what covers it [W/K] */
  readonly paneC: Float64Array;
  readonly paneFilm: Float64Array;
}

export type MoistureState = ReturnType<typeof createMoistureState>;

/** Arrays with room for so much. */
export function createMoistureState(capacity: EngineCapacity) {
  const perZone = () => new Float64Array(capacity.zones);
  const perPane = () => new Float64Array(capacity.panes);
  return {
    zone: {
      /** air; its storage over the step, and the buffer's exchange with it [kg], [kg/s] */
      airKg: perZone(),
      airPerS: perZone(),
      bufferExchange: perZone(),
      /** buffer [kg per unit RH], 0…1 */
      bufferKg: perZone(),
      bufferHumidity: perZone(),
      /** vapour pressure [Pa] */
      vapourPa: perZone(),
      /** latent heat to the air [W], and what a kelvin more there would add [W/K] */
      airW: perZone(),
      airWPerK: perZone(),
      /** in the tried step, the way of the humidity ratio to its end by that to its mean [–], and where it ends [kg/kg] */
      endByMean: perZone(),
      endRatio: perZone(),
      /** relative humidity over water in the mean of the step, 0…1 */
      meanHumidity: perZone(),
      /** all that its humidity ratio is exchanged with in a step, saturation left out [kg/s] */
      freeExchange: perZone(),
      /** net condensation of the last step [kg/s] */
      condensation: perZone(),
      /** since the start of counting: run off; received from outdoors, run off and released; come in at all [kg] */
      drained: perZone(),
      received: perZone(),
      entered: perZone(),
      /** brought by air from outdoors and other zones in the last step [kg/s] */
      byAir: perZone(),
      /** held in air, buffer and on panes when counting started [kg] */
      heldAtStart: perZone(),
      /** released in the step, and of it by schedule [kg/s] */
      released: perZone(),
      scheduledKg: perZone(),
      /** given in the tried step by a bed's plants and by its soil [kg/s] */
      plantsKg: perZone(),
      soilKg: perZone(),
      /** of the step: saturation pressure [Pa], the ratio there [kg/kg], dew point if it was asked for [°C] */
      saturationPa: perZone(),
      saturationRatio: perZone(),
      dewPointC: perZone(),
      /** vapour pressure by humidity ratio, about the ratio a step starts from [Pa] */
      pressurePerRatio: perZone(),
      /** 1 while the air is held at saturation, 2 once it turned out not to need it */
      heldAtSaturation: perZone(),
      /** saturation at the mean temperature of walls, floor and ceiling [Pa] */
      facesPa: perZone(),
      /** latent heat of what they and furniture took up, still to be given to them [J] */
      facesJ: perZone(),
      /** about how much less heat they take by the kelvin they are warmer [W/K] */
      facesWPerK: perZone(),
    },
    pane: {
      zoneOf: new Int32Array(capacity.panes),
      /** film, and the most that stays on it [kg] */
      film: perPane(),
      mostFilm: perPane(),
      /** latent heat to the inner node [W] */
      paneW: perPane(),
      /** panes that water meets in the step; 1 while it follows the air's vapour, 2 once the film's last drop dries */
      wet: new Int32Array(capacity.panes),
      mode: perPane(),
      /** by the pascal [kg/(s·Pa)], or while the last drop dries in all [kg/s] */
      exchange: perPane(),
      paneSaturationPa: perPane(),
    },
  };
}

/** Lay a model's zones and panes in: air at half saturation at `startC` [°C], no water on the panes. */
export function loadMoistureState(
  state: MoistureState,
  model: Model,
  layout: Layout,
  startC: number,
  stepS: number,
): void {
  const { zone, pane } = state;
  for (const array of [...Object.values(zone), ...Object.values(pane)]) array.fill(0);
  zone.bufferKg.set(bufferOf(model, layout));
  zone.bufferHumidity.fill(START_HUMIDITY);
  zone.vapourPa.fill(START_HUMIDITY * saturationPressure(startC));
  zone.saturationPa.fill(saturationPressure(startC));
  zone.facesPa.fill(saturationPressure(startC));
  model.zones.forEach(({ volumeM3 }, z) => {
    zone.airKg[z] = volumeM3 * layout.roomDensity;
  });
  layout.panes.forEach(({ zoneTo, glassM2 }, p) => {
    pane.zoneOf[p] = zoneTo;
    pane.mostFilm[p] = (glassM2 * PANE_FILM_G_M2) / 1000;
  });
  setStateStep(state, stepS, model.zones.length);
}

/** Storage and exchange of so many zones over a step of `stepS` [s]. */
export function setStateStep({ zone }: MoistureState, stepS: number, zones: number): void {
  const { airKg, airPerS, bufferKg, bufferExchange, facesWPerK } = zone;
  for (let z = 0; z < zones; z++) {
    airPerS[z] = airKg[z]! / stepS;
    bufferExchange[z] = (bufferKg[z]! * bufferedInStep(stepS)) / stepS;
    facesWPerK[z] = LATENT_HEAT * SATURATION_GROWTH_PER_K * USUAL_HUMIDITY * bufferExchange[z]!;
  }
}

/** Share of the way to the humidity of the air that the buffer goes in a step of `stepS` [s] while that stands still, 0…1. */
export function bufferedInStep(stepS: number): number {
  return -expm1(-stepS / BUFFER_S);
}

/** Buffers of faces and furniture by zone [kg per unit RH]. */
function bufferOf(model: Model, layout: Layout): Float64Array {
  const buffer = Float64Array.from(model.zones, (zone) => zone.furnitureMoisture);
  for (const { element, zoneA, zoneB } of layout.elements) {
    if (element.moistureBufferA && zoneA >= 0)
      buffer[zoneA]! += (bufferCapacity(element.moistureBufferA, BUFFER_HOURS) * element.areaM2) / 1000;
    if (element.moistureBuffer)
      buffer[zoneB]! += (bufferCapacity(element.moistureBuffer, BUFFER_HOURS) * element.areaM2) / 1000;
  }
  return buffer;
}
