// A roof space above a room whose air is held as it was measured, for roof-spaces.test.ts: four slopes alike, since nobody
// says which way the measured ones face; tile on battens and underlay; blown wool; leaks of a size that is fitted.

import { faceIn, layerOf } from '../../src/model/layers.ts';
import type { Element, Layer, Model, Zone } from '../../src/model/model.ts';
import { bareZone } from '../network/box-model.ts';

export interface RoofSpace {
  readonly pitchDeg: number;
  readonly woolM: number;
  /** effective leakage area [cm² for each m² of ceiling] */
  readonly leakageCm2PerM2: number;
}

const CEILING_M2 = 100;
const SPAN_M = 10;
/** Of concrete or clay tiles, dark to medium: common practice, no source. */
const TILE_ABSORPTANCE = 0.8;
/** Rafters, battens and boards on each m² of ceiling [kg] by their heat [J/(kg·K)]: common practice, no source. */
const TIMBER_J_PER_M2K = 15 * 1600;
const TILE: Layer = { name: 'tile', thicknessM: 0.02, conductivity: 1, density: 2000, specificHeat: 900 };
/** Between tile and underlay, stirred by wind through the battens; ISO 6946 unventilated 0.16 halved. */
const BATTENS: Layer = {
  name: 'battens',
  thicknessM: 0.03,
  conductivity: 0.03 / 0.08,
  density: 0,
  specificHeat: 1000,
};

export function roofSpace({ pitchDeg, woolM, leakageCm2PerM2 }: RoofSpace): Model {
  const pitch = (pitchDeg * Math.PI) / 180;
  const ridgeM = (SPAN_M / 2) * Math.tan(pitch);
  const slopes = [0, 90, 180, 270].map(
    (azimuthDeg): Element => ({
      id: `slope ${azimuthDeg}`,
      areaM2: CEILING_M2 / Math.cos(pitch) / 4,
      layers: [TILE, BATTENS, layerOf('softwood', 0.003)],
      a: {
        kind: 'outdoors',
        absorptance: TILE_ABSORPTANCE,
        emissivity: 0.9,
        tiltDeg: pitchDeg,
        azimuthDeg,
        film: { kind: 'computed' },
        exposed: true,
      },
      b: faceIn('roof space', 'softwood', 180 - pitchDeg, 'none'),
    }),
  );
  return {
    name: 'roof space',
    zones: [
      zone('house', 2.5 * CEILING_M2, 0),
      zone('roof space', (CEILING_M2 * ridgeM) / 2, TIMBER_J_PER_M2K * CEILING_M2),
    ],
    elements: [
      {
        id: 'ceiling',
        areaM2: CEILING_M2,
        layers: [layerOf('mineral-wool', woolM), layerOf('plasterboard', 0.013)],
        a: faceIn('roof space', 'softwood', 0, 'floor'),
        b: faceIn('house', 'plasterboard', 180, 'none'),
      },
      ...slopes,
    ],
    panes: [],
    openings: [
      {
        kind: 'cracks',
        id: 'eaves and ridge',
        zone: 'roof space',
        leakageCm2: leakageCm2PerM2 * CEILING_M2,
        // ASHRAE basic model, one storey, shelter class 3 (the suburbs both houses stand in).
        stackCoefficient: 0.000145,
        windCoefficient: 0.000174,
      },
    ],
  };
}

function zone(id: string, volumeM3: number, furnitureCapacity: number): Zone {
  return bareZone(id, { floorAreaM2: CEILING_M2, volumeM3, furnitureCapacity });
}
