// A clock that starts anew in the middle of a table.
import { expect, test } from 'vitest';
import { readLogger } from '../../src/loggers/logger-file.ts';
import { lostClock } from '../../src/weather/real/lost-clock.ts';

const STEP = 600_000;
const rowsFrom = (date: string, count: number) =>
  Array.from({ length: count }, (_, i) =>
    new Date(Date.parse(`${date}T00:00Z`) + i * STEP).toISOString().slice(0, 16),
  );
const fileOf = (stamps: readonly string[]) =>
  ['Time,Temperature (°C)', ...stamps.map((stamp, i) => `${stamp},${20 + (i % 9) / 10}`)].join('\n');

test('rows of a clock that started anew are left out; the line, both stamps and what is used are said', () => {
  const stamps = [...rowsFrom('2026-01-10', 600), ...rowsFrom('2000-01-01', 300)];
  const read = readLogger(fileOf(stamps), { utcOffsetH: -7 });
  if (!read.ok) throw new Error(read.faults.join('\n'));
  expect(read.file.columns[0]!.readings).toBe(600);
  const note = read.file.notes.find((one) => one.includes('started anew'))!;
  expect(note).toContain('line 602');
  expect(note).toContain('2000-01-01 00:00 after 2026-01-14 03:50');
  expect(note).toContain('300 rows');
  expect(note).toContain('2026-01-10 to 2026-01-14');
});

test('rows after the clock was set again are used, and those before it was set at first are not', () => {
  const walls = (stamps: readonly string[]) => Float64Array.from(stamps, (one) => Date.parse(`${one}Z`));
  const lines = (count: number) => Array.from({ length: count }, (_, i) => i + 2);
  const again = [
    ...rowsFrom('2026-01-10', 100),
    ...rowsFrom('2000-01-01', 50),
    ...rowsFrom('2026-01-12', 100),
  ];
  expect(lostClock(walls(again), lines(250))!.kept.length).toBe(200);
  const first = [...rowsFrom('2010-01-01', 20), ...rowsFrom('2026-01-12', 100)];
  const lost = lostClock(walls(first), lines(120))!;
  expect(lost.kept[0]).toBe(20);
  expect(lost.note).toContain('line 2 ');
  expect(lost.note).toContain('before 2026-01-12 00:00');
});

test('a year with a long hole is no lost clock', () => {
  const stamps = [...rowsFrom('2024-12-01', 200), ...rowsFrom('2026-01-10', 200)];
  expect(
    lostClock(
      Float64Array.from(stamps, (one) => Date.parse(`${one}Z`)),
      stamps.map((_, i) => i),
    ),
  ).toBeNull();
});

test('few stamps far too late are refused with their line', () => {
  const read = readLogger(fileOf([...rowsFrom('2026-01-10', 300), ...rowsFrom('2099-01-01', 5)]), {
    utcOffsetH: 0,
  });
  expect(read.ok).toBe(false);
  if (read.ok) return;
  expect(read.faults[0]).toMatch(/^line 302, column "time": found "2099-01-01 00:00 after 2026-01-12 01:50"/);
  expect(read.faults[0]).toContain('cut the file there');
});
