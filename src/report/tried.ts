// What was tried: every change by itself and the steps together, as a table; and, beside a finding, what the change it
// speaks of did when it was run. Runs of questions/what-helps.ts in, blocks and sentences out.

import type { Design } from '../design/design.ts';
import type { Context } from '../findings/context.ts';
import { hours, plain, type Wording } from '../findings/wording.ts';
import type { Finding } from '../outcomes/outcome.ts';
import { EXTREME_CAUTION_C } from '../physics/heat-index.ts';
import { passesTm59Night, TM59_NIGHT } from '../physics/overheating-criteria.ts';
import { changeCost } from '../quantities/change.ts';
import { hasPrices, NO_PRICES, type PriceList } from '../quantities/prices.ts';
import { MONEY_SAYS, moneyInWords, NO_MONEY_SAYS } from '../quantities/words.ts';
import type { Figures } from '../questions/figures.ts';
import { type Lever, leverWords, type Pulled } from '../questions/lever.ts';
import { bestLever } from '../questions/levers.ts';
import { coldHours, lightestFirst, USUAL_WEIGHTS, weightsInWords } from '../questions/weights.ts';
import { bestOf, type Help, isCold } from '../questions/what-helps.ts';
import { capitalised, countInWords } from '../questions/words.ts';
import type { Block, Section } from './block.ts';

interface Column {
  readonly head: (words: Wording) => string;
  readonly cell: (figures: Figures, words: Wording) => string;
  /** the column stands only where this holds for some row */
  readonly matters?: (figures: Figures) => boolean;
}

const COLUMNS: readonly Column[] = [
  { head: () => 'Hours too hot', cell: (figures) => countInWords(figures.tooHotHours) },
  {
    head: (words) => `Hours that feel like ${words.temperature(EXTREME_CAUTION_C)}`,
    cell: (figures) => countInWords(figures.feltHotHours),
    matters: (figures) => figures.feltHotHours > 0,
  },
  {
    head: (words) => `Hours of night above ${words.temperature(TM59_NIGHT.limitC)}`,
    cell: (figures) => countInWords(figures.hotNightHours),
    matters: (figures) => !passesTm59Night(figures.hotNightHours),
  },
  { head: () => 'Hours too damp', cell: (figures) => countInWords(figures.humidHours) },
  {
    head: () => 'Hours too cold',
    cell: (figures) => countInWords(coldHours(figures).hours),
    matters: isCold,
  },
  {
    head: () => 'Hours of stale air',
    cell: (figures) => countInWords(figures.staleAirHours),
    matters: (figures) => figures.staleAirHours > 0,
  },
  { head: () => 'Mould index', cell: (figures) => plain(figures.worstMouldIndex, 1) },
  { head: () => 'Back-up heat', cell: (figures, words) => words.energy(figures.heatingKWh) },
];

/** A change that takes away less of a danger is not named as what does most against it. House rule. */
const LEAST_SHARE_TOLD = 0.25;
/** A change that moves no figure by this share, or by this many hours, index or kWh where that is more, did little. House rule. */
const LITTLE_SHARE = 0.05;
const LITTLE_HOURS = 20;
const LITTLE_MOULD = 0.2;
const LITTLE_KWH = 50;
const TOGETHER = ['The first two steps together', 'All three steps together'] as const;

/** The section. */
export function triedSection(
  { words, design }: Context,
  { drawn, pulled: all, steps, milder, weights = USUAL_WEIGHTS }: Help,
  prices: PriceList = NO_PRICES,
): Section {
  const pulled = lightestFirst(all, weights);
  const little = pulled.filter(({ figures }) => didLittle(figures, drawn));
  const tried: readonly Tried[] = [
    ['As drawn', drawn, null, []],
    ...pulled
      .filter((entry) => !little.includes(entry))
      .map(
        (entry): Tried => [
          capitalised(leverWords(entry.lever, words)),
          entry.figures,
          entry.days ?? 0,
          [entry.lever],
        ],
      ),
    ...steps
      .slice(1)
      .map(
        ({ figures, days = 0 }, i): Tried => [
          TOGETHER[i]!,
          figures,
          days,
          steps.slice(0, i + 2).map(({ lever }) => lever),
        ],
      ),
    ...(milder === undefined ? [] : [milderRow(steps, milder, words)]),
  ];
  const columns = COLUMNS.filter(
    ({ matters }) => matters === undefined || tried.some(([, figures]) => matters(figures)),
  );
  const isPriced = hasPrices(prices);
  const table: Block = {
    kind: 'table',
    head: [
      '',
      ...columns.map(({ head }) => head(words)),
      'Days of work',
      ...(isPriced ? [`Cost${prices.currency === '' ? '' : `, ${prices.currency}`}`] : []),
    ],
    rows: tried.map(([label, figures, days, levers]) => [
      label,
      ...columns.map(({ cell }) => cell(figures, words)),
      days === null ? '' : plain(days, Math.abs(days) < 10 ? 1 : 0),
      ...(isPriced ? [days === null ? '' : costCell(design, levers, prices)] : []),
    ]),
  };
  const lead =
    'A typical year with one change at a time, all else as drawn.' +
    (steps.length > 1 ? ' The last rows hold the steps of the answer together.' : '') +
    ' A cooler room is a damper one, all else alike, for cool air holds less water: read the columns together.' +
    ' What weighs least stands first. ' +
    weightsInWords(weights) +
    ` Mould shows from an index of 3 up. ${isPriced ? MONEY_SAYS : NO_MONEY_SAYS}`;
  const rest: Block[] =
    little.length === 0
      ? []
      : [
          {
            kind: 'text',
            text: `These did little: ${little.map(({ lever }) => leverWords(lever, words)).join('; ')}.`,
          },
        ];
  return { title: 'What we tried', blocks: [{ kind: 'text', text: lead }, table, ...rest] };
}

/** Label, figures, days of work, and the changes made one on top of the other; null and none as drawn. */
type Tried = readonly [string, Figures, number | null, readonly Lever[]];

function milderRow(steps: readonly Pulled[], milder: Pulled, words: Wording): Tried {
  const { lever, figures, days = 0 } = milder;
  const all = steps.map((step) => (step.lever.id === lever.milderThan ? lever : step.lever));
  return [`The same, but ${leverWords(lever, words)}`, figures, days, all];
}

function costCell(design: Design, levers: readonly Lever[], prices: PriceList): string {
  const made = levers.reduce((at, { apply }) => apply(at), design);
  const total = changeCost(design, made, prices)?.total ?? null;
  return total === null ? 'no price yet' : moneyInWords(total, '');
}

function didLittle(now: Figures, drawn: Figures): boolean {
  const hoursAlike = (
    ['tooHotHours', 'feltHotHours', 'hotNightHours', 'humidHours', 'staleAirHours'] as const
  ).every((key) => Math.abs(now[key] - drawn[key]) <= Math.max(LITTLE_HOURS, LITTLE_SHARE * drawn[key]));
  const [cold, wasCold] = [coldHours(now).hours, coldHours(drawn).hours];
  return (
    hoursAlike &&
    Math.abs(cold - wasCold) <= Math.max(LITTLE_HOURS, LITTLE_SHARE * wasCold) &&
    Math.abs(now.worstMouldIndex - drawn.worstMouldIndex) < LITTLE_MOULD &&
    Math.abs(now.heatingKWh - drawn.heatingKWh) <= Math.max(LITTLE_KWH, LITTLE_SHARE * drawn.heatingKWh)
  );
}

interface Ran {
  readonly drawn: Figures;
  readonly pulled: readonly Pulled[];
  readonly of: (lever: string) => Figures | undefined;
}

type Told = (ran: Ran, words: Wording) => string | null;

/** What a run says to a finding, by the finding's id; null where the change was not run. */
const TOLD: Readonly<Record<string, Told>> = {
  'vents-ask-much': ({ of }) => openersTold(of('openers')),
  'stale-air': ({ of, drawn }, words) => fanTold(of('fresh-air-fan'), drawn, words),
  'caution-heat': heatTold,
  'purge-helps': ({ of, drawn }) => {
    const then = of('purge');
    if (then === undefined) return null;
    return `We ran it with a fan: ${hours(then.tooHotHours)} too hot instead of ${hours(drawn.tooHotHours)}.`;
  },
  'mass-enough': ({ of, drawn }) => {
    const then = of('more-mass');
    const isHot = drawn.tooHotHours > drawn.tooHotLimitHours;
    if (then === undefined || !isHot || then.tooHotHours > 0.9 * drawn.tooHotHours) return null;
    return `More still helps here: with it, ${hours(then.tooHotHours)} are too hot instead of ${hours(drawn.tooHotHours)}.`;
  },
  'sunspace-open': ({ of }) => {
    const then = of('close-off');
    if (then === undefined) return null;
    return `We ran it, with the door opened when the rooms want heat: ${hours(then.tooHotHours)} too hot and ${hours(then.humidHours)} too damp.`;
  },
  'damp-from-plants': ({ of }) => {
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

/** Of the changes that end heat stress the one that leaves the best house; where none does, what does most against it. */
function heatTold({ drawn, pulled }: Ran, words: Wording): string | null {
  const ending = pulled.filter(({ figures }) => figures.feltHotHours === 0);
  const best = bestOf(ending) ?? ending[0];
  if (best) return `In a typical year one change would end such hours: ${leverWords(best.lever, words)}.`;
  const most = bestLever(drawn, pulled, 'feltHotHours', LEAST_SHARE_TOLD * drawn.feltHotHours);
  if (most === null) return null;
  return `No one change that we ran ends such hours. This does most: ${leverWords(most.lever, words)}. It leaves ${hours(most.to)}.`;
}

function openersTold(then: Figures | undefined): string {
  if (then === undefined) return 'Ask whoever made this report to run the year with openers.';
  return `We ran the year with openers: ${hours(then.tooHotHours)} too hot and ${hours(then.humidHours)} too damp.`;
}

function fanTold(then: Figures | undefined, drawn: Figures, words: Wording): string | null {
  if (then === undefined) return null;
  return `We ran a plain fan: ${hours(then.staleAirHours)} of stale air, and ${words.energy(then.heatingKWh)} of back-up heat instead of ${words.energy(drawn.heatingKWh)}. It pulls on the ground too: test for radon with it running.`;
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
  const pulled = help?.pulled ?? [];
  const ran: Ran = {
    drawn: help?.drawn ?? ({} as Figures),
    pulled,
    of: (wanted) => pulled.find(({ lever }) => lever.id === wanted)?.figures,
  };
  return findings.map((finding) => {
    const told = TOLD[finding.id]?.(ran, words);
    return told ? { ...finding, text: `${finding.text} ${told}` } : finding;
  });
}
