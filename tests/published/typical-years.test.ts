// Source: table typical-years.csv, computed from the files themselves with general-purpose numerical code: means,
// degree-days, annual sums, closure of the three radiation components, the minute of the hour they are valid at.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { clearDayMinute, closureMinute, cosZenithAt } from '../../src/weather/assembly/radiation-timing.ts';
import { summariseClimate } from '../../src/weather/prepared/climate-summary.ts';
import { preparedOnce } from '../../src/weather/prepared/prepared-climate.ts';
import { HOURS, MONTH_START_HOUR, type TypicalYear } from '../../src/weather/typical-year.ts';
import { bundledYear } from '../weather/bundled-climates.ts';
import { fileYear } from '../weather/weather-files.ts';
import { check } from './ledger.ts';
import { readTable, type TableRow } from './reference-table.ts';

const SOURCE = 'Typical-year files, figures of the files';

/** Half of the last printed digit, plus what the reading may change. */
const ALLOWED = {
  /** [K] printed to 0.1; bundled climates are stored to 0.1 */
  temperature: 0.06,
  /** [K·d] printed to 1; PVGIS days are local here and UTC in the table */
  degreeDays: 1,
  /** [kWh/m²] printed to 1 */
  radiation: 0.6,
  /** [W/m²] printed to 1 */
  peak: 0.51,
  /** [points] printed to 1; derived from the dew point here, printed by the file there */
  humidity: 1,
  /** [m/s] printed to 0.1 */
  wind: 0.06,
  /** [hPa] printed to 1 */
  pressure: 0.6,
  /** [min] printed to 1; found on every fifth day here */
  closureMinute: 1,
  /** [W/m²] printed to 0.1; the table's mean of the hour comes from another almanac and finer steps */
  closureRms: 0.12,
  /** [min] each method is good to about 4 against the truth, and they agree better than that */
  clearDayMinute: 3,
};

/** File of the table → how the test gets it; climates carry the id of their bundle. */
const BUNDLED: Readonly<Record<string, string>> = {
  '724620TYA.CSV': 'alamosa',
  '723656TYA.CSV': 'santa-fe',
  '722740TYA.CSV': 'tucson',
  '727720TYA.CSV': 'helena',
  '726170TYA.CSV': 'burlington',
  '727970TYA.CSV': 'quillayute',
  '702730TYA.CSV': 'anchorage',
};
const AT_HAND = [
  '725650TYA.CSV',
  '723170TYA.CSV',
  '723650TYA.CSV',
  '723650TY.csv',
  '700260TYA.CSV',
  '702610TYA.CSV',
  '04725.tm2',
  '12839.tm2',
  'test_psm3_tmy-2017.csv',
  'test_psm4_tmy-2023.csv',
  'tmy_45.000_8.000_2005_2023.csv',
  'tmy_45.000_8.000_2005_2023.json',
  'pvgis_tmy_test.csv',
  'tmy_40.417_-3.704_2005_2014.csv',
  'PVGIS_TMY_Data_54.60452_-5.9286.csv',
  'tmy_-38.320_-71.960_2005_2023.csv',
  'tmy_29.652_91.172_2005_2023.csv',
  'tmy_59.567_150.800_2005_2023.csv',
  '722040TYA.CSV',
  '724699TYA.CSV',
  '724839TYA.CSV',
  '725280TY.csv',
  '703165TY.csv',
];
const CASES = [...AT_HAND, ...Object.keys(BUNDLED)];

/** Their beam is recomputed on reading, so the table's beam figures are not to be met. */
const RECOMPUTED = [
  'tmy_-38.320_-71.960_2005_2023.csv',
  'tmy_29.652_91.172_2005_2023.csv',
  'tmy_59.567_150.800_2005_2023.csv',
];

/** They do not state their minute: the table takes the full hour, we the minute found. */
const UNSTATED = ['tmy_40.417_-3.704_2005_2014.csv', 'PVGIS_TMY_Data_54.60452_-5.9286.csv'];

/** Its humidity column lies 1 point below its own dew points in the mean; the dew point is used, so the column is not met. */
const HUMIDITY_APART = '703165TY.csv';

/** Files in UTC, whose months in the table are those of UTC. */
const IN_UTC = /tmy_-?\d|pvgis_tmy|PVGIS_TMY/;

const rows = readTable('typical-years.csv');
const rowOf = (file: string): TableRow => rows.find((row) => row.text('file') === file)!;

/** The table's rule: cos z is the mean over the hour for means, at the minute for instants; hours above 20 W/m². */
function misfit(year: TypicalYear): number {
  // Middles of six minutes: of the cosine's mean over an hour they miss less than a ten-thousandth.
  const minutes =
    year.sunMinute === 'mean' ? Array.from({ length: 10 }, (_, i) => 6 * i + 3) : [year.sunMinute];
  let [square, count] = [0, 0];
  for (const [hour, global] of year.globalHorizontal.entries()) {
    if (global <= 20) continue;
    const cosine = minutes.reduce((sum, minute) => sum + cosZenithAt(year, hour, minute), 0) / minutes.length;
    square += (global - year.beamNormal[hour]! * cosine - year.diffuseHorizontal[hour]!) ** 2;
    count++;
  }
  return Math.sqrt(square / count);
}

/** Mean of a month of the file's own days. */
function monthMean({ dryBulbC, site }: TypicalYear, file: string, month: number): number {
  const later = IN_UTC.test(file) ? site.utcOffsetH : 0;
  const [from, to] = [MONTH_START_HOUR[month]!, MONTH_START_HOUR[month + 1]!];
  let sum = 0;
  for (let hour = from; hour < to; hour++) sum += dryBulbC[(hour + later + HOURS) % HOURS]!;
  return sum / (to - from);
}

test('every case has its row in the table of 30 files', () => {
  expect(rows).toHaveLength(30);
  expect(CASES.filter((file) => rowOf(file) === undefined)).toEqual([]);
  expect([...CASES].sort()).toEqual(rows.map((row) => row.text('file')).sort());
});

describe.each(CASES)('%s', (file) => {
  let year: TypicalYear;
  beforeAll(async () => {
    const id = BUNDLED[file];
    year = id === undefined ? await fileYear(file) : bundledYear(id);
  });
  const row = rowOf(file);
  const compare = (quantity: string, column: string, ours: number, allowed: number, unit: string) =>
    check({
      source: SOURCE,
      case: file,
      quantity,
      reference: row.number(column),
      ours,
      allowed,
      unit,
      mark: 'computed',
    });

  test('means, extremes, degree-days and sums are those of the file', () => {
    const { year: whole, meanPressurePa } = summariseClimate(preparedOnce(year));
    compare('mean air temperature', 'mean', whole.meanC, ALLOWED.temperature, '°C');
    compare('lowest', 'min', whole.lowestC, ALLOWED.temperature, '°C');
    compare('highest', 'max', whole.highestC, ALLOWED.temperature, '°C');
    compare('mean of January', 'jan', monthMean(year, file, 0), ALLOWED.temperature, '°C');
    compare('mean of July', 'jul', monthMean(year, file, 6), ALLOWED.temperature, '°C');
    compare('heating degree-days', 'hdd', whole.heatingDegreeDays, ALLOWED.degreeDays, 'K·d');
    compare('cooling degree-days', 'cdd', whole.coolingDegreeDays, ALLOWED.degreeDays, 'K·d');
    compare('global radiation', 'ghi', whole.globalKWh, ALLOWED.radiation, 'kWh/m²');
    compare('diffuse radiation', 'dhi', whole.diffuseKWh, ALLOWED.radiation, 'kWh/m²');
    compare('highest global', 'max_ghi', Math.max(...year.globalHorizontal), ALLOWED.peak, 'W/m²');
    if (!RECOMPUTED.includes(file)) {
      compare('beam radiation', 'dni', whole.beamNormalKWh, ALLOWED.radiation, 'kWh/m²');
      compare('highest beam', 'max_dni', Math.max(...year.beamNormal), ALLOWED.peak, 'W/m²');
    }
    if (file !== HUMIDITY_APART) {
      compare('relative humidity', 'rh', 100 * whole.meanRelativeHumidity, ALLOWED.humidity, '%');
    }
    compare('wind', 'wind', whole.meanWind, ALLOWED.wind, 'm/s');
    compare('pressure', 'pressure', meanPressurePa / 100, ALLOWED.pressure, 'hPa');
    const [first, last] = row.text('years').split('-').map(Number);
    expect([Math.min(...year.monthYears), Math.max(...year.monthYears)]).toEqual([first, last]);
  });

  test('the minute of the hour shows in the closure and in clear days', () => {
    if (RECOMPUTED.includes(file)) {
      expect(year.sunMinute).toBe('mean');
      return;
    }
    if (!UNSTATED.includes(file)) {
      // Worked in this test by the table's own rule: what was read is consistent, and no figure of ours is checked.
      expect(Math.abs(misfit(year) - row.number('closure_rms'))).toBeLessThan(ALLOWED.closureRms);
    }
    compare('closure', 'best_minute', closureMinute(year)!.minute, ALLOWED.closureMinute, 'min');
    compare('clear days', 'centroid_minute', clearDayMinute(year)!, ALLOWED.clearDayMinute, 'min');
  });
});

test('the bundled climates weigh less than 3 MB together and 250 kB each', () => {
  const folder = join(import.meta.dirname, '../../climates');
  const index = JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8')) as { id: string }[];
  const sizes = index.map(({ id }) => readFileSync(join(folder, `${id}.txt`)).length);
  expect(sizes).toHaveLength(14);
  expect(Math.max(...sizes)).toBeLessThan(250_000);
  expect(sizes.reduce((a, b) => a + b, 0)).toBeLessThan(3_000_000);
});
