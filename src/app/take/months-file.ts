// Heat and water of every zone by month and cause, each room of a divided house beside the house they make up, as a table
// for a spreadsheet. SI throughout, units in the rows.

import type { Year } from '../../network/year.ts';
import { heatByMonth, type MonthlyRow, moistureByMonth, withRoomsApart } from '../../outcomes/balances.ts';
import { MONTH_NAMES } from '../../outcomes/calendar.ts';
import { csvText } from './csv-text.ts';

/**
 * The table.
 *
 * @param name the design's name, as it was typed
 */
export function monthsFile(name: string, ofHouse: Year): string {
  const year = withRoomsApart(ofHouse);
  const rowOf = (what: string, unit: string, digits: number) => (row: MonthlyRow) => [
    name,
    row.zone,
    what,
    row.cause,
    unit,
    ...[...row.months, row.year].map((value) => Number(value.toFixed(digits)) + 0),
  ];
  return csvText([
    ['design', 'zone', 'what', 'cause', 'unit', ...MONTH_NAMES, 'year'],
    ...heatByMonth(year).map(rowOf('heat into the zone', 'kWh', 2)),
    ...moistureByMonth(year).map(rowOf('water vapour released', 'kg', 3)),
  ]);
}
