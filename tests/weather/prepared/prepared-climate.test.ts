import { beforeAll, expect, test } from 'vitest';
import { skyTemperatureC, skyTemperatureFromLongwaveC } from '../../../src/physics/sky-temperature.ts';
import { planeIrradiance, planeTotal } from '../../../src/weather/prepared/plane-irradiance.ts';
import {
  DEFAULT_ALBEDO,
  equatorAzimuth,
  type PreparedClimate,
  prepareClimate,
} from '../../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../../src/weather/typical-year.ts';
import { fileYear } from '../weather-files.ts';

let denver: TypicalYear;
let climate: PreparedClimate;
beforeAll(async () => {
  denver = await fileYear('725650TYA.CSV');
  climate = prepareClimate(denver);
});

test('every column has 8760 finite values and survives being copied to a worker', () => {
  const copy = structuredClone(climate);
  const columns = Object.entries(climate).filter(
    (entry): entry is [string, Float64Array] => entry[1] instanceof Float64Array,
  );
  expect(columns.length).toBeGreaterThanOrEqual(17);
  for (const [name, column] of columns) {
    expect(column.length, name).toBe(HOURS);
    expect(column.every(Number.isFinite), name).toBe(true);
    expect(copy[name as keyof PreparedClimate]).toEqual(column);
  }
  expect(planeTotal(planeIrradiance(copy, 90, 180))).toBe(planeTotal(planeIrradiance(climate, 90, 180)));
});

test('no light in hours without sun, the file untouched in the others', () => {
  for (let hour = 0; hour < HOURS; hour++) {
    const isUp = climate.cosZenith[hour]! > 0;
    expect(climate.globalHorizontal[hour]).toBe(isUp ? denver.globalHorizontal[hour] : 0);
    expect(climate.beamNormal[hour]).toBe(isUp ? denver.beamNormal[hour] : 0);
  }
});

test('the polar night of Barrow has no sun and no light; the polar day has sun at midnight', async () => {
  const barrow = prepareClimate(await fileYear('700260TYA.CSV'));
  // At 71.3° N the sun stays down from late November to late January and up from mid-May to end of July.
  expect(barrow.cosZenith.subarray(350 * 24, 365 * 24).every((value) => value === 0)).toBe(true);
  expect(barrow.globalHorizontal.subarray(350 * 24, 365 * 24).every((value) => value === 0)).toBe(true);
  expect(barrow.cosZenith.subarray(165 * 24, 180 * 24).every((value) => value > 0)).toBe(true);
});

test('a flat plane gets beam and diffuse of the horizontal, a plane facing down only the ground', () => {
  const flat = planeIrradiance(climate, 0, 0);
  const down = planeIrradiance(climate, 180, 0);
  for (let hour = 0; hour < HOURS; hour += 7) {
    expect(flat.beam[hour]).toBeCloseTo(climate.beamNormal[hour]! * climate.cosZenith[hour]!, 9);
    expect(flat.ground[hour]).toBe(0);
    expect(down.beam[hour]).toBe(0);
    expect(down.ground[hour]).toBeCloseTo(climate.globalHorizontal[hour]! * climate.albedo[hour]!, 9);
  }
});

test('the same plane is computed once, by its direction and not its number of turns', () => {
  expect(planeIrradiance(climate, 60, 180)).toBe(planeIrradiance(climate, 60, 540));
  expect(planeIrradiance(climate, 60, -90)).toBe(planeIrradiance(climate, 60, 270));
  expect(planeIrradiance(climate, 0, 180)).toBe(planeIrradiance(climate, 0, 90));
  expect(planeIrradiance(climate, 61, 180)).not.toBe(planeIrradiance(climate, 60, 180));
});

test('a sky mirrored north to south gives the mirrored plane the same light, exactly', () => {
  const mirrored: PreparedClimate = { ...climate, sunNorth: climate.sunNorth.map((north) => -north) };
  for (const [tilt, azimuth] of [
    [90, 180],
    [60, 150],
    [30, 75],
  ] as const) {
    const ours = planeTotal(planeIrradiance(mirrored, tilt, 180 - azimuth));
    expect(ours).toBeCloseTo(planeTotal(planeIrradiance(climate, tilt, azimuth)), 6);
  }
});

test('Denver carried south, its weather half a year later, takes the same light on the equator side', () => {
  // Half a year later the clock noon and the sun's noon lie up to half an hour apart (equation of time) and the sun's
  // height differs by up to a degree, while the file's radiation is the same: 2 % in the year.
  const half = 183 * 24;
  const turn = (column: Float64Array) => column.map((_, hour) => column[(hour + half) % HOURS]!);
  const south = prepareClimate({
    ...denver,
    site: { ...denver.site, latitudeDeg: -denver.site.latitudeDeg },
    albedo: turn(denver.albedo!),
    globalHorizontal: turn(denver.globalHorizontal),
    beamNormal: turn(denver.beamNormal),
    diffuseHorizontal: turn(denver.diffuseHorizontal),
  });
  const ours = planeTotal(planeIrradiance(south, 90, equatorAzimuth(-39.8)));
  const theirs = planeTotal(planeIrradiance(climate, 90, equatorAzimuth(39.8)));
  expect(Math.abs(ours / theirs - 1)).toBeLessThan(0.03);
  expect(planeTotal(planeIrradiance(south, 90, 180)) / ours).toBeLessThan(0.5);
});

test('the sky is modelled where the file has no long-wave radiation and measured where it has', async () => {
  expect(climate.skyTempC[100]).toBe(
    skyTemperatureC(
      denver.dryBulbC[100]!,
      denver.dewPointC[100]!,
      4.5,
      denver.pressurePa[100]!,
      denver.skyCover[100]!,
    ),
  );
  const italy = await fileYear('tmy_45.000_8.000_2005_2023.csv');
  expect(prepareClimate(italy).skyTempC[100]).toBe(skyTemperatureFromLongwaveC(italy.skyLongwave![100]!));
});

test('the modelled sky of a file with measured long-wave radiation is near the measured one', async () => {
  // The derived cover is held to 0…1, so the model is off where the measured sky is colder than clear or warmer than closed.
  for (const file of ['tmy_45.000_8.000_2005_2023.csv', 'tmy_40.417_-3.704_2005_2014.csv']) {
    const year = await fileYear(file);
    const measured = prepareClimate(year).skyTempC;
    const modelled = prepareClimate({ ...year, skyLongwave: null }).skyTempC;
    const mean = (column: Float64Array) => column.reduce((a, b) => a + b, 0) / HOURS;
    expect(Math.abs(mean(measured) - mean(modelled))).toBeLessThan(1);
  }
});

test('ground reflectance is the file’s, else the default', async () => {
  expect(climate.albedo).toBe(denver.albedo);
  expect(new Set(prepareClimate({ ...denver, albedo: null }).albedo)).toEqual(new Set([DEFAULT_ALBEDO]));
});

test('the soil’s year is the first harmonic of the air', () => {
  const wave = Float64Array.from(
    { length: HOURS },
    (_, hour) => 9 - 12 * Math.cos((2 * Math.PI * ((hour + 0.5) / 24 - 35)) / 365),
  );
  const { ground } = prepareClimate({ ...denver, dryBulbC: wave, dewPointC: wave });
  expect(ground.meanC).toBeCloseTo(9, 6);
  expect(ground.amplitudeK).toBeCloseTo(12, 6);
  expect(ground.coldestDay).toBeCloseTo(35, 6);
});
