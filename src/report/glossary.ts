// The words a report uses that a lay reader may not know, one line each. The text of a report in, those of the words
// that stand in it out. What a word means is usual in the trade; where a number is said, its source stands beside it.

import type { Context } from '../findings/context.ts';
import { isUs } from '../findings/wording.ts';
import { STALE_AIR_PPM } from '../physics/carbon-dioxide.ts';
import { MOULD_INDEX_LIMIT } from '../physics/mould-index.ts';
import type { Block, Section } from './block.ts';

export interface Entry {
  readonly word: string;
  /** what in a report's text calls for the word */
  readonly used: RegExp;
  readonly means: (context: Context) => string;
}

/** In the order of the alphabet. */
export const ENTRIES: readonly Entry[] = [
  {
    word: 'Added mass',
    used: /\b(added|extra) mass\b/i,
    means: () => "Heavy walls or drums that hold the day's heat until night.",
  },
  {
    word: 'Air changes',
    used: /\bair changes an hour\b/,
    means: () =>
      'How many times an hour all the air of a house is renewed. "At 50 Pa" is while a test fan presses on the house: it shows how leaky the house is, and fewer is tighter.',
  },
  {
    word: 'Back-up heat',
    used: /\bback-up heat\b/i,
    means: () =>
      'What a stove or heater gives when sun and stored heat are not enough. Its peak is the most it gives at once.',
  },
  { word: 'Berm', used: /\bberm\b/i, means: () => 'Earth piled against a wall.' },
  {
    word: 'Bq/m³',
    used: /Bq\/m³/,
    means: () => 'Becquerel in a cubic metre of air: the measure for radon.',
  },
  {
    word: 'Common wall',
    used: /\bcommon wall\b/i,
    means: () => 'The wall between the sunspace and the rooms.',
  },
  {
    word: 'EN 16798-1',
    used: /\bEN 16798-1\b/,
    means: () =>
      'A European standard. People who open windows and dress as they like bear more warmth once the weather has been warm, so its limit follows the weather. Category I is for the old and the sick, II for most people, III for those who bear more.',
  },
  {
    word: 'Equator-facing',
    used: /\bequator-facing\b/i,
    means: ({ climate }) =>
      `On the side of the midday sun: at this site the ${climate.year.site.latitudeDeg >= 0 ? 'south' : 'north'} side.`,
  },
  {
    word: 'Frame share',
    used: /\bframe share\b/i,
    means: () => 'The part of each window that is frame and not glass.',
  },
  {
    word: 'Inner leaf',
    used: /\binner leaf\b/i,
    means: () => 'The layer of an outer wall next to the room.',
  },
  {
    word: 'Leaf area index',
    used: /\bleaf area index\b/i,
    means: ({ units }) =>
      isUs(units)
        ? 'Square feet of leaf over each square foot of bed.'
        : 'Square metres of leaf over each square metre of bed.',
  },
  { word: 'Low-e', used: /\blow-e\b/i, means: () => 'Glass with a thin clear coat that keeps heat in.' },
  {
    word: 'Mould index',
    used: /\bmould index\b/i,
    means: () =>
      `How far mould would grow on paint, paper or wood: 0 is none, from ${MOULD_INDEX_LIMIT} the eye sees it, 6 covers all.`,
  },
  {
    word: 'More than 100 % of the wall',
    used: /\b(?!100 )[1-9]\d\d % of the equator-facing wall/,
    means: () => 'Leaning glass is longer than the wall is high, so it can be larger than the wall.',
  },
  { word: 'ppm', used: /\bppm\b/, means: () => 'Parts in a million parts of air.' },
  {
    word: 'R',
    used: /\bR \d/,
    means: ({ units }) =>
      isUs(units)
        ? 'How well insulation holds heat in, as printed on packs in the United States. More is better.'
        : 'How well insulation holds heat in, in m²K/W. More is better. The R on packs in the United States is 5.7 times as large.',
  },
  {
    word: 'Shelter class',
    used: /\bshelter class\b/i,
    means: () => 'How well the wind is kept off: 1 is open ground, 5 well hidden.',
  },
  {
    word: 'Stale air',
    used: /\bstale\b/i,
    means: () => `Air with more than ${STALE_AIR_PPM} parts of carbon dioxide in a million.`,
  },
  { word: 'Sunspace', used: /\bsunspace\b/i, means: () => 'A glazed room on the sunny side of the house.' },
  {
    word: 'Ventilation unit',
    used: /\b(ventilation unit|ventilation with heat recovery)\b/i,
    means: () =>
      'A box with two fans. Old air goes out past the new air that comes in and hands it most of its heat.',
  },
];

/** The section; no blocks where no word is used. */
export function wordsSection(context: Context, sections: readonly Section[]): Section {
  const text = textOf(sections);
  const rows = ENTRIES.filter(({ used }) => used.test(text)).map(({ word, means }) => [word, means(context)]);
  return { title: 'Words', blocks: rows.length === 0 ? [] : [{ kind: 'table', head: [], rows }] };
}

/** All that is said in sections, tables and captions with it. */
function textOf(sections: readonly Section[]): string {
  return sections.flatMap(({ title, blocks }) => [title, ...blocks.map(blockText)]).join('\n');
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'text':
      return block.text;
    case 'table':
      return [block.head, ...block.rows].map((row) => row.join(' ')).join('\n');
    case 'findings':
      return block.findings.map(({ text }) => text).join('\n');
    case 'picture':
      return block.caption;
  }
}
