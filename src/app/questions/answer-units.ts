// Columns, axes and figures of an answer in the units on screen. An answer keeps SI, since other programs read it;
// what shows it asks here for sign, factor and decimals by the unit it is in.

import { CORD_M3 } from '../../physics/wood-fuel.ts';
import type { Column } from '../../questions/question.ts';
import { type ShownQuantity, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { numberText } from '../parts/number-text.ts';

export interface ShownUnit {
  readonly sign: string;
  /** shown = value · factor + offset */
  readonly factor: number;
  readonly offset: number;
  /** decimals shown; null where the answer's own are right */
  readonly digits: number | null;
}

/** Units of answers that differ between systems: the quantity, and one of the unit in SI. Metres are thicknesses. */
const QUANTITIES: Readonly<Record<string, readonly [ShownQuantity, number]>> = {
  'm²': ['area', 1],
  'm³': ['volume', 1],
  m: ['thickness', 1],
  t: ['mass', 1000],
  '°C': ['temperature', 1],
  K: ['temperatureStep', 1],
  kW: ['powerKW', 1],
  // A heating load; where heat is in kilowatt hours it stays in watts.
  W: ['powerKW', 0.001],
};

/** Firewood in US units, by weight and stacked. */
const FIREWOOD: Readonly<Record<string, ShownUnit>> = {
  'kg/year': { sign: 'lb/year', factor: 1 / 0.45359237, offset: 0, digits: null },
  'm³/year': { sign: 'cords/year', factor: 1 / CORD_M3, offset: 0, digits: null },
};

/** How a value in a unit of an answer is shown. */
export function unitShown(unit: string, system: UnitSystem): ShownUnit {
  // Heat is told in kilowatt hours as it is answered, unless it is billed otherwise.
  if (system === 'us-therms' && (unit === 'kWh' || unit === 'kWh/year')) {
    const shown = unitOf('energy', system);
    return { ...shown, sign: unit.replace('kWh', shown.sign) };
  }
  const found = QUANTITIES[unit];
  const isSame = system === 'metric' || (unit === 'W' && system === 'us');
  if (!isSame && FIREWOOD[unit]) return FIREWOOD[unit];
  if (isSame || found === undefined) {
    return { sign: unit, factor: 1, offset: 0, digits: null };
  }
  const [quantity, si] = found;
  const shown = unitOf(quantity, system);
  return { ...shown, factor: shown.factor * si };
}

/** A number of an answer in the units on screen. */
export function valueShown(value: number, unit: string, system: UnitSystem): number {
  const { factor, offset } = unitShown(unit, system);
  return value * factor + offset;
}

/** A cell of a table as text. */
export function cellText(value: number, { unit, digits }: Column, system: UnitSystem): string {
  return numberText(valueShown(value, unit, system), unitShown(unit, system).digits ?? digits);
}
