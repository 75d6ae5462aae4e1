// What openings and covers ask of the people living there, one by one: moves a month, hours open or drawn, hours in which
// one should have been moved and was not. In: a year. Out: rows and a sentence.

import type { OpeningYear, Year } from '../../network/year.ts';
import { MONTH_START_HOUR } from '../../weather/typical-year.ts';
import { MONTH_NAMES } from '../parts/calendar-words.ts';

export interface DiaryRow {
  readonly id: string;
  readonly label: string;
  readonly moves: number;
  readonly movesByMonth: readonly number[];
  /** a shade or cover, and no opening */
  readonly isCover: boolean;
  /** hours open at least a crack, or drawn, by month */
  readonly openByMonth: readonly number[];
  readonly neglectedHours: number;
  readonly busiestDay: { readonly day: number; readonly moves: number };
}

const LEAST_OPEN = 0.02;
/** the way through where there is no wall; nobody can shut it */
const OPEN_SIDE = 'open side';

type Moved = Pick<OpeningYear, 'id' | 'open' | 'moves' | 'movesByDay' | 'neglectedHours'>;

/** Rows for openings and covers that somebody or something moves. */
export function ventDiary(year: Year): readonly DiaryRow[] {
  const openings = year.openings.filter(
    ({ id, kind }) => kind === 'vent' || (kind === 'door' && id !== OPEN_SIDE),
  );
  return [
    ...openings.map((opening) => diaryRow(opening, false)),
    ...(year.covers ?? []).map((cover) => diaryRow({ ...cover, open: cover.drawn }, true)),
  ];
}

function diaryRow(opening: Moved, isCover: boolean): DiaryRow {
  const months = MONTH_NAMES.map(
    (_, month) => [MONTH_START_HOUR[month]!, MONTH_START_HOUR[month + 1]!] as const,
  );
  const busiest = opening.movesByDay.reduce((best, moves, day, all) => (moves > all[best]! ? day : best), 0);
  return {
    id: opening.id,
    label: openingLabel(opening.id),
    isCover,
    moves: opening.moves,
    movesByMonth: months.map(([from, to]) =>
      opening.movesByDay.subarray(from / 24, to / 24).reduce((a, b) => a + b, 0),
    ),
    openByMonth: months.map(([from, to]) =>
      opening.open.subarray(from, to).reduce((n, open) => n + (open > LEAST_OPEN ? 1 : 0), 0),
    ),
    neglectedHours: opening.neglectedHours,
    busiestDay: { day: busiest, moves: opening.movesByDay[busiest] ?? 0 },
  };
}

/** An opening's id in a person's words. */
function openingLabel(id: string): string {
  return id === 'door' ? 'door between' : id;
}

/** What the year asks of somebody. */
export function ventSentence(rows: readonly DiaryRow[]): string {
  const moves = rows.reduce((sum, row) => sum + row.moves, 0);
  const what = rows.some(({ isCover }) => isCover) ? 'a vent, a door or a shade' : 'a vent or a door';
  if (rows.length === 0) return 'There is nothing to open.';
  const neglected = Math.max(...rows.map((row) => row.neglectedHours));
  const left =
    neglected > 24
      ? ` In ${Math.round(neglected)} hours ${rows.some(({ isCover }) => isCover) ? 'one of them' : 'a vent'} should have been moved and was not.`
      : '';
  if (moves < 1) return `Nobody moves ${what} in the whole year.${left}`;
  const byMonth = MONTH_NAMES.map((_, month) => rows.reduce((sum, row) => sum + row.movesByMonth[month]!, 0));
  const busiest = byMonth.indexOf(Math.max(...byMonth));
  const days = (MONTH_START_HOUR[busiest + 1]! - MONTH_START_HOUR[busiest]!) / 24;
  return `Somebody or something moves ${what} ${Math.round(moves)} times a year; in ${MONTH_NAMES[busiest]} ${(byMonth[busiest]! / days).toFixed(1)} times a day.${left}`;
}
