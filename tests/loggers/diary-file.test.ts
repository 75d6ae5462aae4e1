// A diary of what was opened: the ways people write one, and what is wrong with a line said with its line. The diaries are
// made up.
import { describe, expect, test } from 'vitest';
import { looksLikeDiary, readDiary } from '../../src/loggers/diary-file.ts';

const UTC_OFFSET_H = -7;
const read = (...lines: readonly string[]) =>
  readDiary(lines.join('\n'), { utcOffsetH: UTC_OFFSET_H, clock: 'standard' });
const moment = (day: number, hour: number, minute: number) =>
  Date.UTC(2026, 0, day, hour - UTC_OFFSET_H, minute);

test.each([
  ['dates at both ends', ['from,until,what', '2026-01-13 07:05,2026-01-13 07:20,kitchen windows']],
  ['a date before the first only', ['From;To;Opened', '13.01.2026 07:05;07:20;kitchen windows']],
  ['a date in a column of its own', ['Day\tFrom\tUntil\tWhat', '2026-01-13\t07:05\t7:20\tkitchen windows']],
  [
    'words above the names and a comma within quotes',
    ['Diary of the Quillens', 'what,from,until', '"kitchen windows",2026-01-13 07:05,2026-01-13 07:20', ''],
  ],
])('%s', (_, lines) => {
  const result = read(...lines);
  if (!result.ok) throw new Error(result.faults.join());
  expect(result.diary.lines).toEqual([
    { fromMs: moment(13, 7, 5), untilMs: moment(13, 7, 20), what: 'kitchen windows', share: 1 },
  ]);
});

test('past midnight the date stands once, a share is in %, and a day above 12 settles which number is the day', () => {
  const result = read(
    'from,until,what,share [%]',
    '05/01/2026 23:30,00:15,vents,50',
    '13/01/2026 07:00,07:10,door,',
  );
  if (!result.ok) throw new Error(result.faults.join());
  expect(result.diary.lines.map(({ fromMs, untilMs, share }) => [fromMs, untilMs, share])).toEqual([
    [moment(5, 23, 30), moment(6, 0, 15), 0.5],
    [moment(13, 7, 0), moment(13, 7, 10), 1],
  ]);
});

test('it is told from a logger’s table', () => {
  expect(looksLikeDiary('from,until,what\n')).toBe(true);
  expect(looksLikeDiary('Time,Temperature [°C]\n2026-01-13 07:05,20')).toBe(false);
});

describe('what is wrong is said with its line', () => {
  test.each([
    ['no columns of a diary', ['Time,Temperature', '2026-01-13 07:05,20'], /from, until and what/],
    ['no line', ['from,until,what'], /at least one line/],
    [
      'an end before its start',
      ['from,until,what', '2026-01-13 07:05,2026-01-12 07:20,door'],
      /line 2.*after/,
    ],
    ['nothing named', ['from,until,what', '2026-01-13 07:05,2026-01-13 07:20,'], /line 2.*what was opened/],
    ['a share of 140', ['from,until,what,share', '2026-01-13 07:05,07:20,door,140'], /140.*0 to 100/],
    ['a time that is none', ['from,until,what', '2026-01-13 07:05,soon,door'], /line 2.*soon/],
  ])('%s', (_, lines, said) => {
    const result = read(...lines);
    expect(result.ok ? '' : result.faults.join(' ')).toMatch(said);
  });
});
