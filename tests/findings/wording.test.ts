import { describe, expect, it } from 'vitest';
import {
  during,
  hours,
  listed,
  moment,
  months,
  percent,
  plain,
  wordingOf,
} from '../../src/findings/wording.ts';

const chosen = (...wanted: number[]) => Array.from({ length: 12 }, (_, month) => wanted.includes(month));

describe('months as a person names them', () => {
  it('joins runs, over new year too', () => {
    expect(months(chosen(6))).toBe('July');
    expect(months(chosen(6, 7))).toBe('July and August');
    expect(months(chosen(10, 11, 0, 1))).toBe('November to February');
    expect(months(chosen(4, 8, 9, 10))).toBe('May and September to November');
    expect(months(Array(12).fill(true))).toBe('every month');
  });

  it('puts the right word before them', () => {
    expect(during(chosen(6, 7))).toBe('in July and August');
    expect(during(chosen(10, 11, 0, 1))).toBe('from November to February');
    expect(during(chosen(0, 4, 5, 6))).toBe('in January and from May to July');
    expect(during(chosen(0, 1, 3))).toBe('in January, February and April');
    expect(during(Array(12).fill(true))).toBe('all year');
  });
});

describe('numbers as an adviser says them', () => {
  it('says hours to the hour, as the head of the page and every table do', () => {
    expect([0, 1, 7, 85, 643, 1262].map(hours)).toEqual([
      'no hours',
      '1 hour',
      '7 hours',
      '85 hours',
      '643 hours',
      '1262 hours',
    ]);
  });

  it('says a share in whole per cent and never 0 for something', () => {
    expect(percent(0.126)).toBe('13 %');
    expect(percent(0.001)).toBe('less than 1 %');
    expect(percent(0)).toBe('0 %');
  });

  it('names the moment by the clock', () => {
    expect(moment(0)).toBe('1 January at midnight');
    expect(moment(12)).toBe('1 January at noon');
    expect(moment(254 * 24 + 16)).toBe('12 September at 4 in the afternoon');
    expect(moment(8759)).toBe('31 December at 11 in the evening');
  });

  it('writes a true minus and no minus zero', () => {
    expect(plain(-3.2, 0)).toBe('−3');
    expect(plain(-0.01, 1)).toBe('0.0');
  });

  it('lists words', () => {
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
    expect(listed([])).toBe('');
  });
});

describe('units', () => {
  // NIST SP 811, appendix B: 1 ft = 0.3048 m, 1 lb = 0.453 592 37 kg, 1 gal = 3.785 412 L, °F = 1.8 °C + 32
  it('are right in US customary units', () => {
    const us = wordingOf('us');
    expect(us.temperature(26)).toBe('79 °F');
    expect(us.degrees(4)).toBe('7 °F');
    expect(us.area(38)).toBe('409 ft²');
    // 5.7 ft², the least opening of a window to escape by (IRC R310, from memory)
    expect(us.area(0.53)).toBe('5.7 ft²');
    expect(us.thickness(0.254)).toBe('10.0 in');
    // 26.7 ft are 26 ft 8.4 in; 11.96 in are a foot; a window sill of 44 in.
    expect(us.length(26.7 * 0.3048)).toBe('26 ft 8 in');
    expect(us.length(0.3038)).toBe('1 ft');
    expect(us.length(44 * 0.0254)).toBe('3 ft 8 in');
    expect(us.length(0)).toBe('0 ft');
    // Rules of thumb said in metres: 1.2 m and 3 m are 3.94 and 9.84 ft.
    expect(us.aboutLength(1.2)).toBe('4 ft');
    expect(us.aboutLength(3)).toBe('10 ft');
    expect(wordingOf('us-therms').length(0.1)).toBe('4 in');
    expect(us.weight(200)).toBe('440 lb');
    expect(us.weightPerArea(730)).toBe('150 lb');
    expect(us.water(37.854)).toBe('10.0 gal');
    expect(us.energyPerArea(107.639)).toBe('10.0 kWh');
  });

  it('are right in metric units', () => {
    const metric = wordingOf('metric');
    expect(metric.temperature(25.6)).toBe('26 °C');
    expect(metric.weight(52_000)).toBe('52 tonnes');
    expect(metric.water(4)).toBe('4.0 litres');
    expect(metric.energy(1234)).toBe('1234 kWh');
  });
});
