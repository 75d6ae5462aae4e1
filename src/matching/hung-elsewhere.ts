// Whether loggers may have hung in other rooms than was said: the house is fitted again with each logger moved to a room without
// one, and with each two exchanged. What fits so much better that it outweighs a person's word, or nearly, is named; the numbers
// found then have to span both.

import type { UnknownId } from '../design/as-found.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { UnknownValues } from '../model/unknowns.ts';
import type { HouseRecord, MatchJob, MatchRunner } from './house-record.ts';
import { type Estimate, leastSquares } from './least-squares.ts';

export interface HungElsewhere {
  /** by target, the zone */
  readonly zones: readonly string[];
  /** as “the logger of Kitchen hung in Bedroom” */
  readonly words: string;
  readonly estimate: Estimate;
  /** how likely it is beside what was said and the other ways, 0…1 */
  readonly likely: number;
}

/** Of records, so many have a logger in another room than was said; common practice, no source. */
const MISTAKEN = 0.05;
/** Less likely ways are not told of. */
const WORTH_TELLING = 0.1;
/** With more ways it is not tried. */
const MOST_WAYS = 12;
const ROUNDS = 6;
const ROUGH_ROUNDS = 2;

interface OtherWay {
  readonly zones: readonly string[];
  readonly words: string;
}

/** Other ways in which the loggers of rooms may have hung; none where the house is not divided. */
export function otherWays({ design, targets }: HouseRecord): OtherWay[] {
  const rooms = roomPlanOf(design)?.rooms ?? [];
  const logged = rooms.filter(({ id }) => targets.some(({ zone }) => zone === id));
  const free = rooms.filter((room) => !logged.includes(room));
  const moved = (from: string, to: string) =>
    targets.map(({ zone }) => (zone === from ? to : zone === to ? from : zone));
  return logged.flatMap(({ id, room: { name } }, i) => [
    ...free.map((other) => ({
      zones: moved(id, other.id),
      words: `the logger of ${name} hung in ${other.room.name}`,
    })),
    ...logged.slice(0, i).map((other) => ({
      zones: moved(id, other.id),
      words: `the loggers of ${other.room.name} and ${name} were exchanged`,
    })),
  ]);
}

export interface HungOptions {
  readonly unknowns: readonly UnknownId[];
  readonly considered: readonly UnknownId[];
  /** hours that were fitted, by target */
  readonly fitted: readonly Uint8Array[];
  /** as it was said */
  readonly estimate: Estimate;
  readonly jobOf: (values: UnknownValues) => MatchJob;
  readonly isEnough: () => boolean;
}

/** Ways that the record does not rule out, the likeliest first. */
export async function hungElsewhere(
  runner: MatchRunner,
  record: HouseRecord,
  { estimate, jobOf, ...options }: HungOptions,
): Promise<HungElsewhere[]> {
  const ways = otherWays(record);
  if (ways.length === 0 || ways.length > MOST_WAYS || options.isEnough()) return [];
  const estimates: Estimate[] = [];
  for (const { zones } of ways)
    estimates.push(
      await leastSquares(runner, {
        ...options,
        targets: record.targets,
        jobOf: (values) => ({ ...jobOf(values), zones }),
        start: estimate.places,
        rounds: ROUNDS,
        roughRounds: ROUGH_ROUNDS,
      }),
    );
  const least = Math.min(estimate.unlikeliness, ...estimates.map((one) => one.unlikeliness));
  const weightOf = (prior: number, { unlikeliness }: Estimate) =>
    prior * Math.exp((least - unlikeliness) / 2);
  const weights = estimates.map((one) => weightOf(MISTAKEN / ways.length, one));
  const all = weights.reduce((a, b) => a + b, weightOf(1 - MISTAKEN, estimate));
  return ways
    .map((way, i) => ({ ...way, estimate: estimates[i]!, likely: weights[i]! / all }))
    .filter(({ likely }) => likely >= WORTH_TELLING)
    .sort((a, b) => b.likely - a.likely);
}

/** What to say of it. */
export function hungWords(ways: readonly HungElsewhere[]): string {
  const [first] = ways;
  const how = first!.likely > 0.5 ? 'better' : 'about as well';
  return `The record fits ${how} if ${ways.map(({ words }) => words).join(', or ')}. Look where each hung; until then the numbers found are so wide that they hold either way, and nothing should be decided on them.`;
}
