// The two sides of the bargain: how much equator-facing glass there is and what came through it, and how much
// mass stands inside the insulation to take it. Design, model and year in, the outcome's figures out.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import type { Element, Layer, Model } from '../model/model.ts';
import type { Year } from '../network/year.ts';
import { J_PER_KWH } from '../physics/constants.ts';
import type { Outcome } from './outcome.ts';

/** Lightest layer that counts as mass [kg/m³]: plasterboard does, timber and insulation do not. House rule. */
const HEAVY_DENSITY = 800;
/** A light layer of at least this resistance ends the mass a room can reach [m²K/W]. House rule. */
const INSULATING_RESISTANCE = 0.5;
const LIGHT_DENSITY = 200;

/** Panes of the equator-facing glass carry ids that start so. */
const FRONT = 'front';

/**
 * Area, shares and yearly sun of the equator-facing glass.
 *
 * @param design the design, for its areas and tilt
 * @param year one run
 * @returns area [m²], shares 0…1 of the gross equator-facing wall and of the heated floor, tilt [°], sun on the
 *   outside unshaded and light passed inside [kWh a year]
 */
export function equatorGlass(design: Design, year: Year): Outcome['equatorGlass'] {
  const { glassM2, shareOfWall, shareOfFloor } = geometryOf(design);
  const panes = year.panes.filter((pane) => pane.id.startsWith(FRONT) && pane.from === 'outdoors');
  const kWh = (column: 'incidentW' | 'transmittedW') =>
    panes.reduce((sum, pane) => sum + pane[column].reduce((total, watts) => total + watts, 0), 0) / 1000;
  return {
    areaM2: glassM2,
    shareOfWall,
    shareOfFloor,
    tiltDeg: design.glass.tiltDeg,
    incidentKWh: kWh('incidentW'),
    transmittedKWh: kWh('transmittedW'),
  };
}

/**
 * Mass inside the insulation: layers of at least 800 kg/m³ met from the room before the first insulation, soil
 * left out; floors, linings, common wall and extra mass alike, whether or not the sun or the day reaches them.
 *
 * @param model the model that was run
 * @param glassM2 equator-facing glass [m²]
 * @returns volume [m³], heat capacity [kWh/K], kilograms for each square metre of glass (null without glass)
 */
export function massInside(model: Model, glassM2: number): Outcome['mass'] {
  let volumeM3 = 0;
  let joulesPerK = 0;
  let kg = 0;
  for (const element of model.elements) {
    for (const layer of massLayers(element)) {
      const volume = element.areaM2 * layer.thicknessM;
      volumeM3 += volume;
      kg += volume * layer.density;
      joulesPerK += volume * layer.density * layer.specificHeat;
    }
  }
  return {
    volumeM3,
    heatCapacityKWhPerK: joulesPerK / J_PER_KWH,
    kgPerM2Glass: glassM2 > 0 ? kg / glassM2 : null,
  };
}

/** The heavy layers of an element that a room reaches, from its face b inwards; all of them between two rooms. */
function massLayers(element: Element): Layer[] {
  const reached: Layer[] = [];
  for (const layer of [...element.layers].reverse()) {
    if (element.a.kind !== 'zone' && isInsulation(layer)) break;
    if (layer.density >= HEAVY_DENSITY && !/soil|ground/i.test(layer.name)) reached.push(layer);
  }
  return reached;
}

function isInsulation(layer: Layer): boolean {
  return layer.density < LIGHT_DENSITY && layer.thicknessM / layer.conductivity >= INSULATING_RESISTANCE;
}
