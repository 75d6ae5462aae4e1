// Sunspaces, glazed balconies and glasshouses that were measured, set up from what is known of each; what nobody noted is an
// argument, and its band stands beside the check. Sizes that no account gives are those of an ordinary one of the kind.
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Room } from '../../src/design/room.ts';
import { glassSystem, paneWith } from '../../src/model/glazing.ts';
import { slabOnGround } from '../../src/model/ground-contact.ts';
import { faceIn, insulationOf, layerOf, outdoorFace } from '../../src/model/layers.ts';
import type { Element, Layer, Model, Opening, Pane } from '../../src/model/model.ts';
import { always } from '../../src/model/schedule.ts';
import { SPECIFIC_HEAT_AIR } from '../../src/physics/constants.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { bareZone } from '../network/box-model.ts';

const CLOSED = EXAMPLES.find(({ id }) => id === 'closed')!.design;
const NO_HEATER = { dayC: 5, nightC: 5, capacityKW: 0 } as const;
/** Nothing but the sun's box: what a design says of plants and of an overhang is left out. */
const BARE: Design = {
  ...CLOSED,
  glass: { ...CLOSED.glass, basis: 'area', overhangM: 0, otherShareOfFloor: 0 },
  plants: { ...CLOSED.plants, bedM2: 0 },
};

/**
 * Fan-drawn sunspace without mass: 200 ft² of double glass, walls and roof of R 5.3, a floor of 38 mm of polystyrene. A fan
 * on a thermostat draws outdoor air through it from 24 °C on; what it takes out is here the cooling that holds 24 °C, at most
 * what its flow carries off at 4 °C of frost. Not told: tilt, the fan's flow.
 */
export function fanSunspace(tiltDeg: number, fanM3S: number, climate: PreparedClimate): Model {
  const GLASS_M2 = 18.6;
  const LENGTH_M = 6.1;
  const DEPTH_M = 2.4;
  const HEIGHT_M = 2.9;
  const floorM2 = LENGTH_M * DEPTH_M;
  const foam = [layerOf('xps', 0.038)];
  const plan = { areaM2: floorM2, perimeterM: 2 * (LENGTH_M + DEPTH_M), wallThicknessM: 0.15 };
  const contact = slabOnGround(plan, foam, 0, climate.ground);
  const shell = (id: string, areaM2: number, tiltDeg: number, azimuthDeg: number): Element => ({
    id,
    areaM2,
    layers: [layerOf('plywood', 0.012), ...insulationOf(5.3, 'mineral-wool'), layerOf('plywood', 0.012)],
    a: outdoorFace(tiltDeg, azimuthDeg),
    b: faceIn('sunspace', 'plywood', 180 - tiltDeg, tiltDeg === 90 && azimuthDeg === 0 ? 'back' : 'none'),
  });
  return {
    name: 'fan-drawn sunspace',
    zones: [
      {
        ...bareZone('sunspace', { floorAreaM2: floorM2, volumeM3: 0.6 * floorM2 * HEIGHT_M }),
        thermostat: {
          heatC: null,
          coolC: always(24),
          heatCapacityW: 0,
          coolCapacityW: fanM3S * climate.airDensity[0]! * SPECIFIC_HEAT_AIR * (24 + 4),
        },
      },
    ],
    elements: [
      {
        id: 'floor',
        areaM2: floorM2,
        layers: [...contact.soil, ...foam],
        a: contact.face,
        b: { ...faceIn('sunspace', 'xps', 0, 'floor'), absorptance: 0.8 },
      },
      shell('back', LENGTH_M * HEIGHT_M, 90, 0),
      shell('east end', 0.6 * DEPTH_M * HEIGHT_M, 90, 90),
      shell('west end', 0.6 * DEPTH_M * HEIGHT_M, 90, 270),
      shell('roof', LENGTH_M * 1, 0, 0),
    ],
    panes: [
      paneWith({
        id: 'front',
        areaM2: GLASS_M2,
        frameShare: 0,
        glass: glassSystem('double-clear'),
        tiltDeg,
        azimuthDeg: 180,
        to: 'sunspace',
        lightRoom: { depthM: DEPTH_M, sillM: 0, headM: HEIGHT_M },
      }),
    ],
    openings: [],
  };
}

/**
 * Glasshouse that stands free, 4 × 6 m, a bed in half of it, roof vents that open by themselves and a fan at 27 °C. Not told:
 * glass, leaks.
 */
export function glasshouse(glass: string, leakAch: number, climate: PreparedClimate): Model {
  const LENGTH_M = 6;
  const WIDTH_M = 4;
  const WALL_M = 1.8;
  const PITCH_DEG = 25;
  const floorM2 = LENGTH_M * WIDTH_M;
  const ridgeM = (WIDTH_M / 2) * Math.tan((PITCH_DEG * Math.PI) / 180);
  const volumeM3 = floorM2 * (WALL_M + ridgeM / 2);
  const plan = { areaM2: floorM2, perimeterM: 2 * (LENGTH_M + WIDTH_M), wallThicknessM: 0.1 };
  const earth = [layerOf('soil', 0.3)];
  const contact = slabOnGround(plan, earth, 0, climate.ground);
  const ground = (id: string, areaM2: number): Element => ({
    id,
    areaM2,
    layers: [...contact.soil, ...earth],
    a: contact.face,
    b: faceIn('glasshouse', 'soil', 0, 'floor'),
  });
  const pane = (id: string, areaM2: number, tiltDeg: number, azimuthDeg: number): Pane =>
    paneWith({
      id,
      areaM2,
      frameShare: 0.1,
      glass: glassSystem(glass),
      tiltDeg,
      azimuthDeg,
      to: 'glasshouse',
    });
  const slopeM2 = (LENGTH_M * WIDTH_M) / 2 / Math.cos((PITCH_DEG * Math.PI) / 180);
  const endM2 = WIDTH_M * (WALL_M + ridgeM / 2);
  const vents: Opening = {
    kind: 'vent',
    id: 'roof vents',
    zone: 'glasshouse',
    lowM2: 0,
    highM2: 0.1 * floorM2,
    stackM: 0,
    openingHeightM: 0.6,
    discharge: 0.6,
    windCoefficient: 0.05,
    rule: {
      opensAboveC: 24,
      bandK: 5,
      onlyWhileOutside: 'cooler',
      opens: 'by-degrees',
      schedule: always(1),
      shutAboveWind: 15,
      shutInRain: false,
    },
    control: 'automatic',
  };
  return {
    name: 'glasshouse',
    zones: [
      {
        ...bareZone('glasshouse', { floorAreaM2: floorM2, volumeM3 }),
        planting: {
          bedM2: floorM2 / 2,
          leafAreaIndex: 2,
          boundaryResistance: 275,
          albedo: 0.23,
          soil: 'mulched',
        },
      },
    ],
    elements: [ground('path', floorM2 / 2), { ...ground('bed', floorM2 / 2), isBed: true }],
    panes: [
      pane('south roof', slopeM2, PITCH_DEG, 180),
      pane('north roof', slopeM2, PITCH_DEG, 0),
      pane('south wall', LENGTH_M * WALL_M, 90, 180),
      pane('north wall', LENGTH_M * WALL_M, 90, 0),
      pane('east end', endM2, 90, 90),
      pane('west end', endM2, 90, 270),
    ],
    openings: [
      {
        kind: 'fixed',
        id: 'leaks',
        zone: 'glasshouse',
        flow: always((leakAch * volumeM3) / 3600),
        fan: false,
      },
      {
        kind: 'fixed',
        id: 'fan',
        zone: 'glasshouse',
        flow: always((20 * volumeM3) / 3600),
        fan: true,
        onlyAboveC: 27,
      },
      vents,
    ],
  };
}

/**
 * Granite house of 80 m², two people, no heater told of: one bedroom has a glazed balcony as a part of it; living room, another
 * bedroom and a bath have none. Not told here: glass of the balcony, draughts, the roof.
 */
export function balconyHouse(glassM2: number, ach50: number, roofResistance: number): Design {
  const room = (
    name: string,
    use: Room['use'],
    row: Room['row'],
    side: 'equator' | 'pole',
    areaM2: number,
  ): Room => ({
    name,
    use,
    row,
    storey: 0,
    share: 0.5,
    reachesUp: false,
    heated: false,
    door: 'shut',
    mass: false,
    windows: [{ side, areaM2, openM2: 0.5, type: 'single-clear' }],
  });
  return {
    ...BARE,
    version: 2,
    name: 'Granite, glazed balcony',
    house: { ...BARE.house, floorAreaM2: 80, equatorWallM: 10, ceilingHeightM: 2.7 },
    glass: { ...BARE.glass, value: 0, type: 'single-clear' },
    sunspace: { ...BARE.sunspace, join: 'none' },
    rooms: {
      frontDepthM: 4,
      partition: 'masonry',
      partitionM: 0.2,
      stairM2: 0,
      list: [
        room('Bedroom with balcony', 'bedroom', 'front', 'equator', glassM2),
        room('Living room', 'living', 'front', 'equator', 1.5),
        room('Bedroom', 'bedroom', 'back', 'pole', 1),
        room('Bath', 'bath', 'back', 'pole', 0.5),
      ],
    },
    mass: { ...BARE.mass, areaM2: 0 },
    floor: { material: 'stone', thicknessM: 0.2, cover: 'wood', resistance: 0, edgeResistance: 0 },
    envelope: {
      ...BARE.envelope,
      wallResistance: 0.05,
      roofResistance,
      wallLining: 'stone',
      wallLiningM: 0.6,
    },
    air: { ...BARE.air, ach50 },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 100 },
    heating: NO_HEATER,
  };
}

/** Parts of a flat's shell that other flats lie against let no heat through; the most a design may have. */
const NEIGHBOURS = { roofResistance: 20, floor: { resistance: 12, edgeResistance: 8 } } as const;

/**
 * Flat of 60 m² with two small sunspaces on its front, walls of U 0.25, double glass, 20 °C round the clock, neighbours above
 * and below; its air is changed by what the check adds. Not told here: glass of the sunspaces, gains.
 */
export function preheatFlat(glassM2: number, appliancesW: number): Design {
  return {
    ...BARE,
    name: 'Flat that takes its air from sunspaces',
    house: { ...BARE.house, floorAreaM2: 60, equatorWallM: 7.5, ceilingHeightM: 2.4 },
    glass: { ...BARE.glass, value: glassM2, type: 'double-clear', otherShareOfFloor: 0.06 },
    sunspace: {
      ...BARE.sunspace,
      join: 'closed',
      lengthM: 5,
      depthM: 1.2,
      commonWallMaterial: 'brick',
      commonWallM: 0.1,
      commonGlassM2: 3,
      doorM2: 2,
      doorRule: 'shut',
    },
    mass: { ...BARE.mass, areaM2: 0 },
    floor: { ...BARE.floor, ...NEIGHBOURS.floor, cover: 'carpet' },
    envelope: {
      wallResistance: 3.8,
      roofResistance: NEIGHBOURS.roofResistance,
      bermShare: 0,
      wallLining: 'brick',
      wallLiningM: 0.1,
    },
    air: { ...BARE.air, ach50: 0.1, sunspaceAch50: 0.1 },
    ventilation: { ...BARE.ventilation, aired: 'never' },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW },
    heating: { dayC: 20, nightC: 20, capacityKW: 8 },
  };
}

/** The same without sunspaces: what stood in the wall behind them looks outdoors. */
export function withoutSunspace(design: Design): Design {
  return {
    ...design,
    glass: { ...design.glass, value: design.sunspace.commonGlassM2 },
    sunspace: { ...design.sunspace, join: 'none' },
  };
}

/**
 * Flat whose balcony is shut in with single glass and open joints. Not told: the wall behind it, how open the joints are, which
 * way it looks.
 */
export function glazedBalcony(sunspaceAch50: number, turnDeg: number): Design {
  return {
    ...BARE,
    name: 'Flat with a glazed balcony',
    house: { ...BARE.house, floorAreaM2: 60, equatorWallM: 7.5, ceilingHeightM: 2.6, turnDeg },
    glass: { ...BARE.glass, value: 8, type: 'single-clear', otherShareOfFloor: 0.06 },
    sunspace: {
      ...BARE.sunspace,
      join: 'closed',
      lengthM: 4.5,
      depthM: 1.8,
      commonWallMaterial: 'brick',
      commonWallM: 0.13,
      commonGlassM2: 3,
      doorM2: 2,
      doorRule: 'shut',
    },
    mass: { ...BARE.mass, areaM2: 0 },
    floor: { ...BARE.floor, ...NEIGHBOURS.floor, cover: 'wood' },
    envelope: { ...BARE.envelope, wallResistance: 2.5, roofResistance: NEIGHBOURS.roofResistance },
    air: { ...BARE.air, ach50: 2, sunspaceAch50 },
    vents: { ...BARE.vents, sunspaceM2: 0 },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 250 },
    heating: { dayC: 21, nightC: 21, capacityKW: 8 },
  };
}

/** Flat behind a glazed balcony with a door to it, no heater; brick. Not told: glass, insulation. */
export function balconyFlat(type: string, wallResistance: number): Design {
  return {
    ...BARE,
    name: 'Flat behind a sunspace',
    house: { ...BARE.house, floorAreaM2: 80, equatorWallM: 8, ceilingHeightM: 2.7 },
    glass: { ...BARE.glass, value: 13, type, otherShareOfFloor: 0.04 },
    sunspace: {
      ...BARE.sunspace,
      join: 'closed',
      lengthM: 6,
      depthM: 1.5,
      commonWallMaterial: 'brick',
      commonWallM: 0.24,
      commonGlassM2: 4,
      doorM2: 4,
      doorRule: 'shut',
    },
    mass: { ...BARE.mass, areaM2: 0 },
    floor: { ...BARE.floor, ...NEIGHBOURS.floor },
    envelope: {
      wallResistance,
      roofResistance: NEIGHBOURS.roofResistance,
      bermShare: 0,
      wallLining: 'brick',
      wallLiningM: 0.24,
    },
    air: { ...BARE.air, ach50: 5 },
    people: { count: 3, living: 'moist', awayWorkdays: false, appliancesW: 300 },
    heating: NO_HEATER,
  };
}

/** Earth-walled house of 50 m² with a stove, a veranda of single glass put before it. Not told: what it is heated to, roof. */
export function veranda(dayC: number, roofResistance: number): Design {
  return {
    ...BARE,
    name: 'Earth walls and a veranda',
    house: { ...BARE.house, floorAreaM2: 50, equatorWallM: 9, ceilingHeightM: 2.5 },
    glass: { ...BARE.glass, value: 18, type: 'single-clear', otherShareOfFloor: 0.02 },
    sunspace: {
      ...BARE.sunspace,
      join: 'closed',
      lengthM: 8,
      depthM: 2,
      commonWallMaterial: 'adobe',
      commonWallM: 0.45,
      commonGlassM2: 3,
      doorM2: 2,
    },
    mass: { ...BARE.mass, areaM2: 0 },
    floor: { ...BARE.floor, resistance: 0, edgeResistance: 0, cover: 'carpet' },
    envelope: {
      wallResistance: 0.05,
      roofResistance,
      bermShare: 0,
      wallLining: 'adobe',
      wallLiningM: 0.45,
    },
    air: { ...BARE.air, ach50: 12 },
    people: { count: 6, living: 'moist', awayWorkdays: false, appliancesW: 100 },
    heating: { dayC, nightC: dayC - 4, capacityKW: 5 },
  };
}

/** Conservatory under a glazed roof, shut, a wall of brick behind it. Not told: glass, leaks. */
export function conservatory(type: string, sunspaceAch50: number): Design {
  return {
    ...BARE,
    name: 'Conservatory with a glazed roof',
    house: { ...BARE.house, floorAreaM2: 100, equatorWallM: 9, ceilingHeightM: 2.5 },
    glass: { ...BARE.glass, value: 17, type, tiltDeg: 25, otherShareOfFloor: 0.08 },
    sunspace: {
      ...BARE.sunspace,
      join: 'closed',
      lengthM: 4,
      depthM: 3,
      endWalls: 'glazed',
      commonWallMaterial: 'brick',
      commonWallM: 0.1,
      commonGlassM2: 0,
      doorM2: 3,
      doorRule: 'shut',
    },
    air: { ...BARE.air, sunspaceAch50 },
    vents: { ...BARE.vents, sunspaceM2: 0 },
    hotter: { winterK: 0, summerK: 0, waveDays: 5, waveK: 0 },
  };
}

export const insulated =
  (resistance: number) =>
  (layers: readonly Layer[]): readonly Layer[] => [...layers, ...insulationOf(resistance, 'mineral-wool')];
