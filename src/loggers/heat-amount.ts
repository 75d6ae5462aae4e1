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
const UNITS = [
  [/^kwh$/i, 'kWh', 1],
  [/^wh$/i, 'kWh', 0.001],
  [/^kw$/i, 'kW', 1],
  [/^(w|watts?)$/i, 'kW', 0.001],
  [/^(kg|kilos?)$/i, 'kg', 1],
  [/^(lbs?|pounds?)$/i, 'kg', 0.45359237],
  [/^(logs?|pieces?|scheite?|st(ü|ue)ck)$/i, 'kg', LOG_KG],
] as const;
const COUNTED = /^(log|piece|scheit|st)/i;
const UNIT = String.raw`(kWh|Wh|kW|watts?|W|kg|kilos?|lbs?|pounds?|logs?|pieces?|Scheite?|St(?:ü|ue)ck)\b`;
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

function amountOf(number: string, word: string): HeatAmount | null {
  const value = numberOf(number.trim().replace(',', '.'));
  const unit = UNITS.find(([pattern]) => pattern.test(word));
  if (unit === undefined || !(value >= 0)) return null;
  return { unit: unit[1], value: value * unit[2], isCounted: COUNTED.test(word) };
}
