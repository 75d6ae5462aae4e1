// The climates that come with the page: what each is. Their hours are in climate-texts.ts.

import catalogue from '../../../climates/index.json';
import { type ShownQuantity, toShown, type UnitSystem } from '../parts/display-unit.ts';
import { numberText } from '../parts/number-text.ts';

export interface BundledClimate {
  readonly id: string;
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly character: string;
  readonly credit: string;
}

export const BUNDLED_CLIMATES: readonly BundledClimate[] = catalogue;

/** A bundled climate's row, or undefined. */
export function bundledClimate(id: string): BundledClimate | undefined {
  return BUNDLED_CLIMATES.find((climate) => climate.id === id);
}

const BARE_NUMBER = '([−-]?\\d[\\d.]*)';

/** What a text of the list says in metric units, its numbers and their units as the other system has them. */
const TURNED: readonly (readonly [RegExp, ShownQuantity, string, round: number])[] = [
  [new RegExp(`${BARE_NUMBER} degree-days`, 'g'), 'degreeDays', '°F-days', 50],
  [new RegExp(`${BARE_NUMBER} m\\b`, 'g'), 'elevation', 'ft', 100],
  [new RegExp(`${BARE_NUMBER} °C`, 'g'), 'temperature', '°F', 1],
];

/** The character of a climate in the units shown. */
export function characterIn(system: UnitSystem, { character }: BundledClimate): string {
  if (system === 'metric') return character;
  return TURNED.reduce(
    (text, [pattern, quantity, sign, round]) =>
      text.replace(pattern, (_, number: string) => {
        const shown = toShown(Number(number.replace('−', '-')), quantity, system);
        return `${numberText(Math.round(shown / round) * round, 0)} ${sign}`;
      }),
    character,
  );
}
