// The answer in one paragraph: how the house does in a typical year, what it asks of the people in it, and what to
// change first. The changes were run (questions/what-helps.ts), so that the paragraph says what they do.

import { hotterName } from '../design/hotter.ts';
import type { Context } from '../findings/context.ts';
import { heaterWords } from '../findings/fuel-words.ts';
import { hotPhrase } from '../findings/hot-words.ts';
import { CLEAN } from '../findings/rules/mould.ts';
import { FEW_STALE_HOURS } from '../findings/rules/too-damp.ts';
import { hours, percent, plain, type Wording } from '../findings/wording.ts';
import { MOULD_INDEX_LIMIT } from '../physics/mould-index.ts';
import type { Figures } from '../questions/figures.ts';
import { leverWords, type Pulled } from '../questions/lever.ts';
import { coldHours } from '../questions/weights.ts';
import { type Help, isCalm, isCold } from '../questions/what-helps.ts';

/** Moves a day in the busiest month from which a household should know before it builds. House rule. */
const MANY_MOVES = 4;
/** What is left with one change made, with two. */
const SO_FAR = ['The first alone', 'The first two'] as const;
/** Hours this share more than now are plainly more; heat this share more or less is worth a word. */
const PLAINLY = 0.15;
const WORTH_A_WORD = 0.1;
/** A hottest hour this much lower is worth a word [K]. */
const LOWER_K = 0.5;
const PLACES = ['first', 'second', 'third'] as const;
const COUNTS = ['', 'one thing', 'two things', 'three things'] as const;

/**
 * The paragraph.
 *
 * @param help what changes do; null leaves them out
 */
export function answerOf(context: Context, help: Help | null): string {
  const { house, outcome, words, geometry, design } = context;
  return [
    `${design.name} has ${words.area(geometry.glassM2)} of glass to the sun, ${percent(geometry.shareOfFloor)} of its floor.`,
    `In a ${design.hotter === undefined ? 'typical' : hotterName(design.hotter)} year its rooms are ${hotPhrase(house.tooHot, words)} for ${hours(house.tooHot.hours)}, of ${house.tooHot.limitHours} allowed, ` +
      `and below ${words.temperature(house.underheatLimitC)} for ${hours(house.underheatedHours)}.`,
    `They are above ${percent(house.humidLimit)} humidity for ${hours(house.humidHours)}, ` +
      `and the ${heaterWords(design)} adds ${words.energy(outcome.heating.energyKWh)}.`,
    ...(asksMuch(context)
      ? [
          `In the busiest month somebody opens or shuts a vent or door ${plain(outcome.vents.movesPerDayInBusiestMonth, 1)} times a day.`,
        ]
      : []),
    ...(help === null ? [] : helpSentences(context, help)),
  ].join(' ');
}

function asksMuch({ outcome, design }: Context): boolean {
  return outcome.vents.movesPerDayInBusiestMonth > MANY_MOVES && design.vents.habit !== 'automatic';
}

function helpSentences(context: Context, help: Help): readonly string[] {
  const { drawn, pulled, steps } = help;
  const { house, words } = context;
  if (
    help.steps.length === 0 &&
    isCalm({
      tooHotHours: house.tooHot.hours,
      tooHotLimitHours: house.tooHot.limitHours,
      humidHours: house.humidHours,
      shortHours: context.outcome.heating.shortHours,
      underheatedHours: house.underheatedHours,
    })
  )
    return [
      'Neither heat nor damp is worth a change: as drawn, the rooms do what was asked of them.',
      ...besideHeatAndDamp(context, help),
    ];
  const tried = `We tried ${pulled.length} changes on the house as drawn, each by itself, and then the best ones together.`;
  if (steps.length === 0) return [tried, 'None of them alone helps much: change several together.'];
  const { figures: last } = steps.at(-1)!;
  return [
    tried,
    steps.length === 1
      ? `One thing helps most: ${leverWords(steps[0]!.lever, words)}.`
      : `Do ${COUNTS[steps.length]}: ${listed(steps.map(({ lever }) => leverWords(lever, words)))}.`,
    `Then the rooms are too hot for ${hours(last.tooHotHours)} and too damp for ${hours(last.humidHours)}, ` +
      `and the ${heaterWords(context.design)} adds ${words.energy(last.heatingKWh)}${heatThen(last, drawn, words)}.`,
    ...(drawn.warmestC - last.warmestC > LOWER_K
      ? [
          `The hottest hour falls from ${words.temperature(drawn.warmestC, 1)} to ${words.temperature(last.warmestC, 1)}.`,
        ]
      : []),
    ...coldThen(last, drawn),
    ...mouldThen(last, drawn),
    ...movesThen(last, drawn),
    ...(last.staleAirHours > FEW_STALE_HOURS
      ? [`The air would be stale for ${hours(last.staleAirHours)}: see the fan under "What we tried".`]
      : []),
    ...milderSaid(help, words),
    ...steps.slice(0, -1).map((step, i) => leaves(SO_FAR[i]!, step, drawn, i === 0)),
  ];
}

/** Where cold is worth a change, what becomes of it. */
function coldThen(last: Figures, drawn: Figures): readonly string[] {
  if (!isCold(last) && !isCold(drawn)) return [];
  return [
    `They are too cold for ${hours(coldHours(last).hours)} instead of ${hours(coldHours(drawn).hours)}.`,
  ];
}

/** What is worth a change in a house that is neither hot nor damp: the moves of the vents, and stale air. */
function besideHeatAndDamp(context: Context, { drawn, pulled }: Help): readonly string[] {
  const { house, outcome, words } = context;
  const stale = house.freshAir.staleAirHours;
  const of = (wanted: string) => pulled.find(({ lever }) => lever.id === wanted);
  const openers = asksMuch(context) ? of('openers') : undefined;
  const fan = stale > FEW_STALE_HOURS ? of('fresh-air-fan') : undefined;
  const said = [
    ...(openers === undefined
      ? []
      : [
          `Openers that work the vents would spare you those ${plain(outcome.vents.movesPerDayInBusiestMonth, 1)} moves a day. ` +
            `With them the rooms are too hot for ${hours(openers.figures.tooHotHours)} and too damp for ${hours(openers.figures.humidHours)}` +
            `${stale > FEW_STALE_HOURS ? `, and the air is stale for ${hours(openers.figures.staleAirHours)} instead of ${hours(stale)}` : ''}.`,
        ]),
    ...(fan === undefined
      ? []
      : [
          `A small fan that runs all day (${fan.lever.size?.(words)}) would leave ${hours(fan.figures.staleAirHours)} of stale air instead of ${hours(stale)}. ` +
            `The ${heaterWords(context.design)} then adds ${words.energy(fan.figures.heatingKWh)}${heatThen(fan.figures, drawn, words)}.`,
        ]),
  ];
  if (said.length === 0) return [];
  return [said.length === 1 ? 'One other thing is worth one.' : 'Two other things are worth one.', ...said];
}

/** The milder form of a step, with the others as they are. */
function milderSaid({ milder, steps }: Help, words: Wording): readonly string[] {
  if (milder === undefined) return [];
  const { lever, figures } = milder;
  const place = PLACES[steps.findIndex((step) => step.lever.id === lever.milderThan)];
  return [
    `If, in place of the ${place}, you ${leverWords(lever, words)}, then ${hours(figures.tooHotHours)} are too hot and ${hours(figures.humidHours)} too damp, with a mould index of ${plain(figures.worstMouldIndex, 1)}.`,
  ];
}

/** How heat compares, where it moves by more than a tenth. */
function heatThen({ heatingKWh }: Figures, drawn: Figures, words: Wording): string {
  const now = drawn.heatingKWh;
  if (Math.abs(heatingKWh - now) <= WORTH_A_WORD * now) return '';
  return ` instead of ${words.energy(now)}`;
}

/** What becomes of mould. */
function mouldThen({ worstMouldIndex: then }: Figures, { worstMouldIndex: now }: Figures): readonly string[] {
  const fromTo = () => `from ${plain(now, 1)} to ${plain(then, 1)}`;
  if (then >= MOULD_INDEX_LIMIT)
    return [`Mould would still show: its index goes ${fromTo()}, and it shows from ${MOULD_INDEX_LIMIT} up.`];
  if (then >= CLEAN) return [`The mould index goes ${fromTo()}; mould shows from ${MOULD_INDEX_LIMIT} up.`];
  if (now >= CLEAN) return [`The mould index falls ${fromTo()}, so mould does not even start.`];
  return ['Mould does not start, then as now.'];
}

/** Moves of vents and doors, where the changes ask for plainly more of them. */
function movesThen({ ventMovesPerDay: then }: Figures, { ventMovesPerDay: now }: Figures): readonly string[] {
  if (!(then > MANY_MOVES && then > (1 + PLAINLY) * now)) return [];
  return [
    `But somebody has to open or shut a vent or door ${plain(then, 1)} times a day in the busiest month (now ${plain(now, 1)}), or openers do.`,
  ];
}

/** What some of the changes leave; where that is plainly worse than nothing done, it says so. */
function leaves(changes: string, { lever, figures }: Pulled, drawn: Figures, isFirst: boolean): string {
  const { tooHotHours, humidHours } = figures;
  // Known for certain of plants alone: water that turns to vapour takes heat with it.
  const why = isFirst && lever.id === 'no-plants' ? ': plants cool by the water they give off' : '';
  const hot = `${hours(tooHotHours)} too hot${worse(tooHotHours, drawn.tooHotHours, why)}`;
  const damp = `${hours(humidHours)} too damp${worse(humidHours, drawn.humidHours)}`;
  return `${changes} would leave ${hot} and ${damp}.`;
}

function worse(hoursThen: number, hoursNow: number, why = ''): string {
  return hoursThen > (1 + PLAINLY) * hoursNow ? ` (more than now${why})` : '';
}

/** Changes may hold commas and "and" of their own. */
function listed(parts: readonly string[]): string {
  return `${parts.slice(0, -1).join('; ')}; and ${parts.at(-1)!}`;
}
