// What to notice in the month's balances. In: monthly rows. Out: one or two sentences with the figures in them.

import type { MonthlyRow, WaterTogether } from '../../outcomes/balances.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';

/** Largest gains and losses of the year. */
export function heatSentence(rows: readonly MonthlyRow[], system: UnitSystem): string {
  const gains = rows.filter(({ year }) => year > 0).sort((a, b) => b.year - a.year);
  const losses = rows.filter(({ year }) => year < 0).sort((a, b) => a.year - b.year);
  const total = gains.reduce((sum, { year }) => sum + year, 0);
  if (total === 0 || !gains[0] || !losses[0]) return 'Hardly any heat moves in this zone.';
  const share = (row: MonthlyRow) => `${Math.round((Math.abs(row.year) / total) * 100)}\u202f%`;
  const heat = (row: MonthlyRow) => quantityText(Math.abs(row.year), 'energy', system);
  const second = losses[1] ? `, then ${losses[1].cause} (${share(losses[1])})` : '';
  return `Most of the heat comes as ${gains[0].cause}: ${heat(gains[0])}, ${share(gains[0])} of all that comes in. Most of it leaves by ${losses[0].cause} (${share(losses[0])})${second}.`;
}

/** Largest source of water vapour, what ran off the glass, and rooms and sunspace as one. */
export function moistureSentence(
  rows: readonly MonthlyRow[],
  drainedKg: number,
  system: UnitSystem,
  together: WaterTogether | null = null,
): string {
  const sorted = [...rows].sort((a, b) => b.year - a.year);
  const total = sorted.reduce((sum, { year }) => sum + year, 0);
  const first = sorted[0];
  if (!first || total < 1) return 'Next to no water vapour is released here.';
  const perDay = quantityText(total / 365, 'waterPerDay', system);
  const share = Math.round((first.year / total) * 100);
  const ran =
    drainedKg >= 0.5
      ? ` ${quantityText(drainedKg, 'waterMass', system, 0)} ran off the glass in the year.`
      : '';
  const both = together === null ? '' : togetherSentence(together, system);
  return `${perDay} of water go into the air on average; ${share}\u202f% of it from ${first.cause}.${ran}${both}`;
}

/** Less than this moves between rooms and sunspace without a word [kg/day]. */
const LEAST_BROUGHT = 0.05;

function togetherSentence({ releasedKg, sunspaceKg, broughtKg }: WaterTogether, system: UnitSystem): string {
  const perDay = (kg: number) => quantityText(kg / 365, 'waterPerDay', system);
  const all = ` Rooms and sunspace together give off ${perDay(releasedKg)}, ${perDay(sunspaceKg)} of it in the sunspace.`;
  if (Math.abs(broughtKg) / 365 < LEAST_BROUGHT) return `${all} Hardly any passes between them with the air.`;
  return broughtKg > 0
    ? `${all} The sunspace’s air brings ${perDay(broughtKg)} into the rooms.`
    : `${all} Air takes ${perDay(-broughtKg)} from the rooms into the sunspace.`;
}
