// The answer in one paragraph: how the house does in a typical year, what is well, and what to change first.

import type { Finding } from '../outcomes/outcome.ts';
import type { Context } from './context.ts';
import { hours, percent } from './wording.ts';

/** What each grave finding asks to change, in a few words; the first two that apply are said. */
export const CHANGES: readonly (readonly [id: string, change: string])[] = [
  ['sunspace-open', 'shut the sunspace off from the rooms by a wall and a door'],
  ['glass-leans', 'stand the glass upright under an overhang'],
  ['glass-share', 'take less of the equator-facing glass'],
  ['mass-too-little', 'put more mass where the sun falls'],
  ['vents-small', 'make the vents larger'],
  ['vents-neglected', 'let openers work the vents'],
  ['vents-ask-much', 'let openers work the vents'],
  ['damp-from-plants', 'keep the plants out of the air of the rooms'],
  ['too-damp', 'bring less water into the air'],
  ['too-hot', 'shade the glass from outside'],
  ['too-cold', 'insulate better and cover the glass at night'],
  ['mould-in-rooms', 'dry the air and warm the corners'],
  ['stale-air', 'give the rooms steady fresh air'],
];

/** The paragraph. */
export function answerOf(context: Context, findings: readonly Finding[]): string {
  const { house, outcome, words, geometry, design } = context;
  const grave = new Set(
    findings.filter(({ severity }) => severity === 'danger' || severity === 'warning').map(({ id }) => id),
  );
  const changes = [...new Set(CHANGES.filter(([id]) => grave.has(id)).map(([, change]) => change))].slice(
    0,
    2,
  );
  const opening = `${design.name} has ${words.area(geometry.glassM2)} of equator-facing glass, ${percent(geometry.shareOfFloor)} of its floor. `;
  const year =
    `In a typical year its rooms are above ${words.temperature(house.overheatLimitC)} for ${hours(house.overheatedHours)} ` +
    `and below ${words.temperature(house.underheatLimitC)} for ${hours(house.underheatedHours)}. ` +
    `They are above ${percent(house.humidLimit)} humidity for ${hours(house.humidHours)}, ` +
    `and the heater adds ${words.energy(outcome.heating.energyKWh)}. `;
  const closing =
    changes.length === 0
      ? 'As drawn, this house does what was asked of it.'
      : `What would help most: ${changes.map((change, i) => (i === 0 ? `first ${change}` : `then ${change}`)).join(', ')}.`;
  return opening + year + closing;
}
