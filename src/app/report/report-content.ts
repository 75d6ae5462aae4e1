// The report's content from what is on the page: the newest answer, the versions chosen, the words typed, the questions
// answered.

import type { NumberedAnswer } from '../../../workers/bridge.ts';
import type { Run } from '../../findings/context.ts';
import type { PriceList } from '../../quantities/prices.ts';
import type { HowSure } from '../../questions/how-sure.ts';
import type { Help } from '../../questions/what-helps.ts';
import { type Report, reportOf } from '../../report/report.ts';
import { preparedOnce } from '../../weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import type { ReportWords } from './report-words.ts';

/** Versions that fit beside the design on paper. */
export const MOST_BESIDE = 3;

export interface NamedAnswer {
  readonly name: string;
  readonly answer: NumberedAnswer;
}

export interface ContentOrder {
  readonly words: ReportWords;
  readonly answer: NumberedAnswer;
  readonly climate: TypicalYear;
  readonly others: readonly NamedAnswer[];
  readonly answers: readonly string[];
  readonly help: Help | null;
  readonly prices: PriceList;
  readonly sure: HowSure | null;
  readonly units: UnitSystem;
  readonly today: Date;
}

/** The report of the design on the page. */
export function reportContent(order: ContentOrder): Report {
  const { words, answer, others, units } = order;
  const climate = preparedOnce(order.climate);
  const runOf = ({ outcome, year, job }: NumberedAnswer, name: string): Run => ({
    design: { ...job.design, name },
    climate,
    year,
    outcome,
    units,
  });
  return reportOf({
    ...trimmed(words),
    date: dateText(order.today),
    run: runOf(answer, answer.job.design.name),
    others: others.slice(0, MOST_BESIDE).map((other) => runOf(other.answer, other.name)),
    answers: order.answers,
    help: order.help,
    prices: order.prices,
    sure: order.sure,
    findings: answer.outcome.findings,
  });
}

function trimmed({ client, place, adviser, question }: ReportWords): ReportWords {
  return {
    client: client.trim(),
    place: place.trim(),
    adviser: adviser.trim(),
    question: question.trim(),
  };
}

function dateText(date: Date): string {
  return date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
