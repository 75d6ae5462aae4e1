// What an engine is to a comparison: the door, and the random designs that it understands. Built into one file by
// build-engine.ts, for this tree and for any revision that has the door.
import fc from 'fast-check';
import type { Design } from '../../src/daystone.ts';
import { anyDesign } from '../model/any-design.ts';

export { EXAMPLES, prepareClimate, readWeather, runYear } from '../../src/daystone.ts';
export { parseDesign } from '../../src/design/schema.ts';

/** The first `count` designs of a seed. */
export function randomDesigns(count: number, seed: number): Design[] {
  return fc.sample(anyDesign, { seed, numRuns: count });
}
