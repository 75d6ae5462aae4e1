// The runs of "how much mass?" by rising area of one way to build, how far they go, and where they come within the limit.

import { type Bracket, bracketOf } from './bracket.ts';
import type { WayToBuild } from './building-work.ts';
import type { Basis, Run, Runs } from './question.ts';
import { roomForMass } from './room-for-mass.ts';

/** Most face area tried of one way to build [m²]: what the house has room for, or what is drawn where that is more. */
export function mostArea({ design: { house, mass } }: Basis, { thicknessM }: WayToBuild): number {
  return Math.max(roomForMass(house, thicknessM), mass.areaM2);
}

/** Runs of one way to build, by rising area; the run without mass belongs to all. */
export function byArea(way: WayToBuild, runs: Runs): Run[] {
  return [...runs.values()]
    .filter(({ job }) => job.at.way === way.id || job.at.way === 'any')
    .sort((one, other) => Number(one.job.at.areaM2) - Number(other.job.at.areaM2));
}

/** Of each way to build that was tried, the run with the most of it. */
export function mosts(ways: readonly WayToBuild[], runs: Runs): readonly Run[] {
  return ways.map((way) => byArea(way, runs).at(-1)!).filter(({ job }) => job.at.way !== 'any');
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
