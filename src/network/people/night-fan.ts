// The control of a fan that cools rooms by night: the room's warmth, its air, outdoors and the will in; whether it runs out.
// It starts on air plainly cooler outside and stops before it has cooled the room to what the heater holds; a room heated
// within a day is left alone. A dead band keeps it from starting and stopping.
// Source: published controls of night purges (start 3 K cooler outside, stop at 1 K; stop at set-point + 2 K); the rest common
// practice, no source.

import type { FixedOpening } from '../../model/model.ts';
import { HEATED_LATELY_H, tied, type Will } from './will.ts';
import type { ZoneAir } from './zone-air.ts';

/** Outdoors cooler than the room's air to start, and to go on [K]. */
const START_COOLER_K = 3;
const STOP_COOLER_K = 1;
/** Above where it stops, the room starts it [K]. */
const START_ABOVE_K = 1;
/** Outside summer the fan stops so much warmer than where windows do: it keeps going while people sleep [K]. */
const STOP_ABOVE_K = 1;
/** The air may fall this far below where walls and air together stop it [K]. */
const AIR_BELOW_K = 3;

/** Whether the fan runs from this quarter hour on. */
export function nightFanRuns(
  { onlyAboveC }: FixedOpening,
  isRunning: boolean,
  air: ZoneAir,
  will: Will,
  zone: number,
): boolean {
  const { isRoom, feltC, dayTieC, nightTieC, sinceHeatH, heats } = will.rooms;
  const above = onlyAboveC!;
  const airC = air.zoneC[zone]!;
  const coolerK = airC - air.weather.dryBulbC;
  let stopC = above;
  let lowAirC = above - AIR_BELOW_K;
  if (isRoom[zone] === 1) {
    if (heats[zone] === 1 || sinceHeatH[zone]! < HEATED_LATELY_H) return false;
    const summer = will.rooms.summer[zone]!;
    stopC = tied(stopC, dayTieC[zone]!, summer) + (1 - summer) * STOP_ABOVE_K;
    lowAirC = tied(lowAirC, nightTieC[zone]!, summer);
  }
  if (airC < lowAirC) return false;
  if (isRunning) return feltC[zone]! > stopC && coolerK > STOP_COOLER_K;
  return feltC[zone]! > stopC + START_ABOVE_K && coolerK > START_COOLER_K;
}
