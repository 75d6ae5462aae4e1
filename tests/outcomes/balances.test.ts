import { describe, expect, it } from 'vitest';
import { heatByMonth, moistureByMonth } from '../../src/outcomes/balances.ts';
import { moistureLoad } from '../../src/outcomes/moisture-load.ts';
import { madeYear, madeZone } from './made-year.ts';

const TWELVE = Array.from({ length: 12 }, (_, month) => month + 1);

describe('balances by month', () => {
  it('turns joules into kilowatt-hours and keeps signs', () => {
    const monthJ = TWELVE.map((month) => -3.6e6 * month);
    const rows = heatByMonth(madeYear({ heat: [{ zone: 'house', cause: 'glass', monthJ }] }));
    expect(rows).toEqual([
      { zone: 'house', cause: 'glass', months: TWELVE.map((month) => -month), year: -78 },
    ]);
  });

  it('lists water by zone and cause', () => {
    const zone = madeZone('sunspace', { moistureByCause: [{ cause: 'plants', monthKg: TWELVE }] });
    expect(moistureByMonth(madeYear({ zones: [zone] }))).toEqual([
      { zone: 'sunspace', cause: 'plants', months: TWELVE, year: 78 },
    ]);
  });
});

describe('the moisture load', () => {
  it('is the mean over 365 days, largest cause first', () => {
    const zone = madeZone('house', {
      moistureByCause: [
        { cause: 'people', monthKg: Array(12).fill(365 / 12) },
        { cause: 'plants', monthKg: Array(12).fill(730 / 12) },
      ],
    });
    const load = moistureLoad(zone);
    expect(load.kgPerDay).toBeCloseTo(3, 12);
    expect(load.byCause.map(({ cause }) => cause)).toEqual(['plants', 'people']);
    expect(load.byCause[0]?.kgPerDay).toBeCloseTo(2, 12);
  });

  it('is zero without sources', () => {
    expect(moistureLoad(madeZone('house'))).toEqual({ kgPerDay: 0, byCause: [] });
  });
});
