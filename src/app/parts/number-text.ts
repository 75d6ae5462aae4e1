// Numbers as text: fixed decimals, a real minus sign, thousands apart, the unit behind. What a person types comes
// back as a number, or as nothing when it is none.

import { isUs, type ShownQuantity, toShown, type UnitSystem, unitOf } from './display-unit.ts';

const MINUS = '\u2212';
const NARROW = '\u202f';

/**
 * A number with fixed decimals; −0 is 0. Written by hand because the platform's number formatting takes several
 * microseconds, and a drag writes some two hundred numbers a frame.
 */
export function numberText(value: number, digits: number): string {
  const [whole = '', decimals] = Math.abs(value).toFixed(digits).split('.');
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  const text = decimals === undefined ? grouped : `${grouped}.${decimals}`;
  return value < 0 && /[1-9]/.test(text) ? MINUS + text : text;
}

/** A value in SI as number and unit, e.g. "26.4 °C". */
export function quantityText(
  si: number,
  quantity: ShownQuantity,
  system: UnitSystem,
  digits?: number,
): string {
  if (quantity === 'length' && isUs(system) && digits === undefined) return feetText(si);
  const { sign } = unitOf(quantity, system);
  const number = numberText(toShown(si, quantity, system), digits ?? unitOf(quantity, system).digits);
  if (sign === '') return number;
  if (sign === '°') return number + sign;
  if (sign === 'R') return `R-${number}`;
  return `${number}${NARROW}${sign}`;
}

const METRES_PER_INCH = 0.0254;

/** A length as builders read it off a tape, to the inch: "8 ft 6 in". */
function feetText(metres: number): string {
  const inches = Math.round(Math.abs(metres) / METRES_PER_INCH);
  const [feet, left] = [Math.floor(inches / 12), inches % 12];
  const sign = metres < 0 && inches > 0 ? MINUS : '';
  const parts = [
    ...(feet > 0 || left === 0 ? [`${numberText(feet, 0)}${NARROW}ft`] : []),
    ...(left > 0 ? [`${left}${NARROW}in`] : []),
  ];
  return sign + parts.join(NARROW);
}

/** A change as "+12 h" or "−3.1 K". */
export function changeText(si: number, quantity: ShownQuantity, system: UnitSystem, digits?: number): string {
  const step = quantity === 'temperature' ? 'temperatureStep' : quantity;
  const text = quantityText(si, step, system, digits ?? unitOf(quantity, system).digits);
  return si > 0 ? `+${text}` : text;
}

/** A typed length in feet, or in feet and inches: 7' 10", 7 ft 10 in, 94 in; null when it is none. */
export function typedFeet(text: string): number | null {
  const match =
    /^\s*(?:([\d.,]+)\s*(?:'|’|′|ft\.?|feet|foot))?\s*(?:([\d.,]+)\s*(?:"|”|″|''|in\.?|inch|inches))?\s*$/i.exec(
      text,
    );
  if (!match || (match[1] === undefined && match[2] === undefined)) return null;
  const feet = match[1] === undefined ? 0 : typedNumber(match[1]);
  const inches = match[2] === undefined ? 0 : typedNumber(match[2]);
  return feet === null || inches === null ? null : feet + inches / 12;
}

/** A typed number: comma or point for decimals, any dash for minus; null when it is no number. */
export function typedNumber(text: string): number | null {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s/g, '')
    .replace(/^(-?\d+),(\d{1,2})$/, '$1.$2')
    .replace(/(\d),(?=\d{3}\b)/g, '$1');
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  return Number(plain);
}
