// Airing: a window opened wide for some minutes to change the air, at any outdoor temperature, because the room is damp or
// stale at one of the times of day when somebody looks, or by habit whatever the air is like. It takes the room's air once
// and a little, and is over. A vent's habit of airing, the hour and the zone's air in; whether to air in this hour out.
// Limits of damp, and the changes after which a room is aired: common practice, no source. Hours and
// minutes stand in the model.

import type { Airing, VentOpening } from '../../model/model.ts';
import { STALE_AIR_PPM } from '../../physics/carbon-dioxide.ts';
import { exp } from '../../physics/elementary.ts';
import type { Moment } from '../hour/clock.ts';
import { isAwake, isHome, moveThereAndBack, type OpeningState } from './occupant-control.ts';
import type { Will } from './will.ts';
import { isShutBy } from './window-rules.ts';
import type { ZoneAir } from './zone-air.ts';

/** Relative humidity of a room, and of a zone beside the rooms, that asks for airing. */
const DAMP_ROOM = 0.7;
const DAMP_BESIDE = 0.85;
/** Beyond those limits, and that of stale air, by this much an airing takes all its minutes; at them this share. */
const MUCH_DAMPER = 0.05;
const MUCH_STALER_PPM = 500;
const LEAST_SHARE = 0.3;
/** Outdoors must be drier by so much to help [kg/kg]. */
const DRIER_BY = 0.0005;
/** Air changes after which a room is aired: 70 % of its air is new. */
export const AIRED_CHANGES = 1.2;
/** Who airs for damp or stale air keeps a small window open for up to so many times its minutes. */
const LONGEST = 3;
/** A window further open than this airs as it is. */
const AJAR = 1 / 8;

/** Settle whether a vent is used to air in this hour; counts somebody's two moves. */
export function beginAiring(
  vent: VentOpening,
  state: OpeningState,
  moment: Moment,
  air: ZoneAir,
  will: Will,
  zone: number,
): void {
  state.airingS = 0;
  const { airing, control } = vent;
  if (airing === undefined || control === 'never' || !airing.hours.includes(moment.hourOfDay)) return;
  if (state.open > AJAR || isShutBy(vent, state, air)) return;
  if (control !== 'automatic' && !(isAwake(moment) && isHome(control, moment))) return;
  const share = shareOfAiring(airing, air, will, zone);
  if (share === 0) return;
  state.airingS = 60 * airing.minutes * share;
  state.airings++;
  if (control !== 'automatic') moveThereAndBack(state, moment);
}

/** How much of its minutes an airing takes: the damper or staler, the longer; 0 for none. */
function shareOfAiring({ byHabit }: Airing, air: ZoneAir, will: Will, zone: number): number {
  if (byHabit) return 1;
  const isRoom = will.rooms.isRoom[zone] === 1;
  const stale = isRoom ? (air.co2Ppm[zone]! - STALE_AIR_PPM) / MUCH_STALER_PPM : -1;
  const helps = air.weather.humidityRatio < air.zoneRatio[zone]! - DRIER_BY;
  const damp = helps ? (air.zoneHumidity[zone]! - (isRoom ? DAMP_ROOM : DAMP_BESIDE)) / MUCH_DAMPER : -1;
  const most = Math.max(stale, damp);
  return most <= 0 ? 0 : Math.min(1, LEAST_SHARE + (1 - LEAST_SHARE) * most);
}

/**
 * How much longer than its minutes an airing goes on, until the air has been changed. By habit it goes by the clock.
 *
 * @param changesAnS air changes a second with the window wide open
 * @returns 1 to LONGEST
 */
export function airingLengthened({ minutes, byHabit }: Airing, changesAnS: number): number {
  if (byHabit) return 1;
  return Math.max(1, Math.min(LONGEST, AIRED_CHANGES / (60 * minutes * changesAnS)));
}

/**
 * What an airing takes of the heat that as much air would take at the temperature of air and furniture together, which a
 * zone keeps as one. Air that leaves is colder: outdoors comes in at m changes a second, walls and furniture, which hardly
 * change in minutes, warm it by g a second, and from 1 it falls to f(t) = a + (1 − a) exp(−(m + g) t), a = g/(m + g). The
 * zone's own temperature is that of air and furniture by their heat.
 *
 * @param changesAnS air changes a second, m
 * @param warmedAnS what walls and furniture give the air, by its heat [1/s], g
 * @param furniture heat of the furniture by that of the air; 0 where a zone's temperature is its air's
 * @param seconds how long it lasts; above 0
 * @returns 0…1; 1 without furniture
 * Source: energy balance of a well-mixed volume.
 */
export function airedHeat(changesAnS: number, warmedAnS: number, furniture: number, seconds: number): number {
  const rate = changesAnS + warmedAnS;
  const rest = warmedAnS / rate;
  const mean = rest + ((1 - rest) * (1 - exp(-rate * seconds))) / (rate * seconds);
  return (mean * (1 + furniture)) / (mean + furniture);
}
