// Hours of a year too hot, too cold or too damp that nobody minds, and from how many on a house is called cold or damp, in one
// place for whatever judges a house. How many hours may be too hot is the criterion's own number: `limitHours` of too-hot.ts.
// All are house rules: common practice, no source.

/** Hours too damp that nobody minds: 5 % of the year. */
export const ACCEPTABLE_DAMP_HOURS = 0.05 * 8760;
/** Up to so many nobody calls it damp at times: 2 % of the year. */
export const FEW_DAMP_HOURS = 175;
/** Hours below the limit of cold that nobody minds: 0.2 % of the year. */
export const FEW_COLD_HOURS = 18;
/** From so many on it is a cold house: 2 % of the year. */
export const COLD_HOURS = 175;
/** Hours in which the heat does not do that nobody minds: one in fifty of the 4745 in which people are up. */
export const ACCEPTABLE_SHORT_HOURS = 95;
/** A house this much beyond what is acceptable is still nearly so: what remains is not worth a change. */
export const NEARLY_ACCEPTABLE = 1.25;

/** Hours too hot that nobody minds: a third of what is allowed [h/year]. */
export function fewHotHours(limitHours: number): number {
  return limitHours / 3;
}
