// Covers of a run: how far each hand has drawn its own, hour by hour. A laid-out model and the light of its panes in;
// the drawn shares that films and sun read, and what drawing asked of people, out. A cover follows the temperatures the
// hour starts at and the sun of the hour, so nothing here changes within an hour.

import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { HOURS } from '../../weather/typical-year.ts';
import { blankMoment, type Moment, momentOf } from '../hour/clock.ts';
import type { DayPart } from '../hour/day-part.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import { type CoverHand, coveredPanes } from '../layout/covered-panes.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { Layout } from '../layout/layout.ts';
import type { PaneLights } from '../sun/hourly-sun.ts';
import type { PaneLight } from '../sun/pane-light.ts';
import { atCosine, opticsOf } from '../sun/pane-optics.ts';
import type { CoverYear } from '../year.ts';
import { type CoverSigns, type CoverState, openCover, tend, wantedShare } from './cover-hand.ts';

export interface Covers {
  /** by hand, how far drawn in the hour, and the same weighed by the sun on it, 0…1 */
  readonly drawn: Float64Array;
  readonly shading: Float64Array;
  /** take the covers of a laid-out model in, all open */
  load(layout: Layout, light: PaneLights): void;
  /** before films and sun of an hour; zones by index */
  renew(moment: Moment, weather: HourWeather): void;
  /** the same for a day part, as automatic control would have it: means over its hours */
  renewMean(dayPart: DayPart, climate: PreparedClimate): void;
  /** motors stand where they are from the next hour on, or run again */
  cutPower(isOut: boolean): void;
  /** moves start to count */
  startCounting(): void;
  /** keep the hour's drawn shares */
  record(hour: number): void;
  years(): readonly CoverYear[];
}

interface Hand extends CoverHand {
  /** index of the zone whose wish for warmth it spares, −1 for none */
  readonly taker: number;
  readonly state: CoverState;
  /** sun on the window by hour [W/m²] */
  readonly sunW: Float64Array;
  readonly column: Float64Array;
}

/** Covers with room for so many; load() before use. */
export function createCovers(capacity: EngineCapacity, zoneC: Float64Array, radiantC: Float64Array): Covers {
  const drawn = new Float64Array(capacity.covers);
  const shading = new Float64Array(capacity.covers);
  const signs: CoverSigns = { sunW: 0, roomC: 0, takerC: Infinity, outdoorC: 0, windSpeed: 0, isDark: false };
  const at = blankMoment();
  let hands: readonly Hand[] = [];
  let powerIsOut = false;

  function load(layout: Layout, light: PaneLights): void {
    drawn.fill(0);
    shading.fill(0);
    const covered = coveredPanes(layout);
    const suns = new Map<number, Float64Array>();
    hands = covered.hands.map((hand): Hand => {
      const { chain, place, member } = covered.panes[hand.pane]!;
      const known = suns.get(hand.pane);
      const sunW = known ?? sunThrough(light[place]![member]!, chain.pane);
      suns.set(hand.pane, sunW);
      const taker = layout.zoneIds.indexOf(hand.cover.rule.spares?.zone ?? '');
      return { ...hand, taker, state: openCover(), sunW, column: new Float64Array(HOURS) };
    });
  }

  function readRooms(zone: number, taker: number): void {
    signs.roomC = (zoneC[zone]! + radiantC[zone]!) / 2;
    signs.takerC = taker < 0 ? Infinity : (zoneC[taker]! + radiantC[taker]!) / 2;
  }

  function renew(moment: Moment, weather: HourWeather): void {
    for (let h = 0; h < hands.length; h++) {
      const { state, cover, zone, taker, sunW } = hands[h]!;
      if (powerIsOut && isMotor(cover)) continue;
      readRooms(zone, taker);
      signs.sunW = sunW[moment.hour]!;
      signs.outdoorC = weather.dryBulbC;
      signs.windSpeed = weather.windSpeed;
      signs.isDark = weather.darkShare === 1;
      tend(state, cover.rule, cover.control, signs, moment);
      drawn[h] = state.drawn;
      shading[h] = state.drawn;
    }
  }

  function renewMean({ hours, count }: DayPart, climate: PreparedClimate): void {
    const { dryBulbC, windSpeed } = climate.year;
    at.calendar = climate.calendar;
    for (let h = 0; h < hands.length; h++) {
      const { state, cover, zone, taker, sunW } = hands[h]!;
      readRooms(zone, taker);
      let share = 0;
      let shaded = 0;
      let sun = 0;
      for (let k = 0; k < count; k++) {
        const hour = hours[k]!;
        signs.sunW = sunW[hour]!;
        signs.outdoorC = dryBulbC[hour]!;
        signs.windSpeed = windSpeed[hour]!;
        signs.isDark = climate.cosZenith[hour]! <= 0;
        const isNobody = cover.control === 'never';
        const wanted = isNobody ? 0 : wantedShare(cover.rule, signs, momentOf(hour, at).month, false, false);
        share += wanted;
        shaded += wanted * signs.sunW;
        sun += signs.sunW;
      }
      drawn[h] = share / count;
      shading[h] = sun > 0 ? shaded / sun : 0;
      state.wanted = 0;
      state.drawn = 0;
    }
  }

  function cutPower(isOut: boolean): void {
    powerIsOut = isOut;
  }

  function startCounting(): void {
    for (const { state } of hands) {
      state.moves = 0;
      state.neglectedHours = 0;
      state.movesByDay.fill(0);
    }
  }

  function record(hour: number): void {
    for (let h = 0; h < hands.length; h++) hands[h]!.column[hour] = drawn[h]!;
  }

  function years(): readonly CoverYear[] {
    return hands.map(({ id, column, state: { moves, movesByDay, neglectedHours } }) => ({
      id,
      drawn: column,
      moves,
      movesByDay,
      neglectedHours,
    }));
  }

  return { drawn, shading, load, renew, renewMean, cutPower, startCounting, record, years };
}

/** What a motor draws; leaves, and what is hung for a season, are drawn by none. */
function isMotor({ control, rule }: Hand['cover']): boolean {
  return control === 'automatic' && rule.drawnBy !== 'season';
}

/** Sun that meets a window, by what passes its bare glass over what would at normal incidence [W/m²]. */
function sunThrough(light: PaneLight, { glass, dirt }: Layout['panes'][number]['pane']): Float64Array {
  const normal = atCosine(opticsOf(glass).transmittance, 1) * dirt;
  return new Float64Array(HOURS).map(
    (_, hour) => (light.beamFloorW[hour]! + light.beamBackW[hour]! + light.diffuseW[hour]!) / normal,
  );
}
