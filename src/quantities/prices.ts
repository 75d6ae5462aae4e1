// A person's own prices: a currency, the wage of an hour, and what a unit of an item costs. Nothing is built in. Bill and
// prices in; money out, or the names of what has no price yet. A wage pays the hours of the trade: who works for nothing
// gives none, and the money is that of materials alone.

import type { BillLine } from './bill.ts';
import { BOUGHT_BY, type BoughtBy, type Measure } from './figures-in-units.ts';
import type { Item } from './items.ts';

export interface Price {
  readonly amount: number;
  readonly per: BoughtBy;
}

export interface PriceList {
  /** as the person writes it: "EUR", "$", "sacks of maize" */
  readonly currency: string;
  /** of one hour; null for none paid */
  readonly wage: number | null;
  /** by the item's id */
  readonly prices: Readonly<Record<string, Price>>;
}

export const NO_PRICES: PriceList = { currency: '', wage: null, prices: {} };
/** A price and a wage are at most this. */
export const MOST_PRICE = 1e9;
export const MOST_CURRENCY = 20;

export interface Cost {
  /** null while something has no price */
  readonly materials: number | null;
  /** 0 without a wage */
  readonly wages: number;
  /** null while something has no price */
  readonly total: number | null;
  /** what has no price yet */
  readonly missing: readonly Item[];
}

/** Whether anything is priced at all. */
export function hasPrices({ prices, wage }: PriceList): boolean {
  return wage !== null || Object.keys(prices).length > 0;
}

/** What a line costs without work; null without a price. */
export function lineCost(
  {
    item,
    amount,
  }: { readonly item: { readonly id: string; readonly unit: Measure }; readonly amount: number },
  { prices }: PriceList,
): number | null {
  const price = Object.hasOwn(prices, item.id) ? prices[item.id]! : undefined;
  if (price === undefined) return null;
  const { of, size } = BOUGHT_BY[price.per];
  return of === item.unit ? (amount / size) * price.amount : null;
}

/** What lines cost: a bill's, or those that two bills differ by, which may be below zero. */
export function costOf(lines: readonly Pick<BillLine, 'item' | 'amount' | 'hours'>[], list: PriceList): Cost {
  const costs = lines.map((line) => lineCost(line, list));
  const missing = lines.filter((_, i) => costs[i] === null).map(({ item }) => item);
  const materials = missing.length > 0 ? null : costs.reduce<number>((sum, cost) => sum + cost!, 0);
  const wages = (list.wage ?? 0) * lines.reduce((sum, { hours }) => sum + hours, 0);
  return { materials, wages, total: materials === null ? null : materials + wages, missing };
}

/** A list out of data that was kept; what is none of it is left out. */
export function priceListFrom(data: unknown): PriceList {
  const { currency, wage, prices } = objectOf(data);
  const sound = Object.entries(objectOf(prices)).flatMap(([id, price]): [string, Price][] => {
    const { amount, per } = objectOf(price);
    const unit = (Object.keys(BOUGHT_BY) as BoughtBy[]).find((known) => known === per);
    return isPrice(amount) && unit !== undefined ? [[id, { amount, per: unit }]] : [];
  });
  return {
    currency: typeof currency === 'string' ? currency.slice(0, MOST_CURRENCY) : '',
    wage: isPrice(wage) ? wage : null,
    prices: Object.fromEntries(sound),
  };
}

/** Whether it can stand as a price or a wage. */
export function isPrice(value: unknown): value is number {
  return typeof value === 'number' && value >= 0 && value <= MOST_PRICE;
}

function objectOf(data: unknown): Record<string, unknown> {
  return typeof data === 'object' && data !== null ? (data as Record<string, unknown>) : {};
}
