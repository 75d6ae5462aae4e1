// Weather of real days in the ring of a year: dates, weekends and leap days by the calendar, holes that stay holes, sun by
// what was measured of it. Dates: the calendar itself. Light on planes is checked against the outside in
// tests/published/plane-irradiance.test.ts; here a plane's reading is worked back to what made it.
import { describe, expect, test } from 'vitest';
import { momentOfDate } from '../../../src/weather/moments.ts';
import { planeIrradiance } from '../../../src/weather/prepared/plane-irradiance.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { type RealHours, recordOf } from '../../../src/weather/real/weather-record.ts';
import { bundledYear } from '../bundled-climates.ts';

const typical = bundledYear('denver');
const { site } = typical;
const at = (text: string) => momentOfDate(text, site.utcOffsetH);
const steady = (hours: number, value: number) => new Float64Array(hours).fill(value);

function recordFrom(date: string, days: number, more: Partial<RealHours> = {}) {
  const hours = 24 * days;
  return recordOf({ site, startMs: at(date), hours, dryBulbC: steady(hours, 5), ...more }, typical);
}

describe('dates', () => {
  test('a record stands in its place in the year, and its weekends are the calendar’s', () => {
    // 6 March 2021 was a Saturday, the 65th day of the year.
    const { calendar } = prepareClimate(recordFrom('2021-03-06', 7).year);
    expect(recordFrom('2021-03-06', 7).firstRow).toBe(64 * 24);
    const days = [0, 1, 2, 3, 4, 5, 6].map((day) => calendar.weekend[(64 + day) * 24 + 12]);
    expect(days).toEqual([1, 1, 0, 0, 0, 0, 0]);
  });

  test('29 February is a day, and March follows it', () => {
    const record = recordFrom('2020-02-28', 3);
    const { calendar } = prepareClimate(record.year);
    const months = [0, 24, 48].map((hour) => calendar.month[record.firstRow + hour]);
    expect(months).toEqual([1, 1, 2]);
  });

  test('a record over new year goes on in January', () => {
    const record = recordFrom('2020-12-30', 4);
    const { calendar } = prepareClimate(record.year);
    const row = (hour: number) => (record.firstRow + hour) % 8760;
    expect([0, 24, 48, 72].map((hour) => calendar.month[row(hour)])).toEqual([11, 11, 0, 0]);
    // 2 January 2021 was a Saturday.
    expect([0, 24, 48, 72].map((hour) => calendar.weekend[row(hour)])).toEqual([0, 0, 0, 1]);
    expect(record.year.startMs![row(72)]).toBe(at('2021-01-02'));
  });

  test('dates that are none are none', () => {
    expect(momentOfDate('2021-02-29', 0)).toBeNaN();
    expect(momentOfDate('yesterday', 0)).toBeNaN();
    expect(momentOfDate('2020-02-29 05:30', 2)).toBe(Date.UTC(2020, 1, 29, 3, 30));
  });
});

describe('holes', () => {
  test('three hours are filled along a line, a day stays unknown and follows its neighbours', () => {
    const dryBulbC = steady(24 * 10, 5);
    dryBulbC.fill(Number.NaN, 50, 53);
    dryBulbC.fill(Number.NaN, 120, 144);
    const record = recordFrom('2021-03-06', 10, { dryBulbC });
    const of = (hour: number) => record.firstRow + hour;
    expect(record.year.dryBulbC[of(51)]).toBe(5);
    expect(record.known[of(51)]).toBe(1);
    expect(record.known[of(130)]).toBe(0);
    const hole = record.year.dryBulbC.subarray(of(120), of(144));
    expect(Math.abs(hole.reduce((a, b) => a + b, 0) / 24 - 5)).toBeLessThan(6);
    expect(record.notes.join(' ')).toContain('24 hours');
  });

  test('before the record stands the typical year, moved to meet it and fading', () => {
    const cold = recordFrom('2021-03-06', 10, { dryBulbC: steady(240, -20) });
    const row = (hour: number) => (cold.firstRow + hour + 8760) % 8760;
    expect(cold.year.dryBulbC[row(-1)]).toBeLessThan(typical.dryBulbC[row(-1)]! - 10);
    const half = row(-24 * 180);
    expect(cold.year.dryBulbC[half]).toBeCloseTo(typical.dryBulbC[half]!, 0);
  });

  test('a record of nothing, or of more than a year, is refused', () => {
    expect(() => recordFrom('2021-03-06', 2, { dryBulbC: steady(48, Number.NaN) })).toThrow(
      /air temperature/,
    );
    expect(() => recordFrom('2020-03-06', 400)).toThrow(/8760/);
  });
});

describe('sun', () => {
  const days = 10;
  const hours = 24 * days;
  const first = recordFrom('2021-06-01', days).firstRow;
  const global = typical.globalHorizontal.slice(first, first + hours);
  const measured = recordFrom('2021-06-01', days, { globalHorizontal: global });

  test('by a meter on the horizontal', () => {
    expect(measured.sun).toBe('horizontal');
    expect([...measured.year.globalHorizontal.subarray(first, first + hours)]).toEqual([...global]);
  });

  test('by a meter on a leaning plane: worked back to within 3 % of a day', () => {
    const { total } = planeIrradiance(prepareClimate(measured.year), 45, 180);
    const values = total.slice(first, first + hours);
    const record = recordFrom('2021-06-01', days, { planeSun: { tiltDeg: 45, azimuthDeg: 180, values } });
    expect(record.sun).toBe('plane');
    for (let day = 0; day < days; day++) {
      const sum = (column: Float64Array) =>
        column.subarray(first + 24 * day, first + 24 * day + 24).reduce((a, b) => a + b, 0);
      const share = sum(record.year.globalHorizontal) / sum(measured.year.globalHorizontal);
      expect(Math.abs(share - 1)).toBeLessThan(0.03);
    }
  });

  test('by cloud cover: overcast a quarter of a clear sky, as Kasten and Czeplak 1980 have it', () => {
    const noon = first + 24 * 4 + 12;
    const [clear, overcast] = [0, 1].map((cover) =>
      recordFrom('2021-06-01', days, { skyCover: steady(hours, cover) }),
    );
    expect(overcast!.sun).toBe('cloud');
    expect(overcast!.year.globalHorizontal[noon]! / clear!.year.globalHorizontal[noon]!).toBeCloseTo(0.25, 6);
  });

  test('by nothing: typical, and it says what cannot be told', () => {
    const record = recordFrom('2021-06-01', days);
    expect(record.sun).toBe('typical');
    expect(record.notes.join(' ')).toContain('only nights');
  });
});
