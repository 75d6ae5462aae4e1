// What can be taken along: tables that a spreadsheet reads as numbers and never as formulas, pictures of answers.
import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { answerMapPicture } from '../../../src/app/pictures/answer-map-picture.ts';
import { answerPicture } from '../../../src/app/pictures/answer-picture.ts';
import { pictureText } from '../../../src/app/pictures/picture-text.ts';
import { csvText } from '../../../src/app/take/csv-text.ts';
import { monthsFile } from '../../../src/app/take/months-file.ts';
import { pictureList } from '../../../src/app/take/picture-list.ts';
import { heatByMonth } from '../../../src/outcomes/balances.ts';
import type { GlassMassMap } from '../../../src/questions/glass-mass-grid.ts';
import type { Chart } from '../../../src/questions/question.ts';
import { exampleAnswer } from '../pictures/made-answer.ts';

test('a spreadsheet reads back every cell, and none as a formula', () => {
  const cell = fc.oneof(fc.string(), fc.constantFrom('=1+1', '+A1', '-2', '@x', '\tx', 'a,b', 'a"b', 'a\nb'));
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, fc.integer()), { minLength: 1 }), (rows) => {
      const read = Papa.parse<string[]>(csvText([['name', 'value'], ...rows]), {
        newline: '\n',
        delimiter: ',',
      });
      expect(read.errors).toEqual([]);
      for (const [i, [text, number]] of rows.entries()) {
        const [got = '', value = ''] = read.data[i + 1]!;
        expect([text, `'${text}`]).toContain(got);
        // A plain number may begin with its sign.
        if (!/^[+-]?\d/.test(got)) expect(got).not.toMatch(/^[=+\-@\t\r]/);
        expect(Number(value)).toBe(number);
      }
    }),
  );
});

test('the months file holds every cause with its unit, and its months make its year', async () => {
  const { answer } = await exampleAnswer('closed');
  const text = monthsFile('=cmd|evil', answer.year);
  const rows = Papa.parse<string[]>(text.trimEnd()).data;
  expect(rows[0]).toHaveLength(5 + 12 + 1);
  expect(rows.length).toBeGreaterThan(heatByMonth(answer.year).length);
  for (const row of rows.slice(1)) {
    expect(row[0]).toBe("'=cmd|evil");
    expect(['kWh', 'kg']).toContain(row[4]);
    const numbers = row.slice(5).map(Number);
    const sum = numbers.slice(0, 12).reduce((all, value) => all + value, 0);
    // Twelve months rounded to 0.005 at most.
    expect(Math.abs(sum - numbers[12]!)).toBeLessThan(0.07);
  }
});

const CHART: Chart = {
  id: 'made',
  title: 'Made',
  x: { label: 'glass', unit: 'm²' },
  y: ['tooHotHours'],
  curves: ['one', 'two'].map((id, i) => ({
    id,
    label: `curve ${id}`,
    points: [0, 10, 20].map((x) => ({ x, run: '', figures: { tooHotHours: x * (10 + i) } as never })),
  })),
  marks: [
    { id: 'm', kind: 'handbook', x: 12, label: 'a handbook says so', curve: null, source: 'made here' },
  ],
};

test('the picture of an answer names its curves, its marks and its limit', () => {
  const picture = answerPicture(CHART, 88, 'metric');
  const text = pictureText(picture);
  for (const words of ['curve one', 'curve two', 'a: a handbook says so', 'limit 88 h', 'glass, m²'])
    expect(text).toContain(words);
  expect(text.match(/stroke-dasharray="7 4"/g)!.length).toBe(2);
  expect(text).not.toMatch(/NaN|undefined/);
});

test('the picture of a map marks the limit and the design', () => {
  const map: GlassMassMap = {
    glassM2: [0, 10, 20],
    massM2: [0, 50, 100],
    tooHotHours: [0, 5, 10, 0, 3, 6, 0, 1, 2],
    overheatedHours: [0, 5, 10, 0, 3, 6, 0, 1, 2],
    filled: [0, 5, 10, 0, 3, 6, 0, 1, 2],
    filledErrorHours: null,
    lines: [{ hours: 5, kind: 'limit', paths: [[[10, 0], [12, 30]]] }], // biome-ignore format: a path
    drawn: { glassM2: 19, massM2: 20 },
  };
  const text = pictureText(answerMapPicture(map, 'metric'));
  expect(text).toContain('5 h limit');
  expect(text).toContain('as drawn');
  expect(text).not.toMatch(/NaN|undefined/);
});

test('every chart of the sheet can be taken along', async () => {
  const { answer, climate } = await exampleAnswer('leaning');
  const list = pictureList({ answer, climate, system: 'metric' }, []);
  // section, six layers of the year, two weeks, heat and moisture of two zones
  expect(list).toHaveLength(1 + 6 + 2 + 4);
  const ids = list.map(({ draw }) => draw().id);
  expect(new Set(ids).size).toBe(ids.length);
});
