// What a column of sunlight says about the clock of its table: light rises and falls with the sun's height, so the shift of
// the stamps at which it does so best is the right one. Clouds blur this and move it by minutes, not by half hours.

import { sin } from '../../physics/elementary.ts';
import { sunPosition } from '../../physics/sun-position.ts';
import type { Site } from '../typical-year.ts';

const MOST_ROWS = 3000;
const STEP_MIN = 10;
const MOST_MIN = 180;

/**
 * Minutes by which stamps are late against the sun: 0 for readings of their moment, half a row more for those stamped at
 * the end of what they cover, 60 for a clock an hour ahead.
 *
 * @param ms moment of each row
 * @param light any measure of the sun on the horizontal, NaN where missing
 * @returns NaN where there is too little light to tell
 */
export function minutesLate(
  ms: Float64Array,
  light: Float64Array,
  { latitudeDeg, longitudeDeg }: Site,
): number {
  const every = Math.max(1, Math.floor(ms.length / MOST_ROWS));
  const rows = [...ms.keys()].filter((row) => row % every === 0 && light[row]! >= 0);
  if (rows.filter((row) => light[row]! > 50).length < 24) return Number.NaN;
  let [best, most] = [Number.NaN, -1];
  for (let late = -MOST_MIN; late <= MOST_MIN; late += STEP_MIN) {
    const agrees = correlation(rows, light, (row) => {
      const { elevationDeg } = sunPosition(ms[row]! - late * 60_000, latitudeDeg, longitudeDeg);
      return Math.max(0, sin((elevationDeg * Math.PI) / 180));
    });
    if (agrees > most) [best, most] = [late, agrees];
  }
  return most > 0.5 ? best : Number.NaN;
}

function correlation(rows: readonly number[], light: Float64Array, height: (row: number) => number): number {
  let [x, y, xx, yy, xy] = [0, 0, 0, 0, 0];
  for (const row of rows) {
    const [a, b] = [light[row]!, height(row)];
    x += a;
    y += b;
    xx += a * a;
    yy += b * b;
    xy += a * b;
  }
  const n = rows.length;
  const spread = (n * xx - x * x) * (n * yy - y * y);
  return spread <= 0 ? 0 : (n * xy - x * y) / Math.sqrt(spread);
}
