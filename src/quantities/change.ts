// What a change asks for: the bill of the changed design less the bill of the drawn one. Less of a thing saves its work and
// money while a house is on paper; in a house that stands nothing is got back, and only what is added counts.

import type { Design } from '../design/design.ts';
import { type BillLine, billOf } from './bill.ts';
import { HOURS_PER_DAY } from './norms.ts';
import { type Cost, costOf, hasPrices, type PriceList } from './prices.ts';

/** A line that two bills differ by; amounts and hours may be below zero. */
export type ChangedLine = Pick<BillLine, 'item' | 'amount' | 'hours' | 'firstTimerHours'>;

export interface Change {
  readonly lines: readonly ChangedLine[];
  /** of one person who does it for the first time [days of 8 h] */
  readonly days: number;
}

/** Amounts nearer than this are alike. */
const LEAST_AMOUNT = 1e-6;

/** What has to be built to turn one design into another, or is spared by it. */
export function changeBetween(before: Design, after: Design): Change {
  const stands = before.asFound !== undefined;
  const from = new Map(billOf(before).lines.map((line) => [line.item.id, line]));
  const to = new Map(billOf(after).lines.map((line) => [line.item.id, line]));
  const lines = [...new Set([...from.keys(), ...to.keys()])]
    .map((id): ChangedLine => {
      const [one, other] = [from.get(id), to.get(id)];
      const less = (key: 'amount' | 'hours' | 'firstTimerHours') => (other?.[key] ?? 0) - (one?.[key] ?? 0);
      return {
        item: (other ?? one!).item,
        amount: less('amount'),
        hours: less('hours'),
        firstTimerHours: less('firstTimerHours'),
      };
    })
    .filter(({ amount }) => (stands ? amount > LEAST_AMOUNT : Math.abs(amount) > LEAST_AMOUNT));
  const firstTimerHours = lines.reduce((sum, line) => sum + line.firstTimerHours, 0);
  return { lines, days: firstTimerHours / HOURS_PER_DAY };
}

/** What a change costs by a person's prices; null without any. */
export function changeCost(before: Design, after: Design, list: PriceList): Cost | null {
  return hasPrices(list) ? costOf(changeBetween(before, after).lines, list) : null;
}
