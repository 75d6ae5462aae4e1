// Lines of a batch that are damaged, huge or mean: each gives an outcome or an {"id", "error"} line, and none throws.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerLine } from '../../src/cli/batch-line.ts';
import { MOST_LINE_CHARACTERS } from '../../src/cli/capped-lines.ts';
import { printable } from '../../src/cli/printable.ts';

const errorOf = async (line: string) =>
  JSON.parse(await answerLine(line, 5)) as { id: unknown; error?: string };

test('any JSON, and any text, is answered in one line', async () => {
  const entry = fc.record(
    { id: fc.jsonValue(), design: fc.jsonValue(), climate: fc.jsonValue(), other: fc.jsonValue() },
    { requiredKeys: [] },
  );
  const line = fc.oneof(
    fc.string({ maxLength: 200 }),
    fc.json(),
    entry.map((value) => JSON.stringify(value)),
  );
  await fc.assert(
    fc.asyncProperty(line, async (text) => {
      const answer = await answerLine(text, 7);
      expect(answer).not.toContain('\n');
      expect(JSON.parse(answer)).toHaveProperty('error');
    }),
    { numRuns: 500 },
  );
});

test('keys that reach for the prototype are refused by name and change nothing', async () => {
  for (const key of ['__proto__', 'constructor', 'prototype']) {
    const { error } = await errorOf(`{"${key}": {"isAdmin": true}, "design": "modest"}`);
    expect(error).toContain(`${key}; allowed: the keys id, design, climate`);
  }
  for (const climate of ['__proto__', 'constructor', '../../package', 'denver\\u0000']) {
    expect((await errorOf(`{"design": "modest", "climate": "${climate}"}`)).error).toContain(
      'allowed: denver',
    );
  }
  expect(({} as { isAdmin?: unknown }).isAdmin).toBeUndefined();
});

test('a design no house can have is refused on its line', async () => {
  const oven = {
    'house.floorAreaM2': 4,
    'house.equatorWallM': 2,
    'people.appliancesW': 10_000,
    'envelope.wallResistance': 15,
    'envelope.roofResistance': 20,
    'air.ach50': 0.1,
    'vents.houseM2': 0,
    'mass.areaM2': 0,
    'glass.value': 0,
  };
  const { EXAMPLES } = await import('../../src/design/examples.ts');
  const design = structuredClone(EXAMPLES[2]!.design) as unknown as Record<string, Record<string, number>>;
  for (const [path, value] of Object.entries(oven)) {
    const [block, key] = path.split('.') as [string, string];
    design[block]![key] = value;
  }
  const { error } = await errorOf(JSON.stringify({ design, climate: 'tucson' }));
  expect(error).toMatch(/the air of the house would reach \d+ °C; allowed: -90 to 150 °C/);
});

test('a line too long, a name too long: the answer is short', async () => {
  expect((await errorOf(' '.repeat(MOST_LINE_CHARACTERS + 1))).error).toContain('at most that');
  const long = await errorOf(`{"design": "modest", "climate": "${'c'.repeat(500_000)}"}`);
  expect(long.error!.length).toBeLessThan(500);
});

test('a terminal obeys nothing that stands in a name', () => {
  expect(printable('a\u001b[31mred\u0007\u009b2J\u202eb\ttab\nline °C')).toBe(
    'a�[31mred��2J�b\ttab\nline °C',
  );
});
