import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { reportMarkdown } from '../../src/cli/report-text.ts';
import type { Report } from '../../src/report/report.ts';

const { name, note } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../data/hostile/html-in-texts.json'), 'utf8'),
) as { name: string; note: string };

/** A report in which every text is a person's. */
const report: Report = {
  title: name,
  subtitle: note,
  foot: name,
  sections: [
    {
      title: 'In short',
      blocks: [
        {
          kind: 'table',
          head: ['', name],
          rows: [
            ['For', note],
            ['a|b', '\\'],
          ],
        },
        { kind: 'text', text: note },
        { kind: 'picture', picture: { name: 'year' }, caption: note },
        { kind: 'findings', findings: [{ id: 'x', severity: 'note', text: note, figures: {} }] },
      ],
    },
  ],
};

test('HTML, links, pictures, code, headings and quotes in a name or a note are read as characters', () => {
  const text = reportMarkdown(report);
  // Taking away what is escaped leaves nothing that Markdown would act on but what the report itself puts there.
  const bare = text.replaceAll(/\\[!-/:-@[-`{-~]/g, '');
  expect(bare).not.toMatch(/[<>[\]`_~]|&[#a-z]/i);
  expect(bare.match(/^ *#+ .*$/gm)).toEqual([expect.stringMatching(/^# /), '## In short']);
  expect(text).toContain('\\<img src=x onerror="window.owned=1"\\>');
  expect(text).toContain('\\[link\\](javascript:window.owned=3)');
});

test('a cell holds its pipe and its line', () => {
  const rows = reportMarkdown(report)
    .split('\n')
    .filter((line) => line.startsWith('|'));
  expect(rows).toHaveLength(4);
  for (const row of rows) expect(row.replaceAll(/\\[|\\]/g, '').split('|')).toHaveLength(4);
});
