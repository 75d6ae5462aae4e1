// What to notice in a climate, as two sentences: one of warmth, one of sun.

import { MONTH_NAMES } from '../../outcomes/calendar.ts';
import type { ClimateSummary, Spell } from '../../weather/prepared/climate-summary.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';

export interface GlanceWords {
  readonly warmth: string;
  readonly sun: string;
}

/** The two sentences. */
export function glanceWords(
  { months, year, cloudiestMonth }: ClimateSummary,
  system: UnitSystem,
): GlanceWords {
  const at = (pick: (spell: Spell) => number, wanted: (...values: number[]) => number) => {
    const values = months.map(pick);
    return values.indexOf(wanted(...values));
  };
  const degrees = (celsius: number) => quantityText(celsius, 'temperature', system);
  const sun = (kWh: number) => quantityText(kWh, 'energyPerArea', system);
  const [cold, warm] = [at(({ meanC }) => meanC, Math.min), at(({ meanC }) => meanC, Math.max)];
  const [coldest, warmest] = [months[cold]!, months[warm]!];
  const degreeDays = quantityText(year.heatingDegreeDays, 'degreeDays', system);
  return {
    warmth: `${MONTH_NAMES[cold]} is the coldest month, ${degrees(coldest.meanC)} on the mean, and ${MONTH_NAMES[warm]} the warmest, ${degrees(warmest.meanC)}; the year runs from ${degrees(year.lowestC)} to ${degrees(year.highestC)} and has ${degreeDays} of heating.`,
    sun: `In ${MONTH_NAMES[cold]} an upright window to the equator gets ${sun(coldest.upright90KWh)}, glass leaning at 60° ${sun(coldest.leaning60KWh)} and level ground ${sun(coldest.globalKWh)}; ${MONTH_NAMES[cloudiestMonth]} is the cloudiest month.`,
  };
}
