import { expect, test } from 'vitest';
import { MONTH_DAYS } from '../../../src/weather/assembly/calendar-hour.ts';
import type { MonthlyNormals } from '../../../src/weather/normals.ts';
import { summariseClimate } from '../../../src/weather/prepared/climate-summary.ts';
import { closureRms } from '../../../src/weather/prepared/doubts.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { describeFault } from '../../../src/weather/read-result.ts';
import { globalFromSunshine, yearFromNormals } from '../../../src/weather/synthetic/monthly-normals.ts';
import { autoregressive, randomNumbers } from '../../../src/weather/synthetic/random-numbers.ts';
import { normalShare } from '../../../src/weather/synthetic/synthetic-air.ts';
import { yearOf } from '../weather-files.ts';

/** How well the months of the made year equal the input. */
const NORMALS_TOLERANCE = {
  temperatureK: 0.05,
  globalShare: 0.001,
  humidityPoints: 0.3,
  windShare: 0.001,
};

/** An invented upland place, 44° N. */
const PLACE: MonthlyNormals = {
  name: 'Hill farm',
  latitudeDeg: 44,
  longitudeDeg: 3,
  elevationM: 800,
  meanDailyHighC: [5, 7, 11, 13, 18, 22, 26, 25, 20, 15, 9, 6],
  meanDailyLowC: [-3, -3, 0, 3, 7, 10, 13, 13, 9, 6, 1, -2],
  humidityPercent: [82, 78, 72, 70, 70, 66, 60, 62, 70, 78, 82, 84],
  dailyGlobalKWh: [1.6, 2.5, 3.9, 4.8, 5.7, 6.5, 6.7, 5.8, 4.5, 2.9, 1.8, 1.4],
  windSpeed: [3.4, 3.5, 3.5, 3.4, 3, 2.8, 2.7, 2.6, 2.7, 3, 3.2, 3.4],
};
const SOUTH: MonthlyNormals = {
  ...PLACE,
  latitudeDeg: -44,
  meanDailyHighC: PLACE.meanDailyHighC.map((_, m, all) => all[(m + 6) % 12]!),
  meanDailyLowC: PLACE.meanDailyLowC.map((_, m, all) => all[(m + 6) % 12]!),
  dailyGlobalKWh: PLACE.dailyGlobalKWh!.map((_, m, all) => all[(m + 6) % 12]!),
};
const faultsOf = (normals: MonthlyNormals) => {
  const result = yearFromNormals(normals);
  return result.ok ? [] : result.faults.map(describeFault);
};

test.each([
  ['north', PLACE],
  ['south', SOUTH],
  [
    'damp and grey',
    {
      ...PLACE,
      humidityPercent: new Array(12).fill(95),
      dailyGlobalKWh: PLACE.dailyGlobalKWh!.map((kWh) => kWh / 2),
    },
  ],
  [
    'beyond the polar circle',
    { ...PLACE, latitudeDeg: 69, dailyGlobalKWh: [0, 0.4, 1.5, 3.2, 4.4, 5, 4.8, 3.4, 1.9, 0.7, 0.1, 0] },
  ],
] as const)('monthly means of the made year equal the input: %s', (_, normals) => {
  const { months } = summariseClimate(prepareClimate(yearOf(yearFromNormals(normals))));
  expect(months).toHaveLength(12);
  for (const [m, month] of months.entries()) {
    expect(Math.abs(month.meanDailyHighC - normals.meanDailyHighC[m]!)).toBeLessThan(
      NORMALS_TOLERANCE.temperatureK,
    );
    expect(Math.abs(month.meanDailyLowC - normals.meanDailyLowC[m]!)).toBeLessThan(
      NORMALS_TOLERANCE.temperatureK,
    );
    const daily = month.globalKWh / MONTH_DAYS[m]!;
    expect(Math.abs(daily - normals.dailyGlobalKWh![m]!)).toBeLessThanOrEqual(
      NORMALS_TOLERANCE.globalShare * Math.max(normals.dailyGlobalKWh![m]!, 0.1),
    );
    expect(Math.abs(100 * month.meanRelativeHumidity - normals.humidityPercent[m]!)).toBeLessThan(
      NORMALS_TOLERANCE.humidityPoints,
    );
    expect(Math.abs(month.meanWind / normals.windSpeed[m]! - 1)).toBeLessThan(NORMALS_TOLERANCE.windShare);
  }
});

test('the same seed gives the same year, another seed another order of days', () => {
  const first = yearOf(yearFromNormals(PLACE));
  expect(yearOf(yearFromNormals({ ...PLACE, seed: 1 })).dryBulbC).toEqual(first.dryBulbC);
  const second = yearOf(yearFromNormals({ ...PLACE, seed: 2 }));
  expect(second.dryBulbC).not.toEqual(first.dryBulbC);
  expect(second.globalHorizontal).not.toEqual(first.globalHorizontal);
});

test('the parts of the sunlight add up and it says that it is made', () => {
  const year = yearOf(yearFromNormals(PLACE));
  expect(closureRms(prepareClimate(year)).rms).toBeLessThan(0.01);
  expect(year.notes.join(' ')).toContain('This year is made');
  expect(year.source).toContain('seed 1');
});

test('sunshine hours give the global radiation by the general coefficients', () => {
  // FAO-56, example 10 (Rio de Janeiro, May, 22.9° S): 7.1 h of sun, N 10.9 h, Ra 25.1 MJ: Rs 14.5 MJ/m² a day (from memory, high).
  const above = (25.1 / 3.6) * 1000;
  expect((globalFromSunshine(7.1, -22.9, 4, above) * 3.6) / 1000).toBeCloseTo(14.5, 1);
  const { dailyGlobalKWh: _, ...rest } = PLACE;
  const made = yearFromNormals({ ...rest, sunshineHours: [3.5, 4.5, 5.5, 6, 7.5, 9, 10, 9, 7, 5, 3.5, 3] });
  expect(made.ok).toBe(true);
});

test('numbers that cannot be are refused with their month', () => {
  expect(faultsOf({ ...PLACE, dailyGlobalKWh: PLACE.dailyGlobalKWh!.with(11, 4) })[0]).toMatch(
    /daily global radiation, December.*found "4.0 kWh/,
  );
  expect(faultsOf({ ...PLACE, meanDailyLowC: PLACE.meanDailyLowC.with(6, 30) })[0]).toContain(
    'mean daily high, July',
  );
  expect(faultsOf({ ...PLACE, humidityPercent: PLACE.humidityPercent.with(0, Number.NaN) })[0]).toContain(
    'relative humidity, January',
  );
  expect(faultsOf({ ...PLACE, windSpeed: [3] })[0]).toContain('twelve values');
  expect(faultsOf({ ...PLACE, latitudeDeg: 95 })[0]).toContain('latitude');
  const { dailyGlobalKWh: _, ...dark } = PLACE;
  expect(faultsOf(dark)[0]).toContain('daily global radiation or of sunshine hours');
});

test('the random source is even, normal and as persistent as asked', () => {
  const random = randomNumbers(5);
  const uniform = Array.from({ length: 20_000 }, () => random.uniform());
  // standard error of the mean 0.002, of the share of a tenth 0.002
  expect(Math.abs(uniform.reduce((a, b) => a + b, 0) / 20_000 - 0.5)).toBeLessThan(0.01);
  expect(Math.abs(uniform.filter((u) => u < 0.1).length / 20_000 - 0.1)).toBeLessThan(0.01);
  const series = autoregressive(random, 20_000, 0.65);
  const mean = series.reduce((a, b) => a + b, 0) / 20_000;
  const variance = series.reduce((a, b) => a + (b - mean) ** 2, 0) / 20_000;
  const lag =
    series.subarray(1).reduce((a, b, i) => a + (b - mean) * (series[i]! - mean), 0) / 20_000 / variance;
  expect(Math.abs(mean)).toBeLessThan(0.06);
  expect(Math.abs(variance - 1)).toBeLessThan(0.06);
  expect(Math.abs(lag - 0.65)).toBeLessThan(0.03);
});

test('the normal distribution has its table values', () => {
  // Any statistics table: Φ(0) 0.5, Φ(1) 0.84134, Φ(1.96) 0.97500, Φ(−2) 0.02275.
  for (const [z, share] of [
    [0, 0.5],
    [1, 0.84134],
    [1.96, 0.975],
    [-2, 0.02275],
  ] as const)
    expect(normalShare(z)).toBeCloseTo(share, 5);
});
