// Doubts are tried on real files whose faults are known (Fairbanks runs on a wrong clock in most months) and on a
// good file spoilt in one way at a time.
import { beforeAll, describe, expect, test } from 'vitest';
import { type Doubt, doubtsAbout } from '../../../src/weather/prepared/doubts.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../../src/weather/typical-year.ts';
import { fileYear } from '../weather-files.ts';

let denver: TypicalYear;
beforeAll(async () => {
  denver = await fileYear('725650TYA.CSV');
});

const doubts = (year: TypicalYear): readonly Doubt[] => doubtsAbout(prepareClimate(year));
const ids = (year: TypicalYear) => doubts(year).map(({ id }) => id);
const moved = (column: Float64Array, hours: number) =>
  column.map((_, h) => column[(h + hours + HOURS) % HOURS]!);

test('a good file raises no doubt', async () => {
  expect(ids(denver)).toEqual([]);
  expect(ids(await fileYear('tmy_45.000_8.000_2005_2023.csv'))).toEqual([]);
  expect(ids(await fileYear('test_psm4_tmy-2023.csv'))).toEqual([]);
});

test("Fairbanks' wrong clock is found, and its months are named", async () => {
  const found = doubts(await fileYear('702610TYA.CSV'));
  expect(found[0]!.weight).toBe('wrong');
  expect(found.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['clock', 'months-off-clock', 'closure', 'impossible-sun']),
  );
  expect(found.find(({ id }) => id === 'months-off-clock')!.text).toContain('May');
});

test('a jump at the end of the year is mentioned', async () => {
  // Greensboro: 7 to 8 K by an independent look at the file
  const found = doubts(await fileYear('723170TYA.CSV'));
  expect(found.map(({ id }) => id)).toEqual(['year-end-jump']);
  expect(found[0]!.text).toContain('7.8 K');
});

describe('Denver spoilt', () => {
  test.each([1, -1, 3])('radiation moved by %i hours', (hours) => {
    const spoilt = {
      ...denver,
      globalHorizontal: moved(denver.globalHorizontal, hours),
      beamNormal: moved(denver.beamNormal, hours),
      diffuseHorizontal: moved(denver.diffuseHorizontal, hours),
    };
    const clock = doubts(spoilt).find(({ id }) => id === 'clock');
    expect(clock!.weight).toBe('wrong');
    expect(clock!.text).toContain(hours > 0 ? 'before solar noon' : 'after solar noon');
  });

  test('global radiation in the wrong unit', () => {
    const spoilt = {
      ...denver,
      globalHorizontal: denver.globalHorizontal.map((value) => Math.min(value * 1.5, 1600)),
    };
    expect(ids(spoilt)).toEqual(expect.arrayContaining(['closure', 'impossible-sun']));
  });

  test('latitude without its sign', () => {
    expect(ids({ ...denver, site: { ...denver.site, latitudeDeg: -39.8 } })[0]).toBe('season');
  });

  test('longitude without its sign', () => {
    expect(ids({ ...denver, site: { ...denver.site, longitudeDeg: 104.65 } })).toEqual(
      expect.arrayContaining(['time-zone', 'sun-at-night']),
    );
  });

  test('pressure reduced to sea level', () => {
    const found = doubts({ ...denver, pressurePa: denver.pressurePa.map(() => 101_500) });
    expect(found.map(({ id }) => id)).toEqual(['elevation']);
    expect(found[0]!.text).toContain('1650 m');
  });

  test('a stuck thermometer', () => {
    const dryBulbC = Float64Array.from(denver.dryBulbC).fill(3, 1000, 1050);
    const found = doubts({ ...denver, dryBulbC });
    expect(found.map(({ id }) => id)).toEqual(['stuck-value']);
    expect(found[0]!.text).toContain('for 50 hours');
  });

  test('days copied', () => {
    const dryBulbC = Float64Array.from(denver.dryBulbC);
    const globalHorizontal = Float64Array.from(denver.globalHorizontal);
    for (let hour = 2400; hour < 2496; hour++) {
      dryBulbC[hour] = dryBulbC[hour - 24]!;
      globalHorizontal[hour] = globalHorizontal[hour - 24]!;
    }
    const found = doubts({ ...denver, dryBulbC, globalHorizontal }).find(({ id }) => id === 'stuck-value');
    expect(found!.text).toContain('4 days are copies');
  });
});

test('every doubt says what it would do to the answer', async () => {
  for (const { text, effect } of doubts(await fileYear('702610TYA.CSV'))) {
    expect(text.length).toBeGreaterThan(20);
    expect(effect.length).toBeGreaterThan(20);
  }
});

test('a few hours beyond the possible are worth a look, many are a wrong unit', async () => {
  const year = await fileYear('723170TYA.CSV');
  const doubtWith = (count: number) => {
    const beamNormal = Float64Array.from(year.beamNormal);
    for (let day = 0; day < count; day++) beamNormal[day * 24 + 12] = 1500;
    const found = doubtsAbout(prepareClimate({ ...year, beamNormal })).find(
      ({ id }) => id === 'impossible-sun',
    );
    return [found?.weight, found?.effect.includes('hardly')];
  };
  expect(doubtWith(4)).toEqual([undefined, undefined]);
  expect(doubtWith(10)).toEqual(['look', true]);
  expect(doubtWith(60)).toEqual(['careful', false]);
  expect(doubtWith(200)).toEqual(['wrong', false]);
});
