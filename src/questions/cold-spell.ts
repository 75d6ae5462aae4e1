// A house left without heat, or without power, from the evening before the coldest days of its year: how long it stays warm,
// how cold it is next morning and at last, and whether its coldest corner freezes. A design and its climate in, a few
// numbers out. Of several rooms the coldest counts in every hour.

import { runYear } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { Model } from '../model/model.ts';
import type { RowSeries } from '../network/given-series.ts';
import type { Outage } from '../network/simulate.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS, rowOfHour } from '../weather/typical-year.ts';

const HOURS_A_DAY = 24;
/** The coldest spell is the coldest mean of so many days; the house is followed for so many from its eve. House rules. */
const SPELL_DAYS = 3;
const FOLLOWED_DAYS = 14;
/** Heat fails at this hour of the eve; the morning after ends at this hour. House rules. */
const FAILS_AT_H = 18;
const MORNING_ENDS_H = 10;
const FREEZING_C = 0;

/** Figures of a house from the hour at which something fails. */
export interface Failure {
  /** hours until the rooms are below the temperature that counts as too cold; null where they never are within the days followed */
  readonly warmHours: number | null;
  /** hours until the coldest corner is at freezing; null likewise */
  readonly unfrozenHours: number | null;
  /** lowest felt temperature by the next morning, and in all days followed [°C] */
  readonly nextMorningC: number;
  readonly lowestC: number;
}

export interface ColdSpell {
  /** first row of the spell, and outdoors in its days: mean and lowest [°C] */
  readonly fromRow: number;
  readonly outdoorMeanC: number;
  readonly outdoorLowestC: number;
  readonly daysFollowed: number;
  /** no heater gives anything and nobody lights a fire: the heater broken, the stove forgotten, people away */
  readonly noHeat: Failure;
  /** no fan, lamp or motor, and no heat but that of a stove people feed, without a back boiler */
  readonly noPower: Failure;
}

/** First row of the coldest days of a year, midnight. */
export function coldestRow(dryBulbC: Float64Array): number {
  const days = HOURS / HOURS_A_DAY;
  const daySum = Array.from({ length: days }, (_, day) =>
    dryBulbC.subarray(day * HOURS_A_DAY, (day + 1) * HOURS_A_DAY).reduce((sum, celsius) => sum + celsius, 0),
  );
  const spell = (day: number) =>
    Array.from({ length: SPELL_DAYS }, (_, i) => daySum[(day + i) % days]!).reduce(
      (sum, one) => sum + one,
      0,
    );
  let coldest = 0;
  for (let day = 1; day < days; day++) if (spell(day) < spell(coldest)) coldest = day;
  return coldest * HOURS_A_DAY;
}

/** Both failures of a house in its coldest spell. */
export function coldSpellOf(design: Design, climate: PreparedClimate): ColdSpell {
  const { dryBulbC } = climate.year;
  const fromRow = coldestRow(dryBulbC);
  const outdoors = Array.from(
    { length: SPELL_DAYS * HOURS_A_DAY },
    (_, i) => dryBulbC[rowOfHour(fromRow, i)]!,
  );
  const { source } = design.heating;
  // A back boiler whose pump stands must not be fired.
  const hasStove = source?.kind === 'stove' && !source.floorShare;
  return {
    fromRow,
    outdoorMeanC: outdoors.reduce((sum, celsius) => sum + celsius, 0) / outdoors.length,
    outdoorLowestC: Math.min(...outdoors),
    daysFollowed: FOLLOWED_DAYS,
    noHeat: failureOf(design, climate, fromRow, { noHeat: true, noPower: false }),
    noPower: failureOf(design, climate, fromRow, { noHeat: !hasStove, noPower: true }),
  };
}

function failureOf(
  design: Design,
  climate: PreparedClimate,
  fromRow: number,
  fails: Pick<Outage, 'noHeat' | 'noPower'>,
): Failure {
  const firstRow = rowOfHour(fromRow, -HOURS_A_DAY);
  const hours = FOLLOWED_DAYS * HOURS_A_DAY;
  const rows = Array.from({ length: hours - FAILS_AT_H }, (_, i) => rowOfHour(firstRow, FAILS_AT_H + i));
  const { year } = runYear(design, climate, {
    lend: true,
    period: { firstRow, hours },
    outage: { fromHour: FAILS_AT_H, ...fails },
    seriesOf: (model) => (fails.noPower ? darkness(model, rows) : []),
  });
  const rooms = year.rooms ?? year.zones.filter(({ id }) => id === 'house');
  const lowest = (columnOf: (room: (typeof rooms)[number]) => Float64Array) =>
    rows.map((row) => Math.min(...rooms.map((room) => columnOf(room)[row]!)));
  const feltC = lowest(({ operativeC }) => operativeC);
  const cornerC = lowest(({ cornerC: corner }) => corner);
  const untilBelow = (values: readonly number[], limitC: number) => {
    const at = values.findIndex((celsius) => celsius < limitC);
    return at < 0 ? null : at;
  };
  return {
    warmHours: untilBelow(feltC, design.comfort.underheatC),
    unfrozenHours: untilBelow(cornerC, FREEZING_C),
    nextMorningC: Math.min(...feltC.slice(0, HOURS_A_DAY - FAILS_AT_H + MORNING_ENDS_H)),
    lowestC: Math.min(...feltC),
  };
}

/** Lamps and appliances give nothing in these rows. */
function darkness({ zones }: Model, rows: readonly number[]): RowSeries[] {
  const values = new Float64Array(HOURS).fill(Number.NaN);
  for (const row of rows) values[row] = 0;
  return zones.flatMap(({ id, gains }) =>
    gains
      .filter((gain) => gain.id !== 'people')
      .map((gain): RowSeries => ({ kind: 'gain', zone: id, gain: gain.id, values })),
  );
}
