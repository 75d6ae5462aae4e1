// How sure the figures are, said to the client. The reasons are the model's own simplifications and what nobody
// can know before the house stands; README and `npm run published` say what was checked.

import { finding, type Rule } from '../rule.ts';

export const HOW_SURE_RULES: readonly Rule[] = [
  finding({
    id: 'how-sure',
    severity: 'note',
    applies: () => true,
    figures: ({ climate, outcome }) => ({
      weather: climate.year.source,
      heatResidual: outcome.books.heatResidual,
      source: 'the model’s own simplifications; see how far to trust it',
    }),
    says: () =>
      'How sure is this? Trust the comparison of two designs more than any single figure. The weather is a typical year, and real years are hotter or colder. Draughts, the wetness of the ground and the habits of people are guesses until the house stands. The air of each room counts as well mixed, so a seat in the sun is hotter than the figure.',
  }),
];
