// The fabric cases of ANSI/ASHRAE Standard 140, edition of 2020 and later (weather: TMY3, station 725650), as one table of
// data. The standard was not open: every value is from memory, high confidence unless a line says M (medium) or L (low).
// Nothing here is a claim of conformance. Lengths in m, areas in m², R-values in m²K/W.
import type { GlassSystem, Layer } from '../../../src/model/model.ts';

export type Mass = 'light' | 'heavy';
/** double: clear with air; low-e: coated with argon; single: one clear pane */
export type GlassName = 'double' | 'low-e' | 'single';
export type Windows = 'south' | 'east-west';
/** none, the plain 20/27 °C, with the night setback, or cooling by day with a fan by night */
export type Control = 'free' | 'plain' | 'setback' | 'night-vent' | 'night-vent-free';

export interface FabricCase {
  readonly id: string;
  readonly mass: Mass;
  readonly windows: Windows;
  readonly glass: GlassName;
  readonly shaded: boolean;
  readonly control: Control;
  /** a heavy, free-floating sun zone stands before the light room */
  readonly sunZone: boolean;
}

const BASE = {
  mass: 'light',
  windows: 'south',
  glass: 'double',
  shaded: false,
  control: 'plain',
  sunZone: false,
} as const;

export const CASES: readonly FabricCase[] = [
  { ...BASE, id: '600' },
  { ...BASE, id: '610', shaded: true },
  { ...BASE, id: '620', windows: 'east-west' },
  { ...BASE, id: '630', windows: 'east-west', shaded: true },
  { ...BASE, id: '640', control: 'setback' },
  { ...BASE, id: '650', control: 'night-vent' },
  { ...BASE, id: '660', glass: 'low-e' },
  { ...BASE, id: '670', glass: 'single' },
  { ...BASE, id: '900', mass: 'heavy' },
  { ...BASE, id: '910', mass: 'heavy', shaded: true },
  { ...BASE, id: '920', mass: 'heavy', windows: 'east-west' },
  { ...BASE, id: '930', mass: 'heavy', windows: 'east-west', shaded: true },
  { ...BASE, id: '940', mass: 'heavy', control: 'setback' },
  { ...BASE, id: '950', mass: 'heavy', control: 'night-vent' },
  { ...BASE, id: '960', sunZone: true },
  { ...BASE, id: '600FF', control: 'free' },
  { ...BASE, id: '650FF', control: 'night-vent-free' },
  { ...BASE, id: '900FF', mass: 'heavy', control: 'free' },
  { ...BASE, id: '950FF', mass: 'heavy', control: 'night-vent-free' },
];

/** The room: east-west, north-south, height. The sun zone of 960 is 2 m deep and as wide. */
export const ROOM = { eastWestM: 8, northSouthM: 6, heightM: 2.7 } as const;
export const SUN_ZONE_DEPTH_M = 2;

/** Two windows to the south, or one each to east and west (M): size, sill, and 0.5 m of wall above the head. */
export const WINDOW = { widthM: 3, heightM: 2, sillM: 0.2, gapM: 0.5 } as const;

/** South windows stand 0.5 m from the corners and 1.0 m apart; the overhang runs along the whole wall. */
export const SOUTH_MARGIN_M = 0.5;

/** Overhang, and fins flush with the window's sides from roof to ground (630, 930; M). */
export const SHADE_DEPTH_M = 1;

export const ABSORPTANCE = 0.6;
export const EMISSIVITY = 0.9;

/** Air changes an hour, and what they come to in the room at all hours [W/K]. */
export const INFILTRATION_ACH = 0.5;
export const INFILTRATION_W_PER_K = 18.44;

/** Fan of 650 and 950 on top of it, 18:00 to 07:00 [m³/h]. */
export const FAN_M3_PER_H = 1703.16;

/** [W] all hours, and the share of it given off by radiation */
export const GAIN_W = 200;
export const GAIN_RADIANT_SHARE = 0.6;

const layer = (
  name: string,
  conductivity: number,
  thicknessM: number,
  density: number,
  specificHeat: number,
): Layer => ({ name, conductivity, thicknessM, density, specificHeat });

/** Layers from inside to outside. */
export const CONSTRUCTIONS = {
  lightWall: [
    layer('plasterboard', 0.16, 0.012, 950, 840),
    layer('fibreglass quilt', 0.04, 0.066, 12, 840),
    layer('wood siding', 0.14, 0.009, 530, 900),
  ],
  heavyWall: [
    layer('concrete block', 0.51, 0.1, 1400, 1000),
    layer('foam insulation', 0.04, 0.0615, 10, 1400),
    layer('wood siding', 0.14, 0.009, 530, 900),
  ],
  lightFloor: [
    layer('timber flooring', 0.14, 0.025, 650, 1200),
    layer('insulation without mass', 0.04, 1.003, 0, 0),
  ],
  heavyFloor: [
    layer('concrete slab', 1.13, 0.08, 1400, 1000),
    layer('insulation without mass', 0.04, 1.007, 0, 0),
  ],
  roof: [
    layer('plasterboard', 0.16, 0.01, 950, 840),
    layer('fibreglass quilt', 0.04, 0.1118, 12, 840),
    layer('roof deck', 0.14, 0.019, 530, 900),
  ],
  commonWall: [layer('concrete block', 0.51, 0.2, 1400, 1000)],
} as const satisfies Record<string, readonly Layer[]>;

/** Clear pane of 3.048 mm (M); index and extinction give it its recalled 0.834 and 0.075 (see the data file). */
export const CLEAR_PANE = {
  refractiveIndex: 1.5205,
  extinctionPerM: 0.096 / 0.003048,
  thicknessM: 0.003048,
} as const;
const PANE = {
  sheetM: CLEAR_PANE.thicknessM,
  sheetConductivity: 1,
  gapM: 0.012,
  gas: 'air',
  gapEmissivity: 0.84,
  outsideEmissivity: 0.84,
  insideEmissivity: 0.84,
} as const;

/**
 * Glass by name. Two clear panes: the unit's quoted normal values, 0.703 transmitted and 0.769 solar heat gain (M); the
 * pane's own two values alone make 0.699 and 0.758. Low-e (L): outer pane 0.452 transmitted, 0.359 and 0.397 reflected
 * outside and inside, emissivity 0.047 on its inner face, argon; before the clear pane that makes 0.452 · 0.834 /
 * (1 − 0.397 · 0.075) = 0.389 transmitted and, with the absorbed parts, the quoted solar heat gain of 0.440.
 */
export const GLASSES: Readonly<Record<GlassName, GlassSystem>> = {
  double: {
    ...PANE,
    sheets: 2,
    optics: { kind: 'scaled', solarTransmittance: 0.703, solarHeatGain: 0.769 },
  },
  single: {
    ...PANE,
    sheets: 1,
    optics: {
      kind: 'clear',
      refractiveIndex: CLEAR_PANE.refractiveIndex,
      extinctionPerM: CLEAR_PANE.extinctionPerM,
    },
  },
  'low-e': {
    ...PANE,
    sheets: 2,
    gas: 'argon',
    gapEmissivity: 0.047,
    optics: { kind: 'scaled', solarTransmittance: 0.389, solarHeatGain: 0.44 },
  },
};
