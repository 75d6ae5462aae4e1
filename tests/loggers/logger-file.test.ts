// Loggers' files in six invented forms, of a room whose air is a known wave, so that every hourly mean is known in closed
// form; clocks with and without summer time; and what a logger does when it hangs, is carried or hangs in the sun.
import { describe, expect, test } from 'vitest';
import { type LoggerFile, readLogger } from '../../src/loggers/logger-file.ts';
import type { RowClock } from '../../src/weather/real/row-clock.ts';

const HOUR = 3_600_000;
/** °C at a moment: warmest at 15:00 UTC, and so much by day. */
const waveC = (ms: number) => 20 + 3 * Math.cos((2 * Math.PI * (ms / HOUR - 15)) / 24);
/** Its mean over the hour from a moment. */
const meanC = (ms: number) => {
  const phase = (at: number) => Math.sin((2 * Math.PI * (at / HOUR - 15)) / 24);
  return 20 + (3 * (phase(ms + HOUR) - phase(ms)) * 24) / (2 * Math.PI);
};
const percent = (ms: number) => 50 + 10 * Math.cos((2 * Math.PI * (ms / HOUR)) / 24);

const two = (value: number) => String(value).padStart(2, '0');
const parts = (ms: number) => {
  const at = new Date(ms);
  return {
    y: at.getUTCFullYear(),
    mo: at.getUTCMonth() + 1,
    d: at.getUTCDate(),
    h: at.getUTCHours(),
    mi: at.getUTCMinutes(),
  };
};
const isoOf = (ms: number) => new Date(ms).toISOString().slice(0, 19);
const germanDate = (ms: number) => `${two(parts(ms).d)}.${two(parts(ms).mo)}.${parts(ms).y}`;
const clockOf = (ms: number) => `${two(parts(ms).h)}:${two(parts(ms).mi)}`;
const comma = (value: number) => value.toFixed(2).replace('.', ',');
const american = (ms: number) => {
  const { y, mo, d, h, mi } = parts(ms);
  return `${two(mo)}/${two(d)}/${two(y % 100)} ${two(h % 12 || 12)}:${two(mi)}:00 ${h < 12 ? 'AM' : 'PM'}`;
};
const fahrenheit = (celsius: number) => 32 + 1.8 * celsius;

function moments(from: string, days: number, stepMin: number): number[] {
  const start = Date.parse(`${from}Z`);
  return Array.from({ length: (days * 1440) / stepMin + 1 }, (_, i) => start + i * stepMin * 60_000);
}

function read(text: string, utcOffsetH: number, clock: RowClock = 'auto'): LoggerFile {
  const result = readLogger(text, { utcOffsetH, clock });
  if (!result.ok) throw new Error(result.faults.join('\n'));
  return result.file;
}

/** All inner hours are the wave's. */
function expectWave({ startMs, hours, columns }: LoggerFile, allowedK: number): void {
  const { values } = columns.find(({ kind }) => kind === 'temperature')!;
  let known = 0;
  for (let hour = 1; hour < hours - 1; hour++) {
    if (Number.isNaN(values[hour]!)) continue;
    known++;
    expect(Math.abs(values[hour]! - meanC(startMs + hour * HOUR))).toBeLessThan(allowedK);
  }
  expect(known).toBeGreaterThan(0.95 * (hours - 2));
}

describe('six forms', () => {
  test('commas and ISO dates, 5 minutes, the zone in the stamp', () => {
    const rows = moments('2021-01-10T00:00', 5, 5).map(
      (ms) => `${isoOf(ms + HOUR)}+01:00,${waveC(ms).toFixed(2)},${percent(ms).toFixed(0)}`,
    );
    const file = read(['Timestamp,Temperature [°C],Humidity [%]', ...rows].join('\n'), 1);
    expect(file.stepMin).toBe(5);
    expect(file.columns.map(({ kind }) => kind)).toEqual(['temperature', 'humidity']);
    expectWave(file, 0.01);
  });

  test('a preamble, semicolons, decimal commas, date and clock apart, days first, 10 minutes', () => {
    const rows = moments('2021-01-10T00:07', 5, 10).map(
      (ms) => `${germanDate(ms + HOUR)};${clockOf(ms + HOUR)};${comma(waveC(ms))};${comma(percent(ms))}`,
    );
    const head = ['Messgerät;Nr. 12', 'Ort;Stube', '', 'Datum;Uhrzeit;Temperatur [°C];Feuchte [%rF]'];
    expectWave(read([...head, ...rows].join('\r\n'), 1), 0.01);
  });

  test('a title, row numbers, months first, AM and PM, °F, the zone in the header, a word at the end', () => {
    const rows = moments('2021-01-14T07:00', 5, 15).map(
      (ms, i) =>
        `${i + 1},${american(ms - 7 * HOUR)},${fahrenheit(waveC(ms)).toFixed(2)},${percent(ms).toFixed(1)},`,
    );
    const head = ['"Plot: front room"', '"#","Date Time, GMT-07:00","Temp, °F","RH, %","Logged"'];
    const file = read([...head, ...rows, `${rows.length + 1},,,,Logged`].join('\n'), -7);
    expectWave(file, 0.01);
    expect(file.notes.join(' ')).toContain('°F');
  });

  test('seconds since 1970, 1 minute, two loggers side by side', () => {
    const rows = moments('2021-01-10T00:00', 3, 1).map(
      (ms) =>
        `${ms / 1000}\t${waveC(ms).toFixed(3)}\t${(waveC(ms) - 5).toFixed(3)}\t${percent(ms).toFixed(1)}`,
    );
    const file = read(['time\tt1\tt2\trh1', ...rows].join('\n'), 0);
    expect(file.columns.map(({ header, kind }) => [header, kind])).toEqual([
      ['t1', 'temperature'],
      ['t2', 'temperature'],
      ['rh1', 'humidity'],
    ]);
    expectWave(file, 0.01);
  });

  test('units in the cells, once an hour, UTC', () => {
    const rows = moments('2021-01-10T00:00', 5, 60).map(
      (ms) => `${isoOf(ms)}Z;${waveC(ms).toFixed(1)} °C;${percent(ms).toFixed(0)} %`,
    );
    // Straight lines between hourly readings of the wave are up to 3·(2π/24)²/8 K off.
    expectWave(read(['Time;Sensor temperature;Sensor humidity', ...rows].join('\n'), 2), 0.09);
  });

  test('months in letters, half-hours, °F that nobody names, shares', () => {
    const names = ['Jan', 'Feb', 'Mar'];
    const rows = moments('2021-01-30T00:00', 5, 30).map((ms) => {
      const { d, mo, y } = parts(ms);
      return `${d}-${names[mo - 1]}-${y} ${clockOf(ms)},${fahrenheit(waveC(ms)).toFixed(1)},${(percent(ms) / 100).toFixed(3)}`;
    });
    const file = read(['Date/Time,Temperature,Relative humidity', ...rows].join('\n'), 0, 'utc');
    expectWave(file, 0.05);
    const humidity = file.columns[1]!.values[30]!;
    expect(humidity).toBeCloseTo(percent(file.startMs + 30.5 * HOUR), 0);
  });
});

describe('clocks', () => {
  const header = 'Time,Temperature (°C)';
  const row = (wallMs: number, ms: number) => `${isoOf(wallMs).replace('T', ' ')},${waveC(ms).toFixed(3)}`;
  const spring = Date.UTC(2021, 2, 28, 1);
  const autumn = Date.UTC(2021, 9, 31, 1);

  test('a clock that springs forward is put back, told by the missing hour', () => {
    const rows = moments('2021-03-25T00:00', 6, 10).map((ms) => row(ms + (ms < spring ? 1 : 2) * HOUR, ms));
    const file = read([header, ...rows].join('\n'), 1);
    expectWave(file, 0.01);
    expect(file.clockIsGuess).toBe(false);
    expect(file.notes[0]).toContain('missing');
  });

  test('a clock that goes back is told by the hour that comes twice, and neither hour is lost', () => {
    const rows = moments('2021-10-28T00:00', 6, 10).map((ms) => row(ms + (ms < autumn ? 2 : 1) * HOUR, ms));
    const file = read([header, ...rows].join('\n'), 1);
    expectWave(file, 0.01);
    expect(file.columns[0]!.values.filter(Number.isNaN).length).toBeLessThan(3);
    expect(file.notes[0]).toContain('twice');
  });

  test('by a zone that is named, by summer time throughout, and by nothing, which is a guess', () => {
    const rows = moments('2021-07-01T00:00', 3, 10).map((ms) => row(ms + 2 * HOUR, ms));
    const text = [header, ...rows].join('\n');
    expectWave(read(text, 1, { zone: 'Europe/Rome' }), 0.01);
    expectWave(read(text, 1, 'summer'), 0.01);
    const guess = read(text, 1);
    expect(guess.clockIsGuess).toBe(true);
    expect(guess.notes[0]).toContain('standard time');
  });
});

describe('what is suspicious is left out and named', () => {
  const header = 'Time,Temperature (°C),Humidity (%)';
  const made = (temperature: (ms: number) => number, humidity = percent) => {
    const rows = moments('2021-07-01T00:00', 8, 10).map(
      (ms) => `${isoOf(ms)}Z,${temperature(ms).toFixed(2)},${humidity(ms).toFixed(1)}`,
    );
    return read([header, ...rows].join('\n'), 0);
  };
  const hourIn = (ms: number) => (ms - Date.UTC(2021, 6, 1)) / HOUR;

  test('nothing where nothing is', () => {
    expect(made(waveC).columns.map(({ leftOut }) => leftOut)).toEqual([0, 0]);
  });

  test('a logger that hangs', () => {
    const file = made((ms) => (hourIn(ms) >= 30 && hourIn(ms) < 50 ? 21 : waveC(ms)));
    expect(file.columns[0]!.values[40]).toBeNaN();
    expect(file.notes.join(' ')).toContain('as if it hung');
    expectWaveBut(file, [29, 51]);
  });

  test('a logger that was carried outside', () => {
    const file = made((ms) => (hourIn(ms) >= 30 && hourIn(ms) < 30.4 ? 5 : waveC(ms)));
    expect(file.notes.join(' ')).toContain('jump');
    expectWaveBut(file, [29, 33]);
  });

  test('a logger that the sun finds for two hours a day', () => {
    const file = made((ms) => waveC(ms) + (hourIn(ms) % 24 >= 16 && hourIn(ms) % 24 < 18 ? 6 : 0));
    expect(file.notes.join(' ')).toContain('the sun was on it');
    expectWaveBut(file, []);
    expect(file.columns[0]!.values[17]).toBeNaN();
  });

  test('a wet humidity sensor', () => {
    const file = made(waveC, (ms) => (hourIn(ms) >= 30 && hourIn(ms) < 40 ? 99.5 : percent(ms)));
    expect(file.columns[1]!.values[35]).toBeNaN();
    expect(file.columns[0]!.leftOut).toBe(0);
  });

  function expectWaveBut(file: LoggerFile, range: readonly number[]): void {
    file.columns[0]!.values.forEach((value, hour) => {
      const isIn = hour >= (range[0] ?? Infinity) && hour <= (range[1] ?? -Infinity);
      if (Number.isNaN(value) || isIn) return;
      expect(Math.abs(value - meanC(file.startMs + hour * HOUR))).toBeLessThan(0.4);
    });
  }
});

describe('what is no logger’s file', () => {
  test.each([
    ['a letter', 'Dear neighbour,\nthe house is too hot.', 'column names'],
    ['no temperature', 'Time,Battery (V)\n2021-01-01 00:00,3.1\n2021-01-01 01:00,3.1', 'temperature'],
    ['a date that is none', 'Time,Temp (°C)\n2021-02-30 00:00,20.1\n2021-02-30 01:00,20.2', '2021-02-30'],
    ['a reading a day', 'Time,Temp (°C)\n2021-02-01,20.1\n2021-02-02,20.2\n2021-02-03,20.2', '60 minutes'],
  ])('%s says what is wrong', (_, text, word) => {
    const result = readLogger(text, { utcOffsetH: 0 });
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.faults.join(' ')).toContain(word);
  });
});

test.each([
  ['a heading within', ['Date,Temp °C'], /2 lines .*line 102, “Date, Temp °C”/],
  ['what a table program made of a date too wide', ['########,20.1'], /line 102, “########, 20\.1”/],
  ['a low battery', ['\u0000\u0001ERR low battery'], /line 102, “ERR low battery”/],
  ['an error in place of a reading', ['2026-01-13 09:10,#VALUE!'], /line 102, “2026-01-13 09:10, #VALUE!”/],
  ['three of them', ['end', 'start', 'end'], /4 lines .*line 102, “end”/],
])('few lines that are no readings are passed over and named: %s', async (_, stray, said) => {
  const line = (i: number) =>
    `${new Date(Date.UTC(2026, 0, 13) + i * 600_000).toISOString().slice(0, 16).replace('T', ' ')},${20 + (i % 7) / 10}`;
  const rows = Array.from({ length: 200 }, (_, i) => line(i));
  const text = ['Date,Temp °C', ...rows.slice(0, 100), ...stray, ...rows.slice(100), '2026-01-1'].join('\n');
  const read = readLogger(text, { utcOffsetH: -7 });
  if (!read.ok) throw new Error(read.faults.join());
  // A last line that was cut off, “2026-01-1”, is no reading of an earlier day.
  expect(read.file.hours).toBe(34);
  expect(read.file.columns[0]!.readings).toBe(200);
  const note = read.file.notes.find((one) => one.includes('passed over'))!;
  expect(note).toMatch(said);
});
