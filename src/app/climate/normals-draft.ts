// Twelve monthly normals as a person types or pastes them: texts in the units shown. Out: the normals in SI, or what is
// wrong, cell by cell. Changing the units turns the numbers along.

import { MONTH_NAMES } from '../../outcomes/calendar.ts';
import type { MonthlyNormals, NormalsOrigin } from '../../weather/normals.ts';
import type { Fault } from '../../weather/read-result.ts';
import { NORMALS_LIMITS, type NormalsKey } from '../../weather/synthetic/normals-limits.ts';
import { MONTH_START_HOUR } from '../../weather/typical-year.ts';
import { type ShownQuantity, toShown, toSi, type UnitSystem } from '../parts/display-unit.ts';
import { numberText, typedNumber } from '../parts/number-text.ts';
import { type SiteTexts, siteHints, siteTexts } from './SiteFields.tsx';

export type SunAs = 'sunshineHours' | 'dailyGlobalKWh';

export interface DraftOrigin extends NormalsOrigin {
  /** none of them was changed by hand since */
  readonly untouched: boolean;
}

export interface NormalsDraft {
  readonly system: UnitSystem;
  readonly site: SiteTexts;
  readonly sunAs: SunAs;
  /** hours of sunshine are those of the whole month, in place of a day's */
  readonly sunOfMonth?: boolean;
  /** where the numbers are from, if they were looked up; absent for typed ones */
  readonly from?: DraftOrigin;
  /** twelve texts a quantity, January first */
  readonly cells: Readonly<Record<NormalsKey, readonly string[]>>;
}

export const QUANTITIES: Readonly<Record<NormalsKey, ShownQuantity>> = {
  meanDailyHighC: 'temperature',
  meanDailyLowC: 'temperature',
  // held in per cent, as the normals are
  humidityPercent: 'number',
  dailyGlobalKWh: 'dailySun',
  sunshineHours: 'hours',
  windSpeed: 'speed',
};

const KEYS = NORMALS_LIMITS.map(({ key }) => key);
const EMPTY: readonly string[] = new Array<string>(12).fill('');

export function emptyDraft(system: UnitSystem): NormalsDraft {
  const cells = Object.fromEntries(KEYS.map((key) => [key, EMPTY])) as unknown as NormalsDraft['cells'];
  return { system, site: siteTexts(null, system), sunAs: 'sunshineHours', cells };
}

/** Columns shown, in order. */
export function draftColumns({ sunAs }: NormalsDraft): readonly NormalsKey[] {
  return ['meanDailyHighC', 'meanDailyLowC', 'humidityPercent', sunAs, 'windSpeed'];
}

/** The form filled with normals that were looked up. */
export function draftOf(normals: MonthlyNormals, system: UnitSystem): NormalsDraft {
  const { name, from, dailyGlobalKWh } = normals;
  const cells = Object.fromEntries(
    KEYS.map((key) => [key, normals[key]?.map(String) ?? EMPTY]),
  ) as unknown as NormalsDraft['cells'];
  return inUnits(
    {
      system: 'metric',
      site: { ...siteTexts(normals, 'metric'), name: name.slice(0, MOST_NAME) },
      sunAs: dailyGlobalKWh === undefined ? 'sunshineHours' : 'dailyGlobalKWh',
      ...(from && { from: { ...from, untouched: true } }),
      cells,
    },
    system,
  );
}

/** A draft with the wind of another, and what the other rests on. */
export function withWindOf(draft: NormalsDraft, { cells: { windSpeed }, from }: NormalsDraft): NormalsDraft {
  const kept = from && { from: { ...from, untouched: draft.from?.untouched ?? false } };
  return { ...draft, ...kept, cells: { ...draft.cells, windSpeed } };
}

/** Characters the field for a name holds. */
const MOST_NAME = 60;

export function withCell(draft: NormalsDraft, key: NormalsKey, month: number, text: string): NormalsDraft {
  const cells = draft.cells[key].map((cell, m) => (m === month ? text : cell));
  const from = draft.from && { from: { ...draft.from, untouched: false } };
  return { ...draft, ...from, cells: { ...draft.cells, [key]: cells } };
}

/**
 * Fill cells from a pasted piece of a table, from one cell on: a column downwards, a row of months downwards too,
 * several columns to the right.
 */
export function withPaste(draft: NormalsDraft, key: NormalsKey, month: number, text: string): NormalsDraft {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const table = lines.map((line) => line.split(/\t|;|\s+/).filter((cell) => cell !== ''));
  const isOneRow = table.length === 1;
  // Tables of normals are often printed with the months across.
  const isAcross = table.length > 1 && table.length <= 6 && table.every((cells) => cells.length >= 12);
  const columns =
    isOneRow || isAcross
      ? table
      : Array.from({ length: Math.max(...table.map((cells) => cells.length)) }, (_, c) =>
          table.map((cells) => cells[c] ?? ''),
        );
  const keys = draftColumns(draft);
  const first = keys.indexOf(key);
  return columns.reduce((filled, column, c) => {
    const target = keys[first + c];
    if (target === undefined) return filled;
    return column.reduce(
      (next, cell, m) => (month + m < 12 && cell !== '' ? withCell(next, target, month + m, cell) : next),
      filled,
    );
  }, draft);
}

/** The same numbers in other units; what is no number stays as it is. */
export function inUnits(draft: NormalsDraft, system: UnitSystem): NormalsDraft {
  if (draft.system === system) return draft;
  const turned = (text: string, quantity: ShownQuantity) => {
    const value = typedNumber(text);
    if (value === null) return text;
    const shown = toShown(toSi(value, quantity, draft.system), quantity, system);
    return numberText(shown, 2)
      .replace(/\.?0+$/, '')
      .replaceAll(',', '');
  };
  const cells = Object.fromEntries(
    KEYS.map((key) => [key, draft.cells[key].map((text) => turned(text, QUANTITIES[key]))]),
  ) as unknown as NormalsDraft['cells'];
  const site = { ...draft.site, elevation: turned(draft.site.elevation, 'elevation') };
  return { ...draft, system, site, cells };
}

export interface CellFault {
  readonly key: NormalsKey;
  readonly month: number;
}

/** The cells that hold no number, or one out of its limits. */
export function wrongCells(draft: NormalsDraft): readonly CellFault[] {
  return draftColumns(draft).flatMap((key) => {
    const { low, high } = NORMALS_LIMITS.find((limit) => limit.key === key)!;
    return draft.cells[key].flatMap((text, month) => {
      const value = dayValue(draft, key, month, text);
      return value !== null && value >= low - 1e-6 && value <= high + 1e-6 ? [] : [{ key, month }];
    });
  });
}

/** The cells a maker's faults are about. */
export function cellsOfFaults(faults: readonly Fault[]): readonly CellFault[] {
  return faults.flatMap(({ column }) => {
    const [words, monthName] = column.split(', ');
    const month = MONTH_NAMES.indexOf(monthName ?? '');
    const key =
      words === 'sunshine' ? 'sunshineHours' : NORMALS_LIMITS.find((limit) => limit.words === words)?.key;
    return month < 0 || key === undefined ? [] : [{ key, month }];
  });
}

/** The normals, once the place and every cell are sound; else null. */
export function normalsOf(draft: NormalsDraft): MonthlyNormals | null {
  const site = siteHints(draft.site, draft.system);
  if (site === null || wrongCells(draft).length > 0) return null;
  const { latitudeDeg, longitudeDeg, elevationM, utcOffsetH, name } = site;
  if (elevationM === undefined) return null;
  const twelve = (key: NormalsKey) =>
    draft.cells[key].map((text, month) => Number(dayValue(draft, key, month, text)!.toFixed(4)));
  return {
    name: name ?? 'Our own place',
    latitudeDeg: latitudeDeg!,
    longitudeDeg: longitudeDeg!,
    elevationM,
    ...(utcOffsetH === undefined ? {} : { utcOffsetH }),
    meanDailyHighC: twelve('meanDailyHighC'),
    meanDailyLowC: twelve('meanDailyLowC'),
    humidityPercent: twelve('humidityPercent'),
    [draft.sunAs]: twelve(draft.sunAs),
    windSpeed: twelve('windSpeed'),
    ...(draft.from && { from: originOf(draft.from) }),
  };
}

/** In SI; sunshine as hours a day. */
function dayValue(draft: NormalsDraft, key: NormalsKey, month: number, text: string): number | null {
  const value = siOf(text, key, draft.system);
  if (value === null || key !== 'sunshineHours' || !draft.sunOfMonth) return value;
  return value / ((MONTH_START_HOUR[month + 1]! - MONTH_START_HOUR[month]!) / 24);
}

function originOf({ source, credit, notes, untouched }: DraftOrigin): NormalsOrigin {
  return { source: untouched ? source : `${source}; corrected by hand`, credit, notes };
}

function siOf(text: string, key: NormalsKey, system: UnitSystem): number | null {
  const value = typedNumber(text);
  return value === null ? null : toSi(value, QUANTITIES[key], system);
}
