// Houses with mass walls, light houses and glazed walls that were measured, set up from what is known of each; what nobody
// noted is an argument, and its band stands beside the check.
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { glassSystem, paneWith } from '../../src/model/glazing.ts';
import { faceIn, layerOf } from '../../src/model/layers.ts';
import type { Model } from '../../src/model/model.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { bareZone } from '../network/box-model.ts';
import { SANTA_FE } from './measured-houses.ts';
import { wholeModel } from './measured-row.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const CLOSED = EXAMPLES.find(({ id }) => id === 'closed')!.design;
const DIVIDED = EXAMPLES.find(({ id }) => id === 'divided')!.design;

/**
 * The adobe house with direct gain and seven glazed mass walls, of its own adobe, in what its front leaves beside the windows:
 * 14 m² of them, a still layer of air behind their glass. A design has no glazed wall beside its windows, so it is put into the model.
 * Not told: their glass, how dark they are.
 */
export function glazedAdobe(glass: string, absorptance: number, climate: PreparedClimate): Model {
  const WALLS_M2 = 14;
  const GAP_M = 0.1;
  const plain = wholeModel(SANTA_FE, climate);
  return {
    ...plain,
    zones: [...plain.zones, bareZone('gap', { floorAreaM2: 0.5, volumeM3: WALLS_M2 * GAP_M })],
    elements: [
      ...plain.elements.map((element) =>
        element.id === 'equator wall' ? { ...element, areaM2: element.areaM2 - WALLS_M2 } : element,
      ),
      {
        id: 'glazed walls',
        areaM2: WALLS_M2,
        layers: [layerOf('adobe', 0.36)],
        a: { ...faceIn('gap', 'adobe', 90, 'back'), absorptance },
        b: faceIn('house', 'adobe', 90, 'none'),
      },
    ],
    panes: [
      ...plain.panes,
      paneWith({
        id: 'glass of the walls',
        areaM2: WALLS_M2,
        frameShare: 0.1,
        glass: glassSystem(glass),
        azimuthDeg: 180,
        to: 'gap',
      }),
    ],
  };
}

/**
 * House behind a glazed wall of 0.40 m of concrete under double glass, vents to the rooms; drawn as the shallowest sunspace with a
 * small door for the vents. Not told: the wall's size beside the house's, insulation of the time, draughts.
 */
export function glazedConcrete(glassM2: number, wallResistance: number, ach50: number): Design {
  return {
    ...CLOSED,
    name: 'House behind a glazed wall',
    house: { ...CLOSED.house, floorAreaM2: 180, equatorWallM: 11, ceilingHeightM: 2.6, storeys: 2 },
    glass: {
      ...CLOSED.glass,
      basis: 'area',
      value: glassM2,
      type: 'double-clear',
      overhangM: 0.3,
      otherShareOfFloor: 0.05,
    },
    sunspace: {
      ...CLOSED.sunspace,
      lengthM: 11,
      depthM: 0.6,
      commonWallMaterial: 'concrete',
      commonWallM: 0.4,
      commonGlassM2: 4,
      doorM2: 1.5,
    },
    mass: { ...CLOSED.mass, areaM2: 0 },
    envelope: { ...CLOSED.envelope, wallResistance, roofResistance: 5 },
    air: { ...CLOSED.air, ach50 },
    people: { count: 4, living: 'moist', awayWorkdays: false, appliancesW: 300 },
    plants: { ...CLOSED.plants, bedM2: 0 },
    heating: { dayC: 19, nightC: 15, capacityKW: 12 },
  };
}

/** Two storeys around a sunspace behind an adobe wall. Not told here: insulation, glass. */
export function aroundSunspace(glassM2: number, wallResistance: number): Design {
  return {
    ...CLOSED,
    name: 'Two storeys around a sunspace',
    climate: 'santa-fe',
    house: { ...CLOSED.house, floorAreaM2: 200, equatorWallM: 12, ceilingHeightM: 2.6, storeys: 2 },
    glass: {
      ...CLOSED.glass,
      basis: 'area',
      value: glassM2,
      type: 'double-clear',
      tiltDeg: 65,
      overhangM: 0,
      otherShareOfFloor: 0.03,
    },
    sunspace: {
      ...CLOSED.sunspace,
      lengthM: 10,
      depthM: 3.5,
      commonWallMaterial: 'adobe',
      commonWallM: 0.3,
      commonGlassM2: 8,
      doorM2: 4,
    },
    mass: { ...CLOSED.mass, areaM2: 0 },
    envelope: {
      ...CLOSED.envelope,
      wallResistance,
      roofResistance: 7,
      wallLining: 'adobe',
      wallLiningM: 0.2,
    },
    air: { ...CLOSED.air, ach50: 6 },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 250 },
    plants: { ...CLOSED.plants, bedM2: 6 },
    heating: { dayC: 19, nightC: 17, capacityKW: 12 },
  };
}

/** A model whose glass lets no sun through, or only some of it. */
export function withoutSun(model: Model, isDark: (pane: Model['panes'][number]) => boolean): Model {
  return { ...model, panes: model.panes.map((pane) => (isDark(pane) ? { ...pane, dirt: 0 } : pane)) };
}

/** Light frame on a slab, tanks of water inside, vents and curtains, no heater, partly lived in. Not told: glass, tanks. */
export function lightWithWater(glassShare: number, tanksM2: number): Design {
  return {
    ...MODEST,
    name: 'Light frame, slab and water',
    house: { ...MODEST.house, floorAreaM2: 100, equatorWallM: 13 },
    glass: { ...MODEST.glass, value: glassShare, nightResistance: 0.2 },
    mass: { material: 'water', areaM2: tanksM2, thicknessM: 0.4, place: 'sunlit' },
    floor: { ...MODEST.floor, resistance: 0, edgeResistance: 1 },
    people: { count: 1, living: 'moist', awayWorkdays: true, appliancesW: 150 },
    heating: { dayC: 5, nightC: 5, capacityKW: 0 },
  };
}

/** House of four rooms as built before, and airtight and superinsulated; windows and who opens them unchanged. */
export function olderHouse(glassM2: number, opensAboveC: number): Design {
  return {
    ...DIVIDED,
    name: 'As built before',
    glass: { ...DIVIDED.glass, basis: 'area', value: glassM2, type: 'double-clear' },
    sunspace: { ...DIVIDED.sunspace, join: 'none' },
    mass: { ...DIVIDED.mass, areaM2: 0 },
    floor: { ...DIVIDED.floor, resistance: 0.5, edgeResistance: 0 },
    envelope: { ...DIVIDED.envelope, wallResistance: 1.5, roofResistance: 3 },
    air: { ...DIVIDED.air, ach50: 9 },
    vents: { ...DIVIDED.vents, opensAboveC },
    plants: { ...DIVIDED.plants, bedM2: 0 },
  };
}
export function superinsulated(design: Design): Design {
  return {
    ...design,
    name: 'Superinsulated',
    glass: { ...design.glass, type: 'triple-low-e' },
    floor: { ...design.floor, resistance: 5, edgeResistance: 2 },
    envelope: { ...design.envelope, wallResistance: 7, roofResistance: 10 },
    air: { ...design.air, ach50: 0.6 },
    ventilation: { ...design.ventilation, recoveryAch: 0.4, recoveryEffectiveness: 0.85 },
  };
}
