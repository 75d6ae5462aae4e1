// The hourly file: one year as comma-separated text, a header row and 8760 rows, for a spreadsheet or a script.
// Stamps are the END of the hour in local standard time: hour 1…8760, month 1…12, day 1…31, hourOfDay 1…24.

import type { Year, ZoneYear } from '../network/year.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { dateOfHour } from './calendar.ts';
import { csvCell } from './csv-cell.ts';

interface Column {
  readonly suffix: string;
  readonly of: (zone: ZoneYear) => Float64Array;
  readonly decimals: number;
}

/** Columns of each zone, in order; decimals are finer than anything the model can vouch for. */
const ZONE_COLUMNS: readonly Column[] = [
  { suffix: 'AirC', of: (zone) => zone.airC, decimals: 3 },
  { suffix: 'OperativeC', of: (zone) => zone.operativeC, decimals: 3 },
  { suffix: 'Rh', of: (zone) => zone.relativeHumidity, decimals: 4 },
  { suffix: 'SolarW', of: (zone) => zone.solarW, decimals: 1 },
  { suffix: 'HeatingW', of: (zone) => zone.heatingW, decimals: 1 },
  { suffix: 'VentAch', of: (zone) => zone.ventAch, decimals: 4 },
  { suffix: 'MoistureSourceGPerH', of: (zone) => zone.moistureG, decimals: 2 },
  { suffix: 'CondensationGPerH', of: (zone) => zone.condensationG, decimals: 2 },
];

/** Columns of each zone that stand behind all of those, so that a column once read by its place stays there. */
const LATER_COLUMNS: readonly Column[] = [
  { suffix: 'AirHeatW', of: (zone) => zone.airHeatW, decimals: 1 },
  { suffix: 'AirWaterGPerH', of: (zone) => zone.airWaterG, decimals: 2 },
];

/**
 * The year as comma-separated text with a decimal point, lines ended by a line feed.
 *
 * @param climate the weather the year was run in
 * @param year one run
 */
export function hourlyFile(climate: Pick<PreparedClimate, 'year'>, year: Year): string {
  const columnsOf = (zones: readonly ZoneYear[]) =>
    [ZONE_COLUMNS, LATER_COLUMNS].flatMap((group) =>
      zones.flatMap((zone) =>
        group.map(({ suffix, of, decimals }) => ({
          name: `${zone.id}${suffix}`,
          values: of(zone),
          decimals,
        })),
      ),
    );
  // Rooms of a divided house behind the house and its sunspace.
  const columns = [...columnsOf(year.zones), ...columnsOf(year.rooms ?? [])];
  const names = columns.map(({ name }) => name);
  const head = ['hour', 'month', 'day', 'hourOfDay', 'outdoorC', 'globalWm2', ...names];
  const lines = [head.map(csvCell).join(',')];
  for (let hour = 0; hour < HOURS; hour++) {
    const { month, day, hour: start } = dateOfHour(hour);
    const cells: (string | number)[] = [hour + 1, month, day, start + 1];
    cells.push(fixed(climate.year.dryBulbC[hour]!, 2), fixed(climate.year.globalHorizontal[hour]!, 1));
    for (const { values, decimals } of columns) cells.push(fixed(values[hour]!, decimals));
    lines.push(cells.join(','));
  }
  return `${lines.join('\n')}\n`;
}

/** Rounded, without a minus before zero. */
function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
