// Tables made from a real year (TMY3 Greensboro) in the guises people bring, read back and compared with that year.
import { beforeAll, describe, expect, test } from 'vitest';
import { describeFault, type ReadResult } from '../../../src/weather/read-result.ts';
import { readWeatherText } from '../../../src/weather/reader.ts';
import { DEFAULT_WIND, inspectTable, readHourlyTable } from '../../../src/weather/table/hourly-table.ts';
import { HOURS, type TypicalYear } from '../../../src/weather/typical-year.ts';
import { fileText, fileYear, yearOf } from '../weather-files.ts';
import { madeTable, momentOf, placeOfYear, two, worst } from './made-table.ts';

let truth: TypicalYear;
beforeAll(async () => {
  truth = await fileYear('723170TYA.CSV');
});

const faultOf = (result: ReadResult) => (result.ok ? '' : describeFault(result.faults[0]!));

test('ISO stamps at the start of the hour, our own units', () => {
  const text = madeTable(
    'time,temp (°C),dew point (°C),GHI (W/m²),DNI (W/m²),DHI (W/m²),pressure (Pa),wind speed (m/s),wind direction (°)',
    (h, at) => [
      `2021-${two(at.month)}-${two(at.day)}T${two(at.hour)}:00`,
      truth.dryBulbC[h]!,
      truth.dewPointC[h]!,
      truth.globalHorizontal[h]!,
      truth.beamNormal[h]!,
      truth.diffuseHorizontal[h]!,
      truth.pressurePa[h]!,
      truth.windSpeed[h]!,
      truth.windFromDeg[h]!,
    ],
  );
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  for (const key of [
    'dryBulbC',
    'dewPointC',
    'globalHorizontal',
    'beamNormal',
    'diffuseHorizontal',
    'pressurePa',
    'windSpeed',
    'windFromDeg',
  ] as const) {
    expect(worst(year[key], truth[key]), key).toBeLessThan(1e-9);
  }
  expect(year.sunMinute).toBe('mean');
  expect(year.notes.join(' ')).toContain(
    'A stamp is taken as the start of what it covers, in local standard time',
  );
});

test('rain of half-hourly rows adds up to the hour, inches too', () => {
  const text = (unit: string, depth: string) =>
    madeTable(`time,temp (°C),dew point (°C),GHI (W/m²),rain (${unit})`, (h, at) => [
      `2021-${two(at.month)}-${two(at.day)}T${two(at.hour)}:00`,
      truth.dryBulbC[h]!,
      truth.dewPointC[h]!,
      truth.globalHorizontal[h]!,
      h === 4000 ? depth : 0,
    ]);
  const hourly = yearOf(readHourlyTable(text('in', '0.1'), placeOfYear(truth)));
  expect(hourly.rainMm![4000]).toBeCloseTo(2.54, 9);
  const [head, ...rows] = text('mm', '1').trimEnd().split('\n');
  const halves = rows.flatMap((row) => [row, row.replace(':00,', ':30,')]);
  const halfHourly = yearOf(readHourlyTable([head, ...halves].join('\n'), placeOfYear(truth)));
  expect(halfHourly.rainMm![4000]).toBeCloseTo(2, 9);
});

test('stamps at the end of the hour are found by the sun and moved back', () => {
  const text = madeTable(
    'timestamp;Temperature;RH;Global',
    (h) => {
      const end = momentOf((h + 1) % HOURS);
      return [
        `${two(end.day)}.${two(end.month)}.2021 ${two(end.hour)}:00`,
        truth.dryBulbC[h]!,
        50,
        truth.globalHorizontal[h]!,
      ].map((cell) => String(cell).replace(/^(-?\d+)\.(\d+)$/, '$1,$2'));
    },
    ';',
  );
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  expect(worst(year.dryBulbC, truth.dryBulbC)).toBeLessThan(1e-9);
  expect(worst(year.globalHorizontal, truth.globalHorizontal)).toBeLessThan(1e-9);
  expect(year.notes.join(' ')).toContain('the end of what it covers');
  expect(year.notes.join(' ')).toContain('Erbs 1982');
});

test('UTC is found from the sun even when no header says so', () => {
  const offset = truth.site.utcOffsetH;
  const text = madeTable('date,hour,temperature,humidity,global', (h) => {
    const local = (((h + offset) % HOURS) + HOURS) % HOURS;
    const utc = momentOf(h);
    return [
      `${utc.month}/${utc.day}/2021`,
      utc.hour,
      truth.dryBulbC[local]!,
      50,
      truth.globalHorizontal[local]!,
    ];
  });
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  expect(worst(year.dryBulbC, truth.dryBulbC)).toBeLessThan(1e-9);
  expect(year.notes.join(' ')).toContain('in UTC');
});

test('Fahrenheit, millibar, miles an hour, percent of cloud and kilojoules are recognised', () => {
  const text = madeTable(
    'month\tday\thour\tTemp [F]\tRel Hum [%]\tStation pressure [mbar]\tWind [mph]\tCloud cover [%]\tSolar radiation [kJ/m2]',
    (h, at) => [
      at.month,
      at.day,
      at.hour + 1,
      truth.dryBulbC[h]! * 1.8 + 32,
      60,
      truth.pressurePa[h]! / 100,
      truth.windSpeed[h]! / 0.44704,
      truth.skyCover[h]! * 100,
      truth.globalHorizontal[h]! * 3.6,
    ],
    '\t',
  );
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  for (const key of ['dryBulbC', 'pressurePa', 'windSpeed', 'skyCover', 'globalHorizontal'] as const) {
    expect(worst(year[key], truth[key]), key).toBeLessThan(1e-6);
  }
});

test('half-hourly rows of a leap year are averaged, 29 February is left out and said so', () => {
  const lines = ['time,ghi,t2m,rh'];
  for (let half = 0; half < 366 * 48; half++) {
    const stamp = new Date(Date.UTC(2020, 0, 1) + half * 1_800_000).toISOString().slice(0, 16);
    const day = Math.floor(half / 48);
    const hour = (day < 59 ? day : day - 1) * 24 + Math.floor((half % 48) / 2);
    const swing = half % 2 === 0 ? 1 : -1;
    lines.push([stamp, truth.globalHorizontal[hour]!, truth.dryBulbC[hour]! + swing, 55].join(','));
  }
  const year = yearOf(readHourlyTable(lines.join('\n'), placeOfYear(truth), { stamp: 'start' }));
  expect(worst(year.dryBulbC, truth.dryBulbC)).toBeLessThan(1e-9);
  expect(year.notes.join(' ')).toContain('29 February was left out.');
  expect(year.notes.join(' ')).toContain('Rows 30 minutes apart were averaged into hours.');
});

test('what is missing is replaced by a named default and flagged', () => {
  const text = madeTable('time,temperature,global', (h, at) => [
    `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
    truth.dryBulbC[h]!,
    truth.globalHorizontal[h]!,
  ]);
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  expect(new Set(year.windSpeed)).toEqual(new Set([DEFAULT_WIND]));
  expect(year.dewPointC[12]).toBe(Math.min(...truth.dryBulbC.subarray(0, 24)));
  const notes = year.notes.join(' ');
  for (const word of ['no humidity', 'no wind', 'no pressure', 'only global radiation', 'no sky cover'])
    expect(notes).toContain(word);
});

test('the sum of the three parts closes exactly for a split year', () => {
  const text = madeTable('time,temperature,global,diffuse', (h, at) => [
    `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
    truth.dryBulbC[h]!,
    truth.globalHorizontal[h]!,
    truth.diffuseHorizontal[h]!,
  ]);
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  const sum = (column: Float64Array) => column.reduce((a, b) => a + b, 0) / 1000;
  // The file's own three parts close to 1.6 W/m² rms (typical-years.csv), so its beam comes back within 2 %.
  expect(Math.abs(sum(year.beamNormal) / sum(truth.beamNormal) - 1)).toBeLessThan(0.02);
});

describe('gaps', () => {
  const withHoles = (from: number, count: number) =>
    madeTable('time,temperature,rh,global', (h, at) => [
      `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
      h >= from && h < from + count ? 'NA' : truth.dryBulbC[h]!,
      50,
      truth.globalHorizontal[h]!,
    ]);

  test('three hours are filled and counted', () => {
    const year = yearOf(readHourlyTable(withHoles(100, 3), placeOfYear(truth)));
    expect(year.notes).toContain('3 missing hours of air temperature were filled along a straight line.');
  });

  test('four are refused with their dates', () => {
    expect(faultOf(readHourlyTable(withHoles(100, 4), placeOfYear(truth)))).toContain(
      '4 hours missing from 5 January 04:00 to 5 January 07:00',
    );
  });

  test('a missing month is refused with its dates', () => {
    const lines = withHoles(0, 0)
      .split('\n')
      .filter((line) => !line.startsWith('2021-06'));
    expect(faultOf(readHourlyTable(lines.join('\n'), placeOfYear(truth)))).toContain(
      '720 hours missing from 1 June 00:00 to 30 June 23:00',
    );
  });
});

describe('refusals name the cause', () => {
  const plain = () =>
    madeTable('time,temperature,rh,global', (h, at) => [
      `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
      truth.dryBulbC[h]!,
      50,
      truth.globalHorizontal[h]!,
    ]);

  test('no radiation', () => {
    const text = plain().replace('global', 'colour');
    expect(faultOf(readHourlyTable(text, placeOfYear(truth)))).toContain('a column of the global radiation');
  });

  test('no place', () => {
    expect(faultOf(readHourlyTable(plain()))).toContain('give latitude and longitude');
  });

  test('a word among the numbers', () => {
    const text = plain().replace('\n2021-01-01 05:00,', '\n2021-01-01 05:00,cold');
    expect(faultOf(readHourlyTable(text, placeOfYear(truth)))).toMatch(
      /^line 7, column "temperature": found "cold.*; expected a number$/,
    );
  });

  test('a second year', () => {
    const lines = plain().split('\n');
    const text = [...lines, ...lines.slice(1).map((line) => line.replace('2021', '2022'))].join('\n');
    expect(faultOf(readHourlyTable(text, placeOfYear(truth)))).toContain('expected one year of hours');
  });

  test('summer time: one hour doubled', () => {
    const lines = plain().split('\n');
    const text = lines.toSpliced(7299, 0, lines[7299]!).join('\n');
    expect(faultOf(readHourlyTable(text, placeOfYear(truth)))).toContain('without summer time');
  });

  test('days instead of hours', () => {
    const lines = plain().split('\n');
    const text = lines.filter((_, i) => i === 0 || i % 24 === 1).join('\n');
    expect(faultOf(readHourlyTable(text, placeOfYear(truth)))).toContain('rows 1440 minutes apart');
  });

  test('a clock hours off is not absorbed', () => {
    const text = madeTable('time,temperature,rh,global', (h, at) => [
      `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
      truth.dryBulbC[h]!,
      50,
      truth.globalHorizontal[(h + 3) % HOURS]!,
    ]);
    const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
    expect(year.notes.join(' ')).toMatch(
      /clear days are centred 1[5-9]\d minutes early: check the time zone/,
    );
  });
});

test('the guesses carry their reasons and can be changed by hand', () => {
  const text =
    'when,T out (C),rad,Pressure,odd\n2021-01-01 00:00,3.5,0,1013,1\n2021-01-01 01:00,3.4,0,1012,2\n2021-01-01 02:00,3.0,0,1012,2\n';
  const seen = inspectTable(text)!;
  expect(seen.columns.map(({ role }) => role)).toEqual([null, 'dryBulb', 'global', 'pressure', null]);
  expect(seen.columns[1]!.reason).toBe('"T out (C)" reads as air temperature, in °C as its header says');
  expect(seen.columns[3]!.reason).toBe(
    '"Pressure" reads as pressure, taken to be in hPa (its largest value is 1013)',
  );
  expect(seen.preview).toHaveLength(3);
  const changed = inspectTable(text, {
    roles: { when: 'time', rad: null, odd: 'windSpeed' },
    units: { odd: 'km/h' },
  })!;
  expect(changed.columns.map(({ role }) => role)).toEqual(['time', 'dryBulb', null, 'pressure', 'windSpeed']);
  expect(changed.columns[4]!.reason).toBe('wind speed by choice, in km/h by choice');
});

test('site lines above the header are read', () => {
  const table = madeTable('time,temperature,rh,global', (h, at) => [
    `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
    truth.dryBulbC[h]!,
    50,
    truth.globalHorizontal[h]!,
  ]);
  const year = yearOf(readHourlyTable(`Latitude: 36.1\nLongitude: -79.95\nElevation (m): 273\n\n${table}`));
  expect(year.site).toMatchObject({
    latitudeDeg: 36.1,
    longitudeDeg: -79.95,
    elevationM: 273,
    utcOffsetH: -5,
  });
  const paired = yearOf(readHourlyTable(`latitude,longitude,elevation\n36.1,-79.95,273\n\n${table}`));
  expect(paired.site).toMatchObject({ latitudeDeg: 36.1, longitudeDeg: -79.95, elevationM: 273 });
});

test('a second header line gives the units', () => {
  const seen = inspectTable('when,Temp,Rad\nlocal,°F,W/m²\n2021-01-01 00:00,40,0\n2021-01-01 01:00,41,0\n')!;
  expect(seen.columns.map(({ unit }) => unit?.name)).toEqual([undefined, '°F', 'W/m²']);
  expect(seen.rows).toBe(2);
});

test('a sky cover with a long hole is left out with a note, not a reason to refuse', () => {
  const text = madeTable('time,temperature,rh,global,cloud cover (%)', (h, at) => [
    `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
    truth.dryBulbC[h]!,
    50,
    truth.globalHorizontal[h]!,
    h > 500 && h < 600 ? '' : 40,
  ]);
  const notes = yearOf(readHourlyTable(text, placeOfYear(truth))).notes.join(' ');
  expect(notes).toContain(
    'The sky cover has holes of more than 3 hours, the first of 99 hours from 21 January 21:00; it is not used.',
  );
  expect(notes).toContain('it was derived from the sun');
});

test('a sky that is never clear leaves the clock as it is written', () => {
  const text = madeTable('time,temperature,rh,global', (h, at) => [
    `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
    truth.dryBulbC[h]!,
    50,
    truth.globalHorizontal[h]! * 0.3,
  ]);
  const year = yearOf(readHourlyTable(text, placeOfYear(truth)));
  expect(year.notes.join(' ')).toContain(
    'in local standard time, which the sun of the table neither shows nor denies',
  );
  expect(worst(year.dryBulbC, truth.dryBulbC)).toBeLessThan(1e-9);
});

describe('what a person says about the columns', () => {
  const text = () =>
    madeTable('time,T1,T1,,rad,global', (h, at) => [
      `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
      truth.dryBulbC[h]! + 5,
      truth.dryBulbC[h]! * 1.8 + 32,
      1,
      truth.globalHorizontal[h]! * 3.6,
      0,
    ]);

  test('columns without a name, or with one twice, can be told apart', () => {
    expect(inspectTable(text())!.columns.map(({ header }) => header)).toEqual([
      'time',
      'T1',
      'T1 (column 3)',
      'column 4',
      'rad',
      'global',
    ]);
  });

  test('goes before the guesses', () => {
    const roles = { 'T1 (column 3)': 'dryBulb', rad: 'global' } as const;
    const choices = {
      roles,
      units: { 'T1 (column 3)': '°F', rad: 'kJ/m²' },
      stamp: 'start',
      utc: false,
    } as const;
    const year = yearOf(readHourlyTable(text(), placeOfYear(truth), choices));
    expect(worst(year.dryBulbC, truth.dryBulbC)).toBeLessThan(1e-9);
    expect(worst(year.globalHorizontal, truth.globalHorizontal)).toBeLessThan(1e-9);
    const reasons = inspectTable(text(), choices)!.columns.map(({ reason }) => reason);
    expect(reasons[2]).toBe('air temperature by choice, in °F by choice');
    expect(reasons[5]).toBe(
      '"global" reads as global radiation on the horizontal, which another column is; not used',
    );
  });

  test('about a column that is not there is refused with those that are', () => {
    expect(faultOf(readHourlyTable(text(), placeOfYear(truth), { roles: { outdoor: 'dryBulb' } }))).toContain(
      'column "columns": found "outdoor"; expected one of time, T1, T1 (column 3)',
    );
  });

  test('about a file of a known format is refused', () => {
    const result = readWeatherText(fileText('723170TYA.CSV'), {}, { stamp: 'start' });
    expect(faultOf(result)).toContain('found "TMY3"; expected a table of hours');
  });
});

test.each([
  ['end', 0],
  ['start', 1],
] as const)('hours counted from 1 to 24 are read as their %s when the person says so', (stamp, late) => {
  const text = madeTable('month,day,hour,temperature,rh,global', (h, at) => [
    at.month,
    at.day,
    at.hour + 1,
    truth.dryBulbC[h]!,
    50,
    truth.globalHorizontal[h]!,
  ]);
  const year = yearOf(readHourlyTable(text, placeOfYear(truth), { stamp }));
  for (let hour = 24; hour < 48; hour++)
    expect(year.dryBulbC[hour + late]).toBeCloseTo(truth.dryBulbC[hour]!, 9);
  expect(year.notes.join(' ')).toContain(`A stamp is taken as the ${stamp} of what it covers`);
  expect(year.notes.join(' ').includes('clear days are centred')).toBe(late === 1);
});
