import { expect, test } from 'vitest';
import { describeFault } from '../../../src/weather/read-result.ts';
import { formatOf, readWeatherText } from '../../../src/weather/reader.ts';
import { yearOf } from '../weather-files.ts';

const NORMALS = {
  name: 'Valley',
  latitudeDeg: -42,
  longitudeDeg: 147,
  elevationM: 100,
  meanDailyHighC: [22, 22, 20, 17, 14, 12, 12, 13, 15, 17, 19, 21],
  meanDailyLowC: [12, 12, 11, 9, 7, 5, 4, 5, 6, 8, 9, 11],
  humidityPercent: [60, 64, 66, 70, 75, 78, 78, 72, 66, 63, 60, 60],
  sunshineHours: [8, 7.3, 6.3, 5.1, 4.3, 4, 4.4, 5.2, 5.9, 6.7, 7.1, 7.6],
  windSpeed: [3.5, 3.2, 3, 2.9, 2.8, 2.8, 2.9, 3.2, 3.6, 3.7, 3.7, 3.6],
};
const faultsOf = (content: unknown) => {
  const result = readWeatherText(JSON.stringify(content));
  return result.ok ? [] : result.faults.map(describeFault);
};

test('normals as JSON are read like any weather file', () => {
  const text = JSON.stringify(NORMALS, null, 2);
  expect(formatOf(text)).toBe('monthly normals');
  const year = yearOf(readWeatherText(text));
  expect(year.site).toMatchObject({ name: 'Valley', latitudeDeg: -42, utcOffsetH: 10 });
});

test('a list too short, a word for a number and a missing list are named by their field', () => {
  expect(faultsOf({ ...NORMALS, windSpeed: [3] })[0]).toContain('column "windSpeed"');
  expect(faultsOf({ ...NORMALS, windSpeed: [3] })[0]).toContain('twelve numbers');
  expect(faultsOf({ ...NORMALS, latitudeDeg: 'south' })[0]).toContain('"latitudeDeg"');
  const { humidityPercent: _, ...dry } = NORMALS;
  expect(faultsOf(dry)[0]).toContain('humidityPercent');
  const cut = readWeatherText(JSON.stringify(NORMALS).slice(0, 200));
  expect(cut.ok ? '' : describeFault(cut.faults[0]!)).toContain('complete JSON');
});
