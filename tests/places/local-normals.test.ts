// Normals looked up for a place: beside real files of ten sites, anywhere on earth, and what a person is warned of.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type PlaceFiles, placeFiles } from '../../src/cli/place-data.ts';
import type { FoundPlace } from '../../src/places/looked-up.ts';
import { lookedUp, placesFor } from '../../src/places/looked-up.ts';
import { yearFromNormals } from '../../src/weather/synthetic/monthly-normals.ts';
import { differencesAt, TEN_SITES } from './ten-sites.ts';

let files: PlaceFiles;
beforeAll(async () => {
  files = await placeFiles();
});

/**
 * What the trial of the method found against typical-year files, for means of the year, with half of the last digit told;
 * files are typical years of other decades and stations, so this is the error a person meets, not one of arithmetic.
 */
const STATED = {
  highK: [0.15, 2.85],
  lowK: [-1.65, 2.55],
  humidityPoints: [-9.5, 6.5],
  sunShare: [-0.105, 0.145],
  monthK: 8,
} as const;

test.each(TEN_SITES)('%s: the year’s means are within the stated errors', async (id) => {
  const { high, low, humidity, sun } = await differencesAt(id);
  const within = (value: number, [least, most]: readonly [number, number]) => {
    expect(value).toBeGreaterThanOrEqual(least);
    expect(value).toBeLessThanOrEqual(most);
  };
  within(high.year, STATED.highK);
  within(low.year, STATED.lowK);
  within(humidity.year, STATED.humidityPoints);
  within(sun, STATED.sunShare);
  expect(high.worst).toBeLessThan(STATED.monthK);
  expect(low.worst).toBeLessThan(STATED.monthK);
});

function at(asked: string): FoundPlace {
  const found = placesFor(asked, 1, files);
  if (!found.ok || found.places[0] === undefined) throw new Error(`${asked} is not found`);
  return found.places[0];
}
const warningsAt = (asked: string) => lookedUp(at(asked), null, files, files.table).warnings.join(' ');

test('what is told of a place is told in the units of the page that asks', () => {
  const words = {
    distance: (km: number) => `${Math.round(km / 1.609344)} miles`,
    height: (m: number) => `${Math.round(m / 0.3048)} ft`,
    degrees: (kelvin: number) => `${Math.round(1.8 * kelvin)} °F`,
    speed: (ms: number) => `${(ms / 0.44704).toFixed(1)} mph`,
  };
  for (const asked of ['-40, -120', 'Thimphu', 'Monterey, California', 'La Paz']) {
    const { normals, assumed, warnings } = lookedUp(at(asked), null, files, files.table, words);
    const told = [...assumed, ...warnings, ...normals.from!.notes!].join(' ');
    expect(told).toMatch(/\d (ft|miles|mph|°F)/);
    expect(told).not.toMatch(/\d (m|km|K|m\/s)\b|kelvin|kilomet/);
  }
});

describe('a person is warned', () => {
  test('far from any station', () => {
    expect(warningsAt('-40, -120')).toContain('km away');
    expect(warningsAt('Zurich')).not.toContain('km away');
  });
  test('far above or below all of them', () => {
    expect(warningsAt('Thimphu')).toContain('m off');
  });
  test('at the coast of a cold sea, and not at that of a warm one', () => {
    expect(warningsAt('Lüderitz')).toContain('cold sea');
    expect(warningsAt('Monterey, California')).toContain('cold sea');
    expect(warningsAt('Naples')).not.toContain('cold sea');
    expect(warningsAt('Denver')).not.toContain('cold sea');
  });
  test('in a valley among hills with a winter, and not on a plain', () => {
    expect(warningsAt('Chur, Switzerland')).toContain('cold air and fog');
    expect(warningsAt('Winnipeg')).not.toContain('cold air and fog');
  });
});

test('higher up it is colder: 1000 m are 5 to 7 K, and nothing else changes by itself', () => {
  const place = at('Alamosa');
  const normals = (elevationM: number) =>
    lookedUp({ ...place, elevationM }, null, files, files.table).normals;
  let before = normals(2000);
  for (let elevationM = 2050; elevationM <= 3000; elevationM += 50) {
    const next = normals(elevationM);
    // stations of like height weigh more, so a step is not the lapse alone
    expect(next.meanDailyHighC[6]! - before.meanDailyHighC[6]!).toBeLessThan(0.1);
    expect(before.meanDailyHighC[6]! - next.meanDailyHighC[6]!).toBeLessThan(1);
    before = next;
  }
  expect(normals(2000).meanDailyHighC[6]! - before.meanDailyHighC[6]!).toBeGreaterThan(4);
  expect(normals(2000).meanDailyHighC[6]! - before.meanDailyHighC[6]!).toBeLessThan(8);
});

test('how a place lies to the wind is asked in words, and each answer has its wind', () => {
  const place = at('Bergamo');
  const wind = (exposure: 'sheltered' | 'open' | 'ridge' | null) =>
    lookedUp(place, exposure, files, files.table).normals.windSpeed[0]!;
  expect(wind('sheltered')).toBeLessThan(wind(null));
  expect(wind(null)).toBeLessThan(wind('open'));
  expect(wind('open')).toBeLessThan(wind('ridge'));
});

// Its shrunken case: stations by the sea brought to 3,200 m, where a day of July has 2 K of range.
test('a month with hardly a daily range gives a year that is a year', () => {
  const place = { ...at('0, 0'), elevationM: 3227.5 };
  const made = yearFromNormals(lookedUp(place, null, files, files.table).normals);
  expect(made).toMatchObject({ ok: true });
  if (made.ok) expect(Math.max(...made.year.dryBulbC)).toBeLessThan(25);
});

test('anywhere on earth where people live a year can be made, and it says that it is made', () => {
  const degrees = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
  fc.assert(
    fc.property(degrees(-60, 80), degrees(-180, 180), degrees(-400, 5500), (lat, lon, elevationM) => {
      const found = placesFor(`${lat.toFixed(3)}, ${lon.toFixed(3)}`, 1, files);
      if (!found.ok) throw new Error(found.fault);
      const { normals } = lookedUp({ ...found.places[0]!, elevationM }, null, files, files.table);
      const made = yearFromNormals(normals);
      expect(made, JSON.stringify(normals)).toMatchObject({ ok: true });
      if (made.ok) expect(made.year.source).toContain('not measured');
    }),
    { numRuns: 12 },
  );
});
