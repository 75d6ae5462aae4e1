// The report as data. Its first page stands alone: who for, the verdict, the drawing, the changes that help most, how sure,
// and answers to what was asked; then figures and what matters most; behind them the appendix: all that was tried, pictures,
// other versions, findings, cautions, every input, how far to trust it. One or more runs in, sections of blocks out;
// the page draws them, and a block of kind 'picture' names the picture it wants.

import type { Design } from '../design/design.ts';
import { hotterName } from '../design/hotter.ts';
import { ALL_EXAMPLES } from '../design/stove-examples.ts';
import { contextOf, type Run } from '../findings/context.ts';
import { findingsOf } from '../findings/findings.ts';
import { inShort, isCaution, shortForm } from '../findings/short-form.ts';
import { moment, percent, type Wording, wordingOf } from '../findings/wording.ts';
import { weekAround } from '../outcomes/extremes.ts';
import type { Finding } from '../outcomes/outcome.ts';
import { VERSION } from '../outcomes/version.ts';
import { hasPrices, NO_PRICES, type PriceList } from '../quantities/prices.ts';
import { DAYS_SAY, MONEY_SAYS, NO_MONEY_SAYS } from '../quantities/words.ts';
import { type HowSure, howSureSentences } from '../questions/how-sure.ts';
import type { Sentence } from '../questions/question.ts';
import type { Help } from '../questions/what-helps.ts';
import { actCost } from './act-cost.ts';
import { actsOf, actTitle, asksInWords } from './acts.ts';
import { answerOf } from './answer.ts';
import type { Block, Section } from './block.ts';
import { differencesOf, habitsOf } from './differences.ts';
import { wordsSection } from './glossary.ts';
import { comparisonOf, headlineOf, headlineZones } from './headline.ts';
import { inputsOf } from './inputs.ts';
import { triedSection, withTried } from './tried.ts';
import { CHECKS, checksInShort, errorsInShort, TRUST } from './trust.ts';
import { verdictOf } from './verdict.ts';

export interface Report {
  readonly title: string;
  readonly subtitle: string;
  /** date, version and weather, for the foot of every page */
  readonly foot: string;
  readonly sections: readonly Section[];
}

export interface ReportOrder {
  /** typed by the person; empty lines are left out */
  readonly client: string;
  readonly place: string;
  readonly adviser: string;
  readonly question: string;
  /** as it should be printed */
  readonly date: string;
  /** the design the report is about */
  readonly run: Run;
  /** other versions to set beside it, at most three */
  readonly others: readonly Run[];
  /** answers to questions that were asked of the design, one plain sentence each */
  readonly answers: readonly string[];
  /** what single changes would do, run; null leaves them out */
  readonly help: Help | null;
  /** the person's own prices; absent for none */
  readonly prices?: PriceList;
  /** how far the headline figures may lie from those told; absent where it was not run */
  readonly sure?: HowSure | null;
  /** findings already made of the run, in its units; made here when absent. A year that has travelled between threads
   * has left its panes behind, and findings need them. */
  readonly findings?: readonly Finding[];
}

/** An answer as it stands on paper: the question, its closing words, and how sure they are. */
export function toldAnswer(title: string, finding: Sentence, sure: Sentence | null): string {
  return [title, finding.text, ...(sure === null ? [] : [sure.text])].join(' ');
}

/** Of this gravity a finding stands on paper in short. */
const IN_SHORT: readonly Finding['severity'][] = ['warning', 'note', 'good'];

/** The report's content. */
export function reportOf(order: ReportOrder): Report {
  const { run } = order;
  const units = run.units ?? 'metric';
  const words = wordingOf(units);
  const context = contextOf(run);
  const all = order.findings ?? findingsOf(run);
  const short = shortForm(all);
  // Serious cautions stand whole on the second page, the others whole behind it.
  const serious = all.filter((finding) => isCaution(finding) && finding.severity === 'danger');
  const front = withTried([...short.first, ...serious], context, order.help);
  // How sure the figures are is said on the first page.
  const behind = withTried(
    [...short.moreFindings, ...short.moreCautions]
      .filter(({ id }) => id !== 'how-sure')
      .map((finding) =>
        IN_SHORT.includes(finding.severity) && !isCaution(finding) ? inShort(finding) : finding,
      ),
    context,
    order.help,
  );
  const { hottestHour, coldestHour } = context.house;
  const { geometry, design, climate, outcome } = context;
  const who = [
    ['For', order.client],
    ['Place', order.place],
    ['Prepared by', order.adviser],
    ['Weather', `${climate.year.site.name} (${climate.year.source})`],
    ['Question', order.question],
  ].filter(([, value]) => value !== '');

  const text = (said: string): Block => ({ kind: 'text', text: said });
  const frontPages: Section[] = [
    {
      title: 'In short',
      blocks: [
        { kind: 'table', head: [], rows: who as string[][] },
        text(verdictOf(outcome, design, words)),
        {
          kind: 'picture',
          picture: { name: 'section' },
          caption: `${design.name}: ${words.area(geometry.glassM2)} of glass at ${design.glass.tiltDeg}°, ${percent(geometry.shareOfFloor)} of the floor and ${percent(geometry.shareOfWall)} of the equator-facing wall.`,
        },
        ...(design.rooms
          ? [
              {
                kind: 'picture' as const,
                picture: { name: 'plan' as const },
                caption:
                  'The plan of every storey, the side to the sun below: windows thick, doors as gaps, dashed where they stand open for a part of the day, a thin line where they are shut.',
              },
            ]
          : []),
        ...(isOfSample(design) || design.note === '' ? [] : [text(design.note)]),
        ...actsTable(order, words),
        ...(order.sure == null
          ? []
          : [text(`How sure is this? ${howSureSentences(order.sure, words).join(' ')}`)]),
        ...order.answers.map(text),
      ],
    },
    {
      title: `The figures of a ${design.hotter === undefined ? 'typical' : hotterName(design.hotter)} year`,
      blocks: [
        {
          kind: 'table',
          head: ['', ...headlineZones(context).map(({ name }) => name)],
          rows: headlineOf(context, order.prices),
        },
      ],
    },
    {
      title: 'What matters most',
      blocks: [{ kind: 'findings', findings: front }],
    },
  ];
  const appendix: Section[] = [
    { title: 'The answer at length', blocks: [text(answerOf(context, order.help))] },
    ...(order.help === null ? [] : [triedSection(context, order.help, order.prices)]),
    ...(order.others.length === 0
      ? []
      : [
          {
            title: 'Beside other versions',
            blocks: [
              comparisonOf([run, ...order.others], order.prices),
              habitsOf([run, ...order.others]),
              differencesOf([run, ...order.others]),
            ].filter((block) => block !== null),
          },
        ]),
    {
      title: 'The year in pictures',
      blocks: [
        {
          kind: 'picture',
          picture: { name: 'year' },
          caption: `The rooms in every hour of the year: a column is a day, with midnight at its foot and noon half way up. Hottest on ${moment(hottestHour)}, coldest on ${moment(coldestHour)}.`,
        },
        {
          kind: 'picture',
          picture: { name: 'week', kind: 'hot', firstHour: weekAround(hottestHour) },
          caption: 'The week with the hottest hour.',
        },
        {
          kind: 'picture',
          picture: { name: 'week', kind: 'cold', firstHour: weekAround(coldestHour) },
          caption: 'The week with the coldest hour.',
        },
        {
          kind: 'picture',
          picture: { name: 'balance' },
          caption: 'Where the heat of the rooms comes from and where it goes, month by month.',
        },
      ],
    },
    {
      title: 'What else we find',
      blocks: [{ kind: 'findings', findings: behind.filter((finding) => !isCaution(finding)) }],
    },
    {
      title: 'Take care of this too',
      blocks: [{ kind: 'findings', findings: behind.filter(isCaution) }],
    },
    {
      title: 'What we assumed',
      blocks: inputsOf(design, words).flatMap(({ title, rows }): Block[] => [
        { kind: 'table', head: [title, ''], rows },
      ]),
    },
    {
      title: 'How far to trust it',
      blocks: [
        ...[...TRUST, errorsInShort(design.name, words)].map((text): Block => ({ kind: 'text', text })),
        {
          kind: 'text',
          text: `${checksInShort(CHECKS)} Each is listed in the tool under "How far to trust it", with its source, its figure and ours.`,
        },
        ...(climate.year.credit === ''
          ? []
          : [{ kind: 'text', text: `Weather data: ${climate.year.credit}.`.replace(/\.\.$/, '.') } as const]),
      ],
    },
  ];
  const behindAll = [...appendix, wordsSection(context, [...frontPages, ...appendix])].map(
    (section): Section => ({ ...section, appendix: true }),
  );
  return {
    title: design.name,
    subtitle: [order.client, order.place].filter((line) => line !== '').join(', '),
    foot: `Daystone ${VERSION} · ${order.date} · weather: ${climate.year.source}`,
    sections: [...frontPages, ...behindAll].filter(({ blocks }) =>
      blocks.some((block) => block.kind !== 'findings' || block.findings.length > 0),
    ),
  };
}

/** A sample's note speaks of the sample and not of the client's house. */
function isOfSample({ note }: Design): boolean {
  return ALL_EXAMPLES.some((example) => example.design.note === note);
}

/** The changes that help most, each with what it brings and what it asks for. */
function actsTable(
  { help, run: { design }, prices = NO_PRICES }: ReportOrder,
  words: Wording,
): readonly Block[] {
  const acts = help === null ? [] : actsOf(help, words);
  if (acts.length === 0) return [];
  return [
    {
      kind: 'table',
      head: ['What helps most', 'What it brings, and asks for'],
      rows: acts.map((act, i) => [
        actTitle(act, i),
        `${act.brings} ${asksInWords(act, actCost(acts, i, design, prices), prices)}`,
      ]),
    },
    { kind: 'text', text: `${DAYS_SAY} ${hasPrices(prices) ? MONEY_SAYS : NO_MONEY_SAYS}` },
  ];
}
