// A year no house can have: rooms hotter than closed glass ever gets, or colder than any air on earth. The sums are
// right and the design is not, such as ten kilowatts of appliances behind thick insulation in a cupboard. In: a year.
// Out: nothing, or an error whose message is for the person.

import type { Year } from '../network/year.ts';

/**
 * Bounds of what is still told as a result [°C]. A closed glass room with no air change stands below 150 °C (flat
 * collectors of one or two panes do; common practice, no source); no air on earth was measured below −90 °C.
 */
const HOTTEST_C = 150;
const COLDEST_C = -90;

/** Thrown instead of an outcome; the input is at fault, not the program. */
export class ImpossibleYear extends Error {
  override readonly name = 'ImpossibleYear';
}

/** Refuse a year whose rooms leave what can be; the message names room, temperature and what to look at. */
export function requirePossible(year: Year): void {
  for (const { id, airC } of [...year.zones, ...(year.rooms ?? [])]) {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const value of airC) {
      if (Number.isNaN(value))
        throw new ImpossibleYear(`the air of the ${id} is no number; allowed: a number`);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    if (most > HOTTEST_C) throw refusal(id, most, 'more heat goes in than its walls and air let out');
    if (least < COLDEST_C) throw refusal(id, least, 'more heat goes out than can');
  }
}

function refusal(zone: string, tempC: number, why: string): ImpossibleYear {
  return new ImpossibleYear(
    `the air of the ${zone} would reach ${Math.round(tempC)} °C; allowed: ${COLDEST_C} to ${HOTTEST_C} °C. This design cannot stand: ${why}. Look at the floor area, people and appliances, insulation and vents`,
  );
}
