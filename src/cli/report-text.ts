// A report as Markdown: headings, paragraphs, tables, findings by gravity. Pictures are drawn by the page alone; here
// their captions stand for them.

import type { Block, Report } from '../findings/report.ts';
import { SEVERITY_WORDS } from '../findings/severity-words.ts';

/** The text `report` prints. */
export function reportMarkdown(report: Report): string {
  const head = [`# ${report.title}`, ...(report.subtitle === '' ? [] : [report.subtitle])];
  const sections = report.sections.flatMap(({ title, blocks }) => [`## ${title}`, ...blocks.map(blockText)]);
  return [...head, ...sections, '---', report.foot].join('\n\n');
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'text':
      return block.text;
    case 'picture':
      return `*Picture: ${block.caption}*`;
    case 'findings':
      return block.findings
        .map(({ severity, text }) => `- **${SEVERITY_WORDS[severity]}** ${text}`)
        .join('\n');
    case 'table': {
      const width = block.rows[0]?.length ?? block.head.length;
      const head = block.head.length > 0 ? block.head : Array<string>(width).fill('');
      return [head, Array<string>(width).fill('---'), ...block.rows].map(rowText).join('\n');
    }
  }
}

function rowText(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`;
}
