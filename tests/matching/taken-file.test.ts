// Files of the days of a house, told apart: weather, a logger, neither; and a logger outdoors in place of a station's air.
// The files are made up.
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { withOutdoorLogger } from '../../src/matching/outdoor-logger.ts';
import { takenFile } from '../../src/matching/taken-file.ts';
import { NORTH } from '../model/sites.ts';

const rows = (head: string, cells: (hour: number) => string, hours = 72) =>
  [
    head,
    ...Array.from({ length: hours }, (_, hour) => {
      const at = new Date(Date.UTC(2026, 0, 10) + hour * 3_600_000).toISOString();
      return `${at.slice(0, 10)} ${at.slice(11, 16)},${cells(hour)}`;
    }),
  ].join('\n');
const LOGGER = rows(
  'Time,Temperature [°C],Humidity [%]',
  (hour) => `${18 + (hour % 24) / 10},${40 + (hour % 24)}`,
);
const WEATHER = rows('Time,Temperature [°C],Wind speed [m/s]', (hour) => `${hour % 24},3`);
const CHOICES = { name: 'front room.csv', site: NORTH, clock: 'standard' } as const;
const take = (text: string | Uint8Array, as: 'auto' | 'weather' | 'logger' = 'auto') =>
  takenFile(typeof text === 'string' ? new TextEncoder().encode(text) : text, { ...CHOICES, as });

test('wind makes it weather; without, a logger wrote it, unless somebody says otherwise', async () => {
  expect((await take(WEATHER)).kind).toBe('weather');
  expect((await take(LOGGER)).kind).toBe('logger');
  expect((await take(LOGGER, 'weather')).kind).toBe('weather');
  expect((await take(gzipSync(LOGGER))).kind).toBe('logger');
});

test('a diary is told by its names, or by what somebody says it is', async () => {
  const diary = await take('from,until,what\n2026-01-12 07:00,07:20,windows');
  expect(diary.kind === 'diary' && diary.diary.lines.length).toBe(1);
  const refused = await take(LOGGER, 'diary' as 'auto');
  expect(refused.kind === 'refused' && refused.faults.join(' ')).toContain('from, until and what');
});

test('a sun meter on a wall is read whatever its name says, and only then', async () => {
  const wall = rows('Time,Temperature [°C],Wind speed [m/s],Solar radiation [W/m²]', (hour) => {
    const light = Math.max(0, 600 * Math.sin(((hour - 6) / 12) * Math.PI));
    return `${hour % 24},3,${light.toFixed(0)}`;
  });
  const plain = await take(wall);
  if (plain.kind !== 'weather') throw new Error('it does not read');
  expect(plain.meters).toEqual(['Solar radiation [W/m²]']);
  expect(plain.real.globalHorizontal).not.toBe(null);
  const plane = { header: plain.meters[0]!, tiltDeg: 90, azimuthDeg: 180 };
  const read = await takenFile(new TextEncoder().encode(wall), { ...CHOICES, as: 'weather', plane });
  if (read.kind !== 'weather') throw new Error('it does not read');
  expect(read.real.globalHorizontal).toBe(null);
  expect(read.real.planeSun).toMatchObject(plane);
  expect(Math.max(...read.real.planeSun!.values)).toBeGreaterThan(500);
});

test('a letter and a damaged parcel are refused in words', async () => {
  const letter = await take('Dear neighbour,\nthe house is too cold.');
  expect(letter.kind === 'refused' && letter.faults.join(' ')).toContain('column names');
  const parcel = await take(gzipSync(LOGGER).subarray(0, 90));
  expect(parcel.kind === 'refused' && parcel.faults.join(' ')).toContain('damaged');
});

test('what hung outdoors goes before the station where it read, and alone is all the weather there is', async () => {
  const [station, logger] = [await take(WEATHER), await take(LOGGER)];
  if (station.kind !== 'weather' || logger.kind !== 'logger') throw new Error('they do not read');
  const { file } = logger;
  const columns = file.columns.map((column) => ({ file, column }));
  const both = withOutdoorLogger(station.real, columns, NORTH)!;
  expect(both.dryBulbC[30]).toBeCloseTo(file.columns[0]!.values[30]!, 9);
  expect(both.windSpeed![30]).toBeCloseTo(3, 9);
  // Dew point of 18.6 °C at 46 %: 6.7 °C by the Magnus formula with 17.62 and 243.12 (WMO no. 8, from memory).
  const ratio = Math.log(0.465) + (17.62 * 18.65) / (243.12 + 18.65);
  expect(both.dewPointC![30]).toBeCloseTo((243.12 * ratio) / (17.62 - ratio), 0);
  const alone = withOutdoorLogger(null, columns, NORTH)!;
  expect([alone.hours, alone.globalHorizontal]).toEqual([file.hours, undefined]);
  expect(withOutdoorLogger(null, [], NORTH)).toBe(null);
  expect(withOutdoorLogger(station.real, [], NORTH)).toBe(station.real);
});
