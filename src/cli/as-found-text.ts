// A match as the command prints it: one JSON object, or words with a table of misfits; and its hours as a table.

import type { HouseRecord } from '../matching/house-record.ts';
import type { Match } from '../matching/match.ts';
import { daysOf } from '../matching/record-of-files.ts';
import {
  draughtWords,
  heatLossWords,
  heldWords,
  tieWords,
  unknownWords,
  verdictWords,
} from '../matching/words.ts';
import { csvCell } from '../outcomes/csv-cell.ts';
import { VERSION } from '../outcomes/version.ts';
import { dateOfMoment, HOUR_MS } from '../weather/moments.ts';
import { textTable } from './text-table.ts';

/** All of it. */
export function matchText(
  record: HouseRecord,
  match: Match,
  notes: readonly string[],
  form: 'json' | 'words',
): string {
  const { readings: _, ...figures } = match;
  const all = [...notes, ...match.notes];
  const { design } = record;
  const period = daysOf(record);
  const words = {
    verdict: verdictWords(match),
    heatLoss: heatLossWords(match),
    draughts: draughtWords(match),
    unknowns: match.unknowns.map((found) => unknownWords(found)),
    held: match.held.map(heldWords),
    ties: match.ties.map(tieWords),
    patterns: match.patterns.map((pattern) => pattern.words),
  };
  if (form === 'json')
    return JSON.stringify({
      daystone: VERSION,
      design: design.name,
      period,
      ...figures,
      notes: all,
      words,
    });
  const section = (title: string, lines: readonly (string | null)[]) => {
    const said = lines.filter((line) => line !== null);
    return said.length === 0 ? [] : [title, ...said.map((line) => `  ${line}`), ''];
  };
  const table = textTable(
    [
      ['misfit of air', 'K'],
      ['days fitted', match.misfitK],
      ['days unseen, at the end', match.unseenMisfitK],
      ['days unseen, every fourth', match.otherUnseenMisfitK],
      ['as drawn, same days', match.drawnMisfitK],
      ['yesterday’s same hour', match.yesterdayMisfitK],
    ],
    2,
  );
  const lines = [
    `${design.name}, ${period.from} to ${period.until}`,
    '',
    words.verdict,
    '',
    ...section('What the house seems to be', [words.heatLoss, words.draughts, ...words.unknowns]),
    ...section('What the record could not tell', [...words.ties, ...words.held]),
    ...section('What is left', words.patterns),
    table,
    '',
    ...section('Notes', all),
  ];
  return lines.join('\n').trimEnd();
}

/** Hours of the period: measured and computed, a pair of columns a logger. */
export function hourlyRows({ startMs, hours, targets, weather }: HouseRecord, { readings }: Match): string {
  const head = ['time', ...targets.flatMap(({ name }) => [`${name} measured`, `${name} computed`])].map(
    csvCell,
  );
  const cell = (value: number) => (Number.isNaN(value) ? '' : value.toFixed(2));
  const rows = Array.from({ length: hours }, (_, hour) =>
    [
      dateOfMoment(startMs + hour * HOUR_MS, weather.year.site.utcOffsetH),
      ...targets.flatMap(({ measured }, t) => [cell(measured[hour]!), cell(readings[t]![hour]!)]),
    ].join(','),
  );
  return `${[head.join(','), ...rows].join('\n')}\n`;
}
