// What it takes to build: the bill of quantities of the design on the sheet, with hours of work, and a column for the person's
// own prices. It takes the sheet's place; prices are kept in the browser and go into no link.

import '../style/report.css';
import '../style/build.css';
import { useMemo, useRef } from 'preact/hooks';
import { type Bill, type BillLine, billOf, NOT_COUNTED } from '../../quantities/bill.ts';
import { cautionsOf } from '../../quantities/cautions.ts';
import {
  amountIn,
  BOUGHT_BY,
  formulaWordsIn,
  namedIn,
  unitIn,
  weightIn,
} from '../../quantities/figures-in-units.ts';
import { fuelItemsOf } from '../../quantities/fuel-cost.ts';
import { HOURS_PER_DAY } from '../../quantities/norms.ts';
import { billCsv, normInWords, type Priced, priceIn, readPriceFile } from '../../quantities/price-file.ts';
import { costOf, hasPrices, lineCost, MOST_CURRENCY, type PriceList } from '../../quantities/prices.ts';
import {
  costInWords,
  DAYS_SAY,
  daysInWords,
  MONEY_SAYS,
  moneyInWords,
  NO_MONEY_SAYS,
} from '../../quantities/words.ts';
import { wantedItems } from '../../questions/wanted-items.ts';
import { copyLink, putInAddress } from '../keeping/link-in-address.ts';
import { saveFile } from '../keeping/save-file.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { FilePicker } from '../parts/FilePicker.tsx';
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { numberText } from '../parts/number-text.ts';
import { pricesChoice } from '../state/prices-choice.ts';
import { useSession } from '../state/session-context.ts';
import { PriceField } from './PriceField.tsx';

export function BuildView() {
  const { workspace } = useSession();
  const heading = useFocusedHeading();
  const design = workspace.design.value;
  const system = workspace.units.value;
  const list = pricesChoice.list.value;
  const bill = useMemo(() => billOf(design), [design]);
  return (
    <main class="build-view">
      <div class="report-bar">
        <h1 ref={heading} tabIndex={-1}>
          What it takes to build
        </h1>
        <a class="button" href="#sheet">
          Back to the sheet
        </a>
        <PriceTools bill={bill} list={list} system={system} />
      </div>
      <p class="build-name">{design.name}</p>
      <Totals bill={bill} list={list} />
      <div class="build-means">
        <label class="build-currency">
          Currency
          <input
            type="text"
            data-prices="currency"
            maxLength={MOST_CURRENCY}
            placeholder="EUR, $, …"
            value={list.currency}
            onInput={({ currentTarget }) =>
              pricesChoice.change((now) => ({ ...now, currency: currentTarget.value }))
            }
          />
        </label>
        <PriceField
          name="wage"
          label="Wage of an hour"
          sign="an hour"
          value={list.wage}
          change={(wage) => pricesChoice.change((now) => ({ ...now, wage }))}
        />
        <p>
          Leave the wage empty where nobody is paid. Prices are kept in this browser, for every house; they go
          into no file of a design, and into no link but the one that says so.
        </p>
      </div>
      {!pricesChoice.isKept.value && (
        <p class="is-trouble" role="alert">
          This browser keeps nothing for this page: take the table along as CSV, or the prices are gone with
          the page.
        </p>
      )}
      <div class="bill-head" aria-hidden="true">
        {['', 'quantity', 'work, first time', 'your price', 'cost'].map((head) => (
          <span key={head}>{head}</span>
        ))}
      </div>
      <ul class="bill" aria-label="Quantities, hours and prices">
        {bill.lines.map((line) => (
          <Line key={line.item.id} line={line} list={list} system={system} />
        ))}
      </ul>
      <Fuel list={list} system={system} />
      <Wanted list={list} system={system} />
      <p>{DAYS_SAY}</p>
      <p>{NOT_COUNTED}</p>
      <h2>Take care</h2>
      <ul class="build-cautions">
        {cautionsOf(bill).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </main>
  );
}

function Totals({ bill, list }: { bill: Bill; list: PriceList }) {
  const cost = hasPrices(list) ? costOf(bill.lines, list) : null;
  return (
    <p class="build-total" role="status">
      <b>{daysInWords(bill.days)}</b> for one person who does it for the first time;{' '}
      {numberText(bill.hours, 0)} hours at the pace of the trade.{' '}
      {cost === null ? (
        NO_MONEY_SAYS
      ) : (
        <>
          In money: <b>{costInWords(cost, list)}</b>
          {cost.wages > 0 &&
            cost.total !== null &&
            `, of it wages ${moneyInWords(cost.wages, list.currency)}`}
          . {MONEY_SAYS}
        </>
      )}
    </p>
  );
}

/** What a year of heat burns: priced here, told in money beside the back-up heat and in the report. */
function Fuel({ list, system }: { list: PriceList; system: UnitSystem }) {
  const [item] = fuelItemsOf(useSession().workspace.design.value.heating);
  if (item === undefined) return null;
  return (
    <>
      <h2>Fuel of a year</h2>
      <p>With a price, the fuel of a year is told in money beside the back-up heat and in the report.</p>
      <ul class="bill" aria-label="Price of fuel">
        <li data-item={item.id}>
          <span class="bill-what">{namedIn(item.name, system)}</span>
          <ItemPrice item={item} list={list} system={system} />
        </li>
      </ul>
    </>
  );
}

/** What is on no line, and would be if one of the changes were made: priced here, so that a change can be told in money. */
function Wanted({ list, system }: { list: PriceList; system: UnitSystem }) {
  const design = useSession().workspace.design.value;
  const items = useMemo(() => wantedItems(design), [design]);
  if (items.length === 0) return null;
  return (
    <>
      <h2>Wanted by changes that may help</h2>
      <p>Not drawn in this house. With a price, the changes that want them are told in money too.</p>
      <ul class="bill" aria-label="Prices of what changes want">
        {items.map((item) => (
          <li key={item.id} data-item={item.id}>
            <span class="bill-what">{item.name}</span>
            <ItemPrice item={item} list={list} system={system} />
          </li>
        ))}
      </ul>
    </>
  );
}

interface LineProps {
  readonly line: BillLine;
  readonly list: PriceList;
  readonly system: UnitSystem;
}

function Line({ line, list, system }: LineProps) {
  const { item, pieces, weightKg, looseM3 } = line;
  const unit = unitIn(item.unit, system);
  const amount = amountIn(line.amount, item.unit, system);
  const cost = lineCost(line, list);
  const also = [
    ...(pieces !== null && item.unit !== 'piece'
      ? [`${numberText(pieces, 0)} ${namedIn(item.pieces!.name, system)}`]
      : []),
    ...(weightKg === null || weightKg === 0 ? [] : [weightIn(weightKg, system)]),
    ...(looseM3 === null ? [] : [`${looseIn(looseM3, system)} once dug`]),
  ];
  return (
    <li data-item={item.id}>
      <details class="bill-what">
        <summary>
          {namedIn(item.name, system)}
          {also.length > 0 && <small>{also.join(', ')}</small>}
        </summary>
        <p>{line.formula(formulaWordsIn(system))}</p>
        <p>{normInWords(line, system)}.</p>
      </details>
      <span class="bill-amount">
        {numberText(amount, item.unit === 'piece' ? 0 : 1)} {unit === 'piece' ? '' : unit}
      </span>
      <span class="bill-hours">
        {line.firstTimerHours < HOURS_PER_DAY
          ? `${numberText(line.firstTimerHours, 0)} h`
          : `${numberText(line.firstTimerHours / HOURS_PER_DAY, 1)} days`}
      </span>
      <ItemPrice item={item} list={list} system={system} />
      <span class="bill-cost">{cost === null ? '' : moneyInWords(cost, list.currency)}</span>
    </li>
  );
}

function ItemPrice(props: { item: Priced & { name: string }; list: PriceList; system: UnitSystem }) {
  const { item, list, system } = props;
  const unit = unitIn(item.unit, system, item.us);
  return (
    <PriceField
      name={item.id}
      label={`Price of one ${unit}: ${item.name}`}
      sign={unit === 'piece' ? 'each' : `per ${unit}`}
      value={priceIn({ item }, list, system)}
      change={(price) =>
        pricesChoice.change((now) => {
          const { [item.id]: _, ...others } = now.prices;
          return {
            ...now,
            prices: price === null ? others : { ...others, [item.id]: { amount: price, per: unit } },
          };
        })
      }
      isQuiet
    />
  );
}

function looseIn(m3: number, system: UnitSystem): string {
  const unit = unitIn('m³', system);
  return `${numberText(m3 / BOUGHT_BY[unit].size, 1)} ${unit}`;
}

/** The table as a file, and prices out of one. */
function PriceTools({ bill, list, system }: { bill: Bill; list: PriceList; system: UnitSystem }) {
  const { workspace, fileOf, linkWithPrices, tell, offer } = useSession();
  const input = useRef<HTMLInputElement>(null);
  const save = () => {
    workspace.drafts.takeAll();
    const stem = fileOf(workspace.design.value).name.replace(/\.daystone\.json$/, '');
    const text = billCsv(bill, pricesChoice.list.peek(), system, [
      ...wantedItems(workspace.design.value),
      ...fuelItemsOf(workspace.design.value.heating),
    ]);
    saveFile(`${stem}.quantities.csv`, new Blob(['\ufeff', text], { type: 'text/csv' }));
  };
  const share = async () => {
    workspace.drafts.takeAll();
    const address = await linkWithPrices(workspace.design.value);
    if (address === null) return tell('trouble', 'So many prices make too long a link. Send the table.');
    const copied = await copyLink(address);
    if (!copied) putInAddress(address, workspace.design);
    tell(
      'news',
      `The link is ${copied ? 'copied' : 'in the address bar'}; it holds the design and your prices.`,
    );
  };
  const take = async (file: File) => {
    const read = readPriceFile(await file.text());
    if (!read.ok) {
      const more = read.faults.length > 1 ? ` And ${read.faults.length - 1} more.` : '';
      return tell('trouble', `${file.name}: ${read.faults[0]}.${more} Your prices are as they were.`);
    }
    pricesChoice.change(() => read.list);
    offer(`The prices of ${file.name} stand in place of yours.`, 'Take it back', () =>
      pricesChoice.change(() => list),
    );
  };
  return (
    <>
      <button type="button" data-prices="save" onClick={save}>
        Table as CSV
      </button>
      <button type="button" data-prices="link" disabled={!hasPrices(list)} onClick={() => void share()}>
        Link with prices
      </button>
      <button type="button" data-prices="open" onClick={() => input.current?.click()}>
        Prices from a file
      </button>
      <FilePicker
        input={input}
        label="Open a table of prices"
        accept=".csv,.txt"
        onFiles={([file]) => void take(file!)}
      />
    </>
  );
}
