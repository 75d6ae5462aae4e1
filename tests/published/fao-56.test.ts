// Source: FAO Irrigation and Drainage Paper 56 (1998), examples 17, 18 and 19, every printed step. Example 18 was seen
// quoted; inputs of 17 and 19 are from memory and confirmed by their printed results.
import { expect, test } from 'vitest';
import * as fao from '../../src/physics/evapotranspiration.ts';
import { check } from './ledger.ts';

const SOURCE = 'FAO-56 (1998)';

/** Half of the last digit of each reference; a sum of printed, rounded steps may be off by the 0.02 its authors' rounding leaves. */
const DIGITS = { 1: 0.05, 2: 0.005, 3: 0.0005, 4: 0.00005 } as const;
const RESULT_DAILY = 0.02;
const RESULT_HOURLY = 0.01;

type Step = readonly [quantity: string, reference: number, ours: number, allowed: number, unit: string];

function checkSteps(name: string, steps: readonly Step[], count: number): void {
  expect(steps).toHaveLength(count);
  for (const [quantity, reference, ours, allowed, unit] of steps) {
    check({ source: SOURCE, case: name, quantity, reference, ours, allowed, unit, mark: 'memory' });
  }
}

test('example 18: Uccle, 6 July, daily', () => {
  const [day, latitude, elevation] = [187, 50.8, 100];
  const wind = fao.windAt2m(2.78, 10); // printed: 10 km/h or 2.78 m/s
  const pressure = fao.pressureKPa(elevation);
  const gamma = fao.psychrometricConstant(pressure);
  const mean = (21.5 + 12.3) / 2;
  const saturated = fao.dailySaturationKPa(21.5, 12.3);
  const vapour = fao.dailyVapourKPa(21.5, 12.3, 0.84, 0.63);
  const extra = fao.extraterrestrialDaily(latitude, day);
  const daylight = fao.daylightHours(latitude, day);
  const solar = fao.solarFromSunshine(9.25, daylight, extra);
  const clear = fao.clearSky(elevation, extra);
  const short = fao.netShortwave(solar);
  const long = fao.netLongwaveDaily(21.5, 12.3, vapour, solar / clear);
  const evaporation = fao.referenceDaily({
    tempC: mean,
    windSpeed: wind,
    deficit: saturated - vapour,
    available: short - long,
    gamma,
  });
  checkSteps(
    'example 18, Uccle, 6 July',
    [
      ['wind at 2 m', 2.079, wind, DIGITS[3], 'm/s'],
      ['pressure', 100.1, pressure, DIGITS[1], 'kPa'],
      ['psychrometric constant', 0.0666, gamma, DIGITS[4], 'kPa/K'],
      ['slope', 0.122, fao.saturationSlope(mean), DIGITS[3], 'kPa/K'],
      ['saturation pressure', 1.997, saturated, DIGITS[3], 'kPa'],
      ['vapour pressure', 1.409, vapour, DIGITS[3], 'kPa'],
      ['extraterrestrial radiation', 41.09, extra, DIGITS[2], 'MJ/m²'],
      ['daylight', 16.1, daylight, DIGITS[1], 'h'],
      ['solar radiation', 22.07, solar, DIGITS[2], 'MJ/m²'],
      ['clear-sky radiation', 30.9, clear, DIGITS[2], 'MJ/m²'],
      ['net short-wave', 17.0, short, DIGITS[1], 'MJ/m²'],
      ['net long-wave', 3.71, long, DIGITS[2], 'MJ/m²'],
      ['net radiation', 13.28, short - long, DIGITS[2], 'MJ/m²'],
      ['reference evapotranspiration', 3.88, evaporation, RESULT_DAILY, 'mm/d'],
    ],
    14,
  );
});

test('example 17: Bangkok, April, monthly mean', () => {
  const day = 105;
  const [mean, saturated, vapour] = [(34.8 + 25.6) / 2, fao.dailySaturationKPa(34.8, 25.6), 2.85];
  const extra = fao.extraterrestrialDaily(13.73, day);
  const solar = fao.solarFromSunshine(8.5, fao.daylightHours(13.73, day), extra);
  const long = fao.netLongwaveDaily(34.8, 25.6, vapour, solar / fao.clearSky(2, extra));
  const net = fao.netShortwave(solar) - long;
  const gamma = fao.psychrometricConstant(fao.pressureKPa(2));
  const evaporation = fao.referenceDaily({
    tempC: mean,
    windSpeed: 2,
    deficit: saturated - vapour,
    available: net - 0.14,
    gamma,
  });
  checkSteps(
    'example 17, Bangkok, April',
    [
      ['slope', 0.246, fao.saturationSlope(mean), DIGITS[3], 'kPa/K'],
      ['extraterrestrial radiation', 38.06, extra, DIGITS[2], 'MJ/m²'],
      ['solar radiation', 22.65, solar, DIGITS[2], 'MJ/m²'],
      ['net radiation', 14.33, net, DIGITS[2], 'MJ/m²'],
      ['reference evapotranspiration', 5.72, evaporation, RESULT_DAILY, 'mm/d'],
    ],
    5,
  );
});

test("example 19: N'Diaye, 1 October, 14 to 15 h and 2 to 3 h", () => {
  const [day, latitude, longitude, zone, elevation] = [274, 16.22, -16.25, -15, 8];
  const gamma = fao.psychrometricConstant(fao.pressureKPa(elevation));
  const vapour = 0.52 * fao.saturationKPa(38);
  const extra = fao.extraterrestrialHourly(latitude, day, 14.5, longitude, zone);
  const clear = fao.clearSky(elevation, extra);
  const net = fao.netShortwave(2.45) - fao.netLongwaveDaily(38, 38, vapour, 2.45 / clear) / 24;
  const soil = fao.soilHeatHourly(net, true);
  const evaporation = fao.referenceHourly({
    tempC: 38,
    windSpeed: 3.3,
    deficit: fao.saturationKPa(38) - vapour,
    available: net - soil,
    gamma,
  });
  checkSteps(
    "example 19, N'Diaye, 14–15 h",
    [
      ['vapour pressure', 3.445, vapour, DIGITS[3], 'kPa'],
      ['extraterrestrial radiation', 3.543, extra, DIGITS[3], 'MJ/m²'],
      ['clear-sky radiation', 2.658, clear, DIGITS[3], 'MJ/m²'],
      ['clearness', 0.922, 2.45 / clear, DIGITS[3], ''],
      ['net radiation', 1.749, net, DIGITS[3], 'MJ/m²'],
      ['soil heat', 0.175, soil, DIGITS[3], 'MJ/m²'],
      ['reference evapotranspiration', 0.627, evaporation, RESULT_HOURLY, 'mm/h'],
    ],
    7,
  );
  const nightVapour = 0.9 * fao.saturationKPa(28);
  const nightNet = -fao.netLongwaveDaily(28, 28, nightVapour, 0.8) / 24;
  const nightSoil = fao.soilHeatHourly(nightNet, false);
  const night = fao.referenceHourly({
    tempC: 28,
    windSpeed: 1.9,
    deficit: fao.saturationKPa(28) - nightVapour,
    available: nightNet - nightSoil,
    gamma,
  });
  checkSteps(
    "example 19, N'Diaye, 02–03 h",
    [
      [
        'extraterrestrial radiation',
        0,
        fao.extraterrestrialHourly(latitude, day, 2.5, longitude, zone),
        0,
        'MJ/m²',
      ],
      ['net radiation', -0.1, nightNet, DIGITS[3], 'MJ/m²'],
      ['soil heat', -0.05, nightSoil, DIGITS[3], 'MJ/m²'],
      ['reference evapotranspiration', 0, night, RESULT_HOURLY, 'mm/h'],
    ],
    4,
  );
});
