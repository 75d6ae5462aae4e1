// The answer in one paragraph: how the house does in a typical year, what is well, and what to change first. The
// changes were run (questions/what-helps.ts), so that the paragraph says what they do.

import { MOULD_INDEX_LIMIT } from '../physics/mould-index.ts';
import type { BestLever } from '../questions/levers.ts';
import type { Help } from '../questions/what-helps.ts';
import type { Context } from './context.ts';
import { calmHours } from './rules/season.ts';
import { hours, percent } from './wording.ts';

/** Share of the year the air may be damp before it is worth a word: the verdict "dry enough". House rule. */
const CALM_DAMP_HOURS = 0.02 * 8760;

/**
 * The paragraph.
 *
 * @param help what single changes do; null leaves them out
 */
export function answerOf(context: Context, help: Help | null): string {
  const { house, outcome, words, geometry, design } = context;
  const opening = `${design.name} has ${words.area(geometry.glassM2)} of equator-facing glass, ${percent(geometry.shareOfFloor)} of its floor. `;
  const year =
    `In a ${design.hotter === undefined ? 'typical' : 'hotter'} year its rooms are above ${words.temperature(house.overheatLimitC)} for ${hours(house.overheatedHours)} ` +
    `and below ${words.temperature(house.underheatLimitC)} for ${hours(house.underheatedHours)}. ` +
    `They are above ${percent(house.humidLimit)} humidity for ${hours(house.humidHours)}, ` +
    `and the heater adds ${words.energy(outcome.heating.energyKWh)}.`;
  return [opening + year, ...(help === null ? [] : helpSentences(context, help))].join(' ');
}

function helpSentences(context: Context, { pulled, hot, damp, both }: Help): readonly string[] {
  const { house, words } = context;
  const isHot = house.overheatedHours > calmHours();
  const isDamp = house.humidHours > CALM_DAMP_HOURS || house.mouldIndexMax >= MOULD_INDEX_LIMIT;
  if (!isHot && !isDamp) return ['As drawn, this house does what was asked of it.'];
  const tried = `We tried ${pulled.length} single changes.`;
  const against = (what: string, best: BestLever | null, kind: string) =>
    best === null
      ? `None of them alone does much against the ${what}.`
      : `Against the ${what}, most is won if you ${best.lever.words}: ${left(best.to, kind)}.`;
  const sentences = [tried];
  if (isHot) sentences.push(against('heat', hot, 'too hot'));
  if (isDamp) sentences.push(against('damp', damp, 'too damp'));
  if (isHot && isDamp && both !== null) {
    const { overheatedHours, humidHours, heatingKWh } = both.figures;
    sentences.push(
      `Do both, and ${hours(overheatedHours)} are too hot and ${hours(humidHours)} too damp; the heater then adds ${words.energy(heatingKWh)}.`,
    );
  } else {
    const only = isHot ? hot : damp;
    if (only !== null) sentences.push(`The heater then adds ${words.energy(only.figures.heatingKWh)}.`);
  }
  return sentences;
}

function left(count: number, kind: string): string {
  return Math.round(count) === 1 ? `1 hour is then ${kind}` : `${hours(count)} are then ${kind}`;
}
