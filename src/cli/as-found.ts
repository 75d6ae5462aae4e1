// `as-found DESIGN --weather FILE --logger PLACE=FILE …`: a drawing held against a logger's record of the house's days.
// What the house seems to be, how well that matches on days kept unseen, and what the record cannot tell; one JSON object
// with --json. That it does not match is a result too.

import { createMatchPool } from '../../workers/match-pool.ts';
import type { HouseRecord } from '../matching/house-record.ts';
import { keptDesign } from '../matching/kept-design.ts';
import { type Match, matchHouse } from '../matching/match.ts';
import { PROTOCOL } from '../matching/protocol.ts';
import { daysOf } from '../matching/record-of-files.ts';
import { verdictWords } from '../matching/words.ts';
import type { ParsedArguments } from './arguments.ts';
import { recordFrom } from './as-found-record.ts';
import { hourlyRows, matchText } from './as-found-text.ts';
import { type Command, type CommandResult, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { writtenFor } from './files.ts';
import { startSimulation, WORKERS } from './run-pool.ts';
import { wholeNumberOf } from './whole-number.ts';

export const asFoundCommand: Command = {
  name: 'as-found',
  usage:
    'as-found DESIGN --weather FILE --logger PLACE=FILE [--climate ID] [--from DATE] [--until DATE] [--shut DATE..DATE] [--away DATE..DATE] [--diary FILE] [--heat FILE] [--hourly OUT.csv] [--keep OUT.json] [--workers N] [--json]',
  line: 'what a house that stands seems to be, by a logger’s record of its days',
  valued: [
    'weather',
    'logger',
    'climate',
    'from',
    'until',
    'shut',
    'away',
    'clock',
    'logger-clock',
    'plane',
    'diary',
    'heat',
    'hourly',
    'keep',
    'workers',
  ],
  repeated: ['logger', 'shut', 'away'],
  switches: ['json', 'protocol'],
  details: [
    '--weather FILE: a table of dated weather of those days, best with four weeks before them',
    '--logger PLACE=FILE: a logger’s file; PLACE is house, sunspace, a room or outdoors; once for each',
    '--shut DATE..DATE: days on which windows, vents and the sunspace’s door stayed shut, first and last; the surest record',
    '--away DATE..DATE: days on which nobody was at home and all stood shut',
    '--diary FILE: a table from, until, what, amount of windows, vents and doors opened meanwhile, to the minute, and of fires (8 kg, 6 logs)',
    '--heat FILE: a table of time and heat that the house was given: kW, kWh, kg of wood or logs; nothing else is taken to heat on its days',
    '--climate ID: the typical year for the time before and for what was not measured; that of the design unless said',
    '--clock, --logger-clock standard | summer | utc | ZONE (as Europe/Rome): which clock the tables go by',
    '--protocol: the page for the people of the house, what to hang where and what to write down; needs no design',
    '--keep OUT.json: the house as found as a design, with its intervals, for every other command and the page',
    '--plane HEADER,TILT,AZIMUTH: a column of the weather table that a sun meter on a plane wrote',
  ],
  positionals: [0, 1],
  run: async (args, console) => {
    if (args.switches.has('protocol')) return { ok: true, output: PROTOCOL.trimEnd() };
    const [place] = args.positionals;
    if (place === undefined)
      return refused('as-found: no DESIGN; allowed: a design file, or an example’s id');
    const read = await readDesign(place);
    if (!read.ok) return read;
    const { design } = read;
    const made = await recordFrom(args, design);
    if ('faults' in made) return { ok: false, faults: made.faults };
    const { record, windows, notes } = made;
    const workers = wholeNumberOf(args, 'workers', WORKERS);
    if (typeof workers === 'string') return refused(workers);
    const pool = createMatchPool(record, startSimulation, workers);
    let rounds = 0;
    try {
      const match = await matchHouse(record, pool, {
        windows,
        onRound: () => console.progress(++rounds, 24),
      });
      return await printed(args, record, match, notes);
    } catch (error) {
      if (error instanceof RangeError) return refused(`as-found: ${error.message}`);
      throw error;
    } finally {
      pool.close();
    }
  },
};

async function printed(
  args: ParsedArguments,
  record: HouseRecord,
  match: Match,
  notes: readonly string[],
): Promise<CommandResult> {
  const { design } = record;
  const file = args.values.get('hourly');
  if (file !== undefined) {
    const fault = await writtenFor('hourly', file, hourlyRows(record, match));
    if (fault !== null) return refused(fault);
  }
  const keep = args.values.get('keep');
  if (keep !== undefined) {
    if (match.verdict === 'no-better')
      return refused(`--keep: ${keep}; ${verdictWords(match)} Allowed: a record that corrects the drawing`);
    const kept = keptDesign(design, match, daysOf(record));
    const fault = await writtenFor('keep', keep, `${JSON.stringify(kept, null, 2)}\n`);
    if (fault !== null) return refused(fault);
  }
  return {
    ok: true,
    output: matchText(record, match, notes, args.switches.has('json') ? 'json' : 'words'),
  };
}
