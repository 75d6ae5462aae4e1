// How far to trust the figures, in words for the report and the page, and what was checked, by source. The counts
// are written by `npm run published -- --write`; the words say what they mean for a client.

import checks from './checks.json' with { type: 'json' };

export const TRUST: readonly string[] = [
  'The parts of the model are checked against published standards, handbook tables and worked examples. The command "npm run published" prints every check with its reference, our figure and the verdict.',
  'The whole is checked against published test houses and by its own books: in every run the heat that came in, less what went out and what was stored, has to come to nothing, and the same for water.',
  'Not in the model: the difference between the top and the bottom of a room, sun on a person in a chair, furniture that shades a floor, warm pipes, water that moves through walls and soil, wind round a particular hill, and the strength of anything.',
  'The weather is a typical year. Real summers and winters are hotter and colder than it. Airtightness as built, the wetness of the ground and the habits of people move the figures as much. Compare versions of a house with each other, and leave a margin.',
];

/** Outside checks by source: rows of source, checks, passes, notes and failures, as counted when last written. */
export const CHECKS: { readonly total: number; readonly rows: readonly (readonly string[])[] } = {
  total: checks.total,
  rows: checks.sources.map(({ source, checks: count, pass, note, fail }) => [
    source,
    String(count),
    String(pass),
    String(note),
    String(fail),
  ]),
};
