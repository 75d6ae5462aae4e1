// A bracketed search along one axis: from points already run, between which two the answer turns, and which places
// to run next. Several places a round, since runs go in parallel. The turn is the FIRST one met by rising x, so that
// "up to here it holds" is true even where a curve comes back.

export interface Trial {
  readonly x: number;
  readonly passes: boolean;
}

export interface Bracket {
  /** whether the lowest place passes */
  readonly passesAtStart: boolean;
  /** last place before the turn */
  readonly before: number;
  /** first place after the turn; null when there is no turn */
  readonly after: number | null;
}

/**
 * Where trials turn from passing to failing, or from failing to passing, first.
 *
 * @param trials at least one, in any order
 */
export function bracketOf(trials: readonly Trial[]): Bracket {
  const sorted = [...trials].sort((one, other) => one.x - other.x);
  const [first] = sorted;
  if (first === undefined) throw new RangeError('trials has 0 entries; allowed: 1 or more');
  let before = first.x;
  for (const { x, passes } of sorted) {
    if (passes !== first.passes) return { passesAtStart: first.passes, before, after: x };
    before = x;
  }
  return { passesAtStart: first.passes, before, after: null };
}

/**
 * Places that cut a bracket into equal parts.
 *
 * @param bracket where the turn is
 * @param places how many to run at once, 1…
 * @param resolution stop when the bracket is no wider than this; > 0
 * @returns none when the turn is known well enough, or there is none
 */
export function nextPlaces({ before, after }: Bracket, places: number, resolution: number): number[] {
  if (after === null || after - before <= resolution * (1 + 1e-9)) return [];
  const parts = Math.min(places + 1, Math.ceil((after - before) / resolution - 1e-9));
  return Array.from({ length: parts - 1 }, (_, i) => before + ((after - before) * (i + 1)) / parts);
}
