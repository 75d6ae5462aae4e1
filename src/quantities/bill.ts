// The bill of quantities of a design: what it takes to build, item by item, with the sum behind each and the hours of work.
// A design in, lines out. It is taken off the model that the year is run with, so that what is counted is what is
// run. What no design draws is not on it: footings, roof and wall frames, drains, pipes, wires, outer doors, finishes.

import type { Design } from '../design/design.ts';
import { modelOf } from '../model/from-design.ts';
import { NEVER_RUN } from '../model/ground-contact.ts';
import type { Site } from '../weather/typical-year.ts';
import { earthTakes } from './earthwork.ts';
import type { FormulaWords } from './figures-in-units.ts';
import { glazingTakes } from './glazing.ts';
import { heatSourceTakes } from './heat-source.ts';
import { type Item, itemById, piecesIn } from './items.ts';
import { CLAY_BULKING, firstTimerFactor, HOURS_PER_DAY, usualHours } from './norms.ts';
import { shellTakes } from './shell.ts';
import type { Take } from './take.ts';
import { airTakes } from './ways-for-air.ts';

export interface BillLine {
  readonly item: Item;
  /** in the item's unit */
  readonly amount: number;
  /** in place, where they are known */
  readonly areaM2: number | null;
  readonly volumeM3: number | null;
  readonly weightKg: number | null;
  /** what is carried: whole bags, blocks, tyres */
  readonly pieces: number | null;
  /** earth once dug [m³]; null for what is not earth */
  readonly looseM3: number | null;
  /** of one person at the pace of the norm, and as a first-timer [h] */
  readonly hours: number;
  readonly firstTimerHours: number;
  /** how the amount comes about */
  readonly formula: (words: FormulaWords) => string;
}

export interface Bill {
  readonly lines: readonly BillLine[];
  /** of one person who does it for the first time [days of 8 h] */
  readonly days: number;
  readonly hours: number;
  readonly firstTimerHours: number;
}

/** Not on the bill, told beside it. */
export const NOT_COUNTED =
  'Not counted, since no design draws it: footings, frames of walls and roof, roofing, drains, pipes, wires, outer doors, a heater whose fuel is not told, a boiler’s flue, paint, tools, hire and haulage.';

/** Areas and volumes do not depend on where the house stands. */
const ANYWHERE: Site = { name: '', latitudeDeg: 40, longitudeDeg: 0, elevationM: 0, utcOffsetH: 0 };
const EARTH: readonly string[] = ['digging', 'berm'];

/** Bills of designs alike in all numbers, the newest last. */
const known = new Map<string, Bill>();
const MOST_KNOWN = 400;

/**
 * The bill of a design.
 *
 * @param design checked
 * @returns lines in the order of the house: shell, glass, ways for air, earth; hours of one person
 */
export function billOf(design: Design): Bill {
  const key = JSON.stringify(design);
  const found = known.get(key);
  if (found !== undefined) return found;
  const bill = billFrom(takesOf(design));
  if (known.size >= MOST_KNOWN) known.delete(known.keys().next().value!);
  known.set(key, bill);
  return bill;
}

/** Every part of the house. */
function takesOf(drawn: Design): readonly Take[] {
  const { asFound: _, ...design } = drawn;
  const model = modelOf(design, ANYWHERE, NEVER_RUN);
  const { elements, panes, openings } = model;
  return [
    ...shellTakes(elements),
    ...glazingTakes(design, panes),
    ...airTakes(design, openings),
    ...earthTakes(design, elements),
    ...heatSourceTakes(design, model),
  ];
}

function billFrom(takes: readonly Take[]): Bill {
  const byItem = new Map<string, Take[]>();
  for (const take of takes) byItem.set(take.item, [...(byItem.get(take.item) ?? []), take]);
  const lines = [...byItem].map(([id, all]) => lineOf(itemById(id), all));
  const sum = (of: (line: BillLine) => number) => lines.reduce((total, line) => total + of(line), 0);
  const firstTimerHours = sum((line) => line.firstTimerHours);
  return {
    lines,
    hours: sum((line) => line.hours),
    firstTimerHours,
    days: firstTimerHours / HOURS_PER_DAY,
  };
}

function lineOf(item: Item, takes: readonly Take[]): BillLine {
  const total = (key: 'areaM2' | 'volumeM3' | 'weightKg' | 'count') =>
    takes.some((take) => take[key] !== undefined)
      ? takes.reduce((sum, take) => sum + (take[key] ?? 0), 0)
      : null;
  const areaM2 = total('areaM2');
  const volumeM3 = total('volumeM3');
  const weightKg = total('weightKg');
  const pieces = item.pieces === undefined ? null : piecesIn(item.pieces, volumeM3 ?? 0, weightKg ?? 0);
  const counted = { 'm²': areaM2, 'm³': volumeM3, piece: pieces ?? total('count') };
  const amount = counted[item.unit] ?? 0;
  const hours = usualHours(item.norm) * (counted[item.norm.per] ?? 0);
  return {
    item,
    amount,
    areaM2,
    volumeM3,
    weightKg,
    pieces,
    looseM3: EARTH.includes(item.id) ? CLAY_BULKING * (volumeM3 ?? 0) : null,
    hours,
    firstTimerHours: hours * firstTimerFactor(item.norm),
    formula: (words) => formulaOf(item, takes, words),
  };
}

function formulaOf({ id, unit, pieces }: Item, takes: readonly Take[], words: FormulaWords): string {
  const sum = takes.map(({ how }) => how(words)).join(' + ');
  if (EARTH.includes(id)) return `${sum}${words.volumeSums}; once dug × ${CLAY_BULKING} (clay)`;
  if (unit === 'm³') return sum + words.volumeSums;
  if (unit !== 'piece' || pieces === undefined || !('m3' in pieces.each)) return sum;
  return `${sum}; ${words.volume(pieces.each.m3)} each, rounded up`;
}
