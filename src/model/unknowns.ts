// What a drawing does not know of a house that stands: each unknown with how far it usually is from the drawing,
// and what it changes about the model. A value is a factor (1 as drawn) or a shift in K (0 as drawn); its prior is a
// normal one, of the factor's logarithm or of the shift. Widths are house rules: common practice, no source.

import { UNKNOWN_IDS, type UnknownId } from '../design/as-found.ts';
import { exp, square } from '../physics/elementary.ts';
import type { Element, Gain, Layer, Model, MoistureSource, Opening, Zone } from './model.ts';
import { withEachHour } from './schedule.ts';

/** By unknown, a factor or a shift; absent as drawn. */
export type UnknownValues = Readonly<Partial<Record<UnknownId, number>>>;

export interface Unknown {
  readonly id: UnknownId;
  readonly scale: 'factor' | 'shift';
  /** standard deviation of the logarithm of the factor, or of the shift [K] */
  readonly priorSd: number;
  readonly change: (model: Model, value: number) => Model;
}

/** Layers that insulate conduct less than this [W/(mK)]. */
export const INSULATES_BELOW = 0.08;

const withElements = (model: Model, of: (element: Element) => Element): Model => ({
  ...model,
  elements: model.elements.map(of),
});
const withZones = (model: Model, of: (zone: Zone) => Zone): Model => ({
  ...model,
  zones: model.zones.map(of),
});
const withOpenings = (model: Model, of: (opening: Opening) => Opening): Model => ({
  ...model,
  openings: model.openings.map(of),
});

export const UNKNOWNS: Readonly<Record<UnknownId, Unknown>> = {
  airtightness: {
    id: 'airtightness',
    scale: 'factor',
    priorSd: 0.55,
    change: (model, times) =>
      withOpenings(model, (opening) =>
        opening.kind === 'cracks' ? { ...opening, leakageCm2: opening.leakageCm2 * times } : opening,
      ),
  },
  sun: {
    id: 'sun',
    scale: 'factor',
    priorSd: 0.25,
    change: (model, times) => ({
      ...model,
      panes: model.panes.map((pane) => ({ ...pane, dirt: pane.dirt * times })),
    }),
  },
  insulation: {
    id: 'insulation',
    scale: 'factor',
    priorSd: 0.3,
    change: (model, times) =>
      withElements(model, (element) =>
        element.a.kind === 'outdoors'
          ? { ...element, layers: element.layers.map((layer) => insulated(layer, times)) }
          : element,
      ),
  },
  mass: {
    id: 'mass',
    scale: 'factor',
    priorSd: 0.6,
    change: (model, times) =>
      withZones(
        withElements(model, (element) =>
          element.a.kind === 'adiabatic' ? { ...element, areaM2: element.areaM2 * times } : element,
        ),
        (zone) => ({ ...zone, furnitureCapacity: zone.furnitureCapacity * times }),
      ),
  },
  gains: {
    id: 'gains',
    scale: 'factor',
    priorSd: 0.5,
    change: (model, times) =>
      withZones(model, (zone) => ({
        ...zone,
        gains: zone.gains.map(
          (gain): Gain => ({ ...gain, power: withEachHour(gain.power, (watt) => watt * times) }),
        ),
      })),
  },
  stove: {
    id: 'stove',
    scale: 'shift',
    priorSd: 1.5,
    change: (model, byK) =>
      withZones(model, (zone) =>
        zone.thermostat?.heatC
          ? {
              ...zone,
              thermostat: {
                ...zone.thermostat,
                heatC: withEachHour(zone.thermostat.heatC, (heatC) => heatC + byK),
              },
            }
          : zone,
      ),
  },
  // Of the days, not of the house: it acts on what was written down, which is no part of a model.
  fires: { id: 'fires', scale: 'factor', priorSd: 0.2, change: (model) => model },
  opensAbove: {
    id: 'opensAbove',
    scale: 'shift',
    priorSd: 2,
    change: (model, byK) =>
      withOpenings(model, (opening) =>
        opening.kind === 'vent'
          ? { ...opening, rule: { ...opening.rule, opensAboveC: opening.rule.opensAboveC + byK } }
          : opening,
      ),
  },
  ventArea: {
    id: 'ventArea',
    scale: 'factor',
    priorSd: 0.5,
    change: (model, times) =>
      withOpenings(model, (opening) =>
        opening.kind === 'vent'
          ? { ...opening, lowM2: opening.lowM2 * times, highM2: opening.highM2 * times }
          : opening,
      ),
  },
  moisture: {
    id: 'moisture',
    scale: 'factor',
    priorSd: 0.5,
    change: (model, times) =>
      withZones(model, (zone) => ({
        ...zone,
        moisture: zone.moisture.map(
          (source): MoistureSource => ({
            ...source,
            rate: withEachHour(source.rate, (rate) => rate * times),
          }),
        ),
      })),
  },
  ground: {
    id: 'ground',
    scale: 'shift',
    priorSd: 2,
    change: (model, byK) =>
      withElements(model, (element) =>
        element.a.kind === 'ground'
          ? {
              ...element,
              a: { ...element.a, wave: { ...element.a.wave, meanC: element.a.wave.meanC + byK } },
            }
          : element,
      ),
  },
  wind: {
    id: 'wind',
    scale: 'factor',
    priorSd: 0.3,
    change: (model, times) =>
      withOpenings(model, (opening) => {
        if (opening.kind === 'cracks')
          return { ...opening, windCoefficient: opening.windCoefficient * square(times) };
        return opening.kind === 'vent'
          ? { ...opening, windCoefficient: opening.windCoefficient * times }
          : opening;
      }),
  },
};

function insulated(layer: Layer, times: number): Layer {
  return layer.conductivity < INSULATES_BELOW
    ? { ...layer, conductivity: layer.conductivity / times }
    : layer;
}

/** The model with every unknown at a value. */
export function modelWith(model: Model, values: UnknownValues): Model {
  let changed = model;
  for (const id of UNKNOWN_IDS) {
    const value = values[id];
    if (value !== undefined && value !== asDrawn(id)) changed = UNKNOWNS[id].change(changed, value);
  }
  return changed;
}

/** The value of an unknown at so many of its prior's standard deviations. */
export function valueAt(id: UnknownId, place: number): number {
  const { scale, priorSd } = UNKNOWNS[id];
  return scale === 'factor' ? exp(priorSd * place) : priorSd * place;
}

/** As the drawing has it: a factor of 1 or a shift of 0. */
export function asDrawn(id: UnknownId): number {
  return UNKNOWNS[id].scale === 'factor' ? 1 : 0;
}
