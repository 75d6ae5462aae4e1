import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { hourlyFile } from '../../src/outcomes/hourly-file.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { madeClimate } from './made-climate.ts';
import { MADE_MODEL } from './made-model.ts';
import { hourly, madeOpening, madePane, madeYear, madeZone } from './made-year.ts';

const CLOSED = EXAMPLES.find(({ id }) => id === 'closed')!.design;
const year = madeYear({
  zones: [
    madeZone('house', {
      airC: (hour) => (hour < 100 ? 27 : hour === 200 ? 10 : 20),
      relativeHumidity: (hour) => (hour < 50 ? 0.9 : 0.4),
      heatingW: (hour) => (hour < 24 ? 1000 : 0),
      condensationG: (hour) => (hour % 2 === 0 ? 10 : -10),
      moistureByCause: [{ cause: 'people', monthKg: Array(12).fill(365 / 12) }],
    }),
    madeZone('sunspace', { airC: 35, heatingW: (hour) => (hour === 0 ? 500 : 0) }),
  ],
  panes: [madePane('front', { incidentW: hourly(1000), transmittedW: hourly(600) })],
  openings: [madeOpening('vent', () => 2, 876)],
  books: { heatResidual: 1e-12, waterResidual: -1e-13, zoneHeatResidual: [0, 0] },
});

describe('the outcome of a year', () => {
  const outcome = summarise(CLOSED, MADE_MODEL, madeClimate(), year);

  it('has the keys other people read', () => {
    expect(Object.keys(outcome)).toEqual([
      'daystone',
      'design',
      'site',
      'equatorGlass',
      'mass',
      'zones',
      'heating',
      'cooling',
      'vents',
      'ventilation',
      'books',
    ]);
    expect(Object.keys(outcome.zones)).toEqual(['house', 'sunspace']);
    expect(Object.keys(outcome.site)).toEqual(['name', 'latitudeDeg', 'longitudeDeg', 'elevationM']);
    expect(Object.keys(outcome.equatorGlass)).toEqual([
      'areaM2',
      'shareOfWall',
      'shareOfFloor',
      'tiltDeg',
      'incidentKWh',
      'transmittedKWh',
    ]);
    for (const key of [
      'meanAirC',
      'maxAirC',
      'minAirC',
      'maxOperativeC',
      'minOperativeC',
      'overheatedHours',
      'overheatedDegreeHours',
      'overheatLimitC',
      'adaptiveOverheatedHours',
      'underheatedHours',
      'underheatLimitC',
      'meanDailySwingK',
      'meanRelativeHumidity',
      'humidHours',
      'humidLimit',
      'mouldIndexMax',
      'condensationKg',
      'moistureLoadKgPerDay',
    ] as const) {
      expect(outcome.zones.house[key], key).toBeTypeOf('number');
    }
  });

  it('counts the house against the limits of the design', () => {
    const { house } = outcome.zones;
    expect(house.overheatedHours).toBe(100);
    expect(house.overheatedDegreeHours).toBe(100);
    expect(house.overheatLimitC).toBe(CLOSED.comfort.overheatC);
    expect(house.underheatedHours).toBe(1);
    expect(house.coldestHour).toBe(200);
    expect(house.humidHours).toBe(50);
    expect(house.condensationKg).toBeCloseTo(43.8, 10);
    expect(house.moistureLoadKgPerDay).toBeCloseTo(1, 10);
  });

  it('adds the heating of all zones, and takes the peak of their sum', () => {
    expect(outcome.heating).toEqual({ energyKWh: 24.5, peakW: 1500, shortHours: null });
    expect(outcome.cooling).toEqual({ energyKWh: 0, peakW: 0 });
  });

  it('gives the sunspace the same figures and leaves it out where there is none', () => {
    expect(outcome.zones.sunspace?.overheatedHours).toBe(8760);
    const without = summarise(CLOSED, MADE_MODEL, madeClimate(), madeYear());
    expect('sunspace' in without.zones).toBe(false);
  });

  it('prints as JSON without a NaN and reads back the same', () => {
    const text = JSON.stringify(outcome);
    expect(text).not.toContain('NaN');
    expect(JSON.parse(text)).toEqual(outcome);
  });

  it('counts vents and passes the books on', () => {
    expect(outcome.vents).toEqual({
      moves: 730,
      movesPerDayInBusiestMonth: 2,
      movesOnBusiestDay: 2,
      neglectedShare: 0.1,
      airings: 0,
      heatedWhileOpenHours: 0,
      heatedWhileOpenKWh: 0,
    });
    expect(outcome.books).toEqual({ heatResidual: 1e-12, waterResidual: -1e-13 });
  });
});

describe('the hourly file', () => {
  const lines = hourlyFile(madeClimate(), year).split('\n');

  it('has a header, 8760 rows and a closing line feed', () => {
    expect(lines).toHaveLength(1 + 8760 + 1);
    expect(lines[8761]).toBe('');
    expect(lines[0]?.split(',').slice(0, 14)).toEqual([
      'hour',
      'month',
      'day',
      'hourOfDay',
      'outdoorC',
      'globalWm2',
      'houseAirC',
      'houseOperativeC',
      'houseRh',
      'houseSolarW',
      'houseHeatingW',
      'houseVentAch',
      'houseMoistureSourceGPerH',
      'houseCondensationGPerH',
    ]);
    expect(lines[0]).toContain(',sunspaceAirC,');
    expect(lines[0]).toMatch(/,houseAirHeatW,houseAirWaterGPerH,sunspaceAirHeatW,sunspaceAirWaterGPerH$/);
  });

  it('stamps the end of each hour', () => {
    expect(lines[1]).toMatch(/^1,1,1,1,/);
    expect(lines[8760]).toMatch(/^8760,12,31,24,/);
  });

  it('has a finite number in every cell', () => {
    const width = lines[0]!.split(',').length;
    let cells = 0;
    for (const line of lines.slice(1, -1)) {
      const row = line.split(',');
      expect(row).toHaveLength(width);
      cells += row.filter((cell) => cell !== '' && Number.isFinite(Number(cell))).length;
    }
    expect(cells).toBe(8760 * width);
  });
});
