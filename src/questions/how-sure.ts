// How sure a figure is: the least and the most of it over what nobody can know of the house (what-nobody-knows.ts), each
// with its cause. Runs in; ranges and sentences out. Every end of a range is the figure of a house that can be drawn.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { type FigureKey, type Figures, figuresOf } from './figures.ts';
import type { RunJob } from './run-job.ts';
import type { Runner, StopSignal } from './runner.ts';
import { type Unknown, unknownsOf } from './what-nobody-knows.ts';
import { countInWords, hoursInWords, type Words } from './words.ts';

/** A house as it may turn out, run. */
export interface Turned {
  readonly unknown: Unknown;
  readonly design: Design;
  readonly figures: Figures;
}

export interface HowSure {
  readonly drawn: Figures;
  readonly turned: readonly Turned[];
}

/** Figures that are given with their range, the one that moves most first. */
export const RANGED = ['tooHotHours', 'humidHours', 'heatingKWh', 'coldestC'] as const satisfies FigureKey[];
export type Ranged = (typeof RANGED)[number];
/** Those of one question's own too. */
type Rangeable = Ranged | 'underheatedHours';

export interface Range {
  readonly drawn: number;
  readonly least: number;
  /** what makes it so; null where nothing tried takes it below the figure as drawn */
  readonly leastBy: Unknown | null;
  readonly most: number;
  readonly mostBy: Unknown | null;
}

/**
 * Run a design as it may turn out.
 *
 * @param isMade whether the runner's year was made from monthly normals
 */
export async function howSureOf(
  drawnDesign: Design,
  runner: Runner,
  isMade: boolean,
  signal?: StopSignal,
): Promise<HowSure> {
  const design = withChoiceKept(drawnDesign);
  const unknowns = unknownsOf(design, isMade);
  const designs = [design, ...unknowns.map(({ apply }) => apply(design))];
  const results = await runner.run(
    designs.map((each, i) => {
      const unknown = unknowns[i - 1];
      const id = unknown?.id ?? 'as drawn';
      return { id, label: id, design: each, at: {}, ...changeOf(unknown) };
    }),
    { signal },
  );
  const [drawn, ...turned] = results.map(({ outcome }) => figuresOf(outcome));
  return {
    drawn: drawn!,
    turned: turned.map((figures, i) => ({ unknown: unknowns[i]!, design: designs[i + 1]!, figures })),
  };
}

/** What a job of an unknown says of the year it is run in. */
export function changeOf(unknown: Unknown | undefined): Pick<RunJob, 'change'> {
  return unknown?.change === undefined ? {} : { change: unknown.change };
}

/** Least and most of a figure, with what makes them so; the first of equals. */
export function rangeOf(key: Rangeable, { drawn, turned }: HowSure): Range {
  let range: Range = {
    drawn: drawn[key],
    least: drawn[key],
    leastBy: null,
    most: drawn[key],
    mostBy: null,
  };
  for (const { unknown, figures } of turned) {
    const value = figures[key];
    if (value < range.least) range = { ...range, least: value, leastBy: unknown };
    if (value > range.most) range = { ...range, most: value, mostBy: unknown };
  }
  return range;
}

/** "310 if its people take great care, 590 in a year 1.5 °C hotter"; the same where nothing moves it as said. */
export function rangeInWords(
  { drawn, least, leastBy, most, mostBy }: Range,
  said: (value: number) => string,
  words: Pick<Words, 'degrees'>,
): string {
  const end = (value: number, by: Unknown | null) =>
    by === null || said(value) === said(drawn) ? [] : [`${said(value)} ${by.when(words)}`];
  const ends = [...end(least, leastBy), ...end(most, mostBy)];
  return ends.length === 0 ? 'the same in all that we tried' : ends.join(', ');
}

/** The house as drawn in its own made year, then in other draws of the same normals; none in a year that was not made. */
export function drawnOf({ drawn, turned }: HowSure): readonly Figures[] {
  const others = turned.filter(({ unknown }) => unknown.change?.draw !== undefined);
  return others.length === 0 ? [] : [drawn, ...others.map(({ figures }) => figures)];
}

/** How far a figure hangs on the draw of a made year, in a sentence; none in a year that was not made. */
function drawnSentences(sure: HowSure, { energy }: Words): readonly string[] {
  const drawn = drawnOf(sure);
  if (drawn.length === 0) return [];
  const span = (key: Ranged, said: (value: number) => string) => {
    const values = drawn.map((figures) => figures[key]);
    return `${said(Math.min(...values)).replace(/ [A-Za-z]+$/, '')} to ${said(Math.max(...values))}`;
  };
  return [
    `Days of a made year are drawn. Drawn ${drawn.length} times from the same normals, back-up heat is ${span('heatingKWh', energy)}, hours too hot ${span('tooHotHours', countInWords)}, humid hours ${span('humidHours', countInWords)}.`,
  ];
}

/** A sentence a figure: what it is, and how far it may lie from that; one more in a made year. */
export function howSureSentences(sure: HowSure, words: Words): readonly string[] {
  const [hot, damp, heat, cold] = RANGED.map((key) => rangeOf(key, sure)) as [Range, Range, Range, Range];
  return [
    `Too hot for ${hoursInWords(hot.drawn)}: ${rangeInWords(hot, countInWords, words)}.`,
    `Too damp for ${hoursInWords(damp.drawn)}: ${rangeInWords(damp, countInWords, words)}.`,
    `Back-up heat ${words.energy(heat.drawn)}: ${rangeInWords(heat, words.energy, words)}.`,
    `Coldest hour ${words.temperature(cold.drawn, 1)}: ${rangeInWords(cold, (value) => words.temperature(value, 1), words)}.`,
    ...drawnSentences(sure, words),
  ];
}
