// The answer in one paragraph: how the house does in a typical year, what it asks of the people in it, and what to
// change first. The changes were run (questions/what-helps.ts), so that the paragraph says what they do.

import { CALM_DAMP_HOURS, CALM_HOT_HOURS, type Help } from '../questions/what-helps.ts';
import type { Context } from './context.ts';
import { hours, percent, plain } from './wording.ts';

/** Moves a day in the busiest month from which a household should know before it builds. House rule. */
const MANY_MOVES = 4;
const ORDER = ['What helps most', 'Next', 'After that'] as const;

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

function helpSentences({ house, words }: Context, { pulled, steps }: Help): readonly string[] {
  if (house.overheatedHours <= CALM_HOT_HOURS && house.humidHours <= CALM_DAMP_HOURS)
    return ['Neither heat nor damp is worth a change: as drawn, the rooms do what was asked of them.'];
  const tried = `We changed one thing at a time, ${pulled.length} things in all, and ran the year again.`;
  if (steps.length === 0) return [tried, 'None of them alone helps much: change several together.'];
  const told = steps.map(
    ({ lever, figures }, i) =>
      `${ORDER[i]}: ${lever.words}. That leaves ${hours(figures.overheatedHours)} too hot and ${hours(figures.humidHours)} too damp.`,
  );
  const last = steps.at(-1)!.figures;
  return [
    tried,
    ...told,
    `With ${steps.length === 1 ? 'it' : 'all of it'} the heater adds ${words.energy(last.heatingKWh)}.`,
  ];
}
