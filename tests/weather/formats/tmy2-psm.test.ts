// Expected values are read off the lines of the files: TMY2 Binghamton 04725 and Miami 12839, NSRDB PSM v3 and v4.
import { expect, test } from 'vitest';
import { readPsm } from '../../../src/weather/formats/psm.ts';
import { snowAlbedo } from '../../../src/weather/formats/snow-albedo.ts';
import { readTmy2 } from '../../../src/weather/formats/tmy2.ts';
import { describeFault, type ReadResult } from '../../../src/weather/read-result.ts';
import { fileText, fileYear, NW_COLORADO, yearOf } from '../weather-files.ts';

const faultOf = (result: ReadResult) => (result.ok ? '' : describeFault(result.faults[0]!));

test('the first hour of Binghamton is that of its line', async () => {
  // 86010101 … opaque 10, -006 -050 tenths of a degree, 949 mbar, 310°, 5.7 m/s; snow 8 cm, 0 days old
  const year = await fileYear('04725.tm2');
  expect(year.site.utcOffsetH).toBe(-5);
  expect(year.site.latitudeDeg).toBeCloseTo(42 + 13 / 60, 9);
  expect(year.site.longitudeDeg).toBeCloseTo(-(75 + 59 / 60), 9);
  expect(year.site.elevationM).toBe(499);
  expect(year.skyCover[0]).toBe(1);
  expect(year.dryBulbC[0]).toBeCloseTo(-0.6, 9);
  expect(year.dewPointC[0]).toBeCloseTo(-5, 9);
  expect(year.pressurePa[0]).toBe(94_900);
  expect(year.windFromDeg[0]).toBe(310);
  expect(year.windSpeed[0]).toBeCloseTo(5.7, 9);
  expect(year.albedo![0]).toBeCloseTo(0.8, 9);
  expect(year.monthYears[0]).toBe(1986);
});

test('Miami has no snow', async () => {
  expect(new Set((await fileYear('12839.tm2')).albedo)).toEqual(new Set([0.2]));
});

test('snow is bright when fresh, greys in ten days and hides the ground from five centimetres', () => {
  expect(snowAlbedo(0, 0)).toBe(0.2);
  expect(snowAlbedo(Number.NaN, 3)).toBe(0.2);
  expect(snowAlbedo(30, 0)).toBeCloseTo(0.8, 9);
  expect(snowAlbedo(30, 5)).toBeCloseTo(0.6, 9);
  expect(snowAlbedo(30, 88)).toBeCloseTo(0.4, 9);
  expect(snowAlbedo(2.5, 0)).toBeCloseTo(0.5, 9);
});

test('TMY2 faults name line and position', () => {
  const lines = fileText('04725.tm2').split(/\r?\n/);
  const broken = lines.with(5, `${lines[5]!.slice(0, 67)}cold${lines[5]!.slice(71)}`).join('\n');
  expect(faultOf(readTmy2(broken))).toBe(
    'line 6, column "dry bulb": found "cold"; expected a number at positions 68 to 71',
  );
  expect(faultOf(readTmy2(lines.toSpliced(50, 1).join('\n')))).toContain('line 51');
  expect(faultOf(readTmy2(lines.with(0, 'no header').join('\n')))).toContain('as in TMY2');
});

test('PSM: the instant is minute 30, reflectance knows snow, a dew point above the air is lowered and counted', async () => {
  const v3 = await fileYear('test_psm3_tmy-2017.csv');
  expect(v3.sunMinute).toBe(30);
  expect(v3.albedo![0]).toBe(0.866);
  expect([v3.dryBulbC[1], v3.dewPointC[1], v3.pressurePa[1], v3.windSpeed[1]]).toEqual([-5, -7, 78_000, 2.7]);
  // an independent count gives 50 hours
  expect(v3.notes.join(' ')).toContain('In 50 hours the dew point was above the air temperature');
  const v4 = await fileYear('test_psm4_tmy-2023.csv');
  expect([v4.dryBulbC[0], v4.dewPointC[0], v4.skyCover[0]]).toEqual([-11.4, -15.1, 1]);
});

test('our sun is where the PSM file has it, but for the refraction it includes', async () => {
  const { prepareClimate } = await import('../../../src/weather/prepared/prepared-climate.ts');
  const climate = prepareClimate(await fileYear('test_psm4_tmy-2023.csv'));
  const rows = fileText('test_psm4_tmy-2023.csv').trim().split(/\r?\n/);
  const at = rows[0]!.split(',').indexOf('Solar Zenith Angle');
  let compared = 0;
  for (const [hour, row] of rows.slice(1).entries()) {
    const elevation = 90 - Number(row.split(',')[at]);
    if (elevation < 20) continue;
    compared++;
    // refraction at 20° is 0.044°, the file is printed to 0.01°, its place to 0.01°
    expect(Math.abs(climate.sunElevationDeg[hour]! - elevation)).toBeLessThan(0.06);
  }
  expect(compared).toBeGreaterThan(2500);
});

test('PSM in UTC is shiftedFromUtc to the local time its metadata name', () => {
  const [header, ...rows] = fileText('test_psm4_tmy-2023.csv').trim().split(/\r?\n/);
  const back = [...rows.slice(-7), ...rows.slice(0, -7)];
  // the same weather with its stamps in UTC: local hour h stands at UTC hour h + 7
  const utc = rows.map((row, hour) => {
    const [index, year, month, day, clock, minute] = row.split(',');
    return [index, year, month, day, clock, minute, ...back[hour]!.split(',').slice(6)].join(',');
  });
  const names = 'Source,Location ID,Latitude,Longitude,Time Zone,Elevation,Local Time Zone,Version';
  const values = 'NSRDB,1,40.53,-108.54,0,2168,-7,4.0';
  const shiftedFromUtc = yearOf(readPsm([names, values, header, ...utc].join('\n')));
  const local = yearOf(readPsm(fileText('test_psm4_tmy-2023.csv'), NW_COLORADO));
  expect(shiftedFromUtc.site).toMatchObject({
    latitudeDeg: 40.53,
    longitudeDeg: -108.54,
    elevationM: 2168,
    utcOffsetH: -7,
  });
  expect(shiftedFromUtc.dryBulbC).toEqual(local.dryBulbC);
  expect(shiftedFromUtc.globalHorizontal).toEqual(local.globalHorizontal);
  expect(shiftedFromUtc.source).toContain('version 4.0');
});
