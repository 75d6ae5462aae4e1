// Numbers as text: fixed decimals, a real minus sign, thousands apart, the unit behind. What a person types comes
// back as a number, or as nothing when it is none.

import { feetAndInches } from '../../findings/feet-and-inches.ts';
import { isOnTape, type ShownQuantity, toShown, toSi, type UnitSystem, unitOf } from './display-unit.ts';

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

/** A value in SI as number and unit, e.g. "26.4 °C"; in feet to the inch, or to a quarter of it where decimals are asked for. */
export function quantityText(
  si: number,
  quantity: ShownQuantity,
  system: UnitSystem,
  digits?: number,
): string {
  if (isOnTape(quantity, system)) return feetAndInches(si, digits === undefined ? 'inch' : 'quarter', NARROW);
  const { sign } = unitOf(quantity, system);
  const number = numberText(toShown(si, quantity, system), digits ?? unitOf(quantity, system).digits);
  if (sign === '') return number;
  if (sign === '°') return number + sign;
  if (sign === 'R') return `R-${number}`;
  return `${number}${NARROW}${sign}`;
}

/** A change as "+12 h" or "−3.1 K". */
export function changeText(si: number, quantity: ShownQuantity, system: UnitSystem, digits?: number): string {
  const step = quantity === 'temperature' ? 'temperatureStep' : quantity;
  const text = quantityText(si, step, system, digits ?? unitOf(quantity, system).digits);
  return si > 0 ? `+${text}` : text;
}

/** A value in SI as it stands in its field: the number alone, or feet and inches, which are their own units. */
export function fieldText(si: number, quantity: ShownQuantity, system: UnitSystem, digits: number): string {
  if (isOnTape(quantity, system)) return feetAndInches(si, 'quarter');
  return numberText(toShown(si, quantity, system), digits).replaceAll(',', '');
}

/** What is typed into a field, in SI; null when it is no number. */
export function typedQuantity(text: string, quantity: ShownQuantity, system: UnitSystem): number | null {
  const typed = (isOnTape(quantity, system) ? typedFeet(text) : null) ?? typedNumber(text);
  return typed === null ? null : toSi(typed, quantity, system);
}

const QUARTERS: Readonly<Record<string, string>> = { '¼': ' 1/4', '½': ' 1/2', '¾': ' 3/4' };

/** A typed length in feet and inches: 7' 10½", 7 ft 10 1/2 in, 7 10, 94 in; null when it is none. */
export function typedFeet(text: string): number | null {
  const plain = text
    .toLowerCase()
    .replace(/''|["”″]|inch(es)?|in\.?/g, '"')
    .replace(/['’′]|feet|foot|ft\.?/g, "'")
    .replace(/[¼½¾]/g, (part) => QUARTERS[part]!)
    .replace(/\s+/g, ' ')
    .trim();
  const [, feet, rest] =
    /^([\d.,]+) ?'(?: ?- ?| ?)(.*)$/.exec(plain) ??
    /^(\d+) (\d|1[01])$/.exec(plain) ??
    /^()(.+")$/.exec(plain) ??
    [];
  if (feet === undefined || rest === undefined) return null;
  const [wholeFeet, inches] = [feet === '' ? 0 : typedNumber(feet), typedInches(rest.replace(/ ?"$/, ''))];
  return wholeFeet === null || inches === null ? null : wholeFeet + inches / 12;
}

/** "10", "10.5", "10 1/2", "1/2" or nothing. */
function typedInches(text: string): number | null {
  if (text === '') return 0;
  const [, whole, part, of] = /^([\d.,]+)?(?:(?:^| )(\d+)\/(\d+))?$/.exec(text) ?? [];
  if (whole === undefined && part === undefined) return null;
  const inches = whole === undefined ? 0 : typedNumber(whole);
  return inches === null ? null : inches + (part === undefined ? 0 : Number(part) / Number(of));
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
