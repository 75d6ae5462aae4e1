import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { csvCell } from '../../src/outcomes/csv-cell.ts';

test('what a spreadsheet would compute is marked as text', () => {
  // Openers listed by OWASP, "CSV injection".
  for (const open of ['=', '+', '-', '@', '\t', '\r', ' =', '\uff1d']) {
    const [[cell]] = Papa.parse<string[]>(csvCell(`${open}HYPERLINK("http://example.invalid")`)).data as [
      string[],
    ];
    expect(cell).toBe(`'${open}HYPERLINK("http://example.invalid")`);
  }
});

test('numbers stay numbers, with their minus', () => {
  expect([-3.25, 0, 1e-7].map(csvCell)).toEqual(['-3.25', '0', '1e-7']);
  expect(['-3.25', '+4', '1e-7', '-1+cmd'].map(csvCell)).toEqual(['-3.25', '+4', '1e-7', `"'-1+cmd"`]);
});

test('any text comes back from a row as it went in, but for the mark', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ maxLength: 20 }), { minLength: 2, maxLength: 5 }), (cells) => {
      const row = Papa.parse<string[]>(cells.map(csvCell).join(','), { delimiter: ',', newline: '\n' })
        .data[0]!;
      expect(row).toHaveLength(cells.length);
      row.forEach((cell, i) => {
        expect([cells[i], `'${cells[i]}`]).toContain(cell);
        if (!/^[+-]?\d/.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
      });
    }),
    { numRuns: 500 },
  );
});
