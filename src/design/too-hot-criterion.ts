// What counts as too hot, chosen once for a design: the limit of an hour, the hours that are judged, and how many of them
// may pass it. A design and the site's latitude in, one criterion out. Every figure, finding, answer and report reads it
// from here. Sources stand with the constants in physics/.

import type { ComfortCategory } from '../physics/adaptive-comfort.ts';
import {
  GUIDE_A,
  PRACTICE_LIMIT_C,
  summerDays,
  TM52_LIMITS,
  TM59_MECHANICAL,
} from '../physics/overheating-criteria.ts';
import type { Design, TooHotChoice } from './design.ts';

export const TOO_HOT_CHOICES = [
  'adaptive-II',
  'adaptive-I',
  'adaptive-III',
  'tm59-open',
  'tm59-3-percent',
  'practice-10-percent',
  'guide-a-living',
  'fixed',
] as const satisfies readonly TooHotChoice[];

/** The limit of an hour: one temperature, or one that follows the weather by EN 16798-1 or by CIBSE TM52. */
export type HourLimit =
  | { readonly kind: 'fixed'; readonly aboveC: number }
  | { readonly kind: 'adaptive'; readonly category: ComfortCategory }
  | { readonly kind: 'tm52' };

export interface TooHotCriterion {
  readonly id: TooHotChoice | 'own';
  /** as it stands in a sentence after "the limit is", in metric units */
  readonly name: string;
  readonly limit: HourLimit;
  /** operative temperature above which an hour counts [°C]; null where the limit follows the weather */
  readonly aboveC: number | null;
  /** hours judged: those of the year, or of the five warm months */
  readonly season: 'year' | 'summer';
  /** hours that may count */
  readonly hours: number;
  readonly source: string;
}

/** Share of the year that may lie above 25 °C in certification practice for low-energy houses. */
const PRACTICE_SHARE = 0.1;
/** Share of the year's occupied hours that may leave a category: CEN/TR 16798-2 names 3 % and 6 %; the stricter. */
const EN_SHARE = 0.03;
/** Windows that open are a means to keep cool from this share of the floor up. House rule. */
const OPENABLE_SHARE = 0.01;
const YEAR_HOURS = 8760;
const ADAPTIVE_SOURCE =
  'EN 16798-1 (2019), its share of hours by CEN/TR 16798-2; from memory, medium confidence';

/** All hours of a house are judged as lived in, which is the cautious reading: some room of it is, day or night. */
function allowed(share: number, judgedHours: number): number {
  return Math.floor(share * judgedHours);
}

function fixed(id: TooHotChoice, aboveC: number, share: number, source: string): TooHotCriterion {
  return {
    id,
    name: `at most ${Math.round(100 * share)} % of hours above ${aboveC} °C`,
    limit: { kind: 'fixed', aboveC },
    aboveC,
    season: 'year',
    hours: allowed(share, YEAR_HOURS),
    source,
  };
}

function adaptive(id: TooHotChoice, category: ComfortCategory): TooHotCriterion {
  return {
    id,
    name: `at most 3 % of hours above a limit that follows the weather, category ${category}`,
    limit: { kind: 'adaptive', category },
    aboveC: null,
    season: 'year',
    hours: allowed(EN_SHARE, YEAR_HOURS),
    source: ADAPTIVE_SOURCE,
  };
}

/**
 * The criterion of a choice.
 *
 * @param overheatC temperature of the choice 'fixed' [°C]
 * @param latitudeDeg of the site, north positive; says which five months are warm
 */
export function criterionOfChoice(
  choice: TooHotChoice,
  overheatC: number,
  latitudeDeg: number,
): TooHotCriterion {
  switch (choice) {
    case 'adaptive-I':
      return adaptive(choice, 'I');
    case 'adaptive-II':
      return adaptive(choice, 'II');
    case 'adaptive-III':
      return adaptive(choice, 'III');
    case 'tm59-open':
      return {
        id: choice,
        name: 'at most 3 % of the hours of five warm months a degree over a limit that follows the weather',
        limit: { kind: 'tm52' },
        aboveC: null,
        season: 'summer',
        hours: allowed(TM52_LIMITS.hourShare, 24 * summerDays(latitudeDeg).days),
        source:
          'CIBSE TM59 (2017), criterion (a) for homes whose windows open: May to September, November to March in the south; from memory, high confidence',
      };
    case 'tm59-3-percent':
      return fixed(
        choice,
        TM59_MECHANICAL.limitC,
        TM59_MECHANICAL.share,
        'CIBSE TM59 (2017), the test for homes that cannot rely on open windows; from memory, high confidence',
      );
    case 'practice-10-percent':
      return fixed(
        choice,
        PRACTICE_LIMIT_C,
        PRACTICE_SHARE,
        'certification practice for low-energy houses; from memory, high confidence',
      );
    case 'guide-a-living':
      return fixed(
        choice,
        GUIDE_A.livingC,
        GUIDE_A.share,
        'CIBSE Guide A (2006), living rooms; from memory, high confidence',
      );
    case 'fixed':
      return fixed(
        choice,
        overheatC,
        TM59_MECHANICAL.share,
        "a temperature of the design's own; 3 % of the year's hours by CIBSE TM59 (2017), the test for homes that cannot rely on open windows; from memory, high confidence",
      );
  }
}

/** The choice of a design: its own; else the adaptive limit where windows open and somebody or something opens them. */
export function tooHotChoice(design: Design): TooHotChoice {
  return design.comfort.criterion ?? (canOpen(design) ? 'adaptive-II' : 'fixed');
}

/** Openings the rooms have: their windows, and the vents of a sunspace that stands open to them. */
function canOpen({ vents, house, sunspace }: Design): boolean {
  const openM2 = vents.houseM2 + (sunspace.join === 'open' ? vents.sunspaceM2 : 0);
  return vents.habit !== 'never' && openM2 >= OPENABLE_SHARE * house.floorAreaM2;
}

/** What counts as too hot in a design. */
export function criterionOf(design: Design, latitudeDeg: number): TooHotCriterion {
  return criterionOfChoice(tooHotChoice(design), design.comfort.overheatC, latitudeDeg);
}

const keptOf = new WeakMap<Design, Design>();

/**
 * The design with its choice written down, so that changes to it are judged by the same limit; one object for one design, so
 * that what is worked out of it once is found again.
 */
export function withChoiceKept(design: Design): Design {
  const known = keptOf.get(design);
  if (known !== undefined) return known;
  const kept = { ...design, comfort: { ...design.comfort, criterion: tooHotChoice(design) } };
  keptOf.set(design, kept);
  keptOf.set(kept, kept);
  return kept;
}

/**
 * A limit of one's own.
 *
 * @param aboveC [°C]; 22…35
 * @param hours a year; 0…8760
 */
export function ownCriterion(aboveC: number, hours: number): TooHotCriterion {
  return {
    id: 'own',
    name: `at most ${hours} hours above ${aboveC} °C`,
    limit: { kind: 'fixed', aboveC },
    aboveC,
    season: 'year',
    hours,
    source: 'set by hand',
  };
}
