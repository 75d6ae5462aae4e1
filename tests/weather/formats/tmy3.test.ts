// Expected values are read off the lines of the files (NREL TMY3, stations 725650, 723170, 723650).
import { describe, expect, test } from 'vitest';
import { readTmy3 } from '../../../src/weather/formats/tmy3.ts';
import { describeFault } from '../../../src/weather/read-result.ts';
import { MONTH_START_HOUR } from '../../../src/weather/typical-year.ts';
import { fileText, fileYear, yearOf } from '../weather-files.ts';

const GREENSBORO = '723170TYA.CSV';

/** The file with one line changed; the first line is 1. */
function changed(name: string, line: number, change: (cells: string[]) => string[]): string {
  const lines = fileText(name).split(/\r?\n/);
  lines[line - 1] = change(lines[line - 1]!.split(',')).join(',');
  return lines.join('\n');
}

function faultsOf(text: string): string[] {
  const result = readTmy3(text);
  return result.ok ? [] : result.faults.map(describeFault);
}

test('the first and last hour of Denver are those of the lines 01:00 and 24:00', async () => {
  const year = await fileYear('725650TYA.CSV');
  expect(year.site).toMatchObject({
    latitudeDeg: 39.833,
    longitudeDeg: -104.65,
    elevationM: 1650,
    utcOffsetH: -7,
  });
  expect([year.dryBulbC[0], year.dewPointC[0], year.pressurePa[0]]).toEqual([-18, -19.7, 83_700]);
  expect([year.dryBulbC[8759], year.dewPointC[8759], year.pressurePa[8759]]).toEqual([-19.4, -21.7, 84_100]);
  expect(year.skyCover[0]).toBe(0.2);
  expect(year.skyCover[8759]).toBe(0.1);
  expect(year.sunMinute).toBe('mean');
  expect(year.albedo![0]).toBe(0.22);
  expect(year.monthYears[0]).toBe(1995);
});

test('both editions of Albuquerque give the same weather', async () => {
  const early = await fileYear('723650TY.csv');
  const late = await fileYear('723650TYA.CSV');
  const { notes: _, ...weather } = early;
  expect(weather).toEqual({ ...late, notes: undefined, ...weather });
  for (const key of [
    'dryBulbC',
    'dewPointC',
    'pressurePa',
    'windSpeed',
    'windFromDeg',
    'globalHorizontal',
    'beamNormal',
    'diffuseHorizontal',
    'skyCover',
  ] as const) {
    expect(early[key]).toEqual(late[key]);
  }
  expect(early.albedo).toBeNull();
  expect(late.albedo).toBeNull();
});

test('an albedo column with zeros or missing codes is not used, and a note says so', async () => {
  const year = await fileYear(GREENSBORO);
  expect(year.albedo).toBeNull();
  expect(year.notes.join(' ')).toContain('no usable ground reflectance');
});

test('hours in which humidity and dew point disagree are counted', async () => {
  // The independent count, with another saturation formula, is 13 for Denver and 93 for Barrow.
  const count = async (file: string) => {
    const note = (await fileYear(file)).notes.find((line) =>
      line.includes('relative humidity and dew point'),
    );
    return Number(/In (\d+) hours/.exec(note ?? '')?.[1]);
  };
  expect(await count('725650TYA.CSV')).toBe(13);
  expect(Math.abs((await count('700260TYA.CSV')) - 93)).toBeLessThanOrEqual(3);
});

describe('faults name the line, the column and what is allowed', () => {
  test('a word where a number belongs', () => {
    const text = changed(GREENSBORO, 100, (cells) => cells.with(31, 'mild'));
    expect(faultsOf(text)).toEqual(['line 100, column "Dry-bulb (C)": found "mild"; expected a number']);
  });

  test('a temperature no place on Earth has', () => {
    const text = changed(GREENSBORO, 3, (cells) => cells.with(31, '99'));
    expect(faultsOf(text)).toEqual([
      'line 3, column "air temperature": found "99"; expected -90 to 60 °C (1 January 00:00)',
    ]);
  });

  test('a row left out', () => {
    const lines = fileText(GREENSBORO).split(/\r?\n/);
    lines.splice(26, 1);
    expect(faultsOf(lines.join('\n'))[0]).toContain(
      'line 27, column "date and time": found "01/02/1988 02:00"',
    );
  });

  test('a file cut off', () => {
    const lines = fileText(GREENSBORO).split(/\r?\n/).slice(0, 1000);
    expect(faultsOf(lines.join('\n'))[0]).toContain('the file ends after 998 hours');
  });

  test('a column missing from the header', () => {
    const text = changed(GREENSBORO, 2, (cells) =>
      cells.map((cell) => (cell === 'DNI (W/m^2)' ? 'x' : cell)),
    );
    expect(faultsOf(text)).toEqual([
      'line 2, column "DNI (W/m^2)": nothing found; expected a column of this name',
    ]);
  });

  test('a latitude beyond the pole', () => {
    const text = changed(GREENSBORO, 1, (cells) => cells.with(4, '136.1'));
    expect(faultsOf(text)).toEqual(['line 1, column "latitude": found "136.1"; expected degrees, −90 to 90']);
  });
});

test('missing codes up to three hours are filled and counted, longer ones refused with their dates', () => {
  const holes = (count: number) => {
    const lines = fileText(GREENSBORO).split(/\r?\n/);
    for (let i = 0; i < count; i++) {
      lines[10 + i] = lines[10 + i]!.split(',').with(31, '-9900').with(34, '-9900').join(',');
    }
    return readTmy3(lines.join('\n'));
  };
  const three = yearOf(holes(3));
  expect(three.notes).toContain('3 missing hours of air temperature were filled along a straight line.');
  const rise = three.dryBulbC[9]! - three.dryBulbC[8]!;
  expect(three.dryBulbC[10]! - three.dryBulbC[9]!).toBeCloseTo(rise, 9);
  const four = holes(4);
  expect(four.ok).toBe(false);
  if (four.ok) return;
  expect(describeFault(four.faults[0]!)).toBe(
    'line 11, column "air temperature": found "4 hours missing from 1 January 08:00 to 1 January 11:00"; expected no more than 3 missing hours in a row',
  );
});

test('every month carries the calendar year printed in its rows', async () => {
  const year = await fileYear(GREENSBORO);
  const lines = fileText(GREENSBORO).split(/\r?\n/);
  const printed = MONTH_START_HOUR.slice(0, 12).map((hour) => Number(lines[hour + 2]!.slice(6, 10)));
  expect(year.monthYears).toEqual(printed);
});

test('rain is read where no hour of it is missing', async () => {
  const { rainMm } = await fileYear('725650TYA.CSV');
  // 110 lines of the file have a depth; the first, line 1522, is 5 March 08:00 with 3 mm.
  expect(rainMm!.filter((depth) => depth > 0)).toHaveLength(110);
  expect([rainMm!.findIndex((depth) => depth > 0), rainMm![1519]]).toEqual([1519, 3]);
  expect((await fileYear('723650TY.csv')).rainMm).toBeNull();
});
