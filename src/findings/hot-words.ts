// What counts as too hot, in words. Where one temperature is the limit, the words name it; where the limit follows the
// weather, or fans move the air, they say "too hot" and tell once what that means. Outcome or criterion in, words out.

import type { TooHotCriterion } from '../design/too-hot-criterion.ts';
import type { TooHot } from '../outcomes/too-hot.ts';
import type { Wording } from './wording.ts';

type Temperature = Pick<Wording, 'temperature'>;

/** A limit to a whole degree, or to a tenth where it has one. */
function limitText(celsius: number, words: Temperature): string {
  return words.temperature(celsius, Number.isInteger(celsius) ? 0 : 1);
}

/** Between "the rooms are" and "for so many hours": "above 26 °C", or "too hot". */
export function hotPhrase({ limitC }: Pick<TooHot, 'limitC'>, words: Temperature): string {
  return limitC === undefined ? 'too hot' : `above ${limitText(limitC, words)}`;
}

/** Whose limit it is, as short as a reader can look it up. */
const WHOSE: Readonly<Record<string, string>> = {
  'adaptive-I': 'EN 16798-1, category I',
  'adaptive-II': 'EN 16798-1, category II',
  'adaptive-III': 'EN 16798-1, category III',
  'tm59-open': 'CIBSE TM59, for the five warm months',
};

/** Whose limit a criterion's is; '' for one plain temperature. */
export function whoseLimit(criterion: string): string {
  return WHOSE[criterion] ?? '';
}

/** A sentence that says what too hot means; '' where `hotPhrase` says it. Ends with a space. */
export function hotMeaning(
  { criterion, limitC, lowestLimitC, highestLimitC }: TooHot,
  words: Temperature,
): string {
  if (limitC !== undefined) return '';
  const whose = whoseLimit(criterion);
  if (whose === '') return `Too hot is what feels like more than ${limitText(lowestLimitC, words)}. `;
  return `Too hot is above a limit that moves with the weather: ${words.temperature(lowestLimitC)} after cool days, ${words.temperature(highestLimitC)} in the warmest week here (${whose}). `;
}

/** The same with no sentence of its own, for the head of a row: "Above 26 °C", "Too hot (EN 16798-1, category II)". */
export function hotLabel(tooHot: Pick<TooHot, 'criterion' | 'limitC'>, words: Temperature): string {
  const phrase = hotPhrase(tooHot, words);
  const whose = whoseLimit(tooHot.criterion);
  return `${phrase.charAt(0).toUpperCase()}${phrase.slice(1)}${whose === '' ? '' : ` (${whose})`}`;
}

/** A criterion's name in the words of a unit system. */
export function criterionInWords(
  { name, aboveC }: Pick<TooHotCriterion, 'name' | 'aboveC'>,
  words: Temperature,
): string {
  return aboveC === null ? name : name.replace(`${aboveC} °C`, limitText(aboveC, words));
}
