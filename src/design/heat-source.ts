// Where a design's back-up heat comes from: what each choice means, its usual numbers and limits. Absent in a design it is a
// thermostat on the air, whose fuel is not told. The set-points and the kilowatts stay those of `heating`; for a stove they
// are its nominal output, for a masonry heater its mean output between fires.

import { LEAST_FIRE } from '../physics/masonry-heater.ts';
import { WOODS, type WoodId } from '../physics/wood-fuel.ts';

export const FUELS = ['electric', 'gas', 'propane', 'oil', 'pellets'] as const;
export type Fuel = (typeof FUELS)[number];
export const STOVE_KINDS = ['steel', 'cast-iron', 'soapstone', 'masonry'] as const;
export type StoveKind = (typeof STOVE_KINDS)[number];
export const STOVE_TIMES = ['usual', 'morning', 'noon', 'evening'] as const;
/** When it may be lit; usual: any waking hour for a light stove, morning and evening for a masonry heater. */
export type StoveTimes = (typeof STOVE_TIMES)[number];

/** A heater that a thermostat runs: it warms the air, the floor of the rooms on the ground within its slab, or the extra mass within. */
export interface HeaterSource {
  readonly kind: 'heater' | 'floor' | 'wall';
  readonly fuel: Fuel;
  /** heat to the house of the fuel's net heat, 0…1; absent for the usual */
  readonly efficiency?: number;
}

/** A wood stove that somebody feeds. */
export interface StoveSource {
  readonly kind: 'stove';
  readonly stove: StoveKind;
  readonly lit: StoveTimes;
  /** as the rooms are cold, or in the cold season whatever they are like */
  readonly litBy: 'need' | 'habit';
  readonly wood: WoodId;
  /** water as a share of the wet mass, 0…1 */
  readonly moisture: number;
  /** where the fire's air comes from */
  readonly air: 'room' | 'own';
  /** of its heat, what a back boiler puts into the floor's slab, 0…1; absent for none */
  readonly floorShare?: number;
  /** water between back boiler and floor [L]; absent for none: the slab takes the boiler's heat as it comes */
  readonly storeL?: number;
  /** absent for the usual of its kind, 0…1 */
  readonly efficiency?: number;
}

export type HeatSource = HeaterSource | StoveSource;

/** Heat to the house of a fuel's net heat. Common practice, no source; electricity by definition, pellets EU 2015/1185, memory. */
const FUEL_EFFICIENCY: Readonly<Record<Fuel, number>> = {
  electric: 1,
  gas: 0.9,
  propane: 0.9,
  oil: 0.85,
  pellets: 0.85,
};

/** Smallest that is made: light stoves 3 to 8 kW (EN 13240), masonry heaters for fires of 5 kg and up; read [kW]. */
export const LEAST_STOVE_KW: Readonly<Record<StoveKind, number>> = {
  steel: 3,
  'cast-iron': 3,
  soapstone: 3,
  masonry: 1,
};

export interface StoveNumbers {
  readonly efficiency: number;
  /** temperature of its body's face at work, by which its radiant share is worked out [°C] */
  readonly faceC: number;
  /** of its heat, what comes at once by glass door and hot top */
  readonly atOnce: number;
  /** what its body holds falls to 1/e of itself in [h] */
  readonly coolingH: number;
  /** a load burns down in [h] */
  readonly burnH: number;
  /** smallest load */
  readonly leastLoad: number;
  /** fed hour by hour while it is cold; else a fire is made for the hours ahead */
  readonly fedHourly: boolean;
}

/**
 * Efficiency: light stoves 75–82 % (read), masonry 78 % or more (EN 15544). Face: bare iron 60–70 % radiant, masonry 50–90 °C
 * (trade, medium). At once: a glass door 25–40 % (trade, low); masonry common practice, no source. Cooling: steel 20–40 min,
 * soapstone-clad 1–2 h (practice, low), masonry 8–15 h (trade, medium). Burn: embers within the hour, low; masonry about 2 h, read.
 * Smallest load: half, makers' data, read; EN 15544.
 */
export const STOVE_NUMBERS: Readonly<Record<StoveKind, StoveNumbers>> = {
  steel: {
    efficiency: 0.78,
    faceC: 250,
    atOnce: 0.3,
    coolingH: 0.5,
    burnH: 1,
    leastLoad: 0.5,
    fedHourly: true,
  },
  'cast-iron': {
    efficiency: 0.75,
    faceC: 230,
    atOnce: 0.3,
    coolingH: 0.75,
    burnH: 1,
    leastLoad: 0.5,
    fedHourly: true,
  },
  soapstone: {
    efficiency: 0.78,
    faceC: 120,
    atOnce: 0.3,
    coolingH: 1.5,
    burnH: 1,
    leastLoad: 0.5,
    fedHourly: true,
  },
  masonry: {
    efficiency: 0.78,
    faceC: 70,
    atOnce: 0.1,
    coolingH: 10,
    burnH: 2,
    leastLoad: LEAST_FIRE,
    fedHourly: false,
  },
};

/** A light stove on wood split and stacked for two summers, its air from the room. */
export const USUAL_STOVE: StoveSource = {
  kind: 'stove',
  stove: 'steel',
  lit: 'usual',
  litBy: 'need',
  wood: 'beech',
  moisture: 0.18,
  air: 'room',
};

/** The stove as one of a kind: of another than it was it burns as is usual for its kind, and all else about it stays. */
export function ofKind(stove: StoveSource, kind: StoveKind): StoveSource {
  if (kind === stove.stove) return stove;
  const { efficiency: _, ...rest } = stove;
  return { ...rest, stove: kind };
}

export const SOURCE_LIMITS = {
  efficiency: { min: 0.2, max: 1 },
  moisture: { min: 0.08, max: 0.5 },
  floorShare: { min: 0, max: 0.8 },
  storeL: { min: 20, max: 5000 },
} as const;

export const WOOD_IDS: readonly WoodId[] = WOODS.map(({ id }) => id);

/** Useful heat over the heat of the fuel, 0…1; the source’s own, or the usual of its kind. */
export function efficiencyOf(source: HeatSource): number {
  if (source.efficiency !== undefined) return source.efficiency;
  return source.kind === 'stove' ? STOVE_NUMBERS[source.stove].efficiency : FUEL_EFFICIENCY[source.fuel];
}
