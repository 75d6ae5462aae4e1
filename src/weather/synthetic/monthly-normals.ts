// An hourly year for a site without a file, from twelve monthly normals. The sun's days and hours follow published
// statistics (daily-clearness.ts), air and wind follow them (synthetic-air.ts). The monthly means equal the input; single
// days are invented. The same seed gives the same year.
import { standardPressure } from '../../physics/altitude.ts';
import { acos, sin, tan } from '../../physics/elementary.ts';
import { assembleYear, MONTH_NAMES, newColumn } from '../assembly/assembled-year.ts';
import { completeComponents } from '../assembly/radiation-components.ts';
import type { MonthlyNormals } from '../normals.ts';
import type { Fault, ReadResult } from '../read-result.ts';
import { idOf } from '../text/text-lines.ts';
import { HOURS, MONTH_START_HOUR, type Site } from '../typical-year.ts';
import { NORMALS_ERROR, NORMALS_LIMITS } from './normals-limits.ts';
import { randomNumbers } from './random-numbers.ts';
import { syntheticDewPoint, syntheticDryBulb, syntheticWind } from './synthetic-air.ts';
import { extraterrestrialRadiation, isPossibleClearness, syntheticRadiation } from './synthetic-radiation.ts';

/** Calendar year the sun's position is computed in. */
const SUN_YEAR = 2021;

/** Make the year, or say which numbers cannot be. */
export function yearFromNormals(normals: MonthlyNormals): ReadResult {
  const faults = [...placeFaults(normals), ...numberFaults(normals)];
  if (faults.length > 0) return { ok: false, faults };
  const { name, latitudeDeg, longitudeDeg, elevationM } = normals;
  const utcOffsetH = normals.utcOffsetH ?? Math.round(longitudeDeg / 15);
  const site: Site = { name, latitudeDeg, longitudeDeg, elevationM, utcOffsetH };
  const monthYears = new Array<number>(12).fill(SUN_YEAR);
  const above = extraterrestrialRadiation(site, monthYears);
  const dailyAbove = dailyOfMonths(above);
  const dailyGlobal =
    normals.dailyGlobalKWh?.map((kWh) => kWh * 1000) ??
    normals.sunshineHours!.map((hours, month) =>
      globalFromSunshine(hours, latitudeDeg, month, dailyAbove[month]!),
    );
  const dark = clearnessFaults(dailyGlobal, dailyAbove, normals.dailyGlobalKWh === undefined);
  if (dark.length > 0) return { ok: false, faults: dark };
  const random = randomNumbers(normals.seed ?? 1);
  const sun = syntheticRadiation(site, above, dailyGlobal, random);
  const dryBulbC = syntheticDryBulb(site, normals, sun, random);
  const dewPointC = syntheticDewPoint(
    dryBulbC,
    normals.humidityPercent.map((percent) => percent / 100),
    sun,
    random,
  );
  const windSpeed = syntheticWind(site, normals.windSpeed, normals, random);
  const parts = completeComponents(
    { global: sun.globalHorizontal, beam: null, diffuse: null },
    { site, monthYears, sunMinute: 'mean' },
  )!;
  const { globalHorizontal, beamNormal, diffuseHorizontal } = parts;
  const made = assembleYear({
    site,
    id: idOf(name),
    source: `${normals.from?.source ?? 'Made from twelve monthly normals'}, seed ${normals.seed ?? 1}`,
    credit: `${normals.from?.credit ?? 'Monthly normals brought by the user'}; days and hours are made up`,
    monthYears,
    sunMinute: 'mean',
    columns: {
      dryBulbC,
      dewPointC,
      pressurePa: new Float64Array(HOURS).fill(standardPressure(elevationM)),
      windSpeed,
      windFromDeg: new Float64Array(HOURS),
      globalHorizontal,
      beamNormal,
      diffuseHorizontal,
      skyCover: newColumn(),
    },
    skyLongwave: null,
    albedo: null,
    rainMm: null,
    notes: [
      'This year is made: its monthly means are those given, its days and hours are invented from published statistics. It has no wind direction, no rain, for which vents are shut, no snow and no local habit such as morning fog.',
      NORMALS_ERROR,
      ...(normals.from?.notes ?? []),
    ],
    lineOfHour: null,
  });
  return made.ok ? { ok: true, year: { ...made.year, madeFrom: normals } } : made;
}

/**
 * Daily global radiation from sunshine [Wh/m²].
 *
 *   H = (0.25 + 0.50 n/N) H0
 *
 * Source: Ångström–Prescott with the general coefficients of FAO-56, equation 35; 10 % and more off at single places.
 */
export function globalFromSunshine(hours: number, latitudeDeg: number, month: number, above: number): number {
  const day = (MONTH_START_HOUR[month]! + MONTH_START_HOUR[month + 1]!) / 48;
  const declination = 0.409 * sin((2 * Math.PI * day) / 365 - 1.39);
  const cosine = -tan((Math.min(Math.max(latitudeDeg, -89), 89) * Math.PI) / 180) * tan(declination);
  const longest = (24 / Math.PI) * acos(Math.min(Math.max(cosine, -1), 1));
  return longest < 0.5 ? 0.25 * above : (0.25 + 0.5 * Math.min(hours / longest, 1)) * above;
}

/** Daily sums of hourly radiation [W/m²], mean of each month [Wh/m²]. */
function dailyOfMonths(above: Float64Array): number[] {
  return MONTH_START_HOUR.slice(0, 12).map((from, month) => {
    const to = MONTH_START_HOUR[month + 1]!;
    return (above.subarray(from, to).reduce((a, b) => a + b, 0) * 24) / (to - from);
  });
}

function placeFaults({ latitudeDeg, longitudeDeg, elevationM, utcOffsetH }: MonthlyNormals): Fault[] {
  const checks: readonly (readonly [string, number, number, number])[] = [
    ['latitude', latitudeDeg, -90, 90],
    ['longitude', longitudeDeg, -180, 180],
    ['elevation', elevationM, -500, 6000],
    ['hours from UTC', utcOffsetH ?? 0, -14, 14],
  ];
  return checks
    .filter(([, value, low, high]) => !(value >= low && value <= high))
    .map(([column, value, low, high]) => ({
      line: null,
      column,
      value: String(value),
      expected: `${low} to ${high}`,
    }));
}

function numberFaults(normals: MonthlyNormals): Fault[] {
  const faults: Fault[] = [];
  if (normals.dailyGlobalKWh === undefined && normals.sunshineHours === undefined) {
    const expected = 'twelve values of daily global radiation or of sunshine hours';
    faults.push({ line: null, column: 'sun', value: '', expected });
  }
  for (const { key, words, low, high, unit } of NORMALS_LIMITS) {
    const values = normals[key];
    if (values === undefined) continue;
    if (values.length !== 12) {
      faults.push({ line: null, column: words, value: `${values.length} values`, expected: 'twelve values' });
    }
    for (const [month, value] of values.slice(0, 12).entries()) {
      if (value >= low && value <= high) continue;
      const expected = `${low} to ${high} ${unit}`;
      faults.push({ line: null, column: `${words}, ${MONTH_NAMES[month]}`, value: String(value), expected });
    }
  }
  for (const [month, high] of normals.meanDailyHighC.entries()) {
    const low = normals.meanDailyLowC[month];
    if (low === undefined || high - low >= 1) continue;
    const expected = 'at least 1 K above the mean daily low';
    faults.push({
      line: null,
      column: `mean daily high, ${MONTH_NAMES[month]}`,
      value: `${high} °C`,
      expected,
    });
  }
  return faults;
}

function clearnessFaults(daily: readonly number[], above: readonly number[], fromSunshine: boolean): Fault[] {
  return daily.flatMap((global, month) => {
    if (above[month]! < 300 || isPossibleClearness(global / above[month]!)) return [];
    const kWh = (share: number) => ((share * above[month]!) / 1000).toFixed(1);
    const value = `${(global / 1000).toFixed(1)} kWh/m² a day`;
    const expected = `${kWh(0.08)} to about ${kWh(0.75)} kWh/m² a day at this latitude`;
    const column = `${fromSunshine ? 'sunshine' : 'daily global radiation'}, ${MONTH_NAMES[month]}`;
    return [{ line: null, column, value, expected }];
  });
}
