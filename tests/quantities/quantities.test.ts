import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { MATERIALS } from '../../src/design/materials.ts';
import type { FuelOutcome } from '../../src/outcomes/fuel.ts';
import { billOf } from '../../src/quantities/bill.ts';
import { cautionsOf } from '../../src/quantities/cautions.ts';
import { changeBetween, changeCost } from '../../src/quantities/change.ts';
import { namedIn } from '../../src/quantities/figures-in-units.ts';
import { fuelCost, fuelCostInWords, fuelItemsOf } from '../../src/quantities/fuel-cost.ts';
import { billCsv, readPriceFile } from '../../src/quantities/price-file.ts';
import { costOf, NO_PRICES, type PriceList } from '../../src/quantities/prices.ts';
import { costInWords, daysInWords, moneyInWords } from '../../src/quantities/words.ts';
import { leversOf } from '../../src/questions/levers.ts';
import { varied } from '../../src/questions/variation.ts';
import { wantedItems } from '../../src/questions/wanted-items.ts';
import { anyDesign } from '../model/any-design.ts';

const [LEANING, CLOSED, MODEST, DIVIDED] = EXAMPLES.map(({ design }) => design) as [
  Design,
  Design,
  Design,
  Design,
];
const lineOf = (design: Design, id: string) => billOf(design).lines.find(({ item }) => item.id === id);

describe('a bill', () => {
  it('has amounts, hours and a sum in words for every line of every example and of every lever', () => {
    for (const { design } of EXAMPLES) {
      for (const drawn of [design, ...leversOf(design).map(({ apply }) => apply(design))]) {
        for (const line of billOf(drawn).lines) {
          expect(line.amount, line.item.id).toBeGreaterThan(0);
          expect(line.hours, line.item.id).toBeGreaterThan(0);
          expect(line.firstTimerHours).toBeGreaterThanOrEqual(line.hours);
        }
      }
    }
  });

  it('is made of any design, with sound numbers', () => {
    fc.assert(
      fc.property(anyDesign, (design) => {
        for (const { item, amount, hours, weightKg } of billOf(design).lines) {
          expect(Number.isFinite(amount) && amount > 0, item.id).toBe(true);
          expect(Number.isFinite(hours) && hours > 0, item.id).toBe(true);
          expect(weightKg ?? 0).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 150, seed: 4 },
    );
  });

  it('knows every material as an inner leaf', () => {
    for (const { id } of MATERIALS)
      expect(billOf(varied(MODEST, { 'envelope.wallLining': id })).lines.length).toBeGreaterThan(5);
  });

  it('counts partitions, inner doors and stairs of a divided house', () => {
    // Three light partitions of 12.5 mm boards on both faces: 8.4, 8.4 and 6.5 m².
    const boards = lineOf(DIVIDED, 'plasterboard')!.amount;
    const lighter = lineOf(
      { ...DIVIDED, rooms: { ...DIVIDED.rooms!, partition: 'masonry' } },
      'plasterboard',
    )!;
    expect(boards - lighter.amount).toBeCloseTo(2 * (8.4 + 8.4 + 6.5), 6);
    expect(lineOf(DIVIDED, 'inner-door')!.amount).toBe(2);
    expect(lineOf(DIVIDED, 'stairs')!.amount).toBe(1);
  });

  it('leaves alone what a record showed of a house that stands', () => {
    const found = { ...MODEST, asFound: { unknowns: [] } } as unknown as Design;
    expect(billOf(found).days).toBe(billOf(MODEST).days);
  });

  it('warns of trenches, tyres, glass overhead and lifting where there are any', () => {
    const told = cautionsOf(billOf(LEANING)).join(' ');
    for (const word of ['Digging', 'Tyres', 'Lifting', 'Glass overhead', 'Local codes'])
      expect(told).toContain(word);
    expect(cautionsOf(billOf(MODEST)).join(' ')).not.toContain('Tyres');
  });
});

describe('a change', () => {
  it('asks for the difference of two bills, and spares what is left out', () => {
    // 30 m² of adobe, 0.2 m thick: 6 m³, and 6.4 m³ of ground dug for them.
    const more = varied(MODEST, { 'mass.areaM2': 50 });
    const { lines, days } = changeBetween(MODEST, more);
    expect(lines.map(({ item, amount }) => [item.id, Number(amount.toFixed(6))])).toEqual([
      ['adobe', 6],
      ['digging', 6.4],
    ]);
    expect(days).toBeCloseTo(billOf(more).days - billOf(MODEST).days, 9);
    expect(changeBetween(more, MODEST).days).toBeCloseTo(-days, 9);
  });

  it('gets nothing back from a house that stands', () => {
    const stands = { ...CLOSED, asFound: { unknowns: [] } } as unknown as Design;
    const { lines } = changeBetween(stands, { ...stands, glass: { ...stands.glass, type: 'triple-low-e' } });
    expect(lines.map(({ item }) => item.id)).toEqual(['upright-glass triple-low-e']);
  });

  it('of nothing but habits asks for no work', () => {
    expect(changeBetween(MODEST, varied(MODEST, { 'people.living': 'dry' })).days).toBe(0);
  });
});

describe('money', () => {
  const list: PriceList = { currency: 'EUR', wage: 30, prices: { adobe: { amount: 100, per: 'm³' } } };

  it('stands where everything that changes has a price, with wages at the pace of the trade', () => {
    const more = varied(MODEST, { 'mass.areaM2': 50 });
    expect(changeCost(MODEST, more, NO_PRICES)).toBeNull();
    const lacking = changeCost(MODEST, more, list)!;
    expect(lacking.total).toBeNull();
    expect(costInWords(lacking, list)).toBe('no price yet for earth dug, as it lies');
    const whole = { ...list, prices: { ...list.prices, digging: { amount: 10, per: 'm³' as const } } };
    const cost = changeCost(MODEST, more, whole)!;
    expect(cost.materials).toBeCloseTo(6 * 100 + 6.4 * 10, 9);
    // 6 m³ at (13.75 + 17.5)/2 h, 6.4 m³ at 1/6.5 h
    expect(cost.wages).toBeCloseTo(30 * (6 * 15.625 + 6.4 / 6.5), 6);
  });

  it('is the same by prices for feet', () => {
    const one = costOf(billOf(MODEST).lines, {
      ...NO_PRICES,
      prices: { overhang: { amount: 100, per: 'm²' } },
    });
    expect(one.total).toBeNull();
    const overhang = billOf(MODEST).lines.filter(({ item }) => item.id === 'overhang');
    const feet = { ...NO_PRICES, prices: { overhang: { amount: 100 * 0.3048 ** 2, per: 'ft²' as const } } };
    expect(costOf(overhang, feet).total).toBeCloseTo(870, 6);
  });

  test.each([
    [0, 'no work'],
    [0.1, 'an hour or two of work'],
    [-0.1, 'saves an hour or two of work'],
    [0.5, 'half a day of work'],
    [1.1, '1 day of work'],
    [2.4, '2.5 days of work'],
    [-3, 'saves 3 days of work'],
    [23.7, '24 days of work'],
  ])('%d days are said as %s', (days, said) => expect(daysInWords(days)).toBe(said));

  test.each([
    [12_345, 'EUR', 'EUR 12,300'],
    [999, '$', '$ 999'],
    [-1234, '', '−1,230'],
    [0, 'EUR', 'EUR 0'],
  ])('%d %s are said as %s', (money, currency, said) => expect(moneyInWords(money, currency)).toBe(said));
});

describe('a table of prices', () => {
  const header = 'item,unit,price\n';

  it('is read again as it was written, in metres and in feet', () => {
    const list: PriceList = {
      currency: '$',
      wage: 21.5,
      prices: { adobe: { amount: 80, per: 'yd³' }, tile: { amount: 3.2, per: 'ft²' } },
    };
    expect(readPriceFile(billCsv(billOf(MODEST), list, 'us'))).toEqual({ ok: true, list });
    const metric = readPriceFile(billCsv(billOf(MODEST), list, 'metric'));
    expect(metric).toMatchObject({ ok: true, list: { prices: { adobe: { per: 'm³' } } } });
    const cost = (of: PriceList) =>
      costOf(
        billOf(MODEST).lines.filter(({ item }) => item.id === 'adobe'),
        of,
      ).total!;
    if (metric.ok) expect(cost(metric.list) / cost(list)).toBeCloseTo(1, 5);
  });

  it('holds what changes want, and every price, of this house or not', () => {
    const list: PriceList = { ...NO_PRICES, prices: { cob: { amount: 9, per: 'm³' } } };
    const text = billCsv(billOf(MODEST), list, 'metric', wantedItems(MODEST));
    expect(text).toContain('\nsummer-shade,Seasonal outside shade,0,m²,\n');
    expect(readPriceFile(text)).toEqual({ ok: true, list });
  });

  it('may come from a spreadsheet that writes commas for points', () => {
    expect(readPriceFile('\ufeffItem;Unit;Price\r\nadobe;m3;12,5\r\ncurrency;;CHF\r\n')).toEqual({
      ok: true,
      list: { currency: 'CHF', wage: null, prices: { adobe: { amount: 12.5, per: 'm³' } } },
    });
  });

  test.each([
    ['', 'no column item, price; allowed: a first line with item, price and unit'],
    [`${header}adobe,m³,cheap\n`, 'line 2: price of adobe is cheap; allowed: a number from 0 to 1000000000'],
    [`${header}adobe,m³,-1\n`, 'line 2: price of adobe is -1; allowed: a number from 0 to 1000000000'],
    [`${header}adobe,m²,1\n`, 'line 2: unit of adobe is m²; allowed: m³, ft³, yd³'],
    [`${header}adobe,m³,1\nadobe,m³,2\n`, 'line 3: item adobe stands twice; allowed: once'],
    [
      `${header}marble,m³,1\n`,
      'line 2: item is marble; allowed: an item as `quantities DESIGN --csv` writes it, wage or currency',
    ],
    ...['__proto__', 'constructor floor', 'adobe wall', 'upright-glass toString'].map(
      (id): [string, string] => [
        `${header}${id},m³,1\n`,
        `line 2: item is ${id}; allowed: an item as \`quantities DESIGN --csv\` writes it, wage or currency`,
      ],
    ),
    [
      `${header}currency,,${'x'.repeat(21)}\n`,
      `line 2: currency is ${'x'.repeat(21)}; allowed: at most 20 characters`,
    ],
  ])('says what is wrong with %j', (text, fault) => {
    expect(readPriceFile(text)).toEqual({ ok: false, faults: [fault] });
  });
});

describe('fuel in money', () => {
  const NONE = { kg: null, litres: null, therms: null, stackedM3: null, cords: null } as const;
  const fuelOf = (
    fuel: FuelOutcome['fuel'],
    fuelKWh: number,
    by: Partial<FuelOutcome> = {},
  ): FuelOutcome => ({
    ...NONE,
    loads: null,
    loadsOnBusiestDay: null,
    daysWithFire: null,
    fuel,
    fuelKWh,
    lostKWh: 0,
    ...by,
  });
  const listOf = (rows: string): PriceList => {
    const read = readPriceFile(`item,price,unit\n${rows}`);
    if (!read.ok) throw new Error(read.faults.join());
    return read.list;
  };

  it('is told by a person’s own price and by no other, by hand', () => {
    const wood = fuelOf('wood', 4000, { stackedM3: 3 });
    expect(fuelCost(wood, NO_PRICES)).toBeNull();
    expect(fuelCost(wood, listOf('adobe,1,m3\n'))).toBeNull();
    // 3 steres at 95; of a cord of 3.625 at 340.
    expect(fuelCost(wood, listOf('fuel wood,95,stere\n'))).toBeCloseTo(285, 9);
    expect(fuelCost(wood, listOf('fuel wood,340,cord\n'))).toBeCloseTo((3 / 3.625) * 340, 9);
    expect(fuelCostInWords(wood, listOf('currency,EUR,\nfuel wood,95,stere\n'))).toBe(
      'EUR 285 by your price',
    );
    expect(fuelCost(fuelOf('electric', 1500), listOf('fuel electric,0.3,kWh\n'))).toBeCloseTo(450, 9);
    // Gas is billed by gross heat, 1.11 of the net: 1110 kWh, or 37.9 therms of 29.30011 kWh (NIST SP 811).
    expect(fuelCost(fuelOf('gas', 1000), listOf('fuel gas,0.1,kWh\n'))).toBeCloseTo(111, 9);
    expect(fuelCost(fuelOf('gas', 1000), listOf('fuel gas,1.5,therm\n'))).toBeCloseTo(
      (1110 / 29.30011) * 1.5,
      5,
    );
    const propane = fuelOf('propane', 655, { litres: 100 });
    expect(fuelCost(propane, listOf('fuel propane,3,gal\n'))).toBeCloseTo((100 / 3.785411784) * 3, 9);
    expect(fuelCost(fuelOf('pellets', 4750, { kg: 1000 }), listOf('fuel pellets,0.4,kg\n'))).toBeCloseTo(
      400,
      9,
    );
  });

  it('goes out with the table of quantities, and comes back with its price', () => {
    const stove: Design = { ...MODEST, heating: { ...MODEST.heating, source: USUAL_STOVE } };
    const out = billCsv(billOf(stove), NO_PRICES, 'us', fuelItemsOf(stove.heating));
    const row = out.split('\n').find((line) => line.startsWith('fuel wood'))!;
    expect(row).toMatch(/^fuel wood,".*",,cord,$/);
    const list = listOf('fuel wood,340,cord\n');
    expect(billCsv(billOf(stove), list, 'us')).toMatch(/\nfuel wood,".*",,cord,340\n/);
    const read = readPriceFile('item,price,unit\nfuel wood,3,kg\n');
    expect(read).toEqual({ ok: false, faults: ['line 2: unit of fuel wood is kg; allowed: stere, cord'] });
    expect(fuelItemsOf(MODEST.heating)).toEqual([]);
  });
});

test('a measure in a name is told in the units of the page', () => {
  expect(namedIn('bags of cement of 25 kg', 'metric')).toBe('bags of cement of 25 kg');
  // 25/0.45359237, 1/0.3048, 200/3.785411784.
  expect(namedIn('bags of cement of 25 kg', 'us')).toBe('bags of cement of 55 lb');
  expect(namedIn('Insulated flue, lengths of 1 m', 'us-therms')).toBe('Insulated flue, lengths of 3.3 ft');
  expect(namedIn('drums of 200 litres', 'us')).toBe('drums of 53 gal');
  expect(namedIn(fuelItemsOf({ ...EXAMPLES[0]!.design.heating, source: USUAL_STOVE })[0]!.name, 'us')).toBe(
    'Firewood, a cord being 128 stacked ft³',
  );
  expect(namedIn('bales', 'us')).toBe('bales');
});
