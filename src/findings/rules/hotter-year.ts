// A design tried in a hotter year says so, wherever its findings go.

import { hotterName } from '../../design/hotter.ts';
import { hotterWords } from '../hotter-words.ts';
import { finding, type Rule } from '../rule.ts';

export const HOTTER_YEAR_RULES: readonly Rule[] = [
  finding({
    id: 'hotter-year',
    severity: 'note',
    applies: ({ design }) => design.hotter !== undefined,
    figures: ({ design }) => ({ ...design.hotter!, source: 'common practice, no source' }),
    says: (_, { design, words }) =>
      `These figures are for a ${hotterName(design.hotter!)} year, not the typical one: ${hotterWords(design.hotter!, words)}. Sun, wind and cloud stay as they were. It is a trial to test the design with, not a forecast for this site.`,
  }),
];
