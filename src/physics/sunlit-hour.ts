// The minute at which the sun's position stands for an hour: the middle of the part of it in which the sun is up.
// Radiation in weather files is a mean over the hour; in the hours of sunrise and sunset it all arrives while the
// sun is above the horizon, so the middle of the whole hour would put it too low or below the horizon.
import { sunPosition } from './sun-position.ts';

const HOUR_MIN = 60;

/** Scan step [min]. A shorter glimpse of the sun than this is missed; the sun is then less than 0.01° up. */
const STEP_MIN = 5;

/** No point of the hour lies more than 15 min (3.75° of the sky's turning) from a probe at 0, 30 and 60 min. */
const SURELY_DEG = 4;

/**
 * Middle of the sunlit part of an hour.
 *
 * @param startMs start of the hour, milliseconds since 1970-01-01T00:00Z
 * @param latitudeDeg north positive [°]; −90…90
 * @param longitudeDeg east positive [°]; −180…180
 * @returns minutes after the start, 0…60, at the middle of the part with TRUE elevation above 0; where the sun
 *   dips below the horizon and comes back within the hour, the middle of the longer part; null when it stays down
 */
export function sunlitMinute(startMs: number, latitudeDeg: number, longitudeDeg: number): number | null {
  const elevation = (minute: number) =>
    sunPosition(startMs + minute * 60_000, latitudeDeg, longitudeDeg).elevationDeg;
  const probes = [elevation(0), elevation(HOUR_MIN / 2), elevation(HOUR_MIN)];
  if (probes.every((deg) => deg > SURELY_DEG)) return HOUR_MIN / 2;
  if (probes.every((deg) => deg < -SURELY_DEG)) return null;

  let best: { from: number; to: number } | null = null;
  let from = probes[0]! > 0 ? 0 : null;
  let wasUp = from !== null;
  for (let minute = STEP_MIN; minute <= HOUR_MIN; minute += STEP_MIN) {
    const isUp = elevation(minute) > 0;
    if (isUp && !wasUp) from = crossing(elevation, minute - STEP_MIN, minute);
    if (from !== null && (wasUp !== isUp || minute === HOUR_MIN)) {
      const to = isUp ? minute : crossing(elevation, minute, minute - STEP_MIN);
      if (!isUp || minute === HOUR_MIN) {
        if (best === null || to - from > best.to - best.from) best = { from, to };
        from = null;
      }
    }
    wasUp = isUp;
  }
  return best === null ? null : (best.from + best.to) / 2;
}

/** Minute of the horizon crossing by halving between one when the sun is down and one when it is up. */
function crossing(elevation: (minute: number) => number, downMinute: number, upMinute: number): number {
  let down = downMinute;
  let up = upMinute;
  for (let pass = 0; pass < 16; pass++) {
    const middle = (down + up) / 2;
    if (elevation(middle) > 0) up = middle;
    else down = middle;
  }
  return up;
}
