// Rooms of a divided house: the optional block of a design, its choices and the limits of its numbers. Absent, the house
// is one room. Where each room stands follows by plain geometry (room-plan.ts); what each use means, room-uses.ts.

export const ROOM_ROWS = ['front', 'back'] as const;
export const ROOM_USES = ['living', 'kitchen', 'bath', 'bedroom', 'spare'] as const;
export const ROOM_DOORS = ['open', 'by-day', 'by-night', 'ajar', 'shut', 'wide', 'grille'] as const;
export const WINDOW_SIDES = ['equator', 'pole', 'east', 'west'] as const;
export const PARTITIONS = ['light', 'masonry', 'earth'] as const;

export type RoomRow = (typeof ROOM_ROWS)[number];
export type RoomUse = (typeof ROOM_USES)[number];
/** How a room's door towards the stove is kept; wide: an opening without a door; grille: shut, with one low and one high. */
export type RoomDoor = (typeof ROOM_DOORS)[number];
export type WindowSide = (typeof WINDOW_SIDES)[number];
export type Partition = (typeof PARTITIONS)[number];

/** An ordinary upright window of a room. */
export interface RoomWindow {
  readonly side: WindowSide;
  /** frame included [m²] */
  readonly areaM2: number;
  /** of it so much opens [m²] */
  readonly openM2: number;
  /** id of the glass; absent for the front's */
  readonly type?: string;
  /** share of the sun kept out from late spring to early autumn, 0…1; absent for none */
  readonly summerShade?: number;
  /** drawn from dusk to dawn [m²K/W]; absent for none */
  readonly curtain?: number;
}

export interface Room {
  readonly name: string;
  /** a row alone on its storey has the whole depth */
  readonly row: RoomRow;
  /** 0 on the ground */
  readonly storey: number;
  /** of its row's length; neighbours stand side by side, east first */
  readonly share: number;
  /** open to the storey above: a two-storey space */
  readonly reachesUp: boolean;
  readonly use: RoomUse;
  /** the stove, or a heater of the house's set-points, stands here */
  readonly heated: boolean;
  readonly door: RoomDoor;
  /** a fan from the room its door leads to while it wants warmth from there [m³/h]; absent for none */
  readonly fanM3H?: number;
  /** the extra mass stands here, shared by floor area with other rooms of which that is said; of none, with all */
  readonly mass: boolean;
  /** absent for the house's rule, shared out by wall */
  readonly windows?: readonly RoomWindow[];
}

export interface Rooms {
  /** inside depth of the front row where there is a back one; the back row has the rest [m] */
  readonly frontDepthM: number;
  /** what stands between rooms */
  readonly partition: Partition;
  /** its thickness [m]; a light one has its own */
  readonly partitionM: number;
  /** clear hole between storeys [m²]; 0 for none */
  readonly stairM2: number;
  readonly list: readonly Room[];
}

export interface RoomLimit {
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export const LEAST_ROOMS = 2;
export const MOST_ROOMS = 5;
export const MOST_WINDOWS = WINDOW_SIDES.length;
export const ROOM_NAME_LENGTH = 40;
/** Of the part of an outer wall that a room has, its windows take at most this share. House rule. */
export const MOST_OF_ROOM_WALL = 0.9;
const LEAST_ROW_M = 1;
const LEAST_ROW_SHARE = 0.25;

/** Neither row is shallower [m]: a metre, or a quarter of a house not four metres deep. House rule. */
export function leastRowM(houseDepthM: number): number {
  return Math.min(LEAST_ROW_M, LEAST_ROW_SHARE * houseDepthM);
}

/** Limits of the block's numbers. House rules: what can be built and what the model can be trusted for. */
export const ROOM_LIMITS = {
  frontDepthM: { label: 'Depth of the front row', min: 0.001, max: 2000, step: 0.1 },
  partitionM: { label: 'Partition thickness', min: 0.05, max: 0.6, step: 0.01 },
  stairM2: { label: 'Clear hole of the stairs', min: 0, max: 12, step: 0.1 },
  storey: { label: 'Storey', min: 0, max: 2, step: 1 },
  share: { label: 'Share of its row', min: 0.1, max: 1, step: 0.01 },
  fanM3H: { label: 'Fan from the warmer room', min: 0, max: 500, step: 10 },
  areaM2: { label: 'Window', min: 0, max: 60, step: 0.1 },
  openM2: { label: 'Of it opens', min: 0, max: 60, step: 0.1 },
  summerShade: { label: 'Summer shade', min: 0, max: 0.95, step: 0.05 },
  curtain: { label: 'Night insulation', min: 0, max: 3, step: 0.05 },
} as const satisfies Record<string, RoomLimit>;
