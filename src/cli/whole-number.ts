// A flag that is a whole number within limits: arguments in, the number or what is wrong out.

import type { ParsedArguments } from './arguments.ts';

export interface WholeNumber {
  readonly min: number;
  readonly max: number;
  /** where the flag is absent */
  readonly usual: number;
}

/** The number a flag gives, or one line that says what is wrong. */
export function wholeNumberOf(
  { values }: ParsedArguments,
  flag: string,
  { min, max, usual }: WholeNumber,
): number | string {
  const text = values.get(flag);
  if (text === undefined) return usual;
  const value = Number(text);
  const isSound = Number.isInteger(value) && value >= min && value <= max;
  return isSound ? value : `--${flag}: ${text}; allowed: a whole number from ${min} to ${max}`;
}
