// Checks one element of a model: area, layers and the two faces.

import { requireRange } from '../physics/require-range.ts';
import {
  requireAtLeastZero,
  requireFilm,
  requireFinite,
  requirePositive,
  requireShare,
  requireZoneName,
} from './check-number.ts';
import type { Element, Face, Layer } from './model.ts';

/**
 * The wave behind soil is a virtual one (ground-contact.ts): under a house 4 cm deep and 100 m long it swings up to six times
 * the year's own, which is 35 K at most where people live.
 */
const MOST_WAVE_K = 300;

/** Refuse an element by the first thing wrong with it. */
export function requireElement(element: Element, zoneIds: ReadonlySet<string>): void {
  const of = (what: string) => `element '${element.id}', ${what}`;
  requirePositive(of('areaM2'), element.areaM2, 'm²');
  if (element.layers.length === 0)
    throw new RangeError(`${of('layers')} is empty; allowed: at least one layer`);
  for (const layer of element.layers) requireLayer(of(`layer '${layer.name}'`), layer);
  requireFace(of('face a'), element.a, zoneIds);
  requireFace(of('face b'), element.b, zoneIds);
  if (element.heatedM !== undefined) {
    const thicknessM = element.layers.reduce((sum, layer) => sum + layer.thicknessM, 0);
    requireRange(of('heatedM'), element.heatedM, 0, thicknessM, 'm');
  }
  if (element.moistureBuffer !== undefined)
    requireAtLeastZero(of('moistureBuffer'), element.moistureBuffer, 'g/(m²·%RH)');
}

function requireLayer(name: string, layer: Layer): void {
  requirePositive(`${name}, thicknessM`, layer.thicknessM, 'm');
  requirePositive(`${name}, conductivity`, layer.conductivity, 'W/(m·K)');
  requireAtLeastZero(`${name}, density`, layer.density, 'kg/m³');
  requireAtLeastZero(`${name}, specificHeat`, layer.specificHeat, 'J/(kg·K)');
}

function requireFace(name: string, face: Face, zoneIds: ReadonlySet<string>): void {
  if (face.kind === 'adiabatic') return;
  if (face.kind === 'ground') {
    requireAtLeastZero(`${name}, resistance`, face.resistance, 'm²K/W');
    requireAtLeastZero(`${name}, soilM`, face.soilM ?? 0, 'm');
    requireRange(`${name}, wave.meanC`, face.wave.meanC, -60, 60, '°C');
    requireRange(`${name}, wave.amplitudeK`, face.wave.amplitudeK, 0, MOST_WAVE_K, 'K');
    requireFinite(`${name}, wave.coldestDay`, face.wave.coldestDay, 'days');
    return;
  }
  requireShare(`${name}, absorptance`, face.absorptance);
  requireShare(`${name}, emissivity`, face.emissivity);
  requireFilm(`${name}, film`, face.film);
  if (face.kind === 'zone') {
    requireZoneName(`${name}, zone`, face.zone, zoneIds);
    requireRange(`${name}, faceTiltDeg`, face.faceTiltDeg, 0, 180, '°');
    return;
  }
  requireRange(`${name}, tiltDeg`, face.tiltDeg, 0, 180, '°');
  requireFinite(`${name}, azimuthDeg`, face.azimuthDeg, '°');
}
