// How much heat a line of a diary or a table tells of: a number with a unit, in the cell or in the column's name. Wood in kg or
// in logs, heat in kWh, power in kW or W.

import { numberOf } from '../weather/text/text-lines.ts';

/** Wood put on [kg], heat given [kWh], or power [kW]. */
export interface HeatAmount {
  readonly unit: 'kg' | 'kWh' | 'kW';
  /** 0 or more */
  readonly value: number;
  /** logs were counted and none was weighed */
  readonly isCounted: boolean;
}

/** A split log of 33 cm and some 10 cm across, dry; common practice, no source [kg]. */
export const LOG_KG = 1.3;
/** Units as people write them, each with what one of it is. */
const UNITS: readonly { readonly word: string; readonly unit: HeatAmount['unit']; readonly of: number }[] = [
  { word: 'kWh', unit: 'kWh', of: 1 },
  { word: 'Wh', unit: 'kWh', of: 0.001 },
  { word: 'kW', unit: 'kW', of: 1 },
  { word: 'W|watts?', unit: 'kW', of: 0.001 },
  { word: 'kg|kilos?', unit: 'kg', of: 1 },
  { word: 'lbs?|pounds?', unit: 'kg', of: 0.45359237 },
  { word: 'logs?|pieces?|Scheite?|St(?:ü|ue)ck', unit: 'kg', of: LOG_KG },
];
const UNIT = `(${UNITS.map(({ word }) => word).join('|')})\\b`;
const NUMBER_AND_UNIT = new RegExp(String.raw`(-?\d+(?:[.,]\d+)?)\s*${UNIT}`, 'i');
const UNIT_ALONE = new RegExp(String.raw`(?:^|[\s[(/_])${UNIT}`, 'i');

/** Of words as "stove, 8 kg"; null where they tell of none. */
export function amountIn(text: string): HeatAmount | null {
  const found = NUMBER_AND_UNIT.exec(text);
  return found === null ? null : amountOf(found[1]!, found[2]!);
}

/** Of a cell as "8", in the unit that its column's name has; a unit in the cell goes before it. */
export function amountUnder(header: string, cell: string): HeatAmount | null {
  const unit = unitOf(header);
  return amountIn(cell) ?? (unit === null ? null : amountOf(cell, unit));
}

/** The unit of heat or wood in a column's name; null for none. */
export function unitOf(header: string): string | null {
  return UNIT_ALONE.exec(header)?.[1] ?? null;
}

function amountOf(number: string, written: string): HeatAmount | null {
  const value = numberOf(number.replace(',', '.'));
  const known = UNITS.find(({ word }) => new RegExp(`^(${word})$`, 'i').test(written));
  if (known === undefined || !(value >= 0)) return null;
  return { unit: known.unit, value: value * known.of, isCounted: known.of === LOG_KG };
}
