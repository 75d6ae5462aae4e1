// A house in several actual years of its place: in how many of them it stays within what is too hot, and how far heat goes.
// Figures by year in, a sentence out.

import type { Figures } from './figures.ts';
import type { Words } from './words.ts';

export interface InYear {
  /** the calendar year, or the file's name where its months are of several */
  readonly year: string;
  readonly figures: Pick<Figures, 'tooHotHours' | 'tooHotLimitHours' | 'heatingKWh' | 'humidHours'>;
}

/** In how many of them the rooms stay within the hours too hot that are allowed. */
export function yearsWithin(years: readonly InYear[]): number {
  return years.filter(({ figures }) => figures.tooHotHours <= figures.tooHotLimitHours).length;
}

/** What to say of them; of one year at least. */
export function actualYearsInWords(years: readonly InYear[], { energy }: Pick<Words, 'energy'>): string {
  const heats = years.map(({ figures }) => figures.heatingKWh);
  const [least, most] = [energy(Math.min(...heats)), energy(Math.max(...heats))];
  const heat = least === most ? least : `${least.replace(/ [A-Za-z]+$/, '')} to ${most}`;
  return `In ${yearsWithin(years)} of ${years.length} years the rooms stay within the hours too hot that are allowed. Back-up heat is ${heat}.`;
}
