// A report as Markdown: headings, paragraphs, tables, findings by gravity. Pictures are drawn by the page alone; here
// their captions stand for them. Names and notes come from people and their files: whatever would be HTML, a link, a
// picture or a heading in Markdown is escaped, so that it is read as the characters it is.

import { SEVERITY_WORDS } from '../findings/severity-words.ts';
import type { Block } from '../report/block.ts';
import type { Report } from '../report/report.ts';

/** The text `report` prints. */
export function reportMarkdown(report: Report): string {
  const head = [
    `# ${plain(oneLine(report.title))}`,
    ...(report.subtitle === '' ? [] : [plain(report.subtitle)]),
  ];
  const sections = report.sections.flatMap(({ title, blocks, appendix }, i) => [
    ...(appendix && !report.sections[i - 1]?.appendix ? ['# Appendix'] : []),
    `## ${title}`,
    ...blocks.map(blockText),
  ]);
  return [...head, ...sections, '---', plain(report.foot)].join('\n\n');
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'text':
      return plain(block.text);
    case 'picture':
      return `*Picture: ${plain(oneLine(block.caption))}*`;
    case 'findings':
      return block.findings
        .map(({ severity, text }) => `- **${SEVERITY_WORDS[severity]}** ${plain(oneLine(text))}`)
        .join('\n');
    case 'table': {
      const width = block.rows[0]?.length ?? block.head.length;
      const head = block.head.length > 0 ? block.head : Array<string>(width).fill('');
      const line = `|${' --- |'.repeat(width)}`;
      return [rowText(head), line, ...block.rows.map(rowText)].join('\n');
    }
  }
}

function rowText(cells: readonly string[]): string {
  return `| ${cells.map((cell) => inline(oneLine(cell)).replaceAll('|', '\\|')).join(' | ')} |`;
}

function oneLine(text: string): string {
  return text.replaceAll(/\s*[\r\n]+\s*/g, ' ');
}

/**
 * Text that Markdown shows as it is. Escaped by a backslash: what opens HTML, a link, a picture, an entity, code or
 * emphasis anywhere, and what opens a heading, a quote or a rule at the head of a line.
 * Source: CommonMark 0.31, sections 2.4 (backslash escapes) and 6.
 */
function plain(text: string): string {
  return inline(text).replaceAll(/^(\s*)([#=+-])/gm, '$1\\$2');
}

function inline(text: string): string {
  return text.replaceAll(/[\\<>[\]`*_~]|&(?=[#a-z])/gi, '\\$&');
}
