// What checks of measured houses share: the climate of a place, spells of a year, what nobody noted as a band, and the row
// that enters the ledger. A band is run at its corners, each thing not known at its lowest and at its highest, as written down
// before the first run; it passes where what ours spans and what was measured, widened by what such an account is worth,
// overlap. A miss stays in the table as a note with its reason.
import { expect } from 'vitest';
import { placeFiles } from '../../src/cli/place-data.ts';
import { runYear } from '../../src/daystone.ts';
import type { Design } from '../../src/design/design.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Element, Layer, Model } from '../../src/model/model.ts';
import { lookedUp } from '../../src/places/looked-up.ts';
import type { MonthlyNormals } from '../../src/weather/normals.ts';
import { type PreparedClimate, prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { yearFromNormals } from '../../src/weather/synthetic/monthly-normals.ts';
import { monthOfHour } from '../../src/weather/typical-year.ts';
import { check } from './ledger.ts';

export const DAY_H = 24;
/** January is 0. */
export const WINTER = [11, 0, 1];

interface Measured {
  /** 'Houses as measured' and its like; a comma, then the publication */
  readonly source: string;
  /** what kind of house it is and where, in plain words; what is taken for what */
  readonly where: string;
  readonly quantity: string;
  readonly range: readonly [number, number];
  /** the range in words, where the account has but one side of it */
  readonly told?: string;
  readonly allowed: number;
  /** a figure, or one for each corner of what nobody noted */
  readonly ours: number | readonly number[];
  readonly unit: string;
  /** a miss that is known: how far off it may be before it fails, and its reason */
  readonly missed?: { readonly by: number; readonly why: string };
}

/** Enter what was measured beside what ours says. */
export function measured({
  source,
  where,
  quantity,
  range,
  told,
  allowed,
  ours,
  unit,
  missed,
}: Measured): void {
  const all = typeof ours === 'number' ? [ours] : ours;
  check({
    source,
    case: missed === undefined ? where : `${where}. ${missed.why}`,
    quantity,
    kind: 'range',
    referenceMin: range[0],
    referenceMax: range[1],
    ours: mean(all),
    ...(all.length > 1 && { band: [Math.min(...all), Math.max(...all)] as const }),
    ...(told !== undefined && { told }),
    allowed,
    unit,
    mark: 'measured',
    ...(missed !== undefined && { noteAllowed: missed.by }),
  });
}

/** Every corner of things not known: each of them at its lowest and its highest. */
export function corners<Key extends string>(
  unknown: Readonly<Record<Key, readonly [low: number, high: number]>>,
): readonly Readonly<Record<Key, number>>[] {
  const keys = Object.keys(unknown) as Key[];
  return keys.reduce<Record<Key, number>[]>(
    (all, key) => all.flatMap((one) => unknown[key].map((value) => ({ ...one, [key]: value }))),
    [{} as Record<Key, number>],
  );
}

/** A year made from monthly normals. */
export function madeClimate(normals: MonthlyNormals): PreparedClimate {
  const made = yearFromNormals(normals);
  if (!made.ok) throw new Error(`${normals.name} makes no year`);
  return prepareClimate(made.year);
}

/** A year made from normals that are looked up for a place, as the page does. */
export async function climateAt(
  name: string,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number,
): Promise<PreparedClimate> {
  const files = await placeFiles();
  const place = { name, latitudeDeg, longitudeDeg, elevationM, region: '', country: '', countryCode: '' };
  return madeClimate(lookedUp(place, null, files, files.table).normals);
}

/** A design lived through a year: air and humidity of its rooms and sunspace, all of the year, and its figures. */
export function run(design: Design, climate: PreparedClimate) {
  const parsed = parseDesign(JSON.parse(JSON.stringify(design)));
  expect(parsed, JSON.stringify(parsed).slice(0, 300)).toMatchObject({ ok: true });
  const { year, outcome, climate: lived } = runYear(design, climate);
  const [rooms] = year.zones;
  const sunspaceC = year.zones.find(({ id }) => id === 'sunspace')?.airC;
  return { airC: rooms!.airC, rh: rooms!.relativeHumidity, sunspaceC, year, outcome, climate: lived };
}

/** What a design is built as in a climate. */
export const wholeModel = (design: Design, climate: PreparedClimate): Model =>
  modelOf(design, climate.year.site, climate.ground);

/** A model with the layers of one of its elements changed. */
export function withLayers(
  model: Model,
  id: string,
  changed: (layers: readonly Layer[]) => readonly Layer[],
): Model {
  const at = model.elements.find((element) => element.id === id);
  if (at === undefined) throw new RangeError(`element is '${id}'; allowed: one of the model`);
  const swap = (element: Element) =>
    element === at ? { ...element, layers: changed(element.layers) } : element;
  return { ...model, elements: model.elements.map(swap) };
}

export const hoursOf = (months: readonly number[]) =>
  Array.from({ length: 8760 }, (_, hour) => hour).filter((hour) => months.includes(monthOfHour(hour)));
export const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
export const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
/** Values of these hours. */
export const at = (values: ArrayLike<number>, hours: readonly number[]) => hours.map((hour) => values[hour]!);
/** Those of them that begin from one hour of the day to before another. */
export const between = (hours: readonly number[], from: number, until: number) =>
  hours.filter((hour) => hour % DAY_H >= from && hour % DAY_H < until);

/** Hours of so many days in one piece, of some months or of all, over which a column has its largest or its smallest sum. */
export function spell(
  column: ArrayLike<number>,
  days: number,
  { months, least = false }: { readonly months?: readonly number[]; readonly least?: boolean } = {},
): readonly number[] {
  const hours = days * DAY_H;
  let best: readonly number[] = [];
  let most = Number.NEGATIVE_INFINITY;
  for (let from = 0; from + hours <= column.length; from += DAY_H) {
    const piece = Array.from({ length: hours }, (_, i) => from + i);
    if (months && !piece.every((hour) => months.includes(monthOfHour(hour)))) continue;
    const sum = at(column, piece).reduce((all, value) => all + value, 0) * (least ? -1 : 1);
    if (sum > most) [most, best] = [sum, piece];
  }
  return best;
}
