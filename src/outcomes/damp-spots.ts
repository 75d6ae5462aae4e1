// Where damp settles first in a zone, beside its coldest corner: behind the planting, where leaves keep the air
// still, and on the frames of the glass. In: the hourly zone, the air outdoors, temperature factors. Out: the VTT
// mould index of each spot by its sensitivity class, hours past 80 % at the surface, and the monthly check of
// ISO 13788 beside it. Spot temperature = outdoors + factor · (operative − outdoors), as for the corner.

import type { Model } from '../model/model.ts';
import type { ZoneYear } from '../network/year.ts';
import { saturationPressureHeld } from '../physics/moist-air.ts';
import { condensationRate } from '../physics/surface-condensation.ts';
import {
  checkMonths,
  MOULD_SURFACE_HUMIDITY,
  plainFactor,
  surfaceTemperature,
  vapourDensity,
  WINDOW_CHECK_RSI,
} from '../physics/surface-humidity.ts';
import { HOURS, MONTH_START_HOUR } from '../weather/typical-year.ts';
import { mouldBuffers, mouldOfSurface, vapourOf } from './mould.ts';

export interface DampSpot {
  readonly spot: 'coldest corner' | 'behind the planting' | 'window frame';
  /** temperature factor fRsi of the spot, 0…1 */
  readonly factor: number;
  /** highest VTT index in two years on end, 0…6 */
  readonly mouldIndexMax: number;
  /** hours of the year with the surface above 80 % */
  readonly dampHours: number;
  /** mean relative humidity at the surface in its dampest month, 0…1 */
  readonly dampestMonthHumidity: number;
  /** hours with dew on it, and the water that settles in them [kg per m² of surface a year] */
  readonly dewHours: number;
  readonly dewKgPerM2: number;
  /** ISO 13788: highest factor any month asks for, that month (January 0), and whether the spot has it */
  readonly neededFactor: number;
  readonly criticalMonth: number;
  readonly passesMonthlyCheck: boolean;
}

/** Leaves against a wall double the still air: the corner's factor less this; common practice, no source. */
const BEHIND_LEAVES = 0.1;
const LEAST_FACTOR = 0.3;
/**
 * Ends of the monthly check [°C], and the most vapour its dew point reaches at the limit [Pa]. A room beyond them is judged as one at the end: in the heat that asks for more than
 * the truth does, in the cold nothing grows.
 */
const HOTTEST_MONTH_C = 60;
const COLDEST_MONTH_C = -30;
const DAMPEST_MONTH_PA = 20_000 * MOULD_SURFACE_HUMIDITY;
/** Convection in a corner's still air [W/(m²K)]; common practice, no source. */
const STILL_CONVECTION = 1.5;

/**
 * The damp spots of a zone.
 *
 * @param zone hourly outcome
 * @param model where the zone's corner factor, planting and frames stand
 * @param outdoorC air outdoors by hour [°C], 8760 entries
 */
export function dampSpots(zone: ZoneYear, model: Model, outdoorC: Float64Array): readonly DampSpot[] {
  const of = model.zones.find(({ id }) => id === zone.id);
  if (of === undefined) throw new RangeError(`zone is '${zone.id}'; allowed a zone of the model`);
  const vapour = vapourOf(zone);
  const months = monthsOf(zone, vapour, outdoorC);
  const judge = (spot: DampSpot['spot'], factor: number) =>
    judgeSpot(spot, factor, { zone, vapour, outdoorC, months });
  const spots = [judge('coldest corner', of.cornerFactor)];
  if (of.planting !== null && of.planting.bedM2 > 0) {
    spots.push(judge('behind the planting', Math.max(LEAST_FACTOR, of.cornerFactor - BEHIND_LEAVES)));
  }
  const frames = model.panes.filter(
    ({ to, from, frameShare }) => to === zone.id && from === 'outdoors' && frameShare > 0,
  );
  if (frames.length > 0) {
    const worst = Math.max(...frames.map(({ frameUValue }) => frameUValue));
    spots.push(judge('window frame', plainFactor(worst, WINDOW_CHECK_RSI)));
  }
  return spots;
}

interface Surroundings {
  readonly zone: ZoneYear;
  readonly vapour: Float64Array;
  readonly outdoorC: Float64Array;
  readonly months: Parameters<typeof checkMonths>[0];
}

/** What a spot is judged in, one after another: the largest arrays of an outcome, which keeps none of them. */
const surfaceC = new Float64Array(HOURS);
const buffers = mouldBuffers();

function judgeSpot(spot: DampSpot['spot'], factor: number, around: Surroundings): DampSpot {
  const { zone, vapour, outdoorC, months } = around;
  const { operativeC } = zone;
  for (let hour = 0; hour < HOURS; hour++) {
    surfaceC[hour] = surfaceTemperature(factor, operativeC[hour]!, outdoorC[hour]!);
  }
  const { max, humidity } = mouldOfSurface(surfaceC, vapour, buffers);
  const dew = dewOn(surfaceC, humidity, vapour, zone.airC);
  const { criticalFactor, criticalMonth } = checkMonths(months, MOULD_SURFACE_HUMIDITY);
  return {
    spot,
    factor,
    mouldIndexMax: max,
    dampHours: humidity.reduce((count, value) => count + (value > MOULD_SURFACE_HUMIDITY ? 1 : 0), 0),
    dampestMonthHumidity: Math.max(
      ...Array.from({ length: 12 }, (_, month) =>
        meanOver(humidity, MONTH_START_HOUR[month]!, MONTH_START_HOUR[month + 1]!),
      ),
    ),
    dewHours: dew.hours,
    dewKgPerM2: dew.kgPerM2,
    neededFactor: criticalFactor,
    criticalMonth,
    passesMonthlyCheck: factor >= criticalFactor,
  };
}

/**
 * Dew on the spot by the Lewis relation. A diagnosis beside the balance: a corner is a few hundred square
 * centimetres, and what settles there is not taken from the zone's air.
 */
function dewOn(surfaceC: Float64Array, humidity: Float64Array, vapour: Float64Array, airC: Float64Array) {
  let hours = 0;
  let grams = 0;
  for (let hour = 0; hour < surfaceC.length; hour++) {
    if (humidity[hour]! < 1) continue;
    hours++;
    const held = vapourDensity(vapour[hour]!, airC[hour]!);
    const full = vapourDensity(saturationPressureHeld(surfaceC[hour]!), surfaceC[hour]!);
    grams += condensationRate(STILL_CONVECTION, held, full) * 3600;
  }
  return { hours, kgPerM2: grams / 1000 };
}

function meanOver(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let hour = from; hour < to; hour++) sum += values[hour]!;
  return sum / (to - from);
}

function monthsOf(zone: ZoneYear, vapour: Float64Array, outdoorC: Float64Array) {
  return Array.from({ length: 12 }, (_, month) => {
    const [from, to] = [MONTH_START_HOUR[month]!, MONTH_START_HOUR[month + 1]!];
    const mean = (values: Float64Array) => meanOver(values, from, to);
    return {
      tempInC: Math.min(HOTTEST_MONTH_C, Math.max(COLDEST_MONTH_C, mean(zone.airC))),
      tempOutC: mean(outdoorC),
      vapourPressurePa: Math.min(DAMPEST_MONTH_PA, mean(vapour)),
    };
  });
}
