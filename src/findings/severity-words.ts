// How grave a finding is, in a word: colour alone would not do.

import type { Finding } from '../outcomes/outcome.ts';

export const SEVERITY_WORDS: Readonly<Record<Finding['severity'], string>> = {
  danger: 'Serious',
  warning: 'Watch',
  note: 'Note',
  good: 'Good',
};
