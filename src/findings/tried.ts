// What was tried: every change by itself and the steps together, as a table; and, beside a finding, what the change it
// speaks of did when it was run. Runs of questions/what-helps.ts in, blocks and sentences out.

import type { Finding } from '../outcomes/outcome.ts';
import type { Figures } from '../questions/figures.ts';
import { CALM_HOT_HOURS, type Help } from '../questions/what-helps.ts';
import { capitalised, countInWords } from '../questions/words.ts';
import { leverWords } from './answer.ts';
import type { Context } from './context.ts';
import type { Block, Section } from './report.ts';
import { hours, plain, type Wording } from './wording.ts';

const HEAD = [
  '',
  'Hours too hot',
  'Hours too damp',
  'Hours of stale air',
  'Mould index',
  'Back-up heat',
] as const;
const TOGETHER = ['The first two steps together', 'All three steps together'] as const;

/** The section. */
export function triedSection({ words }: Context, { drawn, pulled, steps, milder }: Help): Section {
  const row = (label: string, figures: Figures) => [label, ...cellsOf(figures, words)];
  const together = steps.slice(1).map(({ figures }, i) => row(TOGETHER[i]!, figures));
  const table: Block = {
    kind: 'table',
    head: HEAD,
    rows: [
      row('As drawn', drawn),
      ...pulled.map(({ lever, figures }) => row(capitalised(leverWords(lever, words)), figures)),
      ...together,
      ...(milder === undefined
        ? []
        : [row(`The same, but ${leverWords(milder.lever, words)}`, milder.figures)]),
    ],
  };
  const lead =
    'A typical year with one change at a time, all else as drawn.' +
    (steps.length > 1 ? ' The last rows hold the steps of the answer together.' : '') +
    ' A cooler room is a damper one, all else alike, for cool air holds less water: read the columns together.' +
    ' Mould shows from an index of 3 up. What a change costs in money we do not know: ask your builder.';
  return { title: 'What we tried', blocks: [{ kind: 'text', text: lead }, table] };
}

function cellsOf(figures: Figures, words: Wording): readonly string[] {
  return [
    countInWords(figures.overheatedHours),
    countInWords(figures.humidHours),
    countInWords(figures.staleAirHours),
    plain(figures.worstMouldIndex, 1),
    words.energy(figures.heatingKWh),
  ];
}

type Told = (of: (lever: string) => Figures | undefined, drawn: Figures, words: Wording) => string | null;

/** What a run says to a finding, by the finding's id; null where the change was not run. */
const TOLD: Readonly<Record<string, Told>> = {
  'vents-ask-much': (of) => openersTold(of('openers')),
  'stale-air': (of, drawn, words) => fanTold(of('fresh-air-fan'), drawn, words),
  'purge-helps': (of, drawn) => {
    const then = of('purge');
    if (then === undefined) return null;
    return `We ran it with a fan: ${hours(then.overheatedHours)} too hot instead of ${hours(drawn.overheatedHours)}.`;
  },
  'mass-enough': (of, drawn) => {
    const then = of('more-mass');
    const isHot = drawn.overheatedHours > CALM_HOT_HOURS;
    if (then === undefined || !isHot || then.overheatedHours > 0.9 * drawn.overheatedHours) return null;
    return `More still helps here: with it, ${hours(then.overheatedHours)} are too hot instead of ${hours(drawn.overheatedHours)}.`;
  },
  'sunspace-open': (of) => {
    const then = of('close-off');
    if (then === undefined) return null;
    return `We ran it, with the door opened when the rooms want heat: ${hours(then.overheatedHours)} too hot and ${hours(then.humidHours)} too damp.`;
  },
  'damp-from-plants': (of) => {
    const ways = [
      ['a wall and a door used by need', of('close-off')],
      ['half the bed, mulched', of('smaller-bed')],
      ['no bed', of('no-plants')],
    ] as const;
    const ran = ways.flatMap(([way, then]) =>
      then === undefined ? [] : [`${hours(then.humidHours)} with ${way}`],
    );
    return ran.length === 0 ? null : `We ran each alone. Hours too damp: ${ran.join('; ')}.`;
  },
};

function openersTold(then: Figures | undefined): string {
  if (then === undefined) return 'Ask whoever made this report to run the year with openers.';
  return `We ran the year with openers: ${hours(then.overheatedHours)} too hot and ${hours(then.humidHours)} too damp.`;
}

function fanTold(then: Figures | undefined, drawn: Figures, words: Wording): string | null {
  if (then === undefined) return null;
  return `We ran a plain fan: ${hours(then.staleAirHours)} of stale air, and ${words.energy(then.heatingKWh)} of back-up heat instead of ${words.energy(drawn.heatingKWh)}. One that saves heat would need less; that is not in this tool.`;
}

/**
 * The findings, each with what the change it speaks of did.
 *
 * @param help null where no change was run
 */
export function withTried(
  findings: readonly Finding[],
  { words }: Context,
  help: Help | null,
): readonly Finding[] {
  const of = (wanted: string) => help?.pulled.find(({ lever }) => lever.id === wanted)?.figures;
  return findings.map((finding) => {
    const told = TOLD[finding.id]?.(of, help?.drawn ?? ({} as Figures), words);
    return told ? { ...finding, text: `${finding.text} ${told}` } : finding;
  });
}
