// The fold under a chart that holds its numbers as a table: the text a screen reader and a printer need. A row may be
// wider than the page, so the table scrolls.

import type { ComponentChildren } from 'preact';
import { ScrollTable } from './ScrollTable.tsx';

export interface NumbersFoldProps {
  /** what the table is, for one who cannot see what it stands under */
  readonly label: string;
  readonly summary?: string;
  /** a table element */
  readonly children: ComponentChildren;
}

export function NumbersFold({ label, summary = 'As numbers', children }: NumbersFoldProps) {
  return (
    <details class="numbers">
      <summary>{summary}</summary>
      <ScrollTable label={label}>{children}</ScrollTable>
    </details>
  );
}
