// Closed forms on an invented year: constant, and a plain daily wave.
import { expect, test } from 'vitest';
import { newColumns } from '../../../src/weather/assembly/assembled-year.ts';
import { summariseClimate } from '../../../src/weather/prepared/climate-summary.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../../src/weather/typical-year.ts';
import { fileYear } from '../weather-files.ts';

function inventedYear(dryBulb: (hour: number) => number): TypicalYear {
  const columns = newColumns();
  for (const column of Object.values(columns)) column.fill(0);
  return {
    site: { name: 'Plain', latitudeDeg: 45, longitudeDeg: 0, elevationM: 0, utcOffsetH: 0 },
    id: 'plain',
    source: 'invented',
    credit: '',
    monthYears: new Array(12).fill(2021),
    sunMinute: 'mean',
    ...columns,
    dryBulbC: columns.dryBulbC.map((_, hour) => dryBulb(hour)),
    dewPointC: columns.dewPointC.map((_, hour) => dryBulb(hour)),
    pressurePa: columns.pressurePa.fill(101_325),
    skyLongwave: null,
    albedo: null,
    rainMm: null,
    notes: [],
  };
}

test('a constant 8 °C is 3650 degree-days below 18 °C and saturated air is humid all year', () => {
  const { year, months } = summariseClimate(prepareClimate(inventedYear(() => 8)));
  expect(year.heatingDegreeDays).toBeCloseTo(3650, 6);
  expect(year.coolingDegreeDays).toBe(0);
  expect(months[1]!.heatingDegreeDays).toBeCloseTo(280, 6);
  expect(year.meanRelativeHumidity).toBeCloseTo(1, 9);
  expect(year.humidHours).toBe(HOURS);
  expect(year.globalKWh).toBe(0);
});

test('degree-days count daily means, not hours: a daily wave around 18 °C has none', () => {
  const { year } = summariseClimate(
    prepareClimate(inventedYear((hour) => 18 + 6 * Math.sin((2 * Math.PI * hour) / 24))),
  );
  expect(year.heatingDegreeDays).toBeCloseTo(0, 6);
  expect(year.meanDailyHighC).toBeCloseTo(24, 1);
  expect(year.meanDailyLowC).toBeCloseTo(12, 1);
});

test('months add up to the year, and the greyest month is found', async () => {
  const { year, months, cloudiestMonth } = summariseClimate(prepareClimate(await fileYear('04725.tm2')));
  for (const key of [
    'globalKWh',
    'beamNormalKWh',
    'upright90KWh',
    'leaning60KWh',
    'heatingDegreeDays',
    'humidHours',
  ] as const) {
    expect(months.reduce((sum, month) => sum + month[key], 0)).toBeCloseTo(year[key], 6);
  }
  // Binghamton is greyest at the turn of the year.
  expect([10, 11, 0]).toContain(cloudiestMonth);
});
