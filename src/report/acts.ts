// The changes that help most: the steps, one on top of the other, and beside them others that help alone, until there are
// three. Each with what it brings and the design it makes. In: what was run (questions/what-helps.ts). Out: words, designs.

import type { Design } from '../design/design.ts';
import { plain, type Wording } from '../findings/wording.ts';
import type { Cost, PriceList } from '../quantities/prices.ts';
import { costInWords, daysInWords } from '../quantities/words.ts';
import type { Figures } from '../questions/figures.ts';
import { leverWords } from '../questions/lever.ts';
import { coldHours } from '../questions/weights.ts';
import { type Help, isCold, otherWays } from '../questions/what-helps.ts';
import { capitalised, countInWords } from '../questions/words.ts';

export interface Act {
  readonly id: string;
  /** as said to a person: "stand the glass upright under an overhang" */
  readonly words: string;
  /** how many steps before it are made with it; null for one that is tried alone instead */
  readonly onTopOf: number | null;
  /** what it changes, from what stands before it; one sentence */
  readonly brings: string;
  /** work it asks for on top of what stands before it; below zero where it spares some [days of one person] */
  readonly days: number;
  /** the figures with it, and the steps before it */
  readonly figures: Figures;
  /** the drawn design with this change, and the steps before it */
  readonly apply: (design: Design) => Design;
}

const MOST_ACTS = 3;

/** The changes, in the order in which they are made; others after them. */
export function actsOf(help: Help, words: Wording): readonly Act[] {
  const { drawn, steps } = help;
  const made: Act[] = steps.map(({ lever, figures, days }, i) => ({
    id: lever.id,
    words: leverWords(lever, words),
    onTopOf: i,
    days: (days ?? 0) - (steps[i - 1]?.days ?? 0),
    brings: bringsOf(i === 0 ? drawn : steps[i - 1]!.figures, figures, words),
    figures,
    apply: (design) => steps.slice(0, i + 1).reduce((at, step) => step.lever.apply(at), design),
  }));
  const others: Act[] = otherWays(help).map(({ lever, figures, days = 0 }) => ({
    id: lever.id,
    words: leverWords(lever, words),
    onTopOf: null,
    days,
    brings: bringsOf(drawn, figures, words),
    figures,
    apply: (design) => lever.apply(design),
  }));
  return [...made, ...others].slice(0, MOST_ACTS);
}

/** "4 days of work, EUR 300." */
export function asksInWords({ days }: Act, cost: Cost | null, prices: PriceList): string {
  return `${capitalised(daysInWords(days))}${cost === null ? '' : `, ${costInWords(cost, prices)}`}.`;
}

/** How a change stands to those above it. */
export function actTitle({ onTopOf, words }: Act, i: number): string {
  if (onTopOf === null && i > 0) return `Or else: ${words}`;
  return onTopOf ? `Then ${words}` : capitalised(words);
}

/** What changes, from and to; what stays is left out. Short, for it stands on the first screen three times. */
function bringsOf(before: Figures, after: Figures, words: Wording): string {
  const pair = (name: string, from: string, to: string) => (from === to ? [] : [`${name} ${from} → ${to}`]);
  const hot = pair('too hot', countInWords(before.tooHotHours), countInWords(after.tooHotHours));
  const damp = pair('damp', countInWords(before.humidHours), countInWords(after.humidHours));
  const cold =
    isCold(before) || isCold(after)
      ? pair('too cold', countInWords(coldHours(before).hours), countInWords(coldHours(after).hours))
      : [];
  const hours = [...hot, ...damp, ...cold].join(', ');
  const heat = [words.energy(before.heatingKWh), words.energy(after.heatingKWh)] as const;
  const changed = [
    ...(hours === '' ? [] : [`hours ${hours}`]),
    ...pair('mould', plain(before.worstMouldIndex, 1), plain(after.worstMouldIndex, 1)),
    ...(heat[0] === heat[1] ? [] : [`back-up heat ${heat[0].replace(/ \D+$/, '')} → ${heat[1]}`]),
  ];
  return `${capitalised(changed.join('; '))}.`;
}
