// Temperature factor of a zone's coldest corner, where mould starts. U-value of the plain wall in, fRsi out.
// Source: ISO 13788:2012 for the plain area (Rsi 0.25 in corners); the junction's penalty is common practice, no source.

import { MOULD_CHECK_RSI, plainFactor } from '../physics/surface-humidity.ts';

/** A corner with its bridges is this much worse than the plain wall [–]. */
const JUNCTION_PENALTY = 0.1;
/** Usual range: national minima ask 0.65–0.75, worse than 0.5 is a window's edge. */
const LEAST = 0.5;
const MOST = 0.95;
/** Films of a wall in ISO 6946 [m²K/W]. */
const WALL_FILMS = 0.17;

/**
 * fRsi of the coldest corner.
 *
 * @param wallResistance layers of the plain wall without films [m²K/W]; ≥ 0
 * @returns [–] 0.5…0.95
 */
export function cornerFactor(wallResistance: number): number {
  const plain = plainFactor(1 / (wallResistance + WALL_FILMS), MOULD_CHECK_RSI);
  return Math.min(MOST, Math.max(LEAST, plain - JUNCTION_PENALTY));
}
