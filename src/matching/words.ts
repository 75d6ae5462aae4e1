// A match in words: the verdict with its number, one line an unknown, what cannot be told apart, what is left. Differences
// of temperature stand in K until `inUnits` turns them.

import type { UnknownId } from '../design/as-found.ts';
import { factorWords, foundWords, UNKNOWN_WORDS } from '../findings/found-words.ts';
import { type Units, wordingOf } from '../findings/wording.ts';
import type { Tie } from './intervals.ts';
import type { FoundUnknown, Match } from './match.ts';
import { MATCHES_K } from './verdict.ts';

const kelvin = (value: number) => `${value.toFixed(1)} K`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A sentence with its differences of temperature as these units have them. */
export function inUnits(sentence: string, units: Units): string {
  return units === 'metric'
    ? sentence
    : sentence.replace(/(\d+(?:\.\d+)?) K\b/g, (_, kelvins: string) => {
        const digits = kelvins.includes('.') ? 1 : 0;
        return `${(1.8 * Number(kelvins)).toFixed(digits)} °F`;
      });
}

/** The verdict, always with its number: on days the fit had not seen. */
export function verdictWords(match: Match): string {
  const { verdict, unseenMisfitK, drawnMisfitK, yesterdayMisfitK } = match;
  const miss = kelvin(unseenMisfitK);
  switch (verdict) {
    case 'matches':
      return `On days it had not seen, the house as found stays within ${miss} of the logger. As drawn it missed by ${kelvin(drawnMisfitK)}. It matches.`;
    case 'roughly':
      return `On days it had not seen, the house as found misses the logger by ${miss}. As drawn it missed by ${kelvin(drawnMisfitK)}. It follows roughly: good for what helps more, not for exact numbers.`;
    case 'not':
      return `On days it had not seen, the house as found misses the logger by ${miss}. It does not match; its answers are not for decisions.`;
    case 'no-better':
      if (isRightAsDrawn(match))
        return `The drawing needs no correction by this record: on days the fit had not seen, it stays within ${kelvin(drawnMisfitK)} of the logger as it is, and the fit within ${miss}.`;
      return `This record cannot correct the drawing. On days it had not seen, the fit misses by ${miss}, the drawing by ${kelvin(drawnMisfitK)}, and yesterday’s same hour by ${kelvin(yesterdayMisfitK)}.`;
  }
}

/** The drawing matches the record already. */
function isRightAsDrawn({ drawnMisfitK, yesterdayMisfitK }: Match): boolean {
  return drawnMisfitK < MATCHES_K && drawnMisfitK < yesterdayMisfitK;
}

/** Why there is no house as found to keep. */
export function nothingKeptWords(match: Match): string {
  return isRightAsDrawn(match)
    ? 'There is nothing to keep: the drawing matches the record as it is, so its answers stand.'
    : 'Nothing can be kept: this record does not correct the drawing. The drawing stays as it is. Longer records, the weather nearer by, or days with everything shut may tell more.';
}

/** What the house seems to be, of one unknown. */
export function unknownWords(found: FoundUnknown, units: Units = 'metric'): string {
  const words = capital(UNKNOWN_WORDS[found.id]);
  return `${words}: ${found.learnt ? '' : 'hardly told; '}${foundWords(found, wordingOf(units))}.`;
}

/** Loss by walls, roof and draughts together: told better than its parts, so it is told first. */
export function heatLossWords({ heatLoss }: Match): string | null {
  if (heatLoss === null) return null;
  const { value, low, high } = heatLoss;
  return `Heat lost by walls, roof and draughts together: ${factorWords(value)}, likely ${factorWords(low)} to ${factorWords(high)}.`;
}

/** The part of it that goes with the wind and the cold: leaks and the wind at the house are told together. */
export function draughtWords({ draughts }: Match): string | null {
  if (draughts === null) return null;
  const { value, low, high } = draughts;
  return `Of it by draughts, which are leaks and the wind at the house in one: ${factorWords(value)}, likely ${factorWords(low)} to ${factorWords(high)}.`;
}

export function tieWords({ between, correlation }: Tie): string {
  const [a, b] = between.map((id) => UNKNOWN_WORDS[id]) as [string, string];
  const how =
    correlation > 0
      ? 'more of both fits about as well as less of both'
      : 'more of one and less of the other fits about as well';
  return `The record cannot well tell ${a} from ${b}: ${how}.`;
}

export function heldWords({ id, why }: { readonly id: UnknownId; readonly why: string }): string {
  return `${capital(UNKNOWN_WORDS[id])}: stays as drawn, for ${why}.`;
}
