// Houses that were measured, set up as designs from what is known of each: what the accounts leave open is an argument whose
// band stands beside the check, or stands at its middle. Rammed tyres and earth at the back are a berm with a heavy lining;
// where no weather of the place is bundled, the nearest bundled climate stands in for it, or a year made from its normals.
import type { Design, Habit } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const CLOSED = EXAMPLES.find(({ id }) => id === 'closed')!.design;

/** Back-up heat that is not there; the set-points then mean nothing. */
const NO_HEATER = { dayC: 5, nightC: 5, capacityKW: 0 } as const;

/** Rammed-tyre house of 170 m², 30 m of glazed planted sunspace, kitchen, showers and many users; no heater. */
export function kressberg(appliancesW: number): Design {
  return {
    ...CLOSED,
    name: 'Rammed tyres, 170 m²',
    house: { ...CLOSED.house, floorAreaM2: 170, equatorWallM: 30, ceilingHeightM: 2.8 },
    glass: {
      ...CLOSED.glass,
      basis: 'area',
      value: 60,
      type: 'double-low-e',
      tiltDeg: 65,
      overhangM: 0,
      otherShareOfFloor: 0.01,
    },
    sunspace: {
      ...CLOSED.sunspace,
      lengthM: 30,
      depthM: 2.5,
      commonWallMaterial: 'brick',
      commonWallM: 0.15,
      commonGlassM2: 20,
      doorM2: 4,
    },
    mass: { material: 'earth-tyres', areaM2: 60, thicknessM: 0.7, place: 'shaded' },
    floor: { ...CLOSED.floor, thicknessM: 0.12, cover: 'tile', resistance: 3, edgeResistance: 3 },
    envelope: {
      wallResistance: 4,
      roofResistance: 8,
      bermShare: 1,
      wallLining: 'earth-tyres',
      wallLiningM: 0.7,
    },
    air: { ...CLOSED.air, ach50: 3 },
    people: { count: 4, living: 'moist', awayWorkdays: false, appliancesW },
    plants: { ...CLOSED.plants, bedM2: 20 },
    heating: NO_HEATER,
  };
}

/** Rammed-tyre house with a planted sunspace shut off from the rooms, wood oven; well insulated, the oven fed by day. */
export const FREEVILLE: Design = {
  ...kressberg(250),
  name: 'Rammed tyres, wood oven',
  house: { ...CLOSED.house, floorAreaM2: 110, equatorWallM: 18, ceilingHeightM: 2.6 },
  glass: { ...kressberg(250).glass, value: 36 },
  sunspace: { ...kressberg(250).sunspace, lengthM: 18, commonGlassM2: 12, doorM2: 2 },
  mass: { material: 'earth-tyres', areaM2: 40, thicknessM: 0.7, place: 'shaded' },
  people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 250 },
  plants: { ...CLOSED.plants, bedM2: 12 },
  heating: { dayC: 18, nightC: 13, capacityKW: 8 },
};

/** Earth-sheltered terrace house, 19 × 6 m, conservatory along its front, 300 mm of insulation, triple glass, heat recovery. */
export const HOCKERTON: Design = {
  ...CLOSED,
  name: 'Earth-sheltered terrace',
  house: { ...CLOSED.house, floorAreaM2: 114, equatorWallM: 19, ceilingHeightM: 2.6 },
  glass: {
    ...CLOSED.glass,
    basis: 'area',
    value: 34,
    type: 'double-low-e',
    tiltDeg: 90,
    otherShareOfFloor: 0,
  },
  sunspace: {
    ...CLOSED.sunspace,
    lengthM: 19,
    depthM: 3,
    commonWallMaterial: 'concrete',
    commonWallM: 0.2,
    commonGlassM2: 20,
    doorM2: 4,
  },
  mass: { material: 'concrete', areaM2: 100, thicknessM: 0.2, place: 'shaded' },
  floor: { ...CLOSED.floor, thicknessM: 0.3, cover: 'tile', resistance: 8, edgeResistance: 8 },
  envelope: { wallResistance: 8, roofResistance: 8, bermShare: 1, wallLining: 'concrete', wallLiningM: 0.3 },
  air: { ...CLOSED.air, ach50: 1 },
  ventilation: { ...CLOSED.ventilation, recoveryAch: 0.35, recoveryEffectiveness: 0.75 },
  people: { count: 4, living: 'moist', awayWorkdays: false, appliancesW: 450 },
  plants: { ...CLOSED.plants, bedM2: 0 },
  heating: NO_HEATER,
};

/** Visitor building of rammed chalk in tyres, bare floor, empty at night, no heat. */
export const BRIGHTON: Design = {
  ...kressberg(100),
  name: 'Rammed chalk, empty',
  house: { ...CLOSED.house, floorAreaM2: 90, equatorWallM: 14, ceilingHeightM: 2.8 },
  glass: { ...kressberg(100).glass, value: 26 },
  sunspace: { ...kressberg(100).sunspace, lengthM: 14, commonGlassM2: 6, doorM2: 2 },
  mass: { material: 'earth-tyres', areaM2: 30, thicknessM: 0.7, place: 'shaded' },
  floor: { ...CLOSED.floor, thicknessM: 0.1, cover: 'tile', resistance: 0, edgeResistance: 0 },
  people: { count: 0, living: 'dry', awayWorkdays: false, appliancesW: 100 },
  plants: { ...CLOSED.plants, bedM2: 6 },
};

/** Thick rammed-earth house with few openings. Not told: who opens its windows, the roof. */
export function alentejo(habit: Habit, roofResistance: number): Design {
  return {
    ...MODEST,
    name: 'Rammed earth, few openings',
    house: { ...MODEST.house, floorAreaM2: 90, equatorWallM: 13, ceilingHeightM: 2.8 },
    glass: {
      ...MODEST.glass,
      basis: 'area',
      value: 2,
      type: 'single-clear',
      overhangM: 0.3,
      otherShareOfFloor: 0.03,
    },
    mass: { material: 'rammed-earth', areaM2: 60, thicknessM: 0.4, place: 'shaded' },
    floor: { ...MODEST.floor, thicknessM: 0.1, cover: 'tile', resistance: 0, edgeResistance: 0 },
    envelope: {
      wallResistance: 0.1,
      roofResistance,
      bermShare: 0,
      wallLining: 'rammed-earth',
      wallLiningM: 0.6,
    },
    air: { ...MODEST.air, ach50: 8 },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 150 },
    vents: { ...MODEST.vents, houseM2: 2, habit },
  };
}

/** Adobe house of 0.36 m walls with direct gain and night shades, boiler at 17.2 °C. */
export const SANTA_FE: Design = {
  ...MODEST,
  name: 'Adobe, direct gain',
  house: { ...MODEST.house, floorAreaM2: 140, equatorWallM: 18, ceilingHeightM: 2.7 },
  glass: { ...MODEST.glass, basis: 'area', value: 28, nightResistance: 0.5, overhangM: 0.6 },
  mass: { material: 'adobe', areaM2: 60, thicknessM: 0.36, place: 'sunlit' },
  floor: { ...MODEST.floor, material: 'brick', thicknessM: 0.1, cover: 'bare' },
  envelope: { wallResistance: 2.5, roofResistance: 6, bermShare: 0, wallLining: 'adobe', wallLiningM: 0.36 },
  people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 250 },
  heating: { dayC: 17.2, nightC: 17.2, capacityKW: 10 },
};

/** Rammed-tyre house with sloped unshaded glass on the rooms themselves. */
export const TAOS: Design = {
  ...kressberg(300),
  name: 'Rammed tyres, sloped glass',
  house: { ...CLOSED.house, floorAreaM2: 100, equatorWallM: 16, ceilingHeightM: 2.7 },
  glass: { ...kressberg(300).glass, value: 30, type: 'double-clear', tiltDeg: 60 },
  sunspace: { ...CLOSED.sunspace, join: 'open', lengthM: 16, depthM: 2 },
  mass: { material: 'earth-tyres', areaM2: 40, thicknessM: 0.7, place: 'shaded' },
  plants: { ...CLOSED.plants, bedM2: 6 },
};

/** Rammed-tyre hut behind sloped glass, a planter along it, no heater told of. Not told: floor, glass. */
export function taosHut(floorAreaM2: number, glassM2: number): Design {
  return {
    ...TAOS,
    name: 'Rammed-tyre hut, sloped glass',
    house: { ...TAOS.house, floorAreaM2, equatorWallM: 8 },
    glass: { ...TAOS.glass, value: glassM2 },
    sunspace: { ...TAOS.sunspace, lengthM: 8, depthM: 1.5 },
    mass: { ...TAOS.mass, areaM2: 15 },
    people: { count: 1, living: 'moist', awayWorkdays: false, appliancesW: 100 },
    plants: { ...TAOS.plants, bedM2: 4 },
  };
}

/** Rammed-tyre house with an outer sunspace without shades, shut off by glass and doors. Not told: that glass, draughts. */
export function taosHouse(commonGlassM2: number, sunspaceAch50: number): Design {
  return {
    ...TAOS,
    name: 'Rammed tyres behind an outer sunspace',
    glass: { ...TAOS.glass, value: 32, tiltDeg: 70 },
    sunspace: {
      ...CLOSED.sunspace,
      join: 'closed',
      lengthM: 16,
      depthM: 2,
      commonWallMaterial: 'adobe',
      commonWallM: 0.2,
      commonGlassM2,
      doorM2: 4,
    },
    air: { ...TAOS.air, sunspaceAch50 },
    heating: { dayC: 20, nightC: 18, capacityKW: 6 },
  };
}

/** Rammed-tyre house open to planters at its glass, no heater told of. Not told: glass, insulation behind the tyres, gains. */
export function valencia(glassM2: number, wallResistance: number, appliancesW: number): Design {
  return {
    ...TAOS,
    name: 'Rammed tyres, planters at the glass',
    glass: { ...TAOS.glass, value: glassM2, tiltDeg: 70 },
    sunspace: { ...TAOS.sunspace, depthM: 1.5 },
    floor: { ...TAOS.floor, resistance: 0, edgeResistance: 0 },
    envelope: { ...TAOS.envelope, wallResistance },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW },
    plants: { ...TAOS.plants, bedM2: 12 },
  };
}

/** Rammed-tyre house without an outer sunspace, wood stoves. Not told: glass, insulation behind the tyres. */
export function brittany(glassM2: number, wallResistance: number): Design {
  return {
    ...TAOS,
    name: 'Rammed tyres, wood stoves',
    glass: { ...TAOS.glass, value: glassM2, tiltDeg: 90, overhangM: 0.4 },
    sunspace: { ...TAOS.sunspace, join: 'none' },
    envelope: { ...TAOS.envelope, wallResistance },
    people: { count: 2, living: 'moist', awayWorkdays: false, appliancesW: 250 },
    plants: { ...TAOS.plants, bedM2: 0 },
    heating: { dayC: 19, nightC: 17, capacityKW: 6 },
  };
}

/** Building of 372 m² for work, cooled, windows shut: light and insulated above ground. Not told: gains. */
export function aboveGround(appliancesW: number): Design {
  return {
    ...MODEST,
    name: 'Above ground',
    house: { ...MODEST.house, floorAreaM2: 372, equatorWallM: 30, ceilingHeightM: 2.7 },
    glass: { ...MODEST.glass, basis: 'area', value: 25, type: 'double-clear', otherShareOfFloor: 0.01 },
    mass: { ...MODEST.mass, areaM2: 0 },
    floor: { ...MODEST.floor, thicknessM: 0.1, resistance: 0, edgeResistance: 1.5 },
    envelope: { ...MODEST.envelope, wallResistance: 3.5, roofResistance: 6 },
    vents: { ...MODEST.vents, habit: 'never' },
    ventilation: { ...MODEST.ventilation, aired: 'never' },
    people: { count: 12, living: 'dry', awayWorkdays: false, appliancesW },
  };
}

/** The same of concrete, earth against three sides; the earth on its roof is put on its model. */
export function bermed(design: Design): Design {
  return {
    ...design,
    name: 'Bermed',
    floor: { ...design.floor, thicknessM: 0.15 },
    envelope: {
      wallResistance: 1.5,
      roofResistance: 3,
      bermShare: 1,
      wallLining: 'concrete',
      wallLiningM: 0.25,
    },
  };
}
