// The front door: formats told apart by content, gzip, limits, and files of every kind of damage. Nothing may throw
// or hang, and every refusal names a line or a cause.
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { describeFault, type ReadResult } from '../../src/weather/read-result.ts';
import { formatOf, readWeather, readWeatherText } from '../../src/weather/reader.ts';
import { gunzip, MOST_BYTES } from '../../src/weather/text/platform-streams.ts';
import { climateText, fileBytes, fileText, N_ITALY, yearOf } from './weather-files.ts';

const FILES: Readonly<Record<string, string>> = {
  '723170TYA.CSV': 'TMY3',
  '723650TY.csv': 'TMY3',
  '725650TYA.CSV': 'TMY3',
  '04725.tm2': 'TMY2',
  'tmy_45.000_8.000_2005_2023.csv': 'PVGIS CSV',
  'pvgis_tmy_test.csv': 'PVGIS CSV',
  'PVGIS_TMY_Data_54.60452_-5.9286.csv': 'PVGIS CSV',
  'tmy_45.000_8.000_2005_2023.json': 'PVGIS JSON',
  'test_psm3_tmy-2017.csv': 'NSRDB PSM',
  'test_psm4_tmy-2023.csv': 'NSRDB PSM',
  'test_psm4_polar_tmy_2023.csv': 'NSRDB PSM',
};

/** One of each format, for damage. */
const SAMPLES = [
  '723170TYA.CSV',
  '04725.tm2',
  'tmy_45.000_8.000_2005_2023.csv',
  'tmy_45.000_8.000_2005_2023.json',
  'test_psm4_tmy-2023.csv',
];

const faultsOf = (result: ReadResult): string[] => (result.ok ? [] : result.faults.map(describeFault));

/** A refusal with its reasons, or a year without NaN that can be prepared. */
function expectRefusalOrYear(result: ReadResult): void {
  if (result.ok) {
    const { year } = result;
    for (const value of Object.values(year)) {
      if (value instanceof Float64Array) expect(value.every(Number.isFinite)).toBe(true);
    }
    prepareClimate(year);
    return;
  }
  expect(result.faults.length).toBeGreaterThan(0);
  expect(result.faults.length).toBeLessThanOrEqual(20);
  for (const fault of result.faults) {
    expect(fault.expected).not.toBe('');
    expect(describeFault(fault).length).toBeLessThan(400);
  }
}

test.each(Object.entries(FILES))('%s is recognised as %s by its content', (file, format) => {
  expect(formatOf(fileText(file))).toBe(format);
});

test('a bundled climate is recognised', () => {
  expect(formatOf(climateText('denver'))).toBe('Daystone climate');
});

test('gzip, plain bytes and text give the same year', async () => {
  const bytes = fileBytes('723170TYA.CSV');
  const text = fileText('723170TYA.CSV');
  const zipped = yearOf(await readWeather(bytes));
  expect(yearOf(await readWeather(new TextEncoder().encode(text)))).toEqual(zipped);
  expect(yearOf(await readWeather(text))).toEqual(zipped);
});

test('marks of Unicode and the three line endings do not matter', async () => {
  const text = fileText('723170TYA.CSV').replace(/\r\n/g, '\n');
  const plain = yearOf(readWeatherText(text));
  expect(yearOf(readWeatherText(`\uFEFF${text}`))).toEqual(plain);
  expect(yearOf(readWeatherText(text.replace(/\n/g, '\r\n')))).toEqual(plain);
  expect(yearOf(readWeatherText(text.replace(/\n/g, '\r')))).toEqual(plain);
  const utf16 = Buffer.from(`\uFEFF${text}`, 'utf16le');
  expect(yearOf(await readWeather(utf16))).toEqual(plain);
});

test('the polar PSM file, global radiation only, is refused with the columns it lacks', async () => {
  const faults = faultsOf(await readWeather(fileBytes('test_psm4_polar_tmy_2023.csv')));
  expect(faults[0]).toBe(
    'line 3, column "Temperature": nothing found; expected a column of this name; ask for it when downloading',
  );
  expect(faults.join(' ')).toContain('"DNI"');
});

describe('what is no weather file is refused with its cause', () => {
  const cases: readonly (readonly [string, Uint8Array | string, string])[] = [
    ['nothing', new Uint8Array(0), 'an empty file'],
    ['blank lines', '\n\n  \n', 'an empty file'],
    ['a zip archive', Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0]), 'zip archive or spreadsheet'],
    ['a PDF', Buffer.from('%PDF-1.7\n'), 'PDF'],
    ['binary data', Uint8Array.from({ length: 5000 }, (_, i) => (i * 37) % 256), 'binary data'],
    ['a letter', 'Dear sir,\nplease find the weather below.\nYours', 'found "Dear sir'],
    ['other JSON', '{"a": [1, 2, 3]}', 'expected a weather file'],
    ['half a gzip', gzipSync('x'.repeat(10_000)).subarray(0, 30), 'damaged or cut-off gzip'],
  ];
  test.each(cases)('%s', async (_, content, cause) => {
    const result = await readWeather(content);
    expectRefusalOrYear(result);
    expect(faultsOf(result)[0]).toContain(cause);
  });

  test('100 MB of text is refused by its size, with no more than its first two bytes read', async () => {
    const long = new Uint8Array(100_000_000);
    const touched: PropertyKey[] = [];
    const watched = new Proxy(long, {
      get(bytes, key) {
        touched.push(key);
        return Reflect.get(bytes, key, bytes);
      },
    });
    expect(faultsOf(await readWeather(watched))[0]).toContain('100 MB');
    expect(touched.filter((key) => !['0', '1', 'length', 'byteLength'].includes(String(key)))).toEqual([]);
  });

  test('a small gzip that unpacks beyond the limit is given up on the way', async () => {
    const bomb = gzipSync(Buffer.alloc(5_000_000));
    expect(bomb.length).toBeLessThan(10_000);
    expect(await gunzip(bomb, 1_000_000)).toBe('too large');
    expect(MOST_BYTES).toBeLessThanOrEqual(200_000_000);
  });

  test('a long JSON is refused before it is parsed', () => {
    const text = `{"tmy_hourly":${'['.repeat(20_000_000)}`;
    const parse = vi.spyOn(JSON, 'parse');
    expect(faultsOf(readWeatherText(text))[0]).toContain('20 MB of JSON');
    expect(parse).not.toHaveBeenCalled();
    parse.mockRestore();
  });

  test('a long table is refused by its rows', () => {
    const text = `time,temp,ghi\n${'2021-01-01 00:00,1,0\n'.repeat(200_000)}`;
    expect(faultsOf(readWeatherText(text, N_ITALY))[0]).toContain('rows');
  });
});

describe.each(SAMPLES)('%s damaged', (file) => {
  const text = fileText(file);
  const read = (damaged: string) =>
    expectRefusalOrYear(readWeatherText(damaged, { ...N_ITALY, fileName: file }));

  test('cut off anywhere', () => {
    for (let share = 0.02; share < 1; share += 0.11) read(text.slice(0, Math.floor(text.length * share)));
    expect(faultsOf(readWeatherText(text.slice(0, text.length / 2), N_ITALY)).length).toBeGreaterThan(0);
  });

  test('lines shuffled', () => {
    const end = file.endsWith('.json') ? '}, ' : '\n';
    const lines = text.split(end);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: lines.length - 1 }), (turn) => {
        const result = readWeatherText([...lines.slice(turn), ...lines.slice(0, turn)].join(end), N_ITALY);
        expectRefusalOrYear(result);
      }),
      { numRuns: 3 },
    );
  });

  test('separators and decimal points exchanged', () => {
    read(text.replaceAll(',', ';'));
    read(text.replaceAll(',', '\t'));
    read(text.replaceAll(',', ';').replaceAll('.', ','));
    read(text.replaceAll('.', ','));
    read(text.replaceAll(',', '"'));
  });

  test('characters overwritten', () => {
    const spot = fc.record({
      at: fc.integer({ min: 0, max: text.length - 10 }),
      with: fc.oneof(
        fc.string({ maxLength: 8 }),
        fc.constantFrom('\0', '"', ',', '\n', '-9999', '1e308', '9'.repeat(40), '-', 'NaN'),
      ),
    });
    fc.assert(
      fc.property(fc.array(spot, { minLength: 1, maxLength: 6 }), (spots) => {
        let damaged = text;
        for (const { at, with: piece } of spots)
          damaged = damaged.slice(0, at) + piece + damaged.slice(at + piece.length);
        read(damaged);
      }),
      { numRuns: 8 },
    );
  });
});

test('any text and any bytes are survived', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.oneof(fc.string({ maxLength: 3000 }), fc.uint8Array({ maxLength: 3000 })),
      async (content) => {
        expectRefusalOrYear(await readWeather(content, N_ITALY));
      },
    ),
    { numRuns: 150 },
  );
});

test('tables of any cells are survived', () => {
  const cell = fc.oneof(
    fc.constantFrom('time', 'temp', 'ghi', 'date', '2021-01-01 00:00', '-', '"', '1e9', '-9999', 'NaN', ''),
    fc.double().map(String),
    fc.string({ maxLength: 6 }),
  );
  const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(table, fc.constantFrom(',', ';', '\t', '|'), (rows, separator) => {
      const text = `time${separator}temperature${separator}ghi\n${rows.map((row) => row.join(separator)).join('\n')}`;
      expectRefusalOrYear(readWeatherText(text, N_ITALY));
    }),
    { numRuns: 150 },
  );
});
