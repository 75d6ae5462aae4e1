// How far to trust the figures, in words for the report and the page, and what was checked, by source. The counts
// are written by `npm run published -- --write`; the words say what they mean for a client.

import { hours, listed, type Wording } from '../findings/wording.ts';
import { capitalised } from '../questions/words.ts';
import checks from './checks.json' with { type: 'json' };
import errors from './what-errors-do.json' with { type: 'json' };

/** What the model leaves out. */
export const NOT_MODELLED: readonly string[] = [
  'the difference between the top and the bottom of a room, but for an estimate where one reaches up two storeys',
  'wind that blows from room to room',
  'a window opened in one room for another',
  'sun on a person in a chair',
  'furniture that shades a floor',
  'warm pipes',
  'water that moves through walls and soil',
  'soil that runs dry',
  'rain',
  'wind round a particular hill',
  'the strength of anything',
  'prices, but those you enter yourself',
];

/** The same in a sentence. */
export const LEFT_OUT = `Not in the model: ${listed(NOT_MODELLED)}.`;

export const TRUST: readonly string[] = [
  'The parts of the model are checked against published standards, handbook tables and worked examples. Among them are tables of the sun and the sky, the standards for glass, walls and floors, and the handbooks of comfort, damp and mould.',
  'The whole is checked against published test houses and by its own books: in every run the heat that came in, less what went out and what was stored, has to come to nothing, and the same for water.',
  LEFT_OUT,
  'The weather is a typical year. Real summers and winters are hotter and colder than it. Airtightness as built, the wetness of the ground and the habits of people move the figures as much. Trust the comparison of two versions more than any single figure, and leave a margin.',
];

export interface SourceCount {
  readonly source: string;
  readonly checks: number;
  readonly pass: number;
  readonly note: number;
  readonly fail: number;
  /** where the numbers come from, most common first */
  readonly marks: string;
  /** whether a run reaches the code that was checked */
  readonly use: 'a run' | 'reference only';
}

export interface ChecksBySource {
  readonly total: number;
  readonly sources: readonly SourceCount[];
}

/** A check as it is read: the last number says for how many rows of its quantity it stands. */
export type CheckLine = readonly [
  which: string,
  quantity: string,
  reference: string,
  ours: string,
  verdict: string,
  of: number,
];

export interface ListedChecks {
  /** notes and failures, one by one */
  readonly odd: readonly { readonly source: string; readonly line: CheckLine }[];
  readonly sources: readonly { readonly source: string; readonly lines: readonly CheckLine[] }[];
  /** our own code held against itself, run another way: no outside check, and not counted as one */
  readonly own: readonly { readonly source: string; readonly line: CheckLine }[];
}

/** Our own figures with one thing changed at a time, so that a reader sees what they lean on. */
export interface ErrorTable {
  readonly says: string;
  readonly figures: readonly string[];
  readonly houses: readonly {
    readonly name: string;
    readonly rows: readonly { readonly what: string; readonly values: readonly number[] }[];
  }[];
}

/** Outside checks by source, as counted when last written. */
export const CHECKS = checks as ChecksBySource;

/** Stands above the comparisons of our own. */
export const OWN_SAYS =
  'Two ways of ours to one figure, as a house in a real year and in a year made from that year’s monthly normals. They say how far the two lead apart; no outside source stands behind them, and they are not counted above.';

/** The count of the checks in a few sentences; common practice has no source and is counted apart. */
export function checksInShort({ sources }: Pick<ChecksBySource, 'sources'>): string {
  const outside = sources.filter(({ marks }) => marks !== 'practice');
  const practice = sources.filter(({ marks }) => marks === 'practice');
  const unused = outside.filter(({ use }) => use === 'reference only');
  const sum = (of: 'checks' | 'pass' | 'note' | 'fail', among: readonly SourceCount[] = outside) =>
    among.reduce((all, row) => all + row[of], 0);
  const failures = sum('fail', sources);
  return (
    `${sum('checks')} numbers were held against ${outside.length} outside sources: ${sum('pass')} agree within what was allowed, ` +
    `${sum('note')} lie a little outside a published range that we know from memory alone, or miss a measured house as their row says, and ${failures === 0 ? 'none fails' : `${failures} fail`}. ` +
    `Of them, ${sum('checks', unused)} check a formula that no run uses yet. ` +
    `${sum('checks', practice)} more are held against common practice, which has no source.`
  );
}

/** Sources under which stands what somebody measured, and what each kind is worth, in a sentence or two. */
const MEASURED_KINDS: readonly { readonly source: string; readonly kind: string; readonly says: string }[] = [
  {
    source: 'Houses as measured',
    kind: 'Tyres, earth and adobe',
    says: 'Houses of rammed tyres, rammed earth and adobe, and houses with earth against them. Most are told by their owners: good for whether a house stays mild or turns cold and for the order of it, not for a tenth of a degree.',
  },
  {
    source: 'Sunspaces as measured',
    kind: 'Sunspaces and glasshouses',
    says: 'Sunspaces, glazed balconies, verandas and glasshouses. What counts is how far they stand above outdoors by night and in sun, what they give the rooms, and what a door left open costs.',
  },
  {
    source: 'Mass walls and glazed walls as measured',
    kind: 'Mass walls, water and shells',
    says: 'Walls that carry the sun of the day into the night, light houses with water inside, and what a better shell does on summer nights.',
  },
  {
    source: 'Doors as measured',
    kind: 'Doors',
    says: 'Air that passes an open door. Our rule is that of a sharp-edged opening between still rooms.',
  },
];

export interface MeasuredKind {
  readonly kind: string;
  readonly says: string;
  /** what each was found to be, and what ours says of one of the kind, a sentence each */
  readonly told: readonly string[];
}

/** What was measured, by kind, a house in one; kinds of which the list has none are left out. */
export function measuredInWords({ sources }: Pick<ListedChecks, 'sources'>): readonly MeasuredKind[] {
  return MEASURED_KINDS.flatMap(({ source, kind, says }) => {
    const lines = sources.find((entry) => entry.source === source)?.lines ?? [];
    const houses = new Map<string, string[]>();
    for (const [which, quantity, reference, ours, verdict] of lines) {
      const miss = verdict === 'pass' ? '' : ' That is a miss.';
      const told = houses.get(which) ?? [];
      told.push(
        `${capitalised(quantity)}: measured ${together(reference)}; ours says ${together(inThreeDigits(ours))}.${miss}`,
      );
      houses.set(which, told);
    }
    const told = [...houses].map(([which, figures]) => `${capitalised(which)}. ${figures.join(' ')}`);
    return told.length === 0 ? [] : [{ kind, says, told }];
  });
}

/** More digits of ours than three say nothing beside such houses. */
function inThreeDigits(ours: string): string {
  return ours.replace(/-?\d+(\.\d+)?/g, (number) =>
    String(Number(Number(number).toPrecision(3))).replace('-', '−'),
  );
}

/** A number and its unit on one line. */
function together(amount: string): string {
  return amount.replace(/(\d) (?=\D+$)/, '$1\u00a0');
}

/** Stands above them. */
export const MEASURED_SAYS =
  'Houses of the clients’ kind that somebody lived in and measured. Each is set up from what is known of it, in a typical year of the place, of the nearest climate at hand, or made from the place’s normals. What nobody noted stands at its middle, or is run at both ends of what it may be (“Open” names it), and ours is then a span. Behind ± stands what such an account is worth. A house of this kind in this place did so: ours says so. A miss is told as a miss.';

/** Rows of the error table that a client hears of, by how they are named there. */
const WARMER = 'every month is 1 °C warmer';
const COLDER = 'every month is 1 °C colder';
const LEAKY = 'the house is twice as leaky as hoped';
const DRAWN = 'all is as drawn';
/** The example told of when the house is none of them. */
const USUAL = 'the modest one';

/**
 * How far off a figure can be, as far as something measured tells: our own runs of an example with one thing changed.
 *
 * @param name of the design; an example of that name is told of, else the modest one
 */
export function errorsInShort(name: string, words: Wording, table: ErrorTable = errors): string {
  const house =
    table.houses.find((entry) => entry.name === name) ??
    table.houses.find((entry) => entry.name.endsWith(USUAL));
  const of = (wanted: string) => house?.rows.find(({ what }) => what === wanted)?.values;
  const [drawn, warmer, colder, leaky] = [of(DRAWN), of(WARMER), of(COLDER), of(LEAKY)];
  if (house === undefined || !drawn || !warmer || !colder || !leaky)
    throw new RangeError(`the table of errors lacks '${USUAL}' or one of its rows`);
  const [hot, damp, heat] = [0, 1, 2] as const;
  return (
    `How far off can a figure be? We ran an example of the tool, "${house.name}", with one thing changed at a time. ` +
    `It is too hot for ${hours(drawn[hot]!)}: ${hours(warmer[hot]!)} when every month is ${words.degree} warmer, ${hours(colder[hot]!)} when it is ${words.degree} colder. ` +
    `When the house is twice as leaky as hoped, damp goes from ${hours(drawn[damp]!)} to ${hours(leaky[damp]!)} and back-up heat from ${words.energy(drawn[heat]!)} to ${words.energy(leaky[heat]!)}. ` +
    'This report may be as far off.'
  );
}
