// What a household releases over a week against BS 5250:2002's daily totals (from memory, medium confidence) and the
// design's own averages.
import { expect, test } from 'vitest';
import type { Design, Living } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { gainsOf, moistureOf, peopleAtHome } from '../../src/model/household.ts';
import type { Schedule } from '../../src/model/model.ts';
import { houseZone } from '../../src/model/zone-house.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const household = (count: number, living: Living, awayWorkdays = false): Design => ({
  ...MODEST,
  people: { ...MODEST.people, count, living, awayWorkdays },
});
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
/** Mean a day over a week of five workdays. */
const daily = ({ workday, weekend }: Schedule) => (5 * sum(workday) + 2 * sum(weekend ?? workday)) / 7;

/** kg a day of 1 to 6 people. */
const BS_5250 = {
  dry: [3.5, 4, 4, 5, 6, 7],
  moist: [6, 8, 9, 10, 11, 12],
  wet: [9, 11, 12, 14, 15, 16],
} as const;

test('the causes add up to the daily total for every household of the table, home or away', () => {
  for (const living of ['dry', 'moist', 'wet'] as const) {
    BS_5250[living].forEach((kg, i) => {
      for (const away of [false, true]) {
        const sources = moistureOf(household(i + 1, living, away));
        expect(sum(sources.map(({ rate }) => daily(rate))) / 1000).toBeCloseTo(kg, 9);
        for (const { rate } of sources) expect(Math.min(...rate.workday)).toBeGreaterThanOrEqual(0);
      }
    });
  }
});

test('households beyond the table and of no whole number go on along its line', () => {
  const kg = (count: number) =>
    sum(moistureOf(household(count, 'moist')).map(({ rate }) => daily(rate))) / 1000;
  expect(kg(2.5)).toBeCloseTo(8.5, 9);
  expect(kg(30) - kg(20)).toBeCloseTo(10, 9);
  expect(moistureOf(household(0, 'wet'))).toEqual([]);
});

test('a dry household hangs no washing indoors', () => {
  const causes = (living: Living) => moistureOf(household(3, living)).map(({ cause }) => cause);
  expect(causes('dry')).toEqual(['people', 'cooking', 'washing']);
  expect(causes('wet')).toEqual(['people', 'cooking', 'washing', 'drying clothes']);
});

test('people who go out on workdays are out from 8 to 17 and home at the weekend', () => {
  const home = peopleAtHome(household(3, 'moist', true))!;
  expect(home.workday.filter((count) => count === 0)).toHaveLength(9);
  expect([home.workday[7], home.workday[8], home.workday[16], home.workday[17]]).toEqual([3, 0, 0, 3]);
  expect(sum(home.weekend!)).toBe(72);
  expect(peopleAtHome(household(0, 'moist'))).toBeNull();
});

test('a weekend away takes people, their water and all but what runs by itself with it', () => {
  const home = household(3, 'moist', true);
  const away: Design = { ...home, people: { ...home.people, awayWeekends: true } };
  expect(sum(peopleAtHome(away)!.weekend!)).toBe(0);
  expect(peopleAtHome(away)!.workday).toEqual(peopleAtHome(home)!.workday);
  const [people, appliances] = gainsOf(away);
  expect(sum(people!.power.weekend!)).toBe(0);
  // As at the dead of night: 4 of a mean of 10.4.
  expect(appliances!.power.weekend![12]).toBeCloseTo(appliances!.power.workday[3]!, 12);
  const alike = moistureOf(home);
  moistureOf(away).forEach(({ rate }, i) => {
    expect(rate.workday).toEqual(alike[i]!.rate.workday);
    expect(sum(rate.weekend!)).toBe(0);
  });
});

test('a thermostat is left at its night over a weekend away', () => {
  const home = household(3, 'moist');
  const { dayC, nightC } = home.heating;
  expect(dayC).toBeGreaterThan(nightC);
  const heatOf = (awayWeekends: object) =>
    houseZone({ ...home, people: { ...home.people, ...awayWeekends } }).thermostat!.heatC!;
  expect(heatOf({}).weekend).toBeUndefined();
  expect(heatOf({ awayWeekends: true }).workday).toEqual(heatOf({}).workday);
  expect(heatOf({ awayWeekends: true }).weekend).toEqual(new Array(24).fill(nightC));
});

test('appliances average what the design says; an empty house has no people', () => {
  const gains = gainsOf(household(2, 'moist'));
  expect(gains.map(({ id }) => id)).toEqual(['people', 'lights and appliances']);
  expect(daily(gains[1]!.power) / 24).toBeCloseTo(250, 9);
  expect(gainsOf(household(0, 'moist')).map(({ id }) => id)).toEqual(['lights and appliances']);
});
