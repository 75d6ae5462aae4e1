// The runs of "how much mass?" by rising area of one way to build, how far they go, and where they come within the limit.

import { type Bracket, bracketOf } from './bracket.ts';
import type { WayToBuild } from './building-work.ts';
import type { Basis, Run, Runs } from './question.ts';

/** Faces that can be found in a house at most, for each m² of its floor. House rule. */
const MOST_PER_FLOOR = 1.5;

/** Most face area tried [m²]. */
export function mostArea({ design }: Basis): number {
  return Math.max(MOST_PER_FLOOR * design.house.floorAreaM2, design.mass.areaM2);
}

/** Runs of one way to build, by rising area; the run without mass belongs to all. */
export function byArea(way: WayToBuild, runs: Runs): Run[] {
  return [...runs.values()]
    .filter(({ job }) => job.at.way === way.id || job.at.way === 'any')
    .sort((one, other) => Number(one.job.at.areaM2) - Number(other.job.at.areaM2));
}

/** Where hours too hot come within the limit, by rising area. */
export function bracketFor({ criterion }: Basis, way: WayToBuild, runs: Runs): Bracket {
  return bracketOf(
    byArea(way, runs).map(({ job, figures }) => ({
      x: Number(job.at.areaM2),
      passes: figures.tooHotHours <= criterion.hours,
    })),
  );
}
