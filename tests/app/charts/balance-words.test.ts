// The two budgets of water as one picture: what rooms and sunspace give off, and what the air between them carries.
import { expect, test } from 'vitest';
import { moistureSentence } from '../../../src/app/charts/balance-words.ts';
import { simulate } from '../../../src/network/simulate.ts';
import { moistureByMonth, waterTogether } from '../../../src/outcomes/balances.ts';
import { smallHouse } from '../../network/small-house.ts';
import { madeYear, madeZone } from '../../outcomes/made-year.ts';
import { bundledClimate } from '../../weather/bundled-climates.ts';

const twelve = (kgADay: number) => Array<number>(12).fill((kgADay * 365) / 12);

test('rooms say what both give off and what came with the sunspace’s air, and the sums agree', () => {
  const house = {
    ...madeZone('house', { moistureByCause: [{ cause: 'people', monthKg: twelve(9) }] }),
    airWaterFrom: [{ zone: 'sunspace', kg: 12 * 365 }],
  };
  const sunspace = madeZone('sunspace', { moistureByCause: [{ cause: 'plants', monthKg: twelve(44) }] });
  const year = madeYear({ zones: [house, sunspace] });
  const rows = moistureByMonth(year).filter(({ zone }) => zone === 'house');
  const said = moistureSentence(rows, 0, 'metric', waterTogether(year));
  expect(said).toMatch(/^9\.0\s?litres a day/);
  expect(said).toMatch(/together give off 53\.0\slitres a day, 44\.0\slitres a day of it in the sunspace/);
  expect(said).toMatch(/brings 12\.0\slitres a day into the rooms/);
});

test('a run books what the air carries between them: plants next door send water, no more than they give off', () => {
  const climate = bundledClimate('santa-fe');
  const [planted, bare] = [true, false].map((has) =>
    waterTogether(simulate(smallHouse({ planted: has }), climate)),
  );
  expect(planted!.broughtKg).toBeGreaterThan(0);
  expect(planted!.broughtKg).toBeLessThan(planted!.sunspaceKg);
  // Nothing is given off in a bare sunspace, which outdoor air dries: it sends no water.
  expect(bare!.sunspaceKg).toBe(0);
  expect(bare!.broughtKg).toBeLessThan(0);
});
