// What the designer cannot know, as samples: airtightness as built, habits, people, ground, the land around, the
// year's weather. A Latin hypercube, so that each unknown is spread evenly however few the samples, from a fixed
// seed, so that an answer is the same when asked again. Ranges are house rules, written beside each.

import { SHIFTS, type UnknownId } from '../design/as-found.ts';
import type { Design, Habit, Living } from '../design/design.ts';
import { power } from '../physics/elementary.ts';
import { uniformShift } from '../weather/hotter-year.ts';
import { randomNumbers } from '../weather/synthetic/random-numbers.ts';
import type { ClimateChange } from './run-job.ts';
import { varied } from './variation.ts';

export interface Sample {
  readonly design: Design;
  readonly change: ClimateChange;
}

const SEED = 20260;
/** Airtightness as built against as drawn, least and most; even in its logarithm. */
const TIGHTNESS_TIMES = [0.7, 2] as const;
/** Lights and appliances against as drawn. */
const APPLIANCES_TIMES = [0.6, 1.5] as const;
const SET_POINT_K = 1;
const PEOPLE = 1;
/** Share of samples in which people do as drawn; the other habits share the rest. */
const AS_DRAWN = 0.4;
const HABITS: readonly Habit[] = ['automatic', 'attentive', 'away', 'forgetful', 'never'];
const LIVING: readonly Living[] = ['dry', 'moist', 'wet'];
const YEAR_SHIFT_K = [-1, 0, 1] as const;
const ALBEDO_TIMES = [0.75, 1, 1.5] as const;
const GROUND_K = [-1.5, 0, 1.5] as const;

const UNKNOWNS = 9;

/**
 * Samples of a design as it may turn out.
 *
 * @param design as drawn
 * @param count 1…; 64 to 256 are enough for tenths
 */
export function sampled(design: Design, count: number): readonly Sample[] {
  const random = randomNumbers(SEED).uniform;
  const columns = Array.from({ length: UNKNOWNS }, () => stratified(count, random));
  return Array.from({ length: count }, (_, i) => {
    const [tight, sunTight, shelter, habit, people, living, away, appliances, warmth] = columns.map(
      (column) => column[i]!,
    ) as [number, number, number, number, number, number, number, number, number];
    const times = between(rangeOf(design, 'airtightness', TIGHTNESS_TIMES), tight, true);
    return {
      design: varied(design, {
        'air.ach50': design.air.ach50 * times,
        'air.sunspaceAch50':
          design.air.sunspaceAch50 *
          between(rangeOf(design, 'airtightness', TIGHTNESS_TIMES), sunTight, true),
        'air.shelter': Math.min(5, Math.max(1, design.air.shelter + pick([-1, 0, 1], shelter))),
        'vents.habit': habitOf(design.vents.habit, habit),
        'people.count': Math.max(1, design.people.count + pick([-PEOPLE, 0, PEOPLE], people)),
        'people.living': pick(LIVING, living),
        'people.awayWorkdays': away < 0.5,
        'people.appliancesW': design.people.appliancesW * between(APPLIANCES_TIMES, appliances, false),
        'heating.dayC':
          design.heating.dayC + between(rangeOf(design, 'stove', [-SET_POINT_K, SET_POINT_K]), warmth, false),
        'heating.nightC':
          design.heating.nightC +
          between(rangeOf(design, 'stove', [-SET_POINT_K, SET_POINT_K]), warmth, false),
      }),
      change: changeOf(i % 9),
    };
  });
}

/** How far an unknown may be from what the design says: as a record of the house showed, else as house rules have it. */
function rangeOf(
  { asFound }: Design,
  id: UnknownId,
  usual: readonly [number, number],
): readonly [number, number] {
  const found = asFound?.unknowns.find((one) => one.id === id);
  if (found === undefined) return usual;
  const { value, low, high } = found;
  return SHIFTS.includes(id) ? [low - value, high - value] : [low / value, high / value];
}

/** Nine changes that meet every pair of two of the three unknowns once: an orthogonal array of three by three. */
function changeOf(place: number): ClimateChange {
  const [one, two] = [Math.floor(place / 3), place % 3];
  return {
    shiftK: uniformShift(YEAR_SHIFT_K[one]!),
    albedoTimes: ALBEDO_TIMES[two]!,
    groundK: GROUND_K[(one + two) % 3]!,
  };
}

function habitOf(drawn: Habit, place: number): Habit {
  if (place < AS_DRAWN) return drawn;
  const others = HABITS.filter((habit) => habit !== drawn);
  return pick(others, (place - AS_DRAWN) / (1 - AS_DRAWN));
}

/** One number in each of `count` equal strata of 0…1, shuffled. */
function stratified(count: number, random: () => number): number[] {
  const places = Array.from({ length: count }, (_, i) => (i + random()) / count);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [places[i], places[j]] = [places[j]!, places[i]!];
  }
  return places;
}

function pick<T>(options: readonly T[], place: number): T {
  return options[Math.min(options.length - 1, Math.floor(place * options.length))]!;
}

function between([low, high]: readonly [number, number], place: number, byRatio: boolean): number {
  return byRatio ? low * power(high / low, place) : low + (high - low) * place;
}

/**
 * A value below which so much of the sample lies, linear between neighbours.
 *
 * @param values at least one
 * @param share 0…1
 */
export function quantile(values: readonly number[], share: number): number {
  if (values.length === 0) throw new RangeError('values has 0 entries; allowed: 1 or more');
  const sorted = [...values].sort((one, other) => one - other);
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (sorted[high]! - sorted[low]!) * (place - low);
}
