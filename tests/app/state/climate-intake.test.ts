// Taking in weather with a reader that answers when asked: what is asked of the person, what is kept when a reading
// fails, and that the newest look at a table wins.
import { expect, test } from 'vitest';
import { createClimateIntake } from '../../../src/app/state/climate-intake.ts';
import type { Workspace } from '../../../src/app/state/workspace.ts';
import type { ReadResult } from '../../../src/weather/read-result.ts';
import { readWeatherText, type WeatherLook } from '../../../src/weather/reader.ts';
import type { TableChoices, TableInspection } from '../../../src/weather/table/hourly-table.ts';
import { climateText } from '../../weather/weather-files.ts';

const BYTES = new Uint8Array([1]);
const year = (() => {
  const result = readWeatherText(climateText('denver'));
  if (!result.ok) throw new Error('the bundled climate does not read');
  return result.year;
})();
const table = (rows: number): WeatherLook => ({
  format: 'table',
  table: { columns: [], preview: [], rows } as unknown as TableInspection,
});
const refused = (column: string): ReadResult => ({
  ok: false,
  faults: [{ line: 3, column, value: 'x', expected: 'a number' }],
});

function intakeWith(look: (choices?: TableChoices) => Promise<WeatherLook>, read: () => Promise<ReadResult>) {
  const told: string[] = [];
  const set: unknown[] = [];
  const workspace = { keepClimate: () => {}, set: (...values: unknown[]) => set.push(values) };
  const bridge = {
    lookAtClimate: (_: unknown, choices?: TableChoices) => look(choices),
    readClimate: (_: unknown, __: unknown, ___: unknown, onStep?: (step: object) => void) => {
      onStep?.({ words: 'Reading', share: 0.2 });
      return read();
    },
  };
  const intake = createClimateIntake({
    workspace: workspace as unknown as Workspace,
    bridge: bridge as never,
    tell: (_, text) => told.push(text),
  });
  return { intake, told, set };
}

test('a file of a known format is read at once, and the design stands in it', async () => {
  const { intake, told, set } = intakeWith(
    async () => ({ format: 'TMY3', table: null }),
    async () => ({ ok: true, year }),
  );
  const taking = intake.take('denver.csv', BYTES);
  expect(intake.reading.value).toMatchObject({ name: 'denver.csv' });
  await taking;
  expect(intake.reading.value).toBe(null);
  expect(set[0]).toEqual(['climate', expect.stringMatching(/^own:denver-[a-z0-9]+$/), '']);
  expect(told[0]).toContain('The design now stands in');
});

test('a table waits; a refusal keeps the question and shows where it is wrong', async () => {
  let result = refused('T1');
  const { intake, told } = intakeWith(
    async () => table(8760),
    async () => result,
  );
  await intake.take('table.csv', BYTES);
  expect(intake.question.value).toMatchObject({ name: 'table.csv', table: { rows: 8760 } });
  await intake.answer({ latitudeDeg: 40, longitudeDeg: -105 }, {});
  expect(intake.question.value?.faults).toMatchObject([{ column: 'T1' }]);
  expect(told).toEqual([]);
  result = { ok: true, year };
  await intake.answer({ latitudeDeg: 40, longitudeDeg: -105 }, {});
  expect(intake.question.value).toBe(null);
});

test('a file without its place asks for it', async () => {
  const { intake } = intakeWith(
    async () => ({ format: 'NSRDB PSM', table: null }),
    async () => refused('latitude and longitude'),
  );
  await intake.take('grid.csv', BYTES);
  expect(intake.question.value).toMatchObject({ table: null });
});

test('a late look at a table does not take the place of a newer one', async () => {
  const waiting: ((look: WeatherLook) => void)[] = [];
  let first = true;
  const { intake } = intakeWith(
    () => {
      if (first) {
        first = false;
        return Promise.resolve(table(0));
      }
      return new Promise((resolve) => waiting.push(resolve));
    },
    async () => refused(''),
  );
  await intake.take('table.csv', BYTES);
  const looks = [intake.lookAgain({ stamp: 'start' }), intake.lookAgain({ stamp: 'end' })];
  waiting[1]!(table(2));
  waiting[0]!(table(1));
  await Promise.all(looks);
  expect(intake.question.value?.table?.rows).toBe(2);
});

test('a worker that ends under a reading is told like a fault', async () => {
  const { intake, told } = intakeWith(
    async () => ({ format: 'TMY3', table: null }),
    () => Promise.reject(new Error('the worker failed')),
  );
  await intake.take('denver.csv', BYTES);
  expect(told[0]).toContain('denver.csv: the file: found "the worker failed"');
  expect(intake.reading.value).toBe(null);
});
