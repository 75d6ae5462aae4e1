// When a house counts as too hot: a temperature and how many hours a year may lie above it, each from a published
// test and named by it. The default is the one whose temperature and counting fit what the outcome counts: operative
// temperature, every hour of the year. Sources: physics/overheating-criteria.ts, trade practice as marked there.

import { GUIDE_A, PRACTICE_LIMIT_C, TM59_MECHANICAL } from '../physics/overheating-criteria.ts';
import { HOURS } from '../weather/typical-year.ts';
import type { Words } from './words.ts';

export interface Criterion {
  readonly id: string;
  /** as it stands in a sentence after "the limit of" */
  readonly name: string;
  /** operative temperature above which an hour counts [°C] */
  readonly aboveC: number;
  /** hours a year that may count */
  readonly hours: number;
  readonly source: string;
}

/** Share of the year that may lie above 25 °C in certification practice for low-energy houses. */
const PRACTICE_SHARE = 0.1;

const criterion = (id: string, name: string, aboveC: number, share: number, source: string): Criterion => ({
  id,
  name,
  aboveC,
  hours: Math.floor(share * HOURS),
  source,
});

/**
 * The first is the default. It is the strictest test that a house must pass whatever its windows do: a fixed
 * temperature, so that a person can hold a thermometer against it, and a share of hours, so that one hot week does
 * not decide. All hours are counted as lived in, which is the cautious reading.
 */
export const CRITERIA: readonly Criterion[] = [
  criterion(
    'tm59-3-percent',
    'at most 3 % of hours above 26 °C',
    TM59_MECHANICAL.limitC,
    TM59_MECHANICAL.share,
    'CIBSE TM59 (2017), the test for homes that cannot rely on open windows; from memory, high confidence',
  ),
  criterion(
    'practice-10-percent',
    'at most 10 % of hours above 25 °C',
    PRACTICE_LIMIT_C,
    PRACTICE_SHARE,
    'certification practice for low-energy houses; from memory, high confidence',
  ),
  criterion(
    'guide-a-living',
    'at most 1 % of hours above 28 °C',
    GUIDE_A.livingC,
    GUIDE_A.share,
    'CIBSE Guide A (2006), living rooms; from memory, high confidence',
  ),
];

/** A limit's name in the words of a unit system. */
export function criterionInWords({ name, aboveC }: Criterion, words: Pick<Words, 'temperature'>): string {
  return name.replace(`${aboveC} °C`, words.temperature(aboveC, Number.isInteger(aboveC) ? 0 : 1));
}

export const DEFAULT_CRITERION: Criterion = CRITERIA[0]!;

/**
 * A limit of one's own.
 *
 * @param aboveC [°C]; 22…35
 * @param hours a year; 0…8760
 */
export function ownCriterion(aboveC: number, hours: number): Criterion {
  return {
    id: 'own',
    name: `at most ${hours} hours above ${aboveC} °C`,
    aboveC,
    hours,
    source: 'set by hand',
  };
}
