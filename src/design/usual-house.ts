// A whole design out of five answers: where, how large, how much glass toward the sun, what sunspace, built of what. All
// else is as it is usually built and lived in. Answers in, a design that fits out. The usual numbers are common practice,
// no source, where no other is named.

import type { Design, Join } from './design.ts';
import { designThatFits } from './design-that-fits.ts';
import { limitOf } from './limits.ts';
import { USUAL_VENTILATION } from './usual-ventilation.ts';

export type Build = 'framed' | 'masonry' | 'earth' | 'straw' | 'earth-tyres';

export interface HouseAnswers {
  /** id of the climate */
  readonly climate: string;
  /** heated floor of all storeys [m²] */
  readonly floorAreaM2: number;
  readonly storeys: number;
  /** glass toward the equator [m²]; as much as fits is built */
  readonly glassM2: number;
  /** 90 is upright [°] */
  readonly tiltDeg: number;
  readonly join: Join;
  readonly build: Build;
}

/** Inputs that the answers are about; all others are taken as usual. */
export const ANSWERED: readonly string[] = [
  'house.floorAreaM2',
  'house.storeys',
  'glass.basis',
  'glass.value',
  'glass.tiltDeg',
  'sunspace.join',
];

interface Built {
  readonly wallResistance: number;
  readonly wallLining: string;
  readonly wallLiningM: number;
  readonly bermShare: number;
  readonly ach50: number;
  /** heavy inner walls, as a share of the floor */
  readonly massShare: number;
  readonly mass: Design['mass']['material'];
  readonly massM: number;
}

const BUILT: Readonly<Record<Build, Built>> = {
  framed: {
    wallResistance: 4,
    wallLining: 'plasterboard',
    wallLiningM: 0.013,
    bermShare: 0,
    ach50: 4,
    massShare: 0,
    mass: 'brick',
    massM: 0.11,
  },
  masonry: {
    wallResistance: 4,
    wallLining: 'brick',
    wallLiningM: 0.11,
    bermShare: 0,
    ach50: 3,
    massShare: 0.3,
    mass: 'brick',
    massM: 0.11,
  },
  earth: {
    wallResistance: 4,
    wallLining: 'adobe',
    wallLiningM: 0.25,
    bermShare: 0,
    ach50: 4,
    massShare: 0.3,
    mass: 'adobe',
    massM: 0.25,
  },
  straw: {
    wallResistance: 6,
    wallLining: 'earth-plaster',
    wallLiningM: 0.04,
    bermShare: 0,
    ach50: 4,
    massShare: 0,
    mass: 'adobe',
    massM: 0.15,
  },
  'earth-tyres': {
    wallResistance: 3,
    wallLining: 'earth-tyres',
    wallLiningM: 0.7,
    bermShare: 0.8,
    ach50: 5,
    massShare: 0,
    mass: 'earth-tyres',
    massM: 0.7,
  },
};

/** Ground floor, length over depth: the long side looks at the sun. */
const LONG_OVER_DEEP = 1.5;
const FLOOR_EACH_M2 = 35;
const OPENABLE_SHARE = 0.05;
const HEAT_KW_PER_M2 = 0.07;

/** No more than the limits of a design allow. */
const within = (path: string, value: number) =>
  Math.max(limitOf(path).min, Math.min(limitOf(path).max, value));

const tenth = (value: number) => Math.round(10 * value) / 10;

/** The house of the answers. */
export function usualHouse(answers: HouseAnswers): Design {
  const { climate, floorAreaM2, storeys, glassM2, tiltDeg, join, build } = answers;
  const built = BUILT[build];
  const equatorWallM = tenth(Math.sqrt(LONG_OVER_DEEP * (floorAreaM2 / storeys)));
  const isUpright = tiltDeg >= 85;
  const hasSunspace = join !== 'none';
  const design: Design = {
    version: 1,
    name: 'My house',
    note: '',
    climate,
    house: { floorAreaM2, ceilingHeightM: 2.5, equatorWallM, turnDeg: 0, storeys },
    glass: {
      basis: 'area',
      value: glassM2,
      type: 'double-low-e',
      tiltDeg,
      frameShare: isUpright ? 0.2 : 0.15,
      overhangM: isUpright ? 0.6 : 0,
      overhangGapM: 0.3,
      nightResistance: 0,
      summerShade: 0,
      otherShareOfFloor: 0.04,
    },
    sunspace: {
      join,
      depthM: 2.4,
      lengthM: equatorWallM,
      endWalls: 'insulated',
      commonWallMaterial: built.mass,
      commonWallM: Math.max(0.2, Math.min(0.3, built.massM)),
      commonGlassM2: 3,
      doorM2: 2,
      doorRule: 'by-need',
    },
    mass: {
      material: built.mass,
      areaM2: Math.round(built.massShare * floorAreaM2),
      thicknessM: built.massM,
      place: 'sunlit',
    },
    floor: { material: 'concrete', thicknessM: 0.1, cover: 'tile', resistance: 2, edgeResistance: 1 },
    envelope: {
      wallResistance: built.wallResistance,
      roofResistance: 7,
      bermShare: built.bermShare,
      wallLining: built.wallLining,
      wallLiningM: built.wallLiningM,
    },
    air: { ach50: built.ach50, sunspaceAch50: 12, shelter: 3 },
    vents: {
      sunspaceM2: hasSunspace ? within('vents.sunspaceM2', tenth(glassM2 / 8)) : 2,
      houseM2: within('vents.houseM2', tenth(OPENABLE_SHARE * floorAreaM2)),
      stackM: hasSunspace ? 2 : 1.2,
      opensAboveC: 24,
      habit: 'attentive',
      nightPurgeAch: 0,
      extractAch: 0,
      sunspaceFanAch: 0,
    },
    ventilation: USUAL_VENTILATION,
    people: {
      count: Math.min(6, Math.max(1, Math.round(floorAreaM2 / FLOOR_EACH_M2))),
      living: 'moist',
      awayWorkdays: false,
      appliancesW: 250,
    },
    plants: { bedM2: 0, leafAreaIndex: 2, soil: 'mulched' },
    heating: {
      dayC: 20,
      nightC: 17,
      capacityKW: Math.max(2, Math.round(2 * HEAT_KW_PER_M2 * floorAreaM2) / 2),
    },
    comfort: { overheatC: 26, underheatC: 16, humidLimit: 0.7 },
  };
  return designThatFits(design);
}

/** The usual house of a design's own answers: what it is held against to say what is unusual about it. */
export function usualLike(design: Design, glassM2: number): Design {
  const { climate, house, glass, sunspace, envelope } = design;
  const builds = Object.entries(BUILT) as [Build, Built][];
  const [build] = builds.find(([, { wallLining }]) => wallLining === envelope.wallLining) ?? builds[0]!;
  return usualHouse({
    climate,
    floorAreaM2: house.floorAreaM2,
    storeys: house.storeys,
    glassM2,
    tiltDeg: glass.tiltDeg,
    join: sunspace.join,
    build,
  });
}
