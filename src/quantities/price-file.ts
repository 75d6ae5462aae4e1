// Bill and prices as a table: written for a spreadsheet, and read again once prices stand in it. A row an item; the rows
// `currency` and `wage` hold what goes for all of them in the column `price`. Whatever else stands in the table is left
// alone.

import { csvCell } from '../outcomes/csv-cell.ts';
import { cellsOf, linesOf, numberOf } from '../weather/text/text-lines.ts';
import { type Bill, type BillLine, NOT_COUNTED } from './bill.ts';
import {
  amountIn,
  type BillUnits,
  BOUGHT_BY,
  type BoughtBy,
  formulaWordsIn,
  type Measure,
  short,
  unitIn,
} from './figures-in-units.ts';
import { fuelItemById } from './fuel-cost.ts';
import { itemById } from './items.ts';
import { costOf, lineCost, MOST_CURRENCY, MOST_PRICE, NO_PRICES, type PriceList } from './prices.ts';

const COLUMNS = [
  'item',
  'what',
  'quantity',
  'unit',
  'price',
  'cost',
  'hours',
  'firstTimerHours',
  'pieces',
  'of',
  'weightKg',
  'dugM3',
  'hoursAre',
  'source',
  'formula',
] as const;
/** Largest table of prices that is read [characters]. */
const MOST_PRICE_FILE = 1_000_000;

const MARKS = {
  read: 'published, read',
  memory: 'published, from memory',
  practice: 'common practice',
} as const;

/** What has a price: an item of a bill, or a fuel. */
export interface Priced {
  readonly id: string;
  readonly unit: Measure;
  readonly us?: BoughtBy;
}

/** How far a line's hours can be trusted. */
function markInWords({ item }: Pick<BillLine, 'item'>): string {
  return MARKS[item.norm.mark];
}

/** A line's hours for each unit, and how far they can be trusted: "0.8 to 1.4 hours a m², published, from memory: handbooks". */
export function normInWords({ item }: Pick<BillLine, 'item'>, units: BillUnits): string {
  const { hours, per, mark, source } = item.norm;
  const unit = unitIn(per, units);
  const [low, high] = hours.map((each) => String(Number((each * BOUGHT_BY[unit].size).toPrecision(2))));
  const trust = mark === 'practice' ? source : `${MARKS[mark]}: ${source}`;
  return `${low === high ? low : `${low} to ${high}`} hours a ${unit}, ${trust}`;
}

/** A price for the unit an item is told in; null without one. */
export function priceIn(
  { item }: { readonly item: Priced },
  { prices }: PriceList,
  units: BillUnits,
): number | null {
  const price = Object.hasOwn(prices, item.id) ? prices[item.id]! : undefined;
  if (price === undefined) return null;
  // As typed where it was typed for this unit: nothing is rounded behind anyone's back.
  const unit = unitIn(item.unit, units, item.us);
  if (price.per === unit) return price.amount;
  return Number(((price.amount / BOUGHT_BY[price.per].size) * BOUGHT_BY[unit].size).toPrecision(6));
}

/**
 * The table; an empty cell for what is not known.
 *
 * @param more items that the bill has not, to be priced too: they stand behind it, as does whatever else has a price
 */
export function billCsv(bill: Bill, list: PriceList, units: BillUnits, more: readonly Priced[] = []): string {
  const words = formulaWordsIn(units);
  const blank = (value: number | null, digits: number) => (value === null ? '' : short(value, digits));
  const rows = bill.lines.map((line) => [
    line.item.id,
    line.item.name,
    short(amountIn(line.amount, line.item.unit, units), 2),
    unitIn(line.item.unit, units),
    priceIn(line, list, units) ?? '',
    blank(lineCost(line, list), 2),
    short(line.hours, 1),
    short(line.firstTimerHours, 1),
    line.pieces ?? '',
    line.item.pieces?.name ?? '',
    blank(line.weightKg, 0),
    blank(line.looseM3, 2),
    markInWords(line),
    line.item.norm.source,
    line.formula(words),
  ]);
  const billed = new Set(bill.lines.map(({ item }) => item.id));
  const priced = Object.keys(list.prices).filter((id) => unitOfItem(id) !== null);
  const others = new Set([...more.map(({ id }) => id), ...priced].filter((id) => !billed.has(id)));
  const behind = [...others].map((id) => {
    const item = fuelItemById(id) ?? itemById(id);
    // How much fuel a year takes, a bill does not know.
    const amount = fuelItemById(id) === null ? 0 : '';
    const priced: Priced = item;
    return [
      id,
      item.name,
      amount,
      unitIn(item.unit, units, priced.us),
      priceIn({ item: priced }, list, units) ?? '',
    ];
  });
  const { total, wages } = costOf(bill.lines, list);
  const ends = [
    [
      'wage',
      'Wage of an hour, paid for the hours of the trade',
      '',
      'h',
      list.wage ?? '',
      list.wage === null ? '' : short(wages, 2),
    ],
    ['currency', 'Currency of the prices', '', '', list.currency],
    ['total', NOT_COUNTED, '', '', '', blank(total, 2), short(bill.hours, 1), short(bill.firstTimerHours, 1)],
  ];
  return [COLUMNS, ...rows, ...behind, ...ends].map((row) => `${row.map(csvCell).join(',')}\n`).join('');
}

export type PriceFileResult =
  | { readonly ok: true; readonly list: PriceList }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Sentences of one table; more are no help. */
const MOST_FAULTS = 20;
const UNITS = Object.keys(BOUGHT_BY) as BoughtBy[];

/**
 * Prices out of a table with the columns `item`, `price` and, where the unit is not m², m³ or piece, `unit`.
 *
 * @param text comma-, semicolon- or tab-separated, with a point or a comma for decimals where no comma separates
 * @returns the list, or one line a fault: the line, the value and what is allowed
 */
export function readPriceFile(text: string): PriceFileResult {
  if (text.length > MOST_PRICE_FILE)
    return { ok: false, faults: [`${text.length} characters; allowed: at most ${MOST_PRICE_FILE}`] };
  const lines = linesOf(text);
  const first = lines.findIndex((line) => line.trim() !== '');
  const head = lines[first] ?? '';
  const separator = ['\t', ';', ','].find((sign) => head.includes(sign)) ?? ',';
  const heads = cellsOf(head, separator).map((cell) => cell.trim().toLowerCase());
  const column = (name: string) => heads.indexOf(name);
  const lacking = ['item', 'price'].filter((name) => column(name) < 0);
  if (lacking.length > 0)
    return {
      ok: false,
      faults: [`no column ${lacking.join(', ')}; allowed: a first line with item, price and unit`],
    };
  const cellOf = (cells: readonly string[], name: string) => (cells[column(name)] ?? '').trim();
  const rows = lines
    .map((line, i) => ({ number: i + 1, cells: cellsOf(line, separator) }))
    .slice(first + 1)
    .map(({ number, cells }) => ({
      number,
      id: cellOf(cells, 'item'),
      typed: cellOf(cells, 'price').replace(/^'/, ''),
      unit: cellOf(cells, 'unit'),
    }))
    .filter(({ id, typed }) => id !== '' && typed !== '' && id !== 'total');
  const faults: string[] = [];
  let list = NO_PRICES;
  const seen = new Set<string>();
  for (const { number, id, typed, unit } of rows) {
    const read = seen.has(id)
      ? `item ${id} stands twice; allowed: once`
      : withRow(list, id, typed, unit, separator === ',' ? '.' : ',');
    seen.add(id);
    if (typeof read === 'string') faults.push(`line ${number}: ${read}`);
    else list = read;
  }
  if (faults.length > MOST_FAULTS)
    return {
      ok: false,
      faults: [...faults.slice(0, MOST_FAULTS), `and ${faults.length - MOST_FAULTS} more`],
    };
  return faults.length > 0 ? { ok: false, faults } : { ok: true, list };
}

/** A list with one more row, or what is wrong with it. */
function withRow(
  list: PriceList,
  id: string,
  typed: string,
  unitTyped: string,
  decimal: '.' | ',',
): PriceList | string {
  if (id === 'currency')
    return typed.length <= MOST_CURRENCY
      ? { ...list, currency: typed }
      : `currency is ${typed.slice(0, 2 * MOST_CURRENCY)}; allowed: at most ${MOST_CURRENCY} characters`;
  const unit = id === 'wage' ? 'h' : unitOfItem(id);
  if (unit === null)
    return `item is ${id}; allowed: an item as \`quantities DESIGN --csv\` writes it, wage or currency`;
  const amount = numberOf(typed.replace(decimal, '.'));
  if (!(amount >= 0 && amount <= MOST_PRICE))
    return `price of ${id} is ${typed}; allowed: a number from 0 to ${MOST_PRICE}`;
  if (unit === 'h') return { ...list, wage: amount };
  const per = unitTyped === '' ? unit : unitNamed(unitTyped);
  if (per === null || BOUGHT_BY[per].of !== unit)
    return `unit of ${id} is ${unitTyped}; allowed: ${unitsFor(unit)}`;
  return { ...list, prices: { ...list.prices, [id]: { amount, per } } };
}

function unitOfItem(id: string): Measure | null {
  const fuel = fuelItemById(id);
  if (fuel !== null) return fuel.unit;
  try {
    return itemById(id).unit;
  } catch {
    return null;
  }
}

/** "m2" and "ft3" stand for m² and ft³. */
function unitNamed(text: string): BoughtBy | null {
  const plain = text.replace('2', '²').replace('3', '³');
  return UNITS.find((unit) => unit === plain) ?? null;
}

function unitsFor(unit: string): string {
  return UNITS.filter((known) => BOUGHT_BY[known].of === unit).join(', ');
}
