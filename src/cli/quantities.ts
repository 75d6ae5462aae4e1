// `quantities DESIGN`: the bill of quantities, with hours of work, and money where a person's own prices are given. A table
// for people, --csv for a spreadsheet, which --prices reads again, or one JSON object.

import { VERSION } from '../outcomes/version.ts';
import { type Bill, type BillLine, billOf, NOT_COUNTED } from '../quantities/bill.ts';
import { cautionsOf } from '../quantities/cautions.ts';
import {
  amountIn,
  type BillUnits,
  formulaWordsIn,
  namedIn,
  unitIn,
  weightIn,
} from '../quantities/figures-in-units.ts';
import { fuelItemsOf } from '../quantities/fuel-cost.ts';
import { firstTimerFactor } from '../quantities/norms.ts';
import { billCsv, normInWords, priceIn } from '../quantities/price-file.ts';
import { costOf, hasPrices, lineCost, type PriceList } from '../quantities/prices.ts';
import { costInWords, DAYS_SAY, daysInWords, moneyInWords, NO_MONEY_SAYS } from '../quantities/words.ts';
import { wantedItems } from '../questions/wanted-items.ts';
import { type Command, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { wrap } from './outcome-table.ts';
import { PRICES_USAGE, pricesFrom } from './prices-flag.ts';
import { textTable } from './text-table.ts';

export const quantitiesCommand: Command = {
  name: 'quantities',
  usage: 'quantities DESIGN [--prices FILE.csv] [--csv | --json] [--units us]',
  line: 'what it takes to build a design: quantities, hours of work, and money by your own prices',
  valued: ['prices', 'units'],
  switches: ['csv', 'json'],
  details: [PRICES_USAGE],
  positionals: [1, 1],
  run: async (args) => {
    const units = args.values.get('units') ?? 'metric';
    if (units !== 'metric' && units !== 'us') return refused(`--units: ${units}; allowed: metric, us`);
    if (args.switches.has('csv') && args.switches.has('json'))
      return refused('--csv: given beside --json; allowed: one of the two');
    const read = await readDesign(args.positionals[0]!);
    if (!read.ok) return read;
    const prices = await pricesFrom(args);
    if (!prices.ok) return prices;
    const bill = billOf(read.design);
    const { list } = prices;
    if (args.switches.has('csv'))
      return {
        ok: true,
        output: billCsv(bill, list, units, [
          ...wantedItems(read.design),
          ...fuelItemsOf(read.design.heating),
        ]).trimEnd(),
      };
    if (args.switches.has('json'))
      return {
        ok: true,
        output: JSON.stringify({ daystone: VERSION, design: read.design.name, ...billJson(bill, list) }),
      };
    return { ok: true, output: `${read.design.name}\n\n${billText(bill, list, units)}` };
  },
};

/** SI; what is not known is null. */
function billJson(bill: Bill, list: PriceList) {
  const words = formulaWordsIn('metric');
  return {
    currency: list.currency === '' ? null : list.currency,
    lines: bill.lines.map((line) => ({
      item: line.item.id,
      what: line.item.name,
      quantity: line.amount,
      unit: line.item.unit,
      areaM2: line.areaM2,
      volumeM3: line.volumeM3,
      weightKg: line.weightKg,
      dugM3: line.looseM3,
      pieces: line.pieces,
      piecesOf: line.item.pieces?.name ?? null,
      hours: line.hours,
      firstTimerHours: line.firstTimerHours,
      norm: { ...line.item.norm, firstTimerFactor: firstTimerFactor(line.item.norm) },
      formula: line.formula(words),
      price: priceIn(line, list, 'metric'),
      cost: lineCost(line, list),
    })),
    hours: bill.hours,
    firstTimerHours: bill.firstTimerHours,
    days: bill.days,
    cost: hasPrices(list) ? costJson(bill.lines, list) : null,
    notCounted: NOT_COUNTED,
    cautions: cautionsOf(bill),
  };
}

function costJson(lines: readonly BillLine[], list: PriceList) {
  const { materials, wages, total, missing } = costOf(lines, list);
  return { materials, wages, total, missing: missing.map(({ id }) => id) };
}

function billText(bill: Bill, list: PriceList, units: BillUnits): string {
  const isPriced = hasPrices(list);
  const head = [
    '',
    'quantity',
    '',
    'weight',
    'pieces',
    '',
    'hours',
    'first time',
    ...(isPriced ? ['cost'] : []),
  ];
  const rows = bill.lines.map((line) => {
    const cost = lineCost(line, list);
    return [
      namedIn(line.item.name, units),
      amountIn(line.amount, line.item.unit, units).toFixed(line.item.unit === 'piece' ? 0 : 1),
      line.item.unit === 'piece' ? 'pieces' : unitIn(line.item.unit, units),
      line.weightKg === null ? '' : weightIn(line.weightKg, units),
      line.item.unit === 'piece' || line.pieces === null ? '' : String(line.pieces),
      line.item.unit === 'piece' ? '' : namedIn(line.item.pieces?.name ?? '', units),
      line.hours.toFixed(0),
      line.firstTimerHours.toFixed(0),
      ...(isPriced ? [cost === null ? '' : moneyInWords(cost, '')] : []),
    ];
  });
  const words = formulaWordsIn(units);
  const sums = bill.lines.flatMap((line) =>
    wrap(`${namedIn(line.item.name, units)}: ${line.formula(words)}. ${normInWords(line, units)}.`),
  );
  const cost = isPriced ? costOf(bill.lines, list) : null;
  return [
    textTable([head, ...rows]),
    wrap(
      `In all ${daysInWords(bill.days)} for one first-timer; ${bill.hours.toFixed(0)} hours at the pace of the norms.${
        cost === null
          ? ` ${NO_MONEY_SAYS}`
          : ` In money: ${costInWords(cost, list)}${cost.wages > 0 && cost.total !== null ? `, of it wages ${moneyInWords(cost.wages, list.currency)}` : ''}.`
      }`,
    ).join('\n'),
    wrap(DAYS_SAY).join('\n'),
    `How each comes about\n${sums.join('\n')}`,
    ...[NOT_COUNTED, ...cautionsOf(bill)].map((text) => wrap(text).join('\n')),
  ].join('\n\n');
}
