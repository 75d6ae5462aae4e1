// Hours too damp that nobody minds, and how far beyond what is allowed a house is still nearly acceptable. How many hours
// may be too hot is the criterion's own number: `limitHours` of too-hot.ts.

/** Hours a year too damp that nobody minds: 5 %, house rule. */
export const ACCEPTABLE_DAMP_HOURS = 0.05 * 8760;
/** A house this much beyond them is still nearly acceptable: what remains is not worth a change. House rule. */
export const NEARLY_ACCEPTABLE = 1.25;
