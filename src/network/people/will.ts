// The will of the people: what each room wants (heat, coolth, nothing), for how long it has, and what that means for
// whatever can give it. Windows, vents of the sunspace, the night fan, the door and the heater all read it and nothing
// else, so that none works against another. A room is a zone people live in or a heater holds. Written at the start of an
// hour and of a step, from temperatures as they then are; nothing within a step's trials may read a trial temperature for a
// yes or a no.
// Constants: common practice, no source, unless said.

import type { Model, Zone } from '../../model/model.ts';
import { valuesOf } from '../../model/schedule.ts';
import { clamp01 } from '../../physics/clamp.ts';
import { type Moment, scheduled } from '../hour/clock.ts';
import { isAwake, WAKING_COLD_K } from './occupant-control.ts';
import { blankSeason, passHours, type Season } from './season.ts';
import type { ZoneAir } from './zone-air.ts';

/** What people without a heater would hold, by day and asleep [°C]. */
const WISHED_DAY_C = 20;
const WISHED_NIGHT_C = 17;
/** Nobody cools a room by night for so long after it was heated, and it takes as long again to forget the heater [h]. */
export const HEATED_LATELY_H = 24;
/** Cooled by day to this far above the day's set-point while the house is heated, and once it no longer is [K]. */
const ABOVE_DAY_K = 2;
const ABOVE_DAY_UNHEATED_K = 0.5;
/** The air of a night above the night's set-point; walls and air together above the day's, heated and no longer [K]. */
const ABOVE_NIGHT_K = 1;
const NIGHT_ABOVE_DAY_K = 1;
/** A window stands open at most down to this far below the temperature it opens at, by day and by night [K]. */
export const RUN_DOWN_K = 2;
export const NIGHT_RUN_DOWN_K = 5;
/** Above the temperature to which windows cool, people have begun to want coolth [K]. */
const BAND_OF_WISH_K = 1;
/** After cooling, the heater waits this long for the walls to bring the air back, and then comes on by degrees [h]. */
const WALLS_WARM_H = 2;
const COMES_ON_H = 1;
/** What a heater holds while a window somebody minds stands open to cool: a guard against frost [°C]. */
const WINDOW_OPEN_C = 8;
/** Who has cooled a room in summer within this time does not heat it; by degrees over the same again [h]. */
const COOLED_LATELY_H = 48;
/** Nor does it come on, in summer, for air this far below what windows cool a room to by night [K]. */
const COOLED_UNDER_K = 3;
/** A heater that holds its set-point within this is at work [K]. */
const HOLDS_WITHIN_K = 0.05;
const LONG_AGO_H = 10_000;

export interface Will {
  readonly season: Season;
  /** by zone */
  readonly rooms: Rooms;
  /** how much the rooms want the heat of zones beside them kept, and how much by night: 0 not at all … 1, when those wait for KEPT_C of window-rules.ts; a room's heater is at work, or its air would wake a sleeper; what rooms are cooled to by day outside summer [°C], and whether it is summer for all of them, and long since any was heated, 0…1 */
  readonly keeping: {
    share: number;
    nightShare: number;
    heats: boolean;
    tieC: number;
    summer: number;
    unheated: number;
  };
  load(model: Model): void;
  /** the schedule of an hour, or of so many, whose weather is written */
  beginHour(moment: Moment, hours: number): void;
  /**
   * Before a step.
   *
   * @param heldW heat given in the step before, from `first` on by zone [W]
   * @param hours length of the step
   */
  beginStep(heldW: Float64Array, first: number, hours: number): void;
  /** long steps: nothing that was done in the step before tells of the next */
  setLongSteps(are: boolean): void;
}

export type Rooms = ReturnType<typeof blankRooms>;

function blankRooms(most: number) {
  const perZone = () => new Float64Array(most);
  return {
    /** 1 for a room; 1 for one with a heater */
    isRoom: perZone(),
    hasHeater: perZone(),
    /** mean of air and walls at the step's start [°C] */
    feltC: perZone(),
    /** highest and lowest of the heating schedule, and what it says in the hour [°C] */
    dayC: perZone(),
    nightC: perZone(),
    wishC: perZone(),
    /** what the heater holds in the step [°C]; −Infinity without one */
    holdC: perZone(),
    /** heat of the hour from a stove or a heated floor, nothing counted that nobody notices [W]; how high its fire burns, of a full load, 0…1 */
    fireW: perZone(),
    burning: perZone(),
    /** 1 while the heater gives heat or is about to, or while it would */
    heats: perZone(),
    /** since it last did, and since a window somebody minds or a night fan last cooled the room [h] */
    sinceHeatH: perZone(),
    sinceCoolthH: perZone(),
    /** 1 while one does; written by whoever moves air */
    isCooled: perZone(),
    /** 0 while it is heated … 1 once that is long past */
    unheated: perZone(),
    /** 1 in a summer in which it is not heated */
    summer: perZone(),
    /** cooled no further, by the air of the day and of the night and by walls and air of the night, but in summer [°C] */
    dayTieC: perZone(),
    nightTieC: perZone(),
    nightFeltC: perZone(),
    /** opens at, of its first window [°C]; NaN without one */
    windowsC: perZone(),
    wantsCoolth: perZone(),
  };
}

const NOTHING_KEPT: Will['keeping'] = {
  share: 0,
  nightShare: 0,
  heats: false,
  tieC: Number.NEGATIVE_INFINITY,
  summer: 1,
  unheated: 1,
};

/** The will of a run, with room for so many zones; load() before use. */
export function createWill(zonesMost: number, air: ZoneAir): Will {
  const season = blankSeason();
  const rooms = blankRooms(zonesMost);
  const keeping = { ...NOTHING_KEPT };
  let modelZones: readonly Zone[] = [];
  let zones = 0;
  let isLong = false;

  function load(model: Model): void {
    modelZones = model.zones;
    zones = model.zones.length;
    Object.assign(season, blankSeason());
    Object.assign(keeping, NOTHING_KEPT);
    for (const column of Object.values(rooms)) column.fill(0);
    model.zones.forEach(({ id, people, thermostat }, z) => {
      rooms.hasHeater[z] = thermostat?.heatC ? 1 : 0;
      rooms.isRoom[z] = people !== null || thermostat?.heatC ? 1 : 0;
      const hours = thermostat?.heatC ? valuesOf(thermostat.heatC) : null;
      rooms.dayC[z] = hours === null ? WISHED_DAY_C : Math.max(...hours);
      rooms.nightC[z] = hours === null ? WISHED_NIGHT_C : Math.min(...hours);
      rooms.holdC[z] = Number.NEGATIVE_INFINITY;
      rooms.sinceHeatH[z] = LONG_AGO_H;
      rooms.sinceCoolthH[z] = LONG_AGO_H;
      rooms.unheated[z] = 1;
      const window = model.openings.find((opening) => opening.kind === 'vent' && opening.zone === id);
      rooms.windowsC[z] = window?.kind === 'vent' ? window.rule.opensAboveC : Number.NaN;
    });
  }

  function beginHour(moment: Moment, hours: number): void {
    const { isRoom, wishC, dayC, nightC } = rooms;
    passHours(season, air.weather.dryBulbC, hours);
    for (let z = 0; z < zones; z++) {
      if (isRoom[z] === 0) continue;
      const heatC = modelZones[z]!.thermostat?.heatC;
      wishC[z] = heatC ? scheduled(heatC, moment) : isAwake(moment) ? dayC[z]! : nightC[z]!;
    }
  }

  function beginStep(heldW: Float64Array, first: number, hours: number): void {
    const {
      isRoom,
      hasHeater,
      feltC,
      dayC,
      nightC,
      wishC,
      holdC,
      heats,
      sinceHeatH,
      sinceCoolthH,
      isCooled,
      fireW,
    } = rooms;
    const { unheated, summer, dayTieC, nightTieC, nightFeltC, windowsC, wantsCoolth } = rooms;
    const { zoneC, radiantC } = air;
    const count = zones;
    let kept = 0;
    let nightKept = 0;
    let anyCold = false;
    let tieC = Number.NEGATIVE_INFINITY;
    let allSummer = 1;
    let allUnheated = 1;
    for (let z = 0; z < count; z++) {
      const airC = zoneC[z]!;
      const felt = (airC + radiantC[z]!) / 2;
      feltC[z] = felt;
      if (isRoom[z] === 0) continue;
      sinceCoolthH[z] = isCooled[z] === 1 ? 0 : sinceCoolthH[z]! + hours;
      const gaveHeat = hasHeater[z] === 1 ? heldW[first + z]! + fireW[z]! > 0 : felt < wishC[z]!;
      sinceHeatH[z] = gaveHeat ? 0 : sinceHeatH[z]! + hours;
      if (hasHeater[z] === 1) writeHold(z);
      // Nobody turns a stove down: once it has made the room too warm, the window is what is left.
      const isWelcome = fireW[z] === 0 || airC < wishC[z]! + ABOVE_DAY_K;
      heats[z] = !isLong && ((gaveHeat && isWelcome) || airC < holdC[z]! + HOLDS_WITHIN_K) ? 1 : 0;
      const forgotten = clamp01((sinceHeatH[z]! - HEATED_LATELY_H) / HEATED_LATELY_H);
      unheated[z] = forgotten;
      summer[z] = season.summer * forgotten;
      dayTieC[z] = dayC[z]! + ABOVE_DAY_K + forgotten * (ABOVE_DAY_UNHEATED_K - ABOVE_DAY_K);
      nightTieC[z] = nightC[z]! + ABOVE_NIGHT_K;
      tieC = Math.max(tieC, dayTieC[z]!);
      allSummer = Math.min(allSummer, summer[z]!);
      allUnheated = Math.min(allUnheated, forgotten);
      nightFeltC[z] = dayC[z]! + NIGHT_ABOVE_DAY_K;
      const nightFloorC = tied(windowsC[z]! - NIGHT_RUN_DOWN_K, nightTieC[z]!, summer[z]!);
      if (!isLong && (heats[z] === 1 || airC < nightFloorC - WAKING_COLD_K)) anyCold = true;
      const lowC = Number.isNaN(windowsC[z]!) ? dayTieC[z]! : dayFloorOf(windowsC[z]!, z);
      const highC = Math.max(windowsC[z]! || 0, lowC + BAND_OF_WISH_K);
      if (felt > highC) wantsCoolth[z] = 1;
      else if (felt < lowC) wantsCoolth[z] = 0;
      if (wantsCoolth[z] === 1) continue;
      kept = Math.max(kept, 1 - forgotten, season.welcomes * clamp01(highC - felt));
      // By morning rooms that are warm enough now will be glad of it.
      nightKept = Math.max(nightKept, 1 - forgotten, season.welcomes);
    }
    keeping.share = kept;
    keeping.nightShare = nightKept;
    keeping.heats = anyCold;
    keeping.tieC = tieC;
    keeping.summer = allSummer;
    keeping.unheated = allUnheated;
  }

  function dayFloorOf(opensAboveC: number, z: number): number {
    return tied(opensAboveC - RUN_DOWN_K, rooms.dayTieC[z]!, rooms.summer[z]!);
  }

  /** What the heater holds: who has just cooled a room lets its walls warm the air, and in summer lets it be. */
  function writeHold(z: number): void {
    const { wishC, holdC, nightC, sinceCoolthH, windowsC } = rooms;
    const wish = wishC[z]!;
    const since = sinceCoolthH[z]!;
    holdC[z] = wish;
    if (since >= 2 * COOLED_LATELY_H) return;
    const least = Math.min(wish, nightC[z]!, WINDOW_OPEN_C);
    const waits = clamp01(1 - (since - WALLS_WARM_H) / COMES_ON_H);
    const hold = since === 0 ? least : Math.max(least, wish - waits * Math.max(0, air.radiantC[z]! - wish));
    holdC[z] = hold;
    const cooledTo = windowsC[z]! - NIGHT_RUN_DOWN_K - COOLED_UNDER_K;
    if (!(cooledTo < hold)) return;
    holdC[z] = hold + season.summer * clamp01(2 - since / COOLED_LATELY_H) * (cooledTo - hold);
  }

  return {
    season,
    rooms,
    keeping,
    load,
    beginHour,
    beginStep,
    setLongSteps(are) {
      isLong = are;
    },
  };
}

/** A floor of windows, lifted to what the set-point asks for outside summer [°C]. */
export function tied(floorC: number, tieC: number, summer: number): number {
  return floorC + (1 - summer) * Math.max(0, tieC - floorC);
}
