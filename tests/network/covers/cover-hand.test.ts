// When a cover is wanted, and what whoever draws it makes of that, hour by hour against the rule's own words.
import { expect, test } from 'vitest';
import type { CoverRule, OpeningControl } from '../../../src/model/model.ts';
import { type CoverSigns, openCover, tend, wantedShare } from '../../../src/network/covers/cover-hand.ts';
import { momentOf } from '../../../src/network/hour/clock.ts';

const ALL_YEAR = new Array<number>(12).fill(1);
const rule = (drawnBy: CoverRule['drawnBy']): CoverRule => ({
  drawnBy,
  months: ALL_YEAR,
  sunW: 250,
  aboveC: 24,
  mostWind: 10,
});
const CALM: CoverSigns = { sunW: 0, roomC: 20, takerC: Infinity, outdoorC: 15, windSpeed: 2, isDark: false };
const JUNE = 5;
/** First hour of a June workday, the 154th day being a Monday. */
const DAY = 24 * 154;

test('by sun: drawn above the sun asked for, opened again below three fifths of it', () => {
  const at = (sunW: number, isDrawn: boolean) =>
    wantedShare(rule('sun'), { ...CALM, sunW }, JUNE, isDrawn, false);
  expect([at(249, false), at(251, false)]).toEqual([0, 1]);
  expect([at(151, true), at(149, true)]).toEqual([1, 0]);
});

test('by heat: a warm room and sun on the window, both', () => {
  const at = (roomC: number, sunW: number, isDrawn = false) =>
    wantedShare(rule('heat'), { ...CALM, roomC, sunW }, JUNE, isDrawn, false);
  expect(at(24.1, 300)).toBe(1);
  expect(at(23.9, 300)).toBe(0);
  expect(at(30, 0)).toBe(0);
  expect([at(22.6, 300, true), at(22.4, 300, true)]).toEqual([1, 0]);
});

test('while it is cold outdoors a warm room is welcome, up to the warmer bar', () => {
  const lenient = { ...rule('heat'), coldAboveC: 26 };
  const at = (roomC: number, outdoorC: number) =>
    wantedShare(lenient, { ...CALM, roomC, outdoorC, sunW: 600 }, JUNE, false, false);
  expect([at(24.5, 20), at(24.5, 12), at(25.9, 0), at(26.1, 0)]).toEqual([1, 0, 0, 1]);
  expect([at(24.9, 14), at(25.1, 14)]).toEqual([0, 1]);
});

test('by heat in a sunspace: not while the rooms beside want its warmth', () => {
  const spares = { zone: 'house', belowC: 22 };
  const at = (takerC: number, isDrawn = false) =>
    wantedShare({ ...rule('heat'), spares }, { ...CALM, roomC: 35, sunW: 600, takerC }, JUNE, isDrawn, false);
  expect([at(21.9), at(22.1)]).toEqual([0, 1]);
  expect([at(20.6, true), at(20.4, true)]).toEqual([1, 0]);
});

test('by night: while it is dark and colder outdoors, but not in a room too warm already', () => {
  const at = (signs: Partial<CoverSigns>, isDrawn = false) =>
    wantedShare(rule('night'), { ...CALM, isDark: true, ...signs }, JUNE, isDrawn, false);
  expect(at({})).toBe(1);
  expect(at({ isDark: false })).toBe(0);
  expect(at({ outdoorC: 22 })).toBe(0);
  expect(at({ roomC: 25 })).toBe(0);
  expect(at({ roomC: 25 }, true)).toBe(1);
});

test('out of season, or in a wind that would tear it, nothing is drawn', () => {
  const winter = { ...rule('season'), months: ALL_YEAR.map((_, month) => (month === JUNE ? 0 : 1)) };
  expect(wantedShare(winter, CALM, JUNE, true, false)).toBe(0);
  expect(wantedShare(winter, CALM, JUNE + 1, false, false)).toBe(1);
  expect(wantedShare(rule('season'), { ...CALM, windSpeed: 10.1 }, JUNE, true, false)).toBe(0);
});

/** Hours of the day after which a cover stands drawn, in a day of strong sun from 5 to 19 h in a room of 26 °C. */
function drawnHours(control: OpeningControl, day = DAY, drawnBy: CoverRule['drawnBy'] = 'heat') {
  const state = openCover();
  const hours: number[] = [];
  for (let hour = 0; hour < 24; hour++) {
    const signs = { ...CALM, roomC: 26, sunW: hour >= 5 && hour < 19 ? 500 : 0 };
    tend(state, rule(drawnBy), control, signs, momentOf(day + hour));
    if (state.drawn > 0) hours.push(hour);
  }
  return { hours, state };
}
const from = (first: number, last: number) => Array.from({ length: last - first }, (_, i) => first + i);

test('a motor follows at once and is nobody’s work; nobody never draws', () => {
  const motor = drawnHours('automatic');
  expect(motor.hours).toEqual(from(5, 19));
  expect(motor.state.moves).toBe(0);
  const nobody = drawnHours('never');
  expect(nobody.hours).toEqual([]);
  expect(nobody.state.neglectedHours).toBe(14);
});

test('people act awake and at home, forgetful ones three times a day', () => {
  const attentive = drawnHours('attentive');
  expect(attentive.hours).toEqual(from(7, 19));
  expect(attentive.state.moves).toBe(2);
  // Once between 7 and 12 h, 12 and 17 h, 17 and 22 h, at hours of chance that are the same in every run.
  const late = new Set<number>();
  for (let day = DAY; day < DAY + 30 * 24; day += 24) {
    const { hours, state } = drawnHours('forgetful', day);
    expect(hours).toEqual(drawnHours('forgetful', day).hours);
    expect(state.moves).toBeLessThanOrEqual(2);
    expect(hours[0]).toBeGreaterThanOrEqual(7);
    expect(hours[0]).toBeLessThan(12);
    late.add(hours[0]!);
  }
  expect([...late].toSorted((a, b) => a - b)).toEqual(from(7, 12));
  // Away from 8 to 17 h on a Monday: drawn at 7 h and left till the sun is gone.
  expect(drawnHours('away').hours).toEqual(from(7, 19));
});

test('who leaves for the day draws the blinds of a warm room before the sun is on them', () => {
  const state = openCover();
  const signs = { ...CALM, roomC: 26 };
  for (let hour = 0; hour < 8; hour++) tend(state, rule('heat'), 'away', signs, momentOf(DAY + hour));
  expect(state.drawn).toBe(1);
  const cool = openCover();
  for (let hour = 0; hour < 8; hour++) tend(cool, rule('heat'), 'away', CALM, momentOf(DAY + hour));
  expect(cool.drawn).toBe(0);
});

test('who leaves for the day before it is light does not leave the sun of the day shut out', () => {
  const drawnByHour = (control: OpeningControl) => {
    const state = openCover();
    return Array.from({ length: 24 }, (_, hour) => {
      const signs = { ...CALM, outdoorC: 2, isDark: hour < 9 || hour >= 17 };
      tend(state, rule('night'), control, signs, momentOf(DAY + 24 + hour));
      return state.drawn;
    });
  };
  // Up at seven, gone before eight, back at five.
  expect(drawnByHour('away').flatMap((drawn, hour) => (drawn > 0 ? [hour] : []))).toEqual(from(17, 24));
  expect(drawnByHour('attentive').flatMap((drawn, hour) => (drawn > 0 ? [hour] : []))).toEqual([
    ...from(7, 9),
    ...from(17, 24),
  ]);
});
