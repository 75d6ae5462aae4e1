// What a report is made of: sections of text, tables, findings and pictures. A picture is named and not drawn, since
// the page and paper draw it each in its own way.

import type { Finding } from '../outcomes/outcome.ts';

export type Picture =
  | { readonly name: 'section' | 'plan' | 'year' | 'balance' }
  | { readonly name: 'week'; readonly kind: 'hot' | 'cold'; readonly firstHour: number };

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'findings'; readonly findings: readonly Finding[] }
  | { readonly kind: 'picture'; readonly picture: Picture; readonly caption: string };

export interface Section {
  readonly title: string;
  readonly blocks: readonly Block[];
  /** behind the two pages that everybody reads */
  readonly appendix?: true;
}
