// Houses as they were measured by their owners and by field studies, against the same kind of house here. No set-up knows all
// of a house: each is made of what is known, the gains that nobody noted stand at their middle, and the year is a typical one
// of the place or of the nearest bundled climate. What is allowed is what such an account is worth. A miss stays in the table
// as a note with its reason.
import { expect, test } from 'vitest';
import { runYear } from '../../src/daystone.ts';
import type { Design } from '../../src/design/design.ts';
import { parseDesign } from '../../src/design/schema.ts';
import type { MonthlyNormals } from '../../src/weather/normals.ts';
import { type PreparedClimate, prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { yearFromNormals } from '../../src/weather/synthetic/monthly-normals.ts';
import { monthOfHour } from '../../src/weather/typical-year.ts';
import { climateById } from '../consistency/promises.ts';
import { check } from './ledger.ts';
import { ALENTEJO, BRIGHTON, FREEVILLE, HOCKERTON, kressberg, SANTA_FE, TAOS } from './measured-houses.ts';

/** Of a hill town near Kreßberg; from memory, medium confidence. */
const KRESSBERG_NORMALS: MonthlyNormals = {
  name: 'Kreßberg',
  latitudeDeg: 49.2,
  longitudeDeg: 10.2,
  elevationM: 490,
  meanDailyHighC: [2, 3.8, 8.7, 13.8, 18.2, 21.4, 23.7, 23.4, 18.6, 12.9, 6.4, 2.9],
  meanDailyLowC: [-4, -3.8, -0.8, 2.6, 7.1, 10.4, 12.2, 11.8, 8.3, 4.5, 0.3, -2.7],
  humidityPercent: [87, 83, 77, 71, 71, 71, 70, 73, 79, 84, 88, 89],
  dailyGlobalKWh: [0.9, 1.7, 2.9, 4.3, 5.1, 5.5, 5.5, 4.7, 3.3, 1.9, 1, 0.7],
  windSpeed: [3.2, 3.1, 3.1, 2.9, 2.6, 2.5, 2.4, 2.3, 2.4, 2.6, 2.8, 3.1],
};
const DAY_H = 24;
const FEBRUARY = 1;
const JUNE = 5;
const AUGUST = 7;
const WINTER = [11, 0, 1];

function madeClimate(normals: MonthlyNormals): PreparedClimate {
  const made = yearFromNormals(normals);
  if (!made.ok) throw new Error(`${normals.name} makes no year`);
  return prepareClimate(made.year);
}

/** Temperatures and humidity of the rooms, and figures of the whole year. */
function run(design: Design, climate: PreparedClimate) {
  expect(parseDesign(JSON.parse(JSON.stringify(design)))).toMatchObject({ ok: true });
  const { year, outcome } = runYear(design, climate);
  const [rooms] = year.zones;
  return { airC: rooms!.airC, rh: rooms!.relativeHumidity, outcome };
}

const hoursOf = (months: readonly number[]) =>
  Array.from({ length: 8760 }, (_, hour) => hour).filter((hour) => months.includes(monthOfHour(hour)));
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

/** Hours of the seven days in a month that have most sun, or of so many days that are hottest, in one piece. */
function spell(climate: PreparedClimate, by: ArrayLike<number>, days: number, months?: readonly number[]) {
  const hours = days * DAY_H;
  let best: readonly number[] = [];
  let most = Number.NEGATIVE_INFINITY;
  for (let from = 0; from + hours <= climate.year.dryBulbC.length; from += DAY_H) {
    const piece = Array.from({ length: hours }, (_, i) => from + i);
    if (months && !piece.every((hour) => months.includes(monthOfHour(hour)))) continue;
    const sum = piece.reduce((all, hour) => all + by[hour]!, 0);
    if (sum > most) [most, best] = [sum, piece];
  }
  return best;
}

interface Measured {
  readonly source: string;
  readonly where: string;
  readonly quantity: string;
  readonly range: readonly [number, number];
  readonly allowed: number;
  readonly ours: number;
  readonly unit: string;
  /** a miss that is known, with its reason: how far off it may be before it fails */
  readonly missed?: number;
}

function measured({ source, where, quantity, range, allowed, ours, unit, missed }: Measured): void {
  check({
    source: `Houses as measured, ${source}`,
    case: where,
    quantity,
    kind: 'range',
    referenceMin: range[0],
    referenceMax: range[1],
    ours,
    allowed,
    unit,
    mark: 'measured',
    ...(missed !== undefined && { noteAllowed: missed }),
  });
}

test('a rammed-tyre house without a heater stays at 14 to 16 °C through a German winter', () => {
  const climate = madeClimate(KRESSBERG_NORMALS);
  const { outcome } = run(kressberg(800), climate);
  measured({
    source: 'rammed tyres, winter 2016–17 (accounts of builder and engineers)',
    where: 'Kreßberg, 170 m², planted sunspace, no heater, 800 W of use; year made from monthly normals',
    quantity: 'coldest air of the rooms',
    range: [14, 16],
    allowed: 2,
    ours: outcome.zones.house.minAirC,
    unit: '°C',
  });
});

test('a planted sunspace that is shut off stays above frost, and an oven holds the rooms', () => {
  const { outcome } = run(FREEVILLE, climateById('burlington'));
  const where = 'Freeville NY, wood oven, sunspace shut off; nearest bundled climate, Burlington';
  measured({
    source: 'rammed tyres, winters 2013–16 (owners’ log)',
    where,
    quantity: 'coldest air of the sunspace',
    range: [4, 9],
    allowed: 2,
    ours: outcome.zones.sunspace!.minAirC,
    unit: '°C',
  });
  measured({
    source: 'rammed tyres, winters 2013–16 (owners’ log)',
    where: `${where}. Size, insulation and use of the oven unknown: ours holds 18 °C by day and 13 by night with a well insulated roof`,
    quantity: 'heat of the oven to the rooms, a year',
    range: [5, 8],
    allowed: 0,
    ours: outcome.heating.energyKWh / 1000,
    unit: 'MWh',
    missed: 4.5,
  });
});

test('an earth-sheltered terrace with heat recovery needs no heating', () => {
  const { outcome } = run(HOCKERTON, climateById('belfast'));
  const where = 'Hockerton, conservatory, triple glass, family of four; nearest bundled climate, Belfast';
  const row = { source: 'earth-sheltered terrace, since 1998 (press 2024)', where, allowed: 1.5, unit: '°C' };
  const { minAirC, maxAirC } = outcome.zones.house;
  measured({ ...row, quantity: 'coldest air of the rooms', range: [18, 23], ours: minAirC });
  measured({ ...row, quantity: 'warmest air of the rooms', range: [18, 23], ours: maxAirC });
});

test('an empty one without insulation under its floor is cold and damp in winter', () => {
  const { airC, rh } = run(BRIGHTON, climateById('belfast'));
  const hours = hoursOf(WINTER);
  const where = 'Brighton, visitor building, bare floor, empty; nearest bundled climate, Belfast';
  const source = 'rammed chalk in tyres, since 2004 (Renewable Energy 34, 2009)';
  measured({
    source,
    where,
    quantity: 'share of winter under 16 °C',
    range: [0.5, 1],
    allowed: 0,
    ours: hours.filter((hour) => airC[hour]! < 16).length / hours.length,
    unit: '',
  });
  measured({
    source,
    where: `${where}. Water that rises through floor and walls is not in the model`,
    quantity: 'mean humidity of winter',
    range: [0.7, 1],
    allowed: 0.08,
    ours: mean(hours.map((hour) => rh[hour]!)),
    unit: '',
    missed: 0.3,
  });
});

test('a thick rammed-earth house with few openings evens out a summer spell', () => {
  const climate = climateById('madrid');
  // Whether windows stood open is not told: shut and opened by hand, and their middle.
  const opened = run(ALENTEJO, climate).airC;
  const shut = run({ ...ALENTEJO, vents: { ...ALENTEJO.vents, habit: 'never' } }, climate).airC;
  const hours = spell(climate, climate.year.dryBulbC, 14);
  const both = [opened, shut].map((airC) => hours.map((hour) => airC[hour]!));
  const outdoors = hours.map((hour) => climate.year.dryBulbC[hour]!);
  const where =
    'Alentejo, thick earth walls, few openings, windows shut and opened by hand, middle, hottest fortnight; nearest bundled climate, Madrid';
  const source = 'rammed earth in summer (Buildings 5, 2015)';
  measured({
    source,
    where,
    quantity: 'range of the rooms over that of outdoors',
    range: [0.15, 0.15],
    allowed: 0.06,
    ours: mean(both.map(spread)) / spread(outdoors),
    unit: '',
    missed: 0.3,
  });
  measured({
    source,
    where,
    quantity: 'mean of the rooms less that of outdoors',
    range: [0, 0],
    allowed: 1,
    ours: mean(both.map(mean)) - mean(outdoors),
    unit: 'K',
    missed: 4,
  });
});

test('an adobe house with direct gain stands as its owners found it, in sun and in summer', () => {
  const climate = climateById('santa-fe');
  const { airC } = run(SANTA_FE, climate);
  const sunny = spell(climate, climate.year.globalHorizontal, 7, [FEBRUARY]).map((hour) => airC[hour]!);
  const august = hoursOf([AUGUST]).map((hour) => airC[hour]!);
  const row = { source: 'adobe and direct gain, 2011 (owners’ log)', allowed: 1.5, unit: '°C' };
  const where = 'Santa Fe county, boiler at 17.2 °C; bundled climate of Santa Fe';
  measured({
    ...row,
    where: `${where}, sunniest week of February`,
    quantity: 'coldest air',
    range: [18, 25],
    ours: Math.min(...sunny),
  });
  measured({
    ...row,
    where: `${where}, sunniest week of February`,
    quantity: 'warmest air',
    range: [18, 25],
    ours: Math.max(...sunny),
  });
  measured({
    ...row,
    where: `${where}, August`,
    quantity: 'coldest air',
    range: [20, 25.6],
    ours: Math.min(...august),
    // Who opens windows at night is not told; ours cool the rooms further before a hot day.
    missed: 2,
  });
  measured({
    ...row,
    where: `${where}, August`,
    quantity: 'warmest air',
    range: [20, 25.6],
    ours: Math.max(...august),
  });
});

test('leaning glass without shade overheats in June', () => {
  const { airC } = run(TAOS, climateById('santa-fe'));
  measured({
    source: 'rammed tyres, June 1995 (Renewable Energy 8, 1996)',
    where: 'Taos, sloped glass without shade; nearest bundled climate, Santa Fe',
    quantity: 'warmest air of the rooms in June',
    range: [28, 45],
    allowed: 0,
    ours: Math.max(...hoursOf([JUNE]).map((hour) => airC[hour]!)),
    unit: '°C',
  });
});
