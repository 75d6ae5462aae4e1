// The simulation service over a real message channel, as the page has it, without a thread: what goes across comes
// out whole, and handing columns over leaves nothing missing for the next run.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expose, proxy, type Remote, wrap } from 'comlink';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Year } from '../../src/network/year.ts';
import type { ReadStep } from '../../src/weather/reader.ts';
import { createSimulationService, type SimulationService } from '../../workers/service.ts';

const { port1, port2 } = new MessageChannel();
let service: Remote<SimulationService>;

beforeAll(async () => {
  expose(createSimulationService(), port1 as unknown as Worker);
  service = wrap<SimulationService>(port2 as unknown as Worker);
  const text = readFileSync(new URL('../../climates/denver.txt', import.meta.url), 'utf8');
  const result = await service.readClimate(text);
  if (!result.ok) throw new Error('the bundled climate does not read');
  await service.keepClimate('denver', result.year);
});

/** Every typed column of a year, in a fixed order. */
function columnsOf(year: Year): ArrayBufferView[] {
  const parts: object[] = [...year.zones, ...year.openings, ...(year.history ?? [])];
  return parts.flatMap((part) => Object.values(part)).filter((value) => ArrayBuffer.isView(value));
}

/** A column as one short text to compare by. */
function bytesOf(column: ArrayBufferView): string {
  const bytes = new Uint8Array(column.buffer, column.byteOffset, column.byteLength);
  return createHash('sha1').update(bytes).digest('hex');
}

afterAll(() => {
  port1.close();
  port2.close();
});

test('the same design run twice gives the same year, column by column', async () => {
  const { design } = EXAMPLES[1]!;
  const first = await service.run(design, 'denver', { history: true, units: 'metric' });
  const second = await service.run(design, 'denver', { history: true, units: 'metric' });
  expect(first.year.zones.map(({ airC }) => airC.length)).toEqual([8760, 8760]);
  expect(second.outcome).toEqual(first.outcome);
  expect(columnsOf(first.year).length).toBeGreaterThan(30);
  expect(columnsOf(second.year).map(bytesOf)).toEqual(columnsOf(first.year).map(bytesOf));
  expect(first.year.history!.length).toBeGreaterThan(5);
});

test('a year that travelled still has every column its outcome was made from, and its sentences come in the units asked for', async () => {
  const { design } = EXAMPLES[0]!;
  const metric = await service.run(design, 'denver', { history: false, units: 'metric' });
  const { year, outcome } = metric;
  const house = year.zones.find(({ id }) => id === 'house')!;
  const hot = house.operativeC.filter((celsius) => celsius > design.comfort.overheatC).length;
  expect(hot).toBe(outcome.zones.house.overheatedHours);
  expect(year.history).toBe(null);
  const us = await service.run(design, 'denver', { history: false, units: 'us' });
  const text = (answer: typeof metric) => answer.outcome.findings.map((finding) => finding.text).join(' ');
  expect(text(metric)).toContain('°C');
  expect(text(us)).toContain('°F');
  expect(text(us)).not.toContain('°C');
});

test('a climate that was never given is refused by name', async () => {
  await expect(
    service.run(EXAMPLES[0]!.design, 'nowhere', { history: false, units: 'metric' }),
  ).rejects.toThrow("climate is 'nowhere'");
});

test('a file that is no weather comes back as faults, not as an exception', async () => {
  expect(await service.readClimate('hello')).toMatchObject({ ok: false });
});

test('while a file is read, what the reader is at comes across, in order', async () => {
  const text = readFileSync(new URL('../../climates/denver.txt', import.meta.url), 'utf8');
  const steps: ReadStep[] = [];
  const zipped = new Uint8Array(gzipSync(text));
  const result = await service.readClimate(
    zipped,
    {},
    {},
    proxy((step: ReadStep) => void steps.push(step)),
  );
  expect(result.ok).toBe(true);
  // Steps come over a channel of their own and may arrive after the answer.
  await expect.poll(() => steps.length).toBe(3);
  expect(steps.map(({ words }) => words)).toEqual(['Unpacking', 'Reading Daystone climate', 'Handing over']);
  const shares = steps.map(({ share }) => share);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

test('a table is looked at before it is read; other files are named', async () => {
  const look = await service.lookAtClimate(
    'time,T out (F),glob\n2021-01-01 00:00,32,0\n2021-01-01 01:00,33,0\n',
  );
  expect(look.format).toBe('table');
  expect(look.table!.columns.map(({ role, unit }) => [role, unit?.name ?? ''])).toEqual([
    ['time', ''],
    ['dryBulb', '°F'],
    ['global', 'kWh/m²'],
  ]);
  expect(await service.lookAtClimate('hello')).toEqual({ format: null, table: null });
});

test('a climate at a glance comes with its months and its doubts', async () => {
  const text = readFileSync(new URL('../../climates/denver.txt', import.meta.url), 'utf8');
  const result = await service.readClimate(text);
  if (!result.ok) throw new Error('the bundled climate does not read');
  const { summary, doubts } = await service.glanceAt(result.year);
  expect(summary.months).toHaveLength(12);
  expect(doubts.every(({ effect }) => effect !== '')).toBe(true);
});
