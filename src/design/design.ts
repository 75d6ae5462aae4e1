// A design: the few dozen plain numbers and choices a person edits, saves, shares and compares. It says
// nothing of nodes or physics; model/ gives it a physical meaning. SI units; angles in degrees; shares are
// fractions 0…1. Limits and labels of every number stand in limits.ts, the schema in schema.ts.

import type { AsFound } from './as-found.ts';
import type { HeatSource } from './heat-source.ts';
import type { Rooms } from './room.ts';

/** The newest; a design without rooms is written as version 1, so that older pages still open it. */
export const DESIGN_VERSION = 2;

export type Join = 'none' | 'open' | 'closed';
export type DoorRule = 'by-need' | 'shut' | 'open';
export type GlassBasis = 'area' | 'share-of-wall' | 'share-of-floor';
export type FloorCover = 'bare' | 'tile' | 'carpet' | 'wood';
export type MassPlace = 'sunlit' | 'shaded';
export type Living = 'dry' | 'moist' | 'wet';
export type Habit = 'automatic' | 'attentive' | 'away' | 'forgetful' | 'never';
export type BedSoil = 'mulched' | 'bare' | 'open-water';
export type ExtractRuns = 'always' | 'hours' | 'humidity';
/** When rooms are aired for some minutes: as they are damp or stale, whatever their air is like, or not at all. */
export type AiredWhen = 'by-need' | 'by-habit' | 'never';
export type FrostGuard = 'preheat' | 'recirculate';
export type EndWalls = 'insulated' | 'glazed';
export type TooHotChoice =
  | 'adaptive-I'
  | 'adaptive-II'
  | 'adaptive-III'
  | 'tm59-open'
  | 'tm59-3-percent'
  | 'practice-10-percent'
  | 'guide-a-living'
  | 'fixed';

/** Windows that a cover hangs on: the equator-facing glass, all glass of the sunspace to outdoors, sides of the house. */
export type CoverSide = 'front' | 'sunspace' | 'east' | 'west' | 'east-and-west' | 'pole' | 'all';
/** What a cover is drawn against: sun on the window, heat in the room while the sun is on it, the night, the season. */
export type DrawnBy = 'sun' | 'heat' | 'night' | 'season';
export type CoverSeason = 'year' | 'warm' | 'cold';

/** A shade or cover on some of the windows. */
export interface Cover {
  /** id in cover-catalogue.ts */
  readonly kind: string;
  readonly on: CoverSide;
  readonly drawnBy: DrawnBy;
  /** months in which it is in use */
  readonly season: CoverSeason;
  /** who draws it; absent for whoever moves the vents */
  readonly habit?: Habit;
  /** drawn above this much sun on the window [W/m²]; absent for the usual */
  readonly sunW?: number;
  /** by heat: drawn above this temperature of the room [°C]; absent for the usual */
  readonly aboveC?: number;
}

/** The typical year made hotter, to try a design in the climate its owner will grow old in. */
export interface Hotter {
  /** added to the coldest month and to the warmest, the months between as a cosine; equal for all year [K] */
  readonly winterK: number;
  readonly summerK: number;
  /** a heat wave over the hottest spell: its length [d] and height [K]; height 0 for none */
  readonly waveDays: number;
  readonly waveK: number;
}

export interface Design {
  /** 2 with rooms, 1 without */
  readonly version: 1 | 2;
  readonly name: string;
  readonly note: string;
  /** id of a bundled climate; a weather file given beside the design takes its place */
  readonly climate: string;
  /** absent for the typical year as it is */
  readonly hotter?: Hotter;
  /** of a house that stands: what a record of its days showed; absent for a drawing */
  readonly asFound?: AsFound;
  readonly house: {
    readonly floorAreaM2: number;
    readonly ceilingHeightM: number;
    /** length of the equator-facing wall, inside */
    readonly equatorWallM: number;
    /** turned away from the equator, clockwise seen from above */
    readonly turnDeg: number;
    readonly storeys: number;
  };
  /** absent for a house of one room */
  readonly rooms?: Rooms;
  /** the equator-facing glass: in the house wall, or the sunspace's front when there is a sunspace */
  readonly glass: {
    readonly basis: GlassBasis;
    /** m² or a share, by basis */
    readonly value: number;
    readonly type: string;
    readonly tiltDeg: number;
    readonly frameShare: number;
    readonly overhangM: number;
    /** from the top of the glass up to the overhang */
    readonly overhangGapM: number;
    /** added resistance of shutters or quilts drawn from dusk to dawn; 0 for none */
    readonly nightResistance: number;
    /** share of the sun kept out from late spring to early autumn by a seasonal outside shade */
    readonly summerShade: number;
    /** ordinary windows on the other three sides, as a share of floor area */
    readonly otherShareOfFloor: number;
  };
  /** shades and covers besides the front's night insulation and summer shade; absent for none */
  readonly covers?: readonly Cover[];
  readonly sunspace: {
    readonly join: Join;
    readonly depthM: number;
    readonly lengthM: number;
    readonly endWalls: EndWalls;
    readonly commonWallMaterial: string;
    readonly commonWallM: number;
    /** windows in the common wall */
    readonly commonGlassM2: number;
    readonly doorM2: number;
    readonly doorRule: DoorRule;
  };
  readonly mass: {
    readonly material: string;
    readonly areaM2: number;
    readonly thicknessM: number;
    readonly place: MassPlace;
  };
  readonly floor: {
    readonly material: string;
    readonly thicknessM: number;
    readonly cover: FloorCover;
    /** insulation under the slab [m²K/W] */
    readonly resistance: number;
    /** vertical insulation at the slab's edge [m²K/W] */
    readonly edgeResistance: number;
  };
  readonly envelope: {
    /** insulation of the walls [m²K/W] */
    readonly wallResistance: number;
    readonly roofResistance: number;
    /** earth against pole, east and west walls, as a share of their height */
    readonly bermShare: number;
    /** inner leaf of the outer walls */
    readonly wallLining: string;
    readonly wallLiningM: number;
  };
  readonly air: {
    /** air changes an hour at 50 Pa */
    readonly ach50: number;
    /** leakage of the sunspace itself, air changes an hour at 50 Pa */
    readonly sunspaceAch50: number;
    /** 1 open … 5 very heavily sheltered */
    readonly shelter: number;
  };
  readonly vents: {
    /** openable to outdoors from the sunspace, high and low together */
    readonly sunspaceM2: number;
    /** openable windows of the house */
    readonly houseM2: number;
    /** between low and high openings */
    readonly stackM: number;
    readonly opensAboveC: number;
    readonly habit: Habit;
    /** mechanical night purge of the house in the warm season, air changes an hour */
    readonly nightPurgeAch: number;
    /** mechanical extract from the house while it runs, air changes of the house an hour */
    readonly extractAch: number;
    /** fan from a closed-off sunspace to the rooms while they want its heat, air changes of the house an hour */
    readonly sunspaceFanAch: number;
  };
  readonly ventilation: {
    /** windows opened wide for some minutes, by whoever moves the vents */
    readonly aired: AiredWhen;
    /** at most so long at a time */
    readonly airedMinutes: number;
    /** times of the day at which somebody thinks of it, 1 to 6 */
    readonly airedTimes: number;
    /** the extract fan: all the time, in the hours of cooking and washing, or as the rooms grow damp */
    readonly extractRuns: ExtractRuns;
    /** relative humidity at which a fan led by it runs in full, 0…1 */
    readonly extractHumidity: number;
    /** unit with heat recovery, air changes of the house an hour; 0 for none */
    readonly recoveryAch: number;
    /** of its exchanger, temperature ratio on the supply side, 0…1 */
    readonly recoveryEffectiveness: number;
    /** of both its fans [W for each m³/h] */
    readonly fanWPerM3H: number;
    /** what keeps ice from its exchanger */
    readonly frost: FrostGuard;
  };
  readonly people: {
    readonly count: number;
    readonly living: Living;
    readonly awayWorkdays: boolean;
    /** everybody is away on Saturdays and Sundays, from the evening before */
    readonly awayWeekends?: true;
    /** lights and appliances, average */
    readonly appliancesW: number;
  };
  readonly plants: {
    readonly bedM2: number;
    readonly leafAreaIndex: number;
    readonly soil: BedSoil;
  };
  readonly heating: {
    readonly dayC: number;
    readonly nightC: number;
    /** of a stove its nominal output */
    readonly capacityKW: number;
    /** absent for a thermostat on the air whose fuel is not told */
    readonly source?: HeatSource;
  };
  readonly comfort: {
    /** what counts as too hot; absent for what suits the house (too-hot-criterion.ts) */
    readonly criterion?: TooHotChoice;
    /** the limit where one fixed temperature is chosen; `overheatedHours` counts above it in any case */
    readonly overheatC: number;
    readonly underheatC: number;
    /** relative humidity above which an hour counts as humid, 0…1 */
    readonly humidLimit: number;
    /** ceiling fans, run while somebody is at home and it is warm: air speed at people [m/s]; absent for none */
    readonly airSpeedMs?: number;
  };
}
