// Labour norms as published, and the bills of the three examples reckoned by hand from their drawn dimensions: every reference
// below is arithmetic on numbers of the drawing (110 m² of floor, 13.5 m of front, 2.6 m of height …), on none of our code.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { ALL_EXAMPLES } from '../../src/design/stove-examples.ts';
import { billOf } from '../../src/quantities/bill.ts';
import { massWork } from '../../src/quantities/items.ts';
import { CLAY_BULKING, FIRST_TIMER, HOURS_PER_DAY, NORMS, usualHours } from '../../src/quantities/norms.ts';
import { check } from './ledger.ts';

/** At the pace of the trade [h], low and high. */
const tradeHours = (material: string, areaM2: number, thicknessM: number) =>
  massWork(material, areaM2, thicknessM).firstTimerHours.map((hours) => hours / FIRST_TIMER.usual);

test('labour norms are those of their sources', () => {
  const ecology = { source: 'The Ecology of Building Materials', mark: 'document', unit: 'h' } as const;
  check({
    ...ecology,
    case: '40 m² rammed by hand, 0.4 m thick',
    quantity: 'with breaks and preparation',
    reference: 280,
    ours: tradeHours('rammed-earth', 40, 0.4)[1]!,
    allowed: 0.5,
  });
  check({
    ...ecology,
    case: '40 m² of earth blocks by hand, 0.4 m thick',
    quantity: 'without breaks and preparation',
    reference: 220,
    ours: tradeHours('adobe', 40, 0.4)[0]!,
    allowed: 0.5,
  });
  check({
    ...ecology,
    case: '20 m² of concrete wall',
    quantity: 'finished',
    reference: 66,
    ours: tradeHours('concrete', 20, 0.15)[0]!,
    allowed: 0.5,
  });
  // Manuals: 100 blocks of 11 litres a day and person, laid at 1.5 to 2.5 h/m²; a wall of 275 mm has 25 a square metre.
  check({
    kind: 'range',
    source: 'Adobe manuals',
    case: 'a square metre of 275 mm, blocks made and laid',
    quantity: 'labour',
    referenceMin: 1.5 + 25 * 0.08,
    referenceMax: 2.5 + 25 * 0.08,
    ours: (tradeHours('adobe', 1, 0.275)[0]! + tradeHours('adobe', 1, 0.275)[1]!) / 2,
    allowed: 0,
    noteAllowed: 0.5,
    unit: 'h',
    mark: 'memory',
  });
  check({
    kind: 'range',
    source: 'Estimating handbooks',
    case: 'half-brick wall of 103 mm, from the norm of a one-brick wall',
    quantity: 'labour for a square metre',
    referenceMin: 1.2,
    referenceMax: 1.6,
    ours: (tradeHours('brick', 1, 0.1025)[0]! + tradeHours('brick', 1, 0.1025)[1]!) / 2,
    allowed: 0,
    noteAllowed: 0.2,
    unit: 'h',
    mark: 'memory',
  });
  check({
    source: 'Man-hour norms for glazing',
    case: '14.5 m² of fixed upright lights',
    quantity: 'a day of a crew of two',
    reference: 16,
    ours: 14.5 * NORMS['upright-glass'].hours[0],
    allowed: 0.01,
    unit: 'h',
    mark: 'document',
  });
  check({
    source: 'Production rates for excavators',
    case: '65 m³ of clay, bucket of 0.3 m³',
    quantity: 'digger hours',
    reference: 10,
    ours: 65 * usualHours(NORMS.digging),
    allowed: 0.01,
    unit: 'h',
    mark: 'document',
  });
  check({
    source: 'Production rates for excavators',
    case: '10 m³ of clay in place',
    quantity: 'to cart',
    reference: 14,
    ours: 10 * CLAY_BULKING,
    allowed: 0.01,
    unit: 'm³',
    mark: 'document',
  });
  check({
    kind: 'range',
    source: 'Builders’ practice',
    case: '1500 tyres, 6 to 10 a day and person',
    quantity: 'days of work',
    referenceMin: 150,
    referenceMax: 250,
    ours: (1500 * usualHours(NORMS.tyres)) / HOURS_PER_DAY,
    allowed: 0,
    noteAllowed: 10,
    unit: 'd',
    mark: 'practice',
  });
});

const BY_HAND = {
  source: 'Hand calculation from the drawn dimensions',
  kind: 'rel',
  allowed: 1e-6,
  mark: 'computed',
} as const;

/** Of all three, inside: floor [m²], front and height [m]. */
const FLOOR = 110;
const FRONT = 13.5;
const HIGH = 2.6;
const DEEP = FLOOR / FRONT;
const AROUND = 2 * (FRONT + DEEP);
/** Pole wall and two side walls, gross. */
const THREE_WALLS = (FRONT + 2 * DEEP) * HIGH;

test.each([
  {
    id: 'modest',
    by: {
      // 12 % of the floor in front, 5 % on the other sides
      'upright-glass double-low-e': 0.12 * FLOOR + 0.05 * FLOOR,
      'concrete floor': FLOOR * 0.1,
      tile: FLOOR,
      // R 2.5 under the floor, R 1.5 at the edge 0.6 m down, at 0.034 W/mK
      xps: FLOOR * 2.5 * 0.034 + AROUND * 0.6 * 1.5 * 0.034,
      // R 4.5 in the walls and R 8 on the ceiling at 0.04 W/mK, openings left out
      cellulose: (THREE_WALLS - 5.5 + FRONT * HIGH - 13.2) * 4.5 * 0.04,
      'loose-fill roof': FLOOR * 8 * 0.04,
      plasterboard: FLOOR + THREE_WALLS - 5.5 + FRONT * HIGH - 13.2,
      'lime-plaster': (THREE_WALLS - 5.5 + FRONT * HIGH - 13.2) * 0.015,
      softwood: FLOOR,
      adobe: 20 * 0.2,
      overhang: (FRONT + 2 * 0.5) * 0.6,
      sash: 2.5,
      // floor, insulation and tiles; a trench of 0.6 × 0.4 m around; 1600 kg/m³ of adobe from 1500 kg/m³ of ground
      digging: FLOOR * (0.1 + 0.01 + 0.085) + AROUND * 0.6 * 0.4 + (4 * 1600) / 1500,
    },
    blocks: ['adobe', Math.ceil(4 / 0.011)],
    tonnes: ['adobe', 4 * 1.6],
  },
  {
    id: 'closed',
    by: {
      // 18 m² in front of the sunspace, 2 m² in the common wall
      'upright-glass double-low-e': 18 + 0.05 * FLOOR + 2,
      'concrete floor': (FLOOR + 9 * 2.2 - 6) * 0.1,
      adobe: 20 * 0.2 + (9 * HIGH - 2 - 2) * 0.25,
      cellulose: (THREE_WALLS - 5.5 + (FRONT - 9) * HIGH + (9 * HIGH - 18) + 2 * 2.2 * HIGH) * 4.5 * 0.04,
      'loose-fill roof': (FLOOR + 9 * 2.2) * 8 * 0.04,
      plywood: 9 * 2.2 + (9 * HIGH - 18) + 2 * 2.2 * HIGH,
      'bed-soil': 6 * 0.3,
      'sunspace-door': 1,
      'sunspace-vent': 3,
      overhang: (9 + 2 * 0.5) * 0.5,
    },
    blocks: ['adobe', Math.ceil((4 + 19.4 * 0.25) / 0.011)],
    tonnes: ['concrete floor', 12.38 * 2.3],
  },
  {
    id: 'leaning',
    by: {
      'leaning-glass double-clear': 38,
      // 1 % of the floor on three sides; two ends: an oblong behind the lean of 60°, half an oblong under it
      'upright-glass double-clear': 0.01 * FLOOR + 2 * HIGH * (2.4 - HIGH / Math.tan(Math.PI / 3) / 2),
      'concrete floor': (FLOOR + FRONT * 2.4 - 16) * 0.1,
      'bed-soil': 16 * 0.3,
      'earth-tyres': Math.ceil(((THREE_WALLS - 1.1 + 35) * 0.7) / (0.8 * 0.22 * 0.7)),
      'loose-fill roof': (FLOOR + FRONT * (2.4 - HIGH / Math.tan(Math.PI / 3))) * 8 * 0.04,
      // a wedge twice as long as high, and a quarter of a cone at two corners
      berm: ((FRONT + 2 * DEEP) * HIGH * 2 * HIGH) / 2 + (2 * Math.PI * (2 * HIGH) ** 2 * HIGH) / 3 / 4,
      'sunspace-vent': 2.4,
    },
    blocks: ['earth-tyres', 633],
    tonnes: ['earth-tyres', (THREE_WALLS - 1.1 + 35) * 0.7 * 1.7],
  },
] as const)('the bill of $id is what a hand calculation gives', ({ id, by, blocks, tonnes }) => {
  const bill = billOf(EXAMPLES.find((example) => example.id === id)!.design);
  const line = (item: string) => bill.lines.find((entry) => entry.item.id === item);
  for (const [item, reference] of Object.entries(by)) {
    expect(line(item), item).toBeDefined();
    const { amount, item: of } = line(item)!;
    check({
      ...BY_HAND,
      case: `${id}: ${of.name}`,
      quantity: 'quantity',
      reference,
      ours: amount,
      unit: of.unit,
    });
  }
  check({
    ...BY_HAND,
    case: `${id}: ${line(blocks[0])!.item.name}`,
    quantity: 'pieces',
    reference: blocks[1],
    ours: line(blocks[0])!.pieces!,
    unit: 'piece',
  });
  check({
    ...BY_HAND,
    case: `${id}: ${line(tonnes[0])!.item.name}`,
    quantity: 'weight',
    reference: tonnes[1],
    ours: line(tonnes[0])!.weightKg! / 1000,
    unit: 't',
  });
});

test('stoves, flues, stores and pipes of a floor are what a hand calculation gives', () => {
  const amounts = (design: Design) =>
    Object.fromEntries(billOf(design).lines.map(({ item, amount }) => [item.id, amount]));
  const example = (id: string) => ALL_EXAMPLES.find((one) => one.id === id)!.design;
  const modest = example('modest');
  const floor = amounts({
    ...modest,
    heating: { ...modest.heating, source: { ...USUAL_STOVE, floorShare: 0.5, storeL: 500 } },
  });
  const masonry = billOf(example('closed-stove')).lines.find(({ item }) => item.id === 'stove masonry')!;
  // From 1 m over the floor to 1.5 m over a roof at 2.6 m: 3.1 m, four lengths.
  const flue = Math.ceil(HIGH - 1 + 1.5);
  for (const [id, item, reference] of [
    ['leaning-stove', 'flue', flue],
    ['leaning-stove', 'stove steel', 1],
    ['closed-stove', 'fire-air-pipe', 1],
    ['modest-stove', 'stove soapstone', 1],
  ] as const)
    check({
      ...BY_HAND,
      case: `${id}: ${item}`,
      quantity: 'quantity',
      reference,
      ours: amounts(example(id))[item]!,
      unit: 'piece',
    });
  check({
    ...BY_HAND,
    case: 'modest, back boiler and floor',
    quantity: 'pipes',
    reference: FLOOR,
    ours: floor['heating-pipes']!,
    unit: 'm²',
  });
  expect([floor['back-boiler'], floor['water-store']]).toEqual([1, 1]);
  check({
    ...BY_HAND,
    // 2 kW between fires 12 hours apart: 7.4 kg of wood, 70 kg of masonry for each (guild practice).
    case: 'closed-stove: masonry heater of 2 kW, fired twice a day',
    quantity: 'weight',
    reference: ((2 * 12) / 3.25) * 70,
    ours: masonry.weightKg!,
    unit: 'kg',
  });
  expect(Object.keys(amounts(modest)).filter((id) => /stove|flue|heater|boiler|pipes/.test(id))).toEqual([]);
});
