// Hours too hot or too damp that nobody minds: what a finding, a change that helps and a report call acceptable.

/** Hours a year too hot that nobody minds: 1 %, the share of CIBSE Guide A (2006), from memory, high confidence. */
export const ACCEPTABLE_HOT_HOURS = 0.01 * 8760;
/** Hours a year too damp that nobody minds: 5 %, house rule. */
export const ACCEPTABLE_DAMP_HOURS = 0.05 * 8760;
/** A house this much beyond them is still nearly acceptable: what remains is not worth a change. House rule. */
export const NEARLY_ACCEPTABLE = 1.25;
