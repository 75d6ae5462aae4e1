// The guard every public formula starts with. What a bug passes in is refused here with a RangeError that
// names the quantity, its value, its unit and the allowed range, so that NaN never leaves a module.

/**
 * Refuse a number outside its range.
 *
 * @param name the argument's name as the docstring gives it
 * @param value the number; NaN and infinities are always refused
 * @param min lowest allowed value, in `unit`
 * @param max highest allowed value, in `unit`; Infinity means any finite number from min up
 * @param unit unit as printed in the message, '' for none
 */
export function requireRange(name: string, value: number, min: number, max: number, unit: string): void {
  if (value >= min && value <= max && Number.isFinite(value)) return;
  const suffix = unit === '' ? '' : ` ${unit}`;
  throw new RangeError(`${name} is ${value}${suffix}; allowed ${min} to ${max}${suffix}`);
}
