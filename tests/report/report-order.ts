// The three examples run, an order for a report of one of them, and a report as one string to look for words in.
import type { Block } from '../../src/report/block.ts';
import type { Report, ReportOrder } from '../../src/report/report.ts';
import { runExample } from '../findings/example-run.ts';

export const RUNS = {
  leaning: runExample('leaning').run,
  closed: runExample('closed').run,
  modest: runExample('modest').run,
};

export function order(changes: Partial<ReportOrder> = {}): ReportOrder {
  return {
    client: 'The Quillens',
    place: 'Larkspur Bench',
    adviser: '',
    question: 'How much glass?',
    date: '3 May 2027',
    run: RUNS.leaning,
    others: [],
    answers: [],
    help: null,
    ...changes,
  };
}

export function wordsOf(report: Report): string {
  const blockWords = (block: Block): string => {
    switch (block.kind) {
      case 'text':
        return block.text;
      case 'table':
        return [block.head, ...block.rows].flat().join(' ');
      case 'findings':
        return block.findings.map(({ text }) => text).join(' ');
      case 'picture':
        return block.caption;
    }
  };
  return report.sections.map(({ title, blocks }) => [title, ...blocks.map(blockWords)].join(' ')).join('\n');
}
