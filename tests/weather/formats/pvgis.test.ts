// Expected values are read off the lines of the files (PVGIS typical years); what the radiation's clock should show
// is measured independently (typical-years.csv and the remarks below).
import { expect, test } from 'vitest';
import { dewPointFromVapourPressure, saturationPressure } from '../../../src/physics/moist-air.ts';
import { clearDayMinute } from '../../../src/weather/assembly/radiation-timing.ts';
import { coordinatesInName } from '../../../src/weather/assembly/site-hints.ts';
import { readPvgis } from '../../../src/weather/formats/pvgis.ts';
import { describeFault } from '../../../src/weather/read-result.ts';
import { readWeather } from '../../../src/weather/reader.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';
import { fileBytes, fileText, fileYear, N_ITALY, yearOf } from '../weather-files.ts';

const ITALY = 'tmy_45.000_8.000_2005_2023.csv';
const CHILE = 'tmy_-38.320_-71.960_2005_2023.csv';

test('UTC is shiftedFromUtc to local standard time: the first local hour east of Greenwich is the last of the file', async () => {
  const year = await fileYear(ITALY);
  expect(year.site).toMatchObject({ latitudeDeg: 45, longitudeDeg: 8, elevationM: 250, utcOffsetH: 1 });
  // last line of the table: 20161231:2300,2.1,93.32,…,0.72,217.0,101130.0 minus one row; first: 2.04, 94.38
  expect(year.dryBulbC[0]).toBe(2.1);
  expect(year.dryBulbC[1]).toBe(2.04);
  expect(year.pressurePa[1]).toBe(99_870);
  expect(year.dewPointC[1]).toBeCloseTo(dewPointFromVapourPressure(0.9438 * saturationPressure(2.04)), 9);
  expect(year.skyLongwave![1]).toBe(283.58);
});

test('west of Greenwich the first local hour is a later row of the file', async () => {
  const year = await fileYear(CHILE);
  expect(year.site.utcOffsetH).toBe(-5);
  const rows = fileText(CHILE).split(/\r?\n/);
  const first = rows.findIndex((line) => line.startsWith('time(UTC)')) + 1;
  expect(year.dryBulbC[0]).toBe(Number(rows[first + 5]!.split(',')[1]));
});

test('the minute of the header is used, and the negative zero of the beam is zero', async () => {
  const year = await fileYear(ITALY);
  expect(year.sunMinute).toBeCloseTo(0.1761 * 60, 9);
  expect(Object.is(year.beamNormal[0], 0)).toBe(true);
});

test('JSON, CSV and the bare table of the same data give the same year', async () => {
  const csv = await fileYear(ITALY);
  const json = await fileYear('tmy_45.000_8.000_2005_2023.json');
  const bare = await fileYear('pvgis_tmy_test.csv');
  const columns = (year: TypicalYear) => Object.values(year).filter((value) => value instanceof Float64Array);
  expect(columns(csv)).toHaveLength(10);
  expect(columns(json)).toEqual(columns(csv));
  expect(columns(bare)).toEqual(columns(csv));
  expect(json.sunMinute).toBe(csv.sunMinute);
  expect(json.source).toContain('PVGIS-SARAH3');
  // Without a header the minute is found from the data; the truth is 10.57.
  expect(Math.abs((bare.sunMinute as number) - 10.57)).toBeLessThanOrEqual(1);
  expect(bare.notes.join(' ')).toContain('does not say at which minute');
});

test.each(['tmy_40.417_-3.704_2005_2014.csv', 'PVGIS_TMY_Data_54.60452_-5.9286.csv'])(
  '%s does not state its minute; ten to eleven is found (and one more allowed)',
  async (file) => {
    const minute = (await fileYear(file)).sunMinute as number;
    expect(minute).toBeGreaterThanOrEqual(9.5);
    expect(minute).toBeLessThanOrEqual(12);
  },
);

test('outside the satellites the beam is recomputed for the mean of the hour', async () => {
  const year = await fileYear(CHILE);
  expect(year.sunMinute).toBe('mean');
  // Independent figures: clear days are centred on minute 29 to 31; beam peaks at 1271, recomputed 1066 W/m².
  expect(Math.abs(clearDayMinute(year)! - 30)).toBeLessThan(5);
  expect(Math.abs(Math.max(...year.beamNormal) - 1066)).toBeLessThan(5);
  expect(year.notes.join(' ')).toContain('beam was recomputed');
});

test('a table without a site asks for it, and coordinates in the name serve', async () => {
  const result = await readWeather(fileBytes('pvgis_tmy_test.csv'));
  expect(result.ok).toBe(false);
  if (!result.ok) expect(describeFault(result.faults[0]!)).toContain('give latitude and longitude');
  const named = yearOf(
    await readWeather(fileBytes('pvgis_tmy_test.csv'), { fileName: 'x_45.000_8.000.csv' }),
  );
  expect(named.site).toMatchObject({ latitudeDeg: 45, longitudeDeg: 8 });
  // the mean of 999 hPa says 120 m where the header says 250: such guesses are good to about 150 m
  expect(Math.abs(named.site.elevationM - 250)).toBeLessThan(150);
});

test('coordinates are found in names, and years are not taken for them', () => {
  expect(coordinatesInName('PVGIS_TMY_Data_54.60452_-5.9286.csv')).toEqual({
    latitudeDeg: 54.60452,
    longitudeDeg: -5.9286,
  });
  expect(coordinatesInName('tmy_-38.320_-71.960_2005_2023.csv')).toEqual({
    latitudeDeg: -38.32,
    longitudeDeg: -71.96,
  });
  expect(coordinatesInName('tmy_2005_2023.csv')).toBeNull();
  expect(coordinatesInName('99.5_8.0.csv')).toBeNull();
});

test('faults name the line: a cell that is no number, a row too many', () => {
  const lines = fileText(ITALY).split('\n');
  const broken = lines.with(30, lines[30]!.replace(/,[^,]*,/, ',warm,')).join('\n');
  const result = readPvgis(broken);
  expect(result.ok ? [] : result.faults.map(describeFault)).toEqual([
    'line 31, column "T2m": found "warm"; expected a number',
  ]);
  const end = lines.findIndex((line, i) => i > 20 && line.trim() === '');
  const longer = readPvgis(lines.toSpliced(end, 0, lines[20]!).join('\n'));
  expect(longer.ok ? '' : describeFault(longer.faults[0]!)).toContain('expected no more rows');
});

test('JSON that is cut off or has another shape is refused with the cause', () => {
  const text = fileText('tmy_45.000_8.000_2005_2023.json');
  const cut = readPvgis(text.slice(0, 200_000));
  expect(cut.ok ? '' : describeFault(cut.faults[0]!)).toContain('complete JSON');
  const odd = readPvgis(text.replace('"latitude": 45.0', '"latitude": "north"'));
  expect(odd.ok ? '' : describeFault(odd.faults[0]!)).toContain('inputs.location.latitude');
});

test('a site given by hand is used only where the file is silent', () => {
  const year = yearOf(readPvgis(fileText(ITALY), { ...N_ITALY, latitudeDeg: 10, name: 'Asti' }));
  expect(year.site.latitudeDeg).toBe(45);
  expect(year.site.name).toBe('Asti');
});
