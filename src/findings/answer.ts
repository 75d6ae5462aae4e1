// The answer in one paragraph: how the house does in a typical year, what it asks of the people in it, and what to
// change first. The changes were run (questions/what-helps.ts), so that the paragraph says what they do.

import type { Figures } from '../questions/figures.ts';
import { CALM_DAMP_HOURS, CALM_HOT_HOURS, type Help } from '../questions/what-helps.ts';
import type { Context } from './context.ts';
import { hours, percent, plain } from './wording.ts';

/** Moves a day in the busiest month from which a household should know before it builds. House rule. */
const MANY_MOVES = 4;
/** What is left with one change made, with two. */
const SO_FAR = ['The first alone', 'The first two'] as const;
/** Hours this share more than now are plainly more. */
const PLAINLY = 0.15;
const COUNTS = ['', 'one thing', 'two things', 'three things'] as const;

/**
 * The paragraph.
 *
 * @param help what changes do; null leaves them out
 */
export function answerOf(context: Context, help: Help | null): string {
  const { house, outcome, words, geometry, design } = context;
  const { movesPerDayInBusiestMonth } = outcome.vents;
  return [
    `${design.name} has ${words.area(geometry.glassM2)} of glass to the sun, ${percent(geometry.shareOfFloor)} of its floor.`,
    `In a ${design.hotter === undefined ? 'typical' : 'hotter'} year its rooms are above ${words.temperature(house.overheatLimitC)} for ${hours(house.overheatedHours)} ` +
      `and below ${words.temperature(house.underheatLimitC)} for ${hours(house.underheatedHours)}.`,
    `They are above ${percent(house.humidLimit)} humidity for ${hours(house.humidHours)}, ` +
      `and the heater adds ${words.energy(outcome.heating.energyKWh)}.`,
    ...(movesPerDayInBusiestMonth > MANY_MOVES && design.vents.habit !== 'automatic'
      ? [
          `In the busiest month somebody opens or shuts a vent or door ${plain(movesPerDayInBusiestMonth, 1)} times a day.`,
        ]
      : []),
    ...(help === null ? [] : helpSentences(context, help)),
  ].join(' ');
}

function helpSentences({ house, words }: Context, { drawn, pulled, steps }: Help): readonly string[] {
  if (house.overheatedHours <= CALM_HOT_HOURS && house.humidHours <= CALM_DAMP_HOURS)
    return ['Neither heat nor damp is worth a change: as drawn, the rooms do what was asked of them.'];
  const tried = `We tried ${pulled.length} changes on the house as drawn, each by itself, and then the best ones together.`;
  if (steps.length === 0) return [tried, 'None of them alone helps much: change several together.'];
  const { figures: last } = steps.at(-1)!;
  return [
    tried,
    steps.length === 1
      ? `One thing helps most: ${steps[0]!.lever.words}.`
      : `Do ${COUNTS[steps.length]}: ${listed(steps.map(({ lever }) => lever.words))}.`,
    `Then the rooms are too hot for ${hours(last.overheatedHours)} and too damp for ${hours(last.humidHours)}, ` +
      `and the heater adds ${words.energy(last.heatingKWh)}.`,
    ...steps.slice(0, -1).map(({ figures }, i) => leaves(SO_FAR[i]!, figures, drawn)),
  ];
}

/** What some of the changes leave; where that is plainly worse than nothing done, it says so. */
function leaves(changes: string, { overheatedHours, humidHours }: Figures, drawn: Figures): string {
  const hot = `${hours(overheatedHours)} too hot${worse(overheatedHours, drawn.overheatedHours)}`;
  const damp = `${hours(humidHours)} too damp${worse(humidHours, drawn.humidHours)}`;
  return `${changes} would leave ${hot} and ${damp}.`;
}

function worse(hoursThen: number, hoursNow: number): string {
  return hoursThen > (1 + PLAINLY) * hoursNow ? ' (more than now)' : '';
}

/** Changes may hold commas and "and" of their own. */
function listed(parts: readonly string[]): string {
  return `${parts.slice(0, -1).join('; ')}; and ${parts.at(-1)!}`;
}
