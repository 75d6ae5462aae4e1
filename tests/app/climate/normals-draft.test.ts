import { expect, test } from 'vitest';
import { keepDraft, keptDraft } from '../../../src/app/climate/kept-draft.ts';
import {
  cellsOfFaults,
  draftOf,
  emptyDraft,
  inUnits,
  type NormalsDraft,
  normalsOf,
  withCell,
  withPaste,
  withWindOf,
  wrongCells,
} from '../../../src/app/climate/normals-draft.ts';
import { yearFromNormals } from '../../../src/weather/synthetic/monthly-normals.ts';

/** A temperate hill: round numbers of a plausible place, no published ones. */
const HIGH = [4, 6, 10, 14, 18, 22, 25, 24, 20, 14, 8, 5];
const TABLE = HIGH.map((high) => [high, high - 9, 70, (high / 3 + 1).toFixed(1), 3].join('\t')).join('\n');

function filled(): NormalsDraft {
  const draft = withPaste(emptyDraft('metric'), 'meanDailyHighC', 0, TABLE);
  const site = { latitude: '44', longitude: '3', name: 'Hill farm', elevation: '800', utcOffset: '' };
  return { ...draft, site };
}

test('a pasted table fills the form, and the form gives the normals', () => {
  const normals = normalsOf(filled())!;
  expect(normals.meanDailyHighC).toEqual(HIGH);
  expect(normals.meanDailyLowC).toEqual(HIGH.map((high) => high - 9));
  expect(normals.sunshineHours).toHaveLength(12);
  expect(normals).not.toHaveProperty('dailyGlobalKWh');
  expect(yearFromNormals(normals).ok).toBe(true);
});

test('a column, a row of twelve and a table with months across all go down the months', () => {
  const empty = emptyDraft('metric');
  const column = withPaste(empty, 'windSpeed', 2, '3,5\n−4\n5');
  expect(column.cells.windSpeed.slice(1, 6)).toEqual(['', '3,5', '−4', '5', '']);
  const row = withPaste(empty, 'windSpeed', 0, HIGH.join('\t'));
  expect(row.cells.windSpeed).toEqual(HIGH.map(String));
  const across = withPaste(
    empty,
    'meanDailyHighC',
    0,
    `${HIGH.join(' ')}\n${HIGH.map((t) => t - 8).join(' ')}`,
  );
  expect(across.cells.meanDailyHighC).toEqual(HIGH.map(String));
  expect(across.cells.meanDailyLowC).toEqual(HIGH.map((t) => String(t - 8)));
  // What runs over the edge is left out.
  expect(withPaste(empty, 'windSpeed', 10, '1\n2\n3\n4').cells.windSpeed.slice(9)).toEqual(['', '1', '2']);
});

test('changed units show the same place', () => {
  const us = inUnits(filled(), 'us');
  expect(us.cells.meanDailyHighC[0]).toBe('39.2');
  expect(us.site.elevation).toBe('2624.67');
  const [there, back] = [normalsOf(us)!, normalsOf(filled())!];
  for (const key of ['meanDailyHighC', 'meanDailyLowC', 'humidityPercent', 'windSpeed'] as const) {
    for (const [month, value] of there[key].entries()) expect(value).toBeCloseTo(back[key][month]!, 2);
  }
  expect(inUnits(us, 'us')).toBe(us);
});

test('cells without a number or out of limits are told by month, and so are the maker’s faults', () => {
  const draft = withCell(withCell(filled(), 'humidityPercent', 4, '170'), 'windSpeed', 0, 'breezy');
  expect(wrongCells(draft)).toEqual([
    { key: 'humidityPercent', month: 4 },
    { key: 'windSpeed', month: 0 },
  ]);
  expect(normalsOf(draft)).toBe(null);
  const upside = normalsOf(withCell(filled(), 'meanDailyHighC', 6, '10'))!;
  const result = yearFromNormals(upside);
  expect(result.ok ? [] : cellsOfFaults(result.faults)).toEqual([{ key: 'meanDailyHighC', month: 6 }]);
  const dark = yearFromNormals({ ...normalsOf(filled())!, dailyGlobalKWh: Array(12).fill(11) });
  expect(dark.ok ? [] : cellsOfFaults(dark.faults).map(({ key }) => key)).toContain('dailyGlobalKWh');
});

test('half-typed normals come back after a reload; damaged ones are taken for none', () => {
  const held = new Map<string, string>();
  const store = {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => void held.set(key, text),
  };
  expect(keptDraft(store)).toBe(null);
  keepDraft(store, filled());
  expect(keptDraft(store)).toEqual(filled());
  for (const text of [
    '{',
    'null',
    '{"system":"metric"}',
    JSON.stringify({ ...filled(), cells: { windSpeed: [1] } }),
  ]) {
    held.set('daystone.normals', text);
    expect(keptDraft(store)).toBe(null);
  }
});

test('sunshine may be the total of each month, and a place in the south is taken as it is written', () => {
  const perDay = filled();
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const totals = perDay.cells.sunshineHours.map((text, m) => String(Number(text) * days[m]!));
  const ofMonth: NormalsDraft = {
    ...perDay,
    sunOfMonth: true,
    site: { ...perDay.site, latitude: '39.5° S', longitude: '71.2° W' },
    cells: { ...perDay.cells, sunshineHours: totals },
  };
  const normals = normalsOf(ofMonth)!;
  expect([normals.latitudeDeg, normals.longitudeDeg]).toEqual([-39.5, -71.2]);
  for (const [month, hours] of normalsOf(perDay)!.sunshineHours!.entries())
    expect(normals.sunshineHours![month]).toBeCloseTo(hours, 3);
  expect(wrongCells({ ...ofMonth, sunOfMonth: false }).length).toBeGreaterThan(6);
});

/** Looked up: the same round numbers, with an origin. */
const LOOKED_UP = {
  ...normalsOf(filled())!,
  from: { source: 'Looked up', credit: 'A service', notes: ['Far off.'] },
};

test('looked-up normals fill the form and keep their origin, and a correction by hand is named', () => {
  const draft = draftOf(LOOKED_UP, 'us');
  const same = normalsOf(draft)!;
  expect(same.from).toEqual(LOOKED_UP.from);
  expect(same.meanDailyHighC[0]).toBeCloseTo(LOOKED_UP.meanDailyHighC[0]!, 1);
  const corrected = withCell(draft, 'meanDailyHighC', 0, '45');
  expect(normalsOf(corrected)!.from!.source).toBe('Looked up; corrected by hand');
  const store = new Map<string, string>();
  const keeping = {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (k: string, v: string) => void store.set(k, v),
  };
  keepDraft(keeping, corrected);
  expect(keptDraft(keeping)).toEqual(corrected);
});

test('another answer about the wind changes the wind alone and loses no correction', () => {
  const corrected = withCell(draftOf(LOOKED_UP, 'metric'), 'meanDailyHighC', 0, '9');
  const windy = draftOf({ ...LOOKED_UP, windSpeed: LOOKED_UP.windSpeed.map(() => 6) }, 'metric');
  const both = withWindOf(corrected, windy);
  expect(both.cells.windSpeed[3]).toBe('6');
  expect(both.cells.meanDailyHighC[0]).toBe('9');
  expect(normalsOf(both)!.from!.source).toContain('corrected by hand');
});
