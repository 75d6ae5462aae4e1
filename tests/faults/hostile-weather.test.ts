// Weather files that are bombs, nests or mean. Damage of every other kind is tried in tests/weather/reader.test.ts.
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { describeFault, type ReadResult } from '../../src/weather/read-result.ts';
import { readWeather } from '../../src/weather/reader.ts';
import { MOST_BYTES } from '../../src/weather/text/platform-streams.ts';
import { climateText, fileText } from '../weather/weather-files.ts';

const refusalOf = (result: ReadResult) =>
  result.ok ? 'accepted' : result.faults.map(describeFault).join('\n');

test('a gzip of some kilobytes that unpacks past the limit is refused with the limit', async () => {
  const bomb = gzipSync(Buffer.alloc(MOST_BYTES + 1_000_000));
  expect(bomb.length).toBeLessThan(100_000);
  expect(refusalOf(await readWeather(bomb))).toContain('"more when unpacked"; expected at most 64 MB');
});

test('a gzip within a gzip is not unpacked twice', async () => {
  const nested = gzipSync(gzipSync(Buffer.alloc(10_000_000)));
  expect(refusalOf(await readWeather(nested))).toContain('a text file');
});

test('a gzip cut off anywhere is refused as cut off', async () => {
  const whole = gzipSync(climateText('denver'));
  for (let eighth = 1; eighth < 8; eighth++) {
    const cut = whole.subarray(0, Math.floor((whole.length * eighth) / 8));
    expect(refusalOf(await readWeather(cut)), `${eighth}/8`).toContain('damaged or cut-off gzip');
  }
});

test('keys that reach for the prototype in a JSON file change nothing', async () => {
  const text = fileText('tmy_45.000_8.000_2005_2023.json');
  const plain = await readWeather(text);
  for (const key of ['__proto__', 'constructor']) {
    const mean = text.replace('{', `{"${key}": {"isAdmin": true, "inputs": null}, `);
    const read = await readWeather(mean);
    expect(read.ok).toBe(plain.ok);
    expect(({} as { isAdmin?: unknown }).isAdmin).toBeUndefined();
  }
});

test('columns named after what every object has are columns like any other', async () => {
  const rows = Array.from({ length: 8760 }, (_, i) => `${i % 24},${i},5`).join('\n');
  for (const head of [
    '__proto__,constructor,toString',
    'hour,__proto__,valueOf',
    'time,hasOwnProperty,temp',
  ]) {
    const said = refusalOf(await readWeather(`${head}\n${rows}`));
    expect(said).not.toBe('accepted');
    expect(said.length).toBeGreaterThan(20);
  }
});

test('a head with a name as long as a book is cut to a line or two', async () => {
  const long = climateText('denver').replace(/^name: .*$/m, `name: ${'n'.repeat(2_000_000)}`);
  const read = await readWeather(long);
  if (!read.ok) throw new Error(refusalOf(read));
  expect(read.year.site.name).toMatch(/^n+…$/);
  expect(read.year.site.name.length).toBeLessThanOrEqual(400);
});
