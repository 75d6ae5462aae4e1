// Four invented designs for one invented pair of clients, the Quillens of Larkspur Bench, who have read about
// sun-heated houses and drawn four of them. Each stands in a bundled climate and shows one lesson.

import type { Design } from './design.ts';
import type { Room } from './room.ts';
import { withRooms } from './room-rules.ts';
import { USUAL_VENTILATION } from './usual-ventilation.ts';

const MODEST: Design = {
  version: 1,
  name: 'Larkspur Bench, the modest one',
  note: 'A direct-gain house: upright glass at about an eighth of the floor, a tiled slab, ordinary windows to open.',
  climate: 'denver',
  house: { floorAreaM2: 110, ceilingHeightM: 2.6, equatorWallM: 13.5, turnDeg: 0, storeys: 1 },
  glass: {
    basis: 'share-of-floor',
    value: 0.12,
    type: 'double-low-e',
    tiltDeg: 90,
    frameShare: 0.2,
    overhangM: 0.6,
    overhangGapM: 0.3,
    nightResistance: 0,
    summerShade: 0,
    otherShareOfFloor: 0.05,
  },
  sunspace: {
    join: 'none',
    depthM: 2.5,
    lengthM: 9,
    endWalls: 'insulated',
    commonWallMaterial: 'adobe',
    commonWallM: 0.25,
    commonGlassM2: 2,
    doorM2: 2,
    doorRule: 'by-need',
  },
  mass: { material: 'adobe', areaM2: 20, thicknessM: 0.2, place: 'sunlit' },
  floor: { material: 'concrete', thicknessM: 0.1, cover: 'tile', resistance: 2.5, edgeResistance: 1.5 },
  envelope: {
    wallResistance: 4.5,
    roofResistance: 8,
    bermShare: 0,
    wallLining: 'plasterboard',
    wallLiningM: 0.013,
  },
  air: { ach50: 3, sunspaceAch50: 12, shelter: 3 },
  vents: {
    sunspaceM2: 2,
    houseM2: 2.5,
    stackM: 1.2,
    opensAboveC: 24,
    habit: 'attentive',
    nightPurgeAch: 0,
    extractAch: 0,
    sunspaceFanAch: 0,
  },
  ventilation: USUAL_VENTILATION,
  people: { count: 3, living: 'moist', awayWorkdays: false, appliancesW: 250 },
  plants: { bedM2: 0, leafAreaIndex: 2, soil: 'mulched' },
  heating: { dayC: 20, nightC: 17, capacityKW: 8 },
  comfort: { overheatC: 26, underheatC: 16, humidLimit: 0.7 },
};

const LEANING: Design = {
  ...MODEST,
  name: 'Larkspur Bench, the leaning one',
  note: 'The dream: earth against the back, sixty-degree glass the length of the house, a planted front open to the rooms.',
  glass: {
    ...MODEST.glass,
    basis: 'area',
    value: 38,
    type: 'double-clear',
    tiltDeg: 60,
    frameShare: 0.12,
    overhangM: 0,
    otherShareOfFloor: 0.01,
  },
  sunspace: {
    ...MODEST.sunspace,
    join: 'open',
    depthM: 2.4,
    lengthM: 13.5,
    endWalls: 'glazed',
    commonGlassM2: 0,
    doorM2: 18,
    doorRule: 'open',
  },
  mass: { material: 'earth-tyres', areaM2: 35, thicknessM: 0.7, place: 'shaded' },
  floor: { ...MODEST.floor, resistance: 0, edgeResistance: 0.5, cover: 'bare' },
  envelope: {
    ...MODEST.envelope,
    bermShare: 1,
    wallLining: 'earth-tyres',
    wallLiningM: 0.7,
    wallResistance: 0.6,
  },
  air: { ...MODEST.air, ach50: 6, sunspaceAch50: 15 },
  vents: { ...MODEST.vents, sunspaceM2: 2.4, houseM2: 1, stackM: 2.2, habit: 'forgetful' },
  plants: { bedM2: 16, leafAreaIndex: 3, soil: 'bare' },
};

const CLOSED: Design = {
  ...MODEST,
  name: 'Larkspur Bench, the closed-off one',
  note: 'Upright glass, a sunspace shut off by an adobe wall that carries the day into the evening, a door that is opened when the rooms want heat.',
  glass: { ...MODEST.glass, basis: 'area', value: 18, frameShare: 0.15, overhangM: 0.5, overhangGapM: 0.2 },
  sunspace: {
    ...MODEST.sunspace,
    join: 'closed',
    depthM: 2.2,
    lengthM: 9,
    commonWallMaterial: 'adobe',
    commonWallM: 0.25,
    commonGlassM2: 2,
    doorM2: 2,
    doorRule: 'by-need',
  },
  vents: { ...MODEST.vents, sunspaceM2: 3, stackM: 2, habit: 'attentive' },
  plants: { bedM2: 6, leafAreaIndex: 2, soil: 'mulched' },
};

/** As preset rooms begin: give what differs. */
const ROOM: Omit<Room, 'name' | 'use'> = {
  row: 'front',
  storey: 0,
  share: 1,
  reachesUp: false,
  heated: false,
  door: 'open',
  mass: false,
};

const DIVIDED: Design = withRooms(
  {
    ...CLOSED,
    name: 'Larkspur Bench, the divided one',
    note: 'The closed-off house on two storeys and room by room: the stove in the living room to the sun, a kitchen and a bedroom behind it, a bedroom upstairs whose stairs the warm air climbs.',
    house: { ...CLOSED.house, floorAreaM2: 96, ceilingHeightM: 2.5, equatorWallM: 8, storeys: 2 },
    sunspace: { ...CLOSED.sunspace, lengthM: 8 },
  },
  {
    frontDepthM: 3.4,
    partition: 'light',
    partitionM: 0.12,
    stairM2: 3,
    list: [
      { ...ROOM, name: 'Living room', use: 'living', heated: true },
      { ...ROOM, name: 'Kitchen', use: 'kitchen', row: 'back', share: 0.5 },
      { ...ROOM, name: 'Back bedroom', use: 'bedroom', row: 'back', share: 0.5, door: 'by-day' },
      { ...ROOM, name: 'Upper bedroom', use: 'bedroom', storey: 1 },
    ],
  },
);

export interface Example {
  readonly id: string;
  readonly line: string;
  readonly design: Design;
}

export const EXAMPLES: readonly Example[] = [
  {
    id: 'leaning',
    line: 'leaning glass, planted front open to the rooms, earth at the back',
    design: LEANING,
  },
  { id: 'closed', line: 'upright glass, sunspace closed off by an adobe wall', design: CLOSED },
  { id: 'modest', line: 'direct gain through upright glass at 12 % of the floor', design: MODEST },
  {
    id: 'divided',
    line: 'the closed-off house on two storeys, room by room',
    design: DIVIDED,
  },
];
