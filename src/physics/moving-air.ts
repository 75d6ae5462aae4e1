// How much cooler moving air feels. In: temperature, humidity, air speed. Out: kelvin by which a room of slower air would
// have to be cooler to feel the same, both by standard effective temperature: the cooling effect of ASHRAE 55.
import { requireRange } from './require-range.ts';
import { standardEffectiveTemperature } from './standard-effective-temperature.ts';

/** Air in a room with no fan [m/s]: ASHRAE 55 counts the cooling effect from here. */
export const STILL_AIR_MS = 0.1;

/**
 * Air speed that the adaptive limits hold for already [m/s]. ASHRAE 55 and EN 16798-1 raise them by 1.2, 1.8 and 2.2 K at
 * 0.6, 0.9 and 1.2 m/s, which are gains counted from this speed and not from still air; from memory, high confidence.
 */
export const ADAPTIVE_AIR_MS = 0.3;

/** Moving air is credited only in rooms above this, operative [°C]: ASHRAE 55, EN 16798-1; from memory, high confidence. */
export const MOVING_AIR_FROM_C = 25;

/** Warmer air than this cools nobody who does not sweat freely [°C]: health advice of the US and the WHO. */
export const MOVING_AIR_UNTIL_C = 35;

/** Sitting at a table in summer clothes: the case that ASHRAE 55 draws its figures for. */
const ACTIVITY_MET = 1.1;
const CLOTHING_CLO = 0.5;
/** A person can be cooled by no more than this [K]; wider than any answer. */
const MOST_K = 12;

/**
 * Cooling effect of moving air.
 *
 *   SET(t, t, v) = SET(t − CE, t − CE, still)
 *
 * @param operativeC air and surfaces alike [°C]; 20…40
 * @param relativeHumidity [–]; 0…1, kept as it is
 * @param airSpeed at the person [m/s]; `stillSpeed`…2
 * @param stillSpeed counted from [m/s]
 * @returns CE [K]; 0 where the speed is no more than `stillSpeed`
 * Source: ASHRAE 55, elevated air speed; 1.1 met, 0.5 clo.
 */
export function coolingEffect(
  operativeC: number,
  relativeHumidity: number,
  airSpeed: number,
  stillSpeed: number,
): number {
  requireRange('operativeC', operativeC, 20, 40, '°C');
  requireRange('airSpeed', airSpeed, 0, 2, 'm/s');
  if (airSpeed <= stillSpeed) return 0;
  const feels = (tempC: number, speed: number) =>
    standardEffectiveTemperature({
      airTempC: tempC,
      meanRadiantTempC: tempC,
      airSpeed: speed,
      relativeHumidity,
      activityMet: ACTIVITY_MET,
      clothingClo: CLOTHING_CLO,
    });
  const wanted = feels(operativeC, airSpeed);
  return rootOf((cooler) => feels(operativeC - cooler, stillSpeed) - wanted, 0, MOST_K);
}

/** Steps of the table, and where it begins [°C]. */
const STEP_C = 1;
const STEP_HUMIDITY = 0.1;
const ROWS = (MOVING_AIR_UNTIL_C - MOVING_AIR_FROM_C) / STEP_C + 1;
const COLUMNS = 1 / STEP_HUMIDITY + 1;
/** Speeds a thread remembers. */
const MOST_KEPT = 8;
const kept = new Map<string, CoolingTable>();

/** K by operative temperature (held to 25…35 °C) and relative humidity (held to 0…1). */
export type CoolingTable = (operativeC: number, relativeHumidity: number) => number;

/**
 * The cooling effect as a table to look up for every hour, remembered for its pair of speeds. An entry is worked out when
 * an hour first needs it: a year needs a few dozen.
 *
 * @returns see `CoolingTable`
 * Error: within 0.05 K of `coolingEffect` up to 30 °C and 80 % humidity, within 0.4 K in the hottest and dampest air.
 */
export function coolingTable(airSpeed: number, stillSpeed: number): CoolingTable {
  const key = `${airSpeed} ${stillSpeed}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const table = new Float64Array(ROWS * COLUMNS).fill(Number.NaN);
  const entry = (row: number, column: number): number => {
    const at = row * COLUMNS + column;
    if (Number.isNaN(table[at]!)) {
      const operativeC = MOVING_AIR_FROM_C + row * STEP_C;
      table[at] = coolingEffect(operativeC, column * STEP_HUMIDITY, airSpeed, stillSpeed);
    }
    return table[at]!;
  };
  const lookUp: CoolingTable = (operativeC, relativeHumidity) => {
    const alongC = Math.min(Math.max((operativeC - MOVING_AIR_FROM_C) / STEP_C, 0), ROWS - 1);
    const alongHumidity = Math.min(Math.max(relativeHumidity / STEP_HUMIDITY, 0), COLUMNS - 1);
    const row = Math.min(ROWS - 2, Math.floor(alongC));
    const column = Math.min(COLUMNS - 2, Math.floor(alongHumidity));
    const [u, v] = [alongC - row, alongHumidity - column];
    return (
      (1 - u) * ((1 - v) * entry(row, column) + v * entry(row, column + 1)) +
      u * ((1 - v) * entry(row + 1, column) + v * entry(row + 1, column + 1))
    );
  };
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
  kept.set(key, lookUp);
  return lookUp;
}

/** Root of a falling function between two ends that enclose it: false position that halves a stale end (Illinois). */
function rootOf(falling: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [atA, atB] = [falling(a), falling(b)];
  for (let i = 0; i < 40; i++) {
    const x = (a * atB - b * atA) / (atB - atA);
    const atX = falling(x);
    if (Math.abs(atX) < 1e-4) return x;
    if (atX > 0) {
      [a, atA] = [x, atX];
      atB /= 2;
    } else {
      [b, atB] = [x, atX];
      atA /= 2;
    }
  }
  return 0.5 * (a + b);
}
