import { beforeAll, expect, test } from 'vitest';
import { relativeHumidity, saturationPressure } from '../../src/physics/moist-air.ts';
import { seasonalShift, shiftedYear, uniformShift, withHeatWave } from '../../src/weather/hotter-year.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { HOURS, MONTH_START_HOUR, type TypicalYear } from '../../src/weather/typical-year.ts';
import { fileYear } from './weather-files.ts';

let year: TypicalYear;
beforeAll(async () => {
  year = await fileYear('tmy_45.000_8.000_2005_2023.csv');
});

const meanOver = (column: Float64Array, from: number, to: number) =>
  column.subarray(from, to).reduce((a, b) => a + b, 0) / (to - from);
const humidityOf = ({ dewPointC, dryBulbC }: TypicalYear, hour: number) =>
  relativeHumidity(saturationPressure(dewPointC[hour]!), dryBulbC[hour]!);

test('a uniform shift moves every hour by it and keeps the relative humidity', () => {
  const hotter = shiftedYear(year, uniformShift(2));
  for (let hour = 0; hour < HOURS; hour++) {
    expect(Math.abs(hotter.dryBulbC[hour]! - year.dryBulbC[hour]! - 2)).toBeLessThan(1e-9);
    expect(Math.abs(humidityOf(hotter, hour) - humidityOf(year, hour))).toBeLessThan(1e-3);
    expect(hotter.dewPointC[hour]!).toBeLessThanOrEqual(hotter.dryBulbC[hour]!);
  }
});

test('warmer air at the same relative humidity carries 6 to 7 % more water a kelvin', () => {
  // Clausius–Clapeyron near 10 °C: 6.5 to 7 % (any meteorology text).
  const before = prepareClimate(year).humidityRatio;
  const after = prepareClimate(shiftedYear(year, uniformShift(1))).humidityRatio;
  const rise = meanOver(after, 0, HOURS) / meanOver(before, 0, HOURS) - 1;
  expect(rise).toBeGreaterThan(0.055);
  expect(rise).toBeLessThan(0.075);
});

test('no shift changes nothing but the name', () => {
  const same = shiftedYear(year, uniformShift(0));
  expect(same.dryBulbC).toEqual(year.dryBulbC);
  expect(
    Math.max(...same.dewPointC.map((value, hour) => Math.abs(value - year.dewPointC[hour]!))),
  ).toBeLessThan(1e-3);
});

test('a seasonal shift has the given mean in each month and no step between them', () => {
  const shift = seasonalShift(1, 4, 45);
  expect(shift[6]).toBeCloseTo(4, 9);
  expect(shift[0]).toBeCloseTo(1, 9);
  expect(seasonalShift(1, 4, -45)[0]).toBeCloseTo(4, 9);
  const hotter = shiftedYear(year, shift);
  const added = hotter.dryBulbC.map((value, hour) => value - year.dryBulbC[hour]!);
  for (let month = 0; month < 12; month++) {
    expect(
      Math.abs(meanOver(added, MONTH_START_HOUR[month]!, MONTH_START_HOUR[month + 1]!) - shift[month]!),
    ).toBeLessThan(0.01);
  }
  const steps = added.map((value, hour) => Math.abs(value - added[(hour + 1) % HOURS]!));
  expect(Math.max(...steps)).toBeLessThan(0.05);
});

test('a heat wave sits on the hottest spell, keeps the dew point and lowers the relative humidity', () => {
  const wave = withHeatWave(year, { days: 8, extraK: 6 });
  const added = wave.dryBulbC.map((value, hour) => value - year.dryBulbC[hour]!);
  expect(added.filter((value) => value > 0)).toHaveLength(8 * 24);
  expect(Math.max(...added)).toBeCloseTo(6, 9);
  const first = added.findIndex((value) => value > 0);
  expect(first % 24).toBe(0);
  const hottest = Array.from({ length: 358 }, (_, day) => meanOver(year.dryBulbC, day * 24, day * 24 + 192));
  expect(first / 24).toBe(hottest.indexOf(Math.max(...hottest)));
  expect(wave.dewPointC).toEqual(year.dewPointC);
  expect(humidityOf(wave, first + 96)).toBeLessThan(humidityOf(year, first + 96));
});

test('the measured sky grows warmer with the air', () => {
  const hotter = shiftedYear(year, uniformShift(3));
  const [before, after] = [prepareClimate(year).skyTempC, prepareClimate(hotter).skyTempC];
  const rise = meanOver(after, 0, HOURS) - meanOver(before, 0, HOURS);
  // The air adds its 3 K; more water in it adds a little emissivity.
  expect(rise).toBeGreaterThan(3);
  expect(rise).toBeLessThan(5.5);
});

test('the change is in the name, the source and the notes', () => {
  const hotter = withHeatWave(shiftedYear(year, seasonalShift(1, 3, 45)), { days: 5, extraK: 4 });
  expect(hotter.site.name).toContain('hotter (+1.0 K to +3.0 K by month)');
  expect(hotter.site.name).toContain('heat wave of 5 days');
  expect(hotter.source).toContain('changed');
  expect(hotter.id).toMatch(/-plus-2-0-wave-5d$/);
  expect(hotter.notes).toHaveLength(year.notes.length + 2);
});

test('shifts outside what can be meant are refused', () => {
  expect(() => shiftedYear(year, [1])).toThrow(RangeError);
  expect(() => shiftedYear(year, uniformShift(30))).toThrow(RangeError);
  expect(() => withHeatWave(year, { days: 60, extraK: 5 })).toThrow(RangeError);
});
