// A logger that hung outdoors at the house: its air, and its humidity if it has any, go before those of a station, which
// stays the source of sun and wind. Without a station it is all the weather there is.

import { dewPointFromHumidity } from '../weather/assembly/humidity.ts';
import type { RealHours } from '../weather/real/weather-record.ts';
import type { Site } from '../weather/typical-year.ts';
import type { PlacedColumn } from './record-of-files.ts';
import { columnOver } from './shared-days.ts';

/** Where such a logger hangs, in place of a zone. */
export const OUTDOORS = 'outdoors';

export type OutdoorColumn = Pick<PlacedColumn, 'file' | 'column'>;

/** The weather with what hung outdoors; null where there is neither. */
export function withOutdoorLogger(
  station: RealHours | null,
  columns: readonly OutdoorColumn[],
  site: Site,
): RealHours | null {
  const air = columns.find(({ column }) => column.kind === 'temperature');
  if (air === undefined) return station;
  const { startMs, hours } = station ?? air.file;
  const over = ({ file, column }: OutdoorColumn) =>
    columnOver(column.values, file.startMs, { startMs, hours });
  const read = over(air);
  const dryBulbC = station === null ? read : station.dryBulbC.map((was, hour) => known(read[hour]!, was));
  const moist = columns.find(({ column }) => column.kind === 'humidity');
  const humidity = moist && over(moist);
  const dewPoint = humidity?.map((percent, hour) =>
    Number.isNaN(percent + dryBulbC[hour]!) ? Number.NaN : dewPointFromHumidity(dryBulbC[hour]!, percent),
  );
  const was = station?.dewPointC ?? null;
  const dewPointC = dewPoint?.map((value, hour) => known(value, was?.[hour] ?? Number.NaN)) ?? was;
  return { ...(station ?? { site, startMs, hours }), dryBulbC, dewPointC };
}

function known(value: number, otherwise: number): number {
  return Number.isNaN(value) ? otherwise : value;
}
