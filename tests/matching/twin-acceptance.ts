// What twins are asked for, and what they gave: a line for each demand with its limit, what came, and from how many draws.
// The limits were set before anything was run.

import type { UnknownId } from '../../src/design/as-found.ts';
import { TWIN_CASES } from './twin-cases.ts';
import type { TwinDraw } from './twin-draw.ts';
import { isHeld, mean, row, table } from './twin-tables.ts';

/** Of the loggers: drift 0.3 K, jitter 0.1 K, rounding to 0.1 K; their constant error is found with the house. */
const NOISE_K = Math.hypot(0.3, 0.1, 0.1 / Math.sqrt(12));
const MEASURED = [
  'winter, no heating, shut, air',
  'winter, closed sunspace, shut, all loggers',
  'summer, closed, automatic, rooms and sunspace',
];
const NEAR: readonly (readonly [UnknownId, number])[] = [
  ['airtightness', 0.25],
  ['sun', 0.2],
  ['insulation', 0.2],
];

/** A line for each demand of each case that has draws. */
export function acceptanceTable(draws: readonly TwinDraw[]): string {
  const rows: string[] = [];
  const ask = (name: string, asked: string, got: string, count: number, isMet: boolean) => {
    if (count > 0) rows.push(row([name, asked, got, count, (isMet ? 'yes' : 'no') + soFar(count)]));
  };
  for (const name of Object.keys(TWIN_CASES)) {
    const own = draws.filter((one) => one.name === name);
    if (own.length === 0) continue;
    const told = own.flatMap(({ unknowns }) => unknowns);
    const held = told.filter(isHeld).length / told.length;
    const percent = `${(100 * held).toFixed(1)} %`;
    const unseenK = mean(own.map(({ misfitsK }) => misfitsK[1]));
    if (MEASURED.includes(name)) {
      ask(
        name,
        `unseen at most ${(1.3 * NOISE_K).toFixed(2)} K`,
        `${unseenK.toFixed(2)} K`,
        own.length,
        unseenK <= 1.3 * NOISE_K,
      );
      for (const [id, share] of NEAR) {
        const those = told.filter((one) => one.id === id);
        const asked = `${id} within ${100 * share} % in 10 of 12`;
        if (those.length === 0) {
          ask(name, asked, `stays as drawn in ${own.length} of ${own.length}`, own.length, false);
          continue;
        }
        const near = those.filter(({ value, truth }) => Math.abs(value / truth - 1) <= share).length;
        ask(name, asked, `${near} of ${those.length}`, those.length, near / those.length >= 10 / 12);
      }
      const draughts = own.flatMap((one) => one.draughts ?? []);
      const nearDraughts = draughts.filter(({ value, truth }) => Math.abs(value / truth - 1) <= 0.25).length;
      rows.push(
        row([
          name,
          'not asked: draughts, leaks and wind in one, within 25 %',
          `${nearDraughts} of ${draughts.length}`,
          draughts.length,
          '',
        ]),
      );
      ask(name, '90 % intervals hold in 80–97 %', percent, own.length, held >= 0.8 && held <= 0.97);
      const learnt = own.filter(({ isGroundLearnt }) => isGroundLearnt).length;
      ask(name, 'ground not learnt', `learnt in ${learnt}`, own.length, learnt === 0);
    } else if (!name.startsWith('wrong')) {
      if (name.startsWith('divided')) {
        const doubted = own.filter(({ notes }) =>
          notes.some((note) => /^The record fits .*(hung|exchanged)/.test(note)),
        );
        const got = `doubted in ${doubted.length} of ${own.length}`;
        rows.push(row([name, 'not asked: a room rightly said is not doubted', got, own.length, '']));
      }
      const isGuessed = own.every(({ habit }) => habit !== null);
      if (name.startsWith('summer'))
        ask(name, 'unseen at most 0.70 K', `${unseenK.toFixed(2)} K`, own.length, unseenK <= 0.7);
      if (!name.startsWith('summer')) continue;
      ask(
        name,
        isGuessed
          ? '90 % intervals hold in 80 %, or said that habits were guessed'
          : '90 % intervals hold in 80–97 %',
        isGuessed ? `${percent}, said so` : percent,
        own.length,
        held >= 0.8 && (isGuessed || held <= 0.97),
      );
    } else {
      const shown = own.filter(isShown).length;
      const wrong = told.filter((one) => one.learnt && !isHeld(one)).length;
      ask(
        name,
        'shows in notes, patterns or verdict; else no confident wrong number',
        `shows in ${shown}; of ${told.filter(({ learnt }) => learnt).length} numbers told as learnt ${wrong} are outside their 90 % intervals`,
        own.length,
        own.every((one) => isShown(one) || !one.unknowns.some((found) => found.learnt && !isHeld(found))),
      );
    }
  }
  return table(['case', 'asked', 'got', 'draws', 'met'], rows);
}

const ASKED_DRAWS = 12;

/** Fewer draws than asked settle nothing. */
const soFar = (count: number) => (count < ASKED_DRAWS ? ' so far' : '');

/** Whether something says that not all is right. */
function isShown({ verdict, clockOffH, patterns, notes }: TwinDraw): boolean {
  return verdict !== 'matches' || clockOffH !== 0 || patterns.length > 0 || notes.length > 0;
}
