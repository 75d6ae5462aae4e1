// A population of plausible houses, where people open windows by notches that nobody wrote down: one window opened an hour
// earlier is a jump, and slopes by differences are then noise. Houses and habits are drawn from the priors, weighed by how
// near they come, and drawn anew around the better ones, a few times over. No slopes.

import type { UnknownId } from '../design/as-found.ts';
import type { Habit } from '../design/design.ts';
import { randomNumbers } from '../weather/synthetic/random-numbers.ts';
import type { MatchResult, MatchRunner, Target } from './house-record.ts';
import { bounded, costOf, NO_ERROR, residualOf, valuesAt } from './least-squares.ts';
import { among, noiseOf } from './noise.ts';

export interface Population {
  readonly habit: Habit;
  /** weighted mean and standard deviation, in those of the priors */
  readonly places: readonly number[];
  readonly sd: readonly number[];
  readonly readings: MatchResult;
}

const MEMBERS = 96;
const ROUNDS = 5;
const SEED = 4711;
const HABITS: readonly Habit[] = ['automatic', 'attentive', 'away', 'forgetful', 'never'];
/** Members that must keep a say in each round. */
const LEAST_HEARD = 14;
/** New members stand around the heard ones by so much of their spread, and never less than this. */
const SPREAD = 1;
const LEAST_SPREAD = 0.08;

interface Member {
  readonly places: readonly number[];
  readonly habit: Habit;
}

export async function populationOf(
  runner: MatchRunner,
  unknowns: readonly UnknownId[],
  targets: readonly Target[],
  fitted: readonly Uint8Array[],
  onRound: (readings: MatchResult) => void,
  isEnough: () => boolean,
): Promise<Population> {
  const random = randomNumbers(SEED);
  let members: Member[] = Array.from({ length: MEMBERS }, (_, i) => ({
    places: unknowns.map(() => bounded(random.normal())),
    habit: HABITS[i % HABITS.length]!,
  }));
  let best: { member: Member; readings: MatchResult } | null = null;
  for (let round = 0; ; round++) {
    const results = await runner.run(
      members.map(({ places, habit }) => ({ values: valuesAt(unknowns, places), habit })),
    );
    const squares = results.map((readings) => squareOf(targets, fitted, readings));
    const nearest = squares.indexOf(Math.min(...squares));
    const noise = targets.map((target, t) =>
      noiseOf(target.kind, among(residualOf(target, results[nearest]![t]!, NO_ERROR), fitted[t]!)),
    );
    const costs = results.map((readings, i) => costOf(members[i]!.places, targets, fitted, readings, noise));
    const weights = heard(costs);
    const top = weights.indexOf(Math.max(...weights));
    best = { member: members[top]!, readings: results[top]! };
    onRound(best.readings);
    const mean = unknowns.map((_, i) =>
      members.reduce((sum, { places }, m) => sum + weights[m]! * places[i]!, 0),
    );
    const sd = unknowns.map((_, i) =>
      Math.sqrt(members.reduce((sum, { places }, m) => sum + weights[m]! * (places[i]! - mean[i]!) ** 2, 0)),
    );
    if (round === ROUNDS - 1 || isEnough())
      return {
        habit: commonest(members, weights),
        places: mean,
        sd: sd.map((one) => Math.max(one, LEAST_SPREAD)),
        readings: best.readings,
      };
    const parents = members;
    members = Array.from({ length: MEMBERS }, () => {
      const parent = parents[drawn(weights, random.uniform())]!;
      return {
        habit: parent.habit,
        places: parent.places.map((place, i) => {
          // Between the parent and the mean, so that spreading does not widen the whole.
          const around = mean[i]! + 0.8 * (place - mean[i]!);
          return bounded(around + 0.6 * SPREAD * Math.max(LEAST_SPREAD, sd[i]!) * random.normal());
        }),
      };
    });
  }
}

function squareOf(targets: readonly Target[], fitted: readonly Uint8Array[], readings: MatchResult): number {
  return targets.reduce((sum, target, t) => {
    const scale = target.kind === 'temperature' ? 1 : 0.1;
    const residual = among(residualOf(target, readings[t]!, NO_ERROR), fitted[t]!);
    return residual.reduce(
      (total, value) => (Number.isNaN(value) ? total : total + (scale * value) ** 2),
      sum,
    );
  }, 0);
}

/** Weights that add up to 1, cooled no further than that enough members are heard. */
function heard(costs: readonly number[]): number[] {
  const least = Math.min(...costs);
  for (let temper = 1; ; temper *= 1.4) {
    const raw = costs.map((cost) => Math.exp(-(cost - least) / (2 * temper)));
    const sum = raw.reduce((a, b) => a + b, 0);
    const weights = raw.map((one) => one / sum);
    const effective = 1 / weights.reduce((total, one) => total + one * one, 0);
    if (effective >= LEAST_HEARD) return weights;
  }
}

function drawn(weights: readonly number[], place: number): number {
  let sum = 0;
  for (const [i, weight] of weights.entries()) {
    sum += weight;
    if (place < sum) return i;
  }
  return weights.length - 1;
}

function commonest(members: readonly Member[], weights: readonly number[]): Habit {
  const sums = HABITS.map((habit) =>
    members.reduce((sum, member, m) => (member.habit === habit ? sum + weights[m]! : sum), 0),
  );
  return HABITS[sums.indexOf(Math.max(...sums))]!;
}
