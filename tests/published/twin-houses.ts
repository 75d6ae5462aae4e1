// Small houses that differ in what stores their heat, and where said in what lies under the floor, for twins.test.ts: one
// room of 80 m² with windows on four sides, empty, an even exchange of air. Layers from outside, or the ground, inwards.

import { glassSystem, paneWith } from '../../src/model/glazing.ts';
import { slabOnGround } from '../../src/model/ground-contact.ts';
import { ceilingFace, faceIn, layerOf, roofLayers, thicknessOf } from '../../src/model/layers.ts';
import type { Element, Layer, Model, OutdoorFace } from '../../src/model/model.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { always } from '../network/always.ts';
import { bareZone } from '../network/box-model.ts';

const LENGTH_M = 10;
const DEPTH_M = 8;
const HEIGHT_M = 2.5;
const FLOOR_M2 = LENGTH_M * DEPTH_M;
const PERIMETER_M = 2 * (LENGTH_M + DEPTH_M);
/** Both faces of the partitions. */
const PARTITION_M2 = 120;
const ROOF_RESISTANCE = 7;
/** Of air and furniture [J/(m²K)], ISO 52016-1; from memory, high confidence. */
const FURNITURE = 10_000;
const SIDES = [
  { name: 'north', azimuthDeg: 0, grossM2: LENGTH_M * HEIGHT_M },
  { name: 'east', azimuthDeg: 90, grossM2: DEPTH_M * HEIGHT_M },
  { name: 'south', azimuthDeg: 180, grossM2: LENGTH_M * HEIGHT_M },
  { name: 'west', azimuthDeg: 270, grossM2: DEPTH_M * HEIGHT_M },
];
const WALLS_M2 = SIDES.reduce((sum, { grossM2 }) => sum + grossM2, 0);

export interface Build {
  readonly wall: readonly Layer[];
  readonly floor: readonly Layer[];
  /** half of a partition, from its middle to its face */
  readonly partition: readonly Layer[];
}

export interface Use {
  /** of the floor's area, frames and all */
  readonly glassShare: number;
  /** air changes an hour */
  readonly ach: number;
  /** winters are heated to 20 °C, which the ground remembers */
  readonly heated: boolean;
}

const wool = (thicknessM: number) => layerOf('mineral-wool', thicknessM);
const board = layerOf('plasterboard', 0.0125);
const render = layerOf('lime-plaster', 0.015);

/** A thin screed on an insulated slab. */
const SCREED = [layerOf('concrete', 0.12), layerOf('xps', 0.18), layerOf('concrete', 0.04)];

/** Timber frame. */
export const LIGHT: Build = {
  wall: [layerOf('softwood', 0.02), wool(0.2), board, board],
  floor: SCREED,
  partition: [wool(0.04), board],
};
/** The same insulation and floor, with brick walls. */
export const MEDIUM: Build = {
  wall: [render, wool(0.2), layerOf('brick', 0.12), layerOf('lime-plaster', 0.01)],
  floor: SCREED,
  partition: [layerOf('brick', 0.06), layerOf('lime-plaster', 0.01)],
};
const SLAB = [layerOf('concrete', 0.12), layerOf('tile', 0.01)];

/** Masonry on a slab that lies on the ground. */
export const MASONRY_ON_GROUND: Build = {
  wall: [render, wool(0.2), layerOf('brick', 0.24), layerOf('lime-plaster', 0.01)],
  floor: SLAB,
  partition: [layerOf('brick', 0.06), layerOf('lime-plaster', 0.01)],
};
/** A timber frame on the same slab, insulated below. */
export const FRAME_ON_INSULATION: Build = {
  ...LIGHT,
  floor: [layerOf('xps', 0.18), ...SLAB],
};
/** Rammed earth, solid or with a core; slab on the ground. */
export const SOLID_EARTH: Build = {
  wall: [layerOf('rammed-earth', 0.3)],
  floor: [layerOf('concrete', 0.1), layerOf('tile', 0.01)],
  partition: [layerOf('plasterboard', 0.013)],
};
export const CORED_EARTH: Build = {
  ...SOLID_EARTH,
  wall: [layerOf('rammed-earth', 0.125), layerOf('xps', 0.05), layerOf('rammed-earth', 0.125)],
};

/** Heat that a room's surfaces hold to 0.1 m deep, or to the first insulation, by floor area [kJ/(m²K)], as ISO 13790. */
export function massParameter({ wall, floor, partition }: Build): number {
  const REACH_M = 0.1;
  const held = (layers: readonly Layer[]) => {
    let left = REACH_M;
    let joule = 0;
    for (const { thicknessM, conductivity, density, specificHeat } of layers.toReversed()) {
      if (conductivity < 0.06 || left <= 0) break;
      joule += Math.min(left, thicknessM) * density * specificHeat;
      left -= thicknessM;
    }
    return joule;
  };
  const ceiling = FLOOR_M2 * held(roofLayers(ROOF_RESISTANCE));
  const whole = WALLS_M2 * held(wall) + FLOOR_M2 * held(floor) + PARTITION_M2 * held(partition) + ceiling;
  return whole / FLOOR_M2 / 1000;
}

/** The house as a model; its floor knows the climate's ground. */
export function twin(build: Build, use: Use, climate: PreparedClimate): Model {
  const volumeM3 = FLOOR_M2 * HEIGHT_M;
  const plan = { areaM2: FLOOR_M2, perimeterM: PERIMETER_M, wallThicknessM: thicknessOf(build.wall) };
  const contact = slabOnGround(plan, build.floor, 0, climate.ground);
  const glassShare = (use.glassShare * FLOOR_M2) / WALLS_M2;
  const outdoors = (tiltDeg: number, azimuthDeg: number): OutdoorFace => ({
    kind: 'outdoors',
    absorptance: 0.5,
    emissivity: 0.9,
    tiltDeg,
    azimuthDeg,
    film: { kind: 'computed' },
    exposed: true,
  });
  const walls = SIDES.map(
    ({ name, azimuthDeg, grossM2 }): Element => ({
      id: `${name} wall`,
      areaM2: grossM2 * (1 - glassShare),
      layers: build.wall,
      a: outdoors(90, azimuthDeg),
      b: faceIn('house', 'lime-plaster', 90, 'back'),
    }),
  );
  return {
    name: 'twin',
    zones: [
      bareZone('house', {
        floorAreaM2: FLOOR_M2,
        volumeM3,
        furnitureCapacity: FLOOR_M2 * FURNITURE,
        furnitureMoisture: 1,
        thermostat: use.heated
          ? { heatC: always(20), coolC: null, heatCapacityW: 10_000, coolCapacityW: 0 }
          : null,
      }),
    ],
    elements: [
      ...walls,
      {
        id: 'roof',
        areaM2: FLOOR_M2,
        layers: roofLayers(ROOF_RESISTANCE),
        a: outdoors(20, 180),
        b: ceilingFace('house'),
      },
      {
        id: 'floor',
        areaM2: FLOOR_M2,
        layers: [...contact.soil, ...build.floor],
        a: contact.face,
        b: faceIn('house', 'tile', 0, 'floor'),
      },
      {
        id: 'partitions',
        areaM2: PARTITION_M2,
        layers: build.partition,
        a: { kind: 'adiabatic' },
        b: faceIn('house', 'lime-plaster', 90, 'none'),
      },
    ],
    panes: SIDES.map(({ name, azimuthDeg, grossM2 }) =>
      paneWith({
        id: `${name} window`,
        areaM2: grossM2 * glassShare,
        wallM2: grossM2,
        frameShare: 0.25,
        glass: glassSystem('double-low-e'),
        azimuthDeg,
        to: 'house',
      }),
    ),
    openings: [
      { kind: 'fixed', id: 'air', zone: 'house', flow: always((use.ach * volumeM3) / 3600), fan: false },
    ],
  };
}
