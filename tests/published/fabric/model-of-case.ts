// Builds the physical model of a fabric case: a row of the table in, zones, elements, panes and openings out.
// Films are an argument, so that a test can run the cases with several published sets.
import type {
  Element,
  Film,
  Layer,
  Model,
  Opening,
  OutdoorFace,
  Pane,
  Schedule,
  Shading,
  Thermostat,
  Zone,
  ZoneFace,
} from '../../../src/model/model.ts';
import { always } from '../../network/always.ts';
import { bareZone } from '../../network/box-model.ts';
import {
  ABSORPTANCE,
  CONSTRUCTIONS,
  EMISSIVITY,
  FAN_M3_PER_H,
  type FabricCase,
  GAIN_RADIANT_SHARE,
  GAIN_W,
  GLASSES,
  INFILTRATION_ACH,
  type Mass,
  ROOM,
  SHADE_DEPTH_M,
  SOUTH_MARGIN_M,
  SUN_ZONE_DEPTH_M,
  WINDOW,
} from './cases.ts';

export type Place = 'wall' | 'roof' | 'floor' | 'glass';

/** Films by place, inside and outside. */
export interface FilmSet {
  readonly inside: Readonly<Record<Place, Film>>;
  readonly outside: Readonly<Record<Place, Film>>;
}

const COMPUTED: Film = { kind: 'computed' };
const everywhere = (film: Film): Readonly<Record<Place, Film>> => ({
  wall: film,
  roof: film,
  floor: film,
  glass: film,
});

/** What a house gets too: correlations inside, wind outside, long-wave by temperature (see surface-films.ts). */
export const COMPUTED_FILMS: FilmSet = { inside: everywhere(COMPUTED), outside: everywhere(COMPUTED) };

const ROOM_ID = 'room';
const SUN_ID = 'sun zone';
const WINDOW_M2 = WINDOW.widthM * WINDOW.heightM;
const AZIMUTH = { north: 0, east: 90, south: 180, west: 270 } as const;
type Side = keyof typeof AZIMUTH;

/**
 * The model of a case.
 *
 * @param of row of the table
 * @param films by place; absent = as in any house
 */
export function modelOfCase(of: FabricCase, films: FilmSet = COMPUTED_FILMS): Model {
  const room = boxOf(ROOM_ID, ROOM.northSouthM, of.mass, films);
  const elements: Element[] = [room.floor(), room.roof()];
  const panes: Pane[] = [];
  const onSouth = of.windows === 'south';
  for (const side of ['north', 'east', 'south', 'west'] as const) {
    if (side === 'south' && of.sunZone) continue;
    const windows = of.sunZone
      ? 0
      : onSouth
        ? side === 'south'
          ? 2
          : 0
        : side === 'east' || side === 'west'
          ? 1
          : 0;
    // The wall behind the windows is the one beam can strike: north, or each of east and west for the other.
    elements.push(
      room.wall(side, windows * WINDOW_M2, side === 'north' ? onSouth : !onSouth && side !== 'south'),
    );
    for (let i = 0; i < windows; i++) panes.push(room.window(`${side} window ${i + 1}`, side, i, of));
  }
  const zones: Zone[] = [room.zone(thermostatOf(of), GAIN_W)];
  const openings: Opening[] = [room.infiltration()];
  if (of.control === 'night-vent' || of.control === 'night-vent-free') openings.push(nightFan());
  if (of.sunZone) {
    const sun = boxOf(SUN_ID, SUN_ZONE_DEPTH_M, 'heavy', films);
    zones.push(sun.zone(null, 0));
    openings.push(sun.infiltration());
    elements.push(sun.floor(), sun.roof(), sun.wall('east', 0, false), sun.wall('west', 0, false));
    elements.push(sun.wall('south', 2 * WINDOW_M2, false), commonWall(films));
    for (let i = 0; i < 2; i++) panes.push(sun.window(`south window ${i + 1}`, 'south', i, of));
  }
  return { name: `case ${of.id}`, zones, elements, panes, openings };
}

/** Parts of one zone: a box as wide as the room and of a given depth. */
function boxOf(id: string, depthM: number, mass: Mass, films: FilmSet) {
  const floorM2 = ROOM.eastWestM * depthM;
  const wall = CONSTRUCTIONS[mass === 'light' ? 'lightWall' : 'heavyWall'];
  const floor = CONSTRUCTIONS[mass === 'light' ? 'lightFloor' : 'heavyFloor'];
  const inside = (place: Place, faceTiltDeg: number, lit: ZoneFace['lit']): ZoneFace => ({
    kind: 'zone',
    zone: id,
    absorptance: ABSORPTANCE,
    emissivity: EMISSIVITY,
    film: films.inside[place],
    lit,
    faceTiltDeg,
  });
  const outside = (place: Place, tiltDeg: number, azimuthDeg: number, exposed = true): OutdoorFace => ({
    kind: 'outdoors',
    absorptance: ABSORPTANCE,
    emissivity: EMISSIVITY,
    tiltDeg,
    azimuthDeg,
    film: films.outside[place],
    exposed,
  });
  const element = (
    name: string,
    areaM2: number,
    layers: readonly Layer[],
    a: OutdoorFace,
    b: ZoneFace,
  ): Element => ({
    id: `${id} ${name}`,
    areaM2,
    layers: [...layers].reverse(),
    a,
    b,
  });
  return {
    zone: (thermostat: Thermostat | null, gainW: number): Zone =>
      bareZone(id, {
        floorAreaM2: floorM2,
        volumeM3: floorM2 * ROOM.heightM,
        thermostat,
        gains: gainW > 0 ? [{ id: 'gains', power: always(gainW), radiantShare: GAIN_RADIANT_SHARE }] : [],
      }),
    /** raised: air beneath, neither sun nor sky (L) */
    floor: () =>
      element('floor', floorM2, floor, outside('floor', 180, 0, false), inside('floor', 0, 'floor')),
    roof: () =>
      element('roof', floorM2, CONSTRUCTIONS.roof, outside('roof', 0, 0), inside('roof', 180, 'none')),
    wall: (side: Side, windowM2: number, isBehindWindows: boolean) =>
      element(
        `${side} wall`,
        (side === 'north' || side === 'south' ? ROOM.eastWestM : depthM) * ROOM.heightM - windowM2,
        wall,
        outside('wall', 90, AZIMUTH[side]),
        inside('wall', 90, isBehindWindows ? 'back' : 'none'),
      ),
    window: (name: string, side: Side, index: number, of: FabricCase): Pane => ({
      id: `${id} ${name}`,
      areaM2: WINDOW_M2,
      frameShare: 0,
      frameUValue: 0,
      glass: GLASSES[of.glass],
      tiltDeg: 90,
      azimuthDeg: AZIMUTH[side],
      from: 'outdoors',
      to: id,
      shading: of.shaded ? shadingOf(side, index) : null,
      filmOutside: films.outside.glass,
      filmInside: films.inside.glass,
      nightResistance: 0,
      lightRoom: {
        depthM: side === 'south' ? depthM : ROOM.eastWestM,
        sillM: WINDOW.sillM,
        headM: WINDOW.sillM + WINDOW.heightM,
      },
      dirt: 1,
    }),
    infiltration: (): Opening => ({
      id: `${id} infiltration`,
      zone: id,
      kind: 'fixed',
      flow: always((INFILTRATION_ACH * floorM2 * ROOM.heightM) / 3600),
      fan: false,
    }),
  };
}

/**
 * The south overhang reaches 0.5 m past one side of a window and 4.5 m past the other. A shade's shadow depends on its
 * reach toward the sun alone, so of two windows that mirror each other one may take 0.5 m on both sides and the other
 * 4.5 m: their sum is the same at every hour. The same holds for sky light, direction by direction.
 */
function shadingOf(side: Side, index: number): Shading {
  const { widthM, heightM, gapM } = WINDOW;
  const overhang = { depthM: SHADE_DEPTH_M, gapM };
  if (side !== 'south')
    return {
      widthM,
      heightM,
      overhang: { ...overhang, extendM: 0 },
      fins: { depthM: SHADE_DEPTH_M, gapM: 0 },
    };
  const farM = ROOM.eastWestM - widthM - SOUTH_MARGIN_M;
  return { widthM, heightM, overhang: { ...overhang, extendM: index === 0 ? SOUTH_MARGIN_M : farM } };
}

function commonWall(films: FilmSet): Element {
  const face = (zone: string, lit: ZoneFace['lit']): ZoneFace => ({
    kind: 'zone',
    zone,
    absorptance: ABSORPTANCE,
    emissivity: EMISSIVITY,
    film: films.inside.wall,
    lit,
    faceTiltDeg: 90,
  });
  return {
    id: 'common wall',
    areaM2: ROOM.eastWestM * ROOM.heightM,
    layers: CONSTRUCTIONS.commonWall,
    a: face(SUN_ID, 'back'),
    b: face(ROOM_ID, 'none'),
  };
}

function nightFan(): Opening {
  const flow = FAN_M3_PER_H / 3600;
  return {
    id: 'night fan',
    zone: ROOM_ID,
    kind: 'fixed',
    flow: byHour((hour) => (isNight(hour) ? flow : 0)),
    fan: true,
  };
}

/** 18:00 to 07:00 */
function isNight(hour: number): boolean {
  return hour >= 18 || hour < 7;
}

function byHour(of: (hour: number) => number): Schedule {
  return { workday: Array.from({ length: 24 }, (_, hour) => of(hour)) };
}

/** Set-points that stand for "off" [°C]: the network holds a band at all hours. */
const NEVER_COOL_C = 1000;

function thermostatOf(of: FabricCase): Thermostat | null {
  const unlimited = { heatCapacityW: 1e6, coolCapacityW: 1e6 };
  switch (of.control) {
    case 'free':
    case 'night-vent-free':
      return null;
    case 'plain':
      return { ...unlimited, heatC: always(20), coolC: always(27) };
    case 'setback':
      // 10 °C from 23:00 to 07:00, a straight rise to 20 °C by 08:00 (M).
      return {
        ...unlimited,
        heatC: { ...byHour((hour) => (hour >= 8 && hour < 23 ? 20 : 10)), ramp: true },
        coolC: always(27),
      };
    case 'night-vent':
      return { ...unlimited, heatC: null, coolC: byHour((hour) => (isNight(hour) ? NEVER_COOL_C : 27)) };
  }
}
