// Work and money as they are said beside a change: days to the half, money to what prices can vouch for.

import { short } from './figures-in-units.ts';
import type { Cost, PriceList } from './prices.ts';

/** Days from which a half more is not worth telling. */
const WHOLE_FROM = 10;
/** Of things without a price so many are named. */
const MOST_NAMED = 2;

/** "4 days of work", "half a day of work", "saves 2 days of work", "no work". */
export function daysInWords(days: number): string {
  const size = Math.abs(days);
  const told = size < WHOLE_FROM ? Math.round(2 * size) / 2 : Math.round(size);
  if (told === 0 && size < 0.05) return 'no work';
  const count =
    told === 0
      ? 'an hour or two'
      : told === 0.5
        ? 'half a day'
        : told === 1
          ? '1 day'
          : `${short(told, 1)} days`;
  return `${days < 0 ? 'saves ' : ''}${count} of work`;
}

/** "1 day", "12 days", of a count of whole days. */
export function dayCountInWords(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

/** A range of days: "2 to 6 days", "17 days", "a day at most". */
export function dayRangeInWords([low, high]: readonly [number, number]): string {
  const [least, most] = [Math.round(low), Math.round(high)];
  if (least === 0) return most <= 1 ? 'a day at most' : `${most} days at most`;
  if (least === most) return dayCountInWords(most);
  return `${least} to ${most} days`;
}

/** Money with its currency, to three digits: "EUR 1,230". */
export function moneyInWords(money: number, currency: string): string {
  const size = Math.abs(money);
  const step = size < 1000 ? 1 : 10 ** (Math.floor(Math.log10(size)) - 2);
  const text = String(Math.round(size / step) * step).replace(/\B(?=(\d{3})+$)/g, ',');
  return `${money < 0 && text !== '0' ? '−' : ''}${currency === '' ? '' : `${currency} `}${text}`;
}

/** "EUR 1,230", "saves EUR 90", or what has no price yet. */
export function costInWords({ total, missing }: Cost, { currency }: PriceList): string {
  if (total !== null)
    return total < 0 ? `saves ${moneyInWords(-total, currency)}` : moneyInWords(total, currency);
  const names = missing.slice(0, MOST_NAMED).map(({ name }) => name.toLowerCase());
  const more = missing.length - names.length;
  return `no price yet for ${more > 0 ? `${names.join(', ')} and ${more} more` : names.join(' and ')}`;
}

/** Said wherever days are. */
export const DAYS_SAY =
  'Days of work are those of one person who does it for the first time, by labour norms that are partly common practice: they tell a day from a month.';
/** Said wherever money could stand and none does. */
export const NO_MONEY_SAYS = 'What it costs in money goes by your own prices, of which none are given.';
/** Said where money stands. */
export const MONEY_SAYS =
  'Money is by your own prices: materials, and a wage for the hours of the trade where you gave one.';
