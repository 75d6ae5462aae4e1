import { describe, expect, test } from 'vitest';
import type { Model, Zone } from '../../src/model/model.ts';
import { dampSpots } from '../../src/outcomes/damp-spots.ts';
import { freshAir } from '../../src/outcomes/fresh-air.ts';
import { HOURS } from '../../src/weather/typical-year.ts';
import { bareZone } from '../network/box-model.ts';
import { madeZone } from './made-year.ts';

const zone = (planted: boolean): Zone =>
  bareZone('house', {
    floorAreaM2: 100,
    volumeM3: 250,
    planting: planted
      ? { bedM2: 4, leafAreaIndex: 2, boundaryResistance: 200, albedo: 0.2, soil: 'bare' }
      : null,
    cornerFactor: 0.7,
  });
const modelWith = (planted: boolean): Model => ({
  name: 'made',
  zones: [zone(planted)],
  elements: [],
  panes: [],
  openings: [],
});
const cold = new Float64Array(HOURS);

describe('damp spots', () => {
  test('the monthly check asks for the factor ISO 13788 gives for 20 °C, 50 % and 0 °C outside', () => {
    // ISO 13788 check value, computed from its formulas: fRsi 0.631 for 80 % at the surface.
    const air = madeZone('house', { airC: 20, operativeC: 20, relativeHumidity: 0.5, cornerC: 14 });
    const [corner] = dampSpots(air, modelWith(false), cold);
    expect(Math.abs(corner!.neededFactor - 0.631)).toBeLessThan(0.002);
    expect(corner!.passesMonthlyCheck).toBe(true);
    expect(corner!.dampHours).toBe(0);
    expect(corner!.mouldIndexMax).toBe(0);
  });

  test('behind a planting it is damper than in the corner, and only where there is one', () => {
    const air = madeZone('house', { airC: 20, operativeC: 20, relativeHumidity: 0.57, cornerC: 14 });
    expect(dampSpots(air, modelWith(false), cold).map(({ spot }) => spot)).toEqual(['coldest corner']);
    const [corner, behind] = dampSpots(air, modelWith(true), cold);
    expect(behind!.spot).toBe('behind the planting');
    expect(behind!.factor).toBeLessThan(corner!.factor);
    expect(behind!.mouldIndexMax).toBeGreaterThan(corner!.mouldIndexMax);
    expect(behind!.passesMonthlyCheck).toBe(false);
  });

  test('dew settles on a corner colder than the dew point, and nowhere else', () => {
    // 20 °C, 60 % has its dew point at 12.0 °C (ISO 13788, computed); factor 0.7 at −10 °C outside makes 11 °C.
    const air = (tempC: number) =>
      madeZone('house', { airC: tempC, operativeC: 20, relativeHumidity: 0.6, cornerC: 11 });
    const [wet] = dampSpots(air(20), modelWith(false), new Float64Array(HOURS).fill(-10));
    expect(wet!.dewHours).toBe(HOURS);
    expect(wet!.dewKgPerM2).toBeGreaterThan(0);
    expect(wet!.dampestMonthHumidity).toBe(1);
    const [dry] = dampSpots(air(20), modelWith(false), cold);
    expect(dry).toMatchObject({ dewHours: 0, dewKgPerM2: 0 });
  });

  test('a zone the model does not know is refused by name', () => {
    const air = madeZone('barn', { airC: 20, operativeC: 20, relativeHumidity: 0.5, cornerC: 14 });
    expect(() => dampSpots(air, modelWith(false), cold)).toThrow(/barn/);
  });
});

test('a tight house is stale and below its ventilation, an open one neither', () => {
  const tight = freshAir(madeZone('house', { ventAch: 0.1, co2Ppm: 2500 }));
  expect(tight).toMatchObject({ belowVentilationHours: HOURS, staleAirHours: HOURS, maxCo2Ppm: 2500 });
  const open = freshAir(madeZone('house', { ventAch: 1, co2Ppm: 600 }));
  expect(open).toMatchObject({ belowVentilationHours: 0, staleAirHours: 0, meanAirChanges: 1 });
});
