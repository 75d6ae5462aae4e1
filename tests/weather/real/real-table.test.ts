// Tables of weather of real days: part-years, minutes, gaps, clocks told by the sun, sun on a plane. The sun's place at a
// moment is checked against the outside in tests/published/sun-position.test.ts; the tables here are made with it.
import { describe, expect, test } from 'vitest';
import { sunPosition } from '../../../src/physics/sun-position.ts';
import { type RealTableChoices, readRealWeather } from '../../../src/weather/real/real-table.ts';
import { recordOf } from '../../../src/weather/real/weather-record.ts';
import { bundledYear } from '../bundled-climates.ts';

const HOUR = 3_600_000;
const typical = bundledYear('denver');
const { site } = typical;
const start = Date.UTC(2021, 4, 10) - site.utcOffsetH * HOUR;
const airC = (ms: number) => 15 + 8 * Math.cos((2 * Math.PI * (ms - start - 15 * HOUR)) / (24 * HOUR));
const sunW = (ms: number) =>
  Math.max(
    0,
    900 * Math.sin((sunPosition(ms, site.latitudeDeg, site.longitudeDeg).elevationDeg * Math.PI) / 180),
  );
const iso = (ms: number) => new Date(ms).toISOString().slice(0, 16).replace('T', ' ');

interface Made {
  readonly days: number;
  readonly stepMin: number;
  /** wall clock minus UTC [h] */
  readonly aheadH: number;
  /** radiation is of the time before its stamp */
  readonly endStamps?: boolean;
  readonly skip?: (ms: number) => boolean;
  readonly header?: string;
}

function made({ days, stepMin, aheadH, endStamps = false, skip = () => false, header }: Made): string {
  const rows: string[] = [
    header ?? 'Time,Air temperature [°C],Relative humidity [%],Global radiation [W/m²],Wind speed [m/s]',
  ];
  for (let ms = start; ms < start + days * 24 * HOUR; ms += stepMin * 60_000) {
    if (skip(ms)) continue;
    const middle = endStamps ? ms - stepMin * 30_000 : ms;
    rows.push(`${iso(ms + aheadH * HOUR)},${airC(middle).toFixed(2)},50,${sunW(middle).toFixed(1)},3.0`);
  }
  return rows.join('\n');
}

function read(text: string, choices: RealTableChoices = {}) {
  const result = readRealWeather(text, site, {}, choices);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result;
}

test('ten days of 10 minutes become 240 hours of their means', () => {
  const { real, notes } = read(made({ days: 10, stepMin: 10, aheadH: site.utcOffsetH }));
  expect(real.startMs).toBe(start);
  expect(real.hours).toBe(240);
  expect(real.dryBulbC[100]).toBeCloseTo(airC(start + 100.5 * HOUR), 1);
  expect(real.globalHorizontal![12]).toBeCloseTo(sunW(start + 12.5 * HOUR), -1);
  expect(notes.join(' ')).not.toContain('check the clock');
  expect(recordOf(real, typical).sun).toBe('horizontal');
});

describe('the clock, told by the sun', () => {
  test.each([
    ['UTC', 0, false],
    ['summer time', site.utcOffsetH + 1, false],
    ['standard time, stamped at the end of the hour', site.utcOffsetH, true],
  ])('%s', (_, aheadH, endStamps) => {
    const choices: RealTableChoices = aheadH === 0 ? { clock: 'utc' } : {};
    const { real } = read(made({ days: 14, stepMin: 60, aheadH, endStamps }), choices);
    const at = (start + 36 * HOUR - real.startMs) / HOUR;
    // Straight lines between hourly readings of this wave are up to 8·(2π/24)²/8 K off.
    expect(Math.abs(real.dryBulbC[at]! - airC(start + 36.5 * HOUR))).toBeLessThan(0.1);
  });

  test('a clock that is said and wrong is pointed out', () => {
    const { notes } = read(made({ days: 14, stepMin: 60, aheadH: site.utcOffsetH + 3 }), {
      clock: 'standard',
    });
    expect(notes.join(' ')).toContain('check the clock');
  });
});

test('a night without readings stays a gap', () => {
  const skip = (ms: number) => ms >= start + 50 * HOUR && ms < start + 60 * HOUR;
  const { real } = read(made({ days: 5, stepMin: 15, aheadH: site.utcOffsetH, skip }));
  expect(real.dryBulbC[55]).toBeNaN();
  const record = recordOf(real, typical);
  expect(record.known[record.firstRow + 55]).toBe(0);
  expect(record.notes.join(' ')).toContain('holes');
});

test('air alone is a record too, and says what it cannot tell', () => {
  const text = made({ days: 5, stepMin: 60, aheadH: site.utcOffsetH }).replace(/^.*\n/, 'Time,Temp,a,b,c\n');
  const record = recordOf(read(text).real, typical);
  expect(record.sun).toBe('typical');
  expect(record.hasWind).toBe(false);
  expect(record.notes.join(' ')).toContain('only nights');
});

test('a meter on a wall is named with its plane', () => {
  const text = made({ days: 5, stepMin: 60, aheadH: site.utcOffsetH }).replace(
    'Global radiation',
    'Wall meter',
  );
  const plane = { header: 'Wall meter [W/m²]', tiltDeg: 90, azimuthDeg: 180 };
  expect(recordOf(read(text, { plane }).real, typical).sun).toBe('plane');
});

test.each([
  ['no air temperature', 'Time,Wind speed\n2021-05-10 00:00,3\n2021-05-10 01:00,3', 'air temperature'],
  ['an impossible one', 'Time,Temp [°C]\n2021-05-10 00:00,300\n2021-05-10 01:00,20', '300'],
  [
    'a reading a day',
    'Time,Temp [°C]\n2021-05-10 00:00,3\n2021-05-11 00:00,3\n2021-05-12 00:00,3',
    '1 to 60',
  ],
])('%s is refused with what was found', (_, text, word) => {
  const result = readRealWeather(text, site);
  expect(result.ok).toBe(false);
  if (!result.ok) expect(JSON.stringify(result.faults)).toContain(word);
});
