// A climate's figures by month: what the pictures show, and what they leave out.

import {
  type ClimateSummary,
  DEGREE_DAY_BASE_C,
  HUMID_LIMIT,
  type Spell,
} from '../../weather/prepared/climate-summary.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';
import { isUs, type ShownQuantity, toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { MonthHead } from '../parts/MonthHead.tsx';
import { NumbersFold } from '../parts/NumbersFold.tsx';
import { numberText, quantityText } from '../parts/number-text.ts';

type Row = readonly [label: string, quantity: ShownQuantity, digits: number, of: (spell: Spell) => number];

const ROWS: readonly Row[] = [
  ['mean temperature', 'temperature', 1, ({ meanC }) => meanC],
  ['mean day', 'temperature', 1, ({ meanDailyHighC }) => meanDailyHighC],
  ['mean night', 'temperature', 1, ({ meanDailyLowC }) => meanDailyLowC],
  ['highest', 'temperature', 1, ({ highestC }) => highestC],
  ['lowest', 'temperature', 1, ({ lowestC }) => lowestC],
  ['heating degree-days', 'degreeDays', 0, ({ heatingDegreeDays }) => heatingDegreeDays],
  ['cooling degree-days', 'degreeDays', 0, ({ coolingDegreeDays }) => coolingDegreeDays],
  ['sun on level ground', 'energyPerArea', 0, ({ globalKWh }) => globalKWh],
  ['upright to the equator', 'energyPerArea', 0, ({ upright90KWh }) => upright90KWh],
  ['at 60° to the equator', 'energyPerArea', 0, ({ leaning60KWh }) => leaning60KWh],
  ['share of the sun above the clouds', 'share', 0, ({ clearness }) => clearness ?? Number.NaN],
  ['wind', 'speed', 1, ({ meanWind }) => meanWind],
  ['humidity', 'share', 0, ({ meanRelativeHumidity }) => meanRelativeHumidity],
  ['humid hours', 'hours', 0, ({ humidHours }) => humidHours],
];

export function GlanceTable({ summary, system }: { summary: ClimateSummary; system: UnitSystem }) {
  const spells = [...summary.months, summary.year];
  const digitsOf = (quantity: ShownQuantity, digits: number) =>
    quantity === 'energyPerArea' && isUs(system) ? 1 : digits;
  return (
    <NumbersFold label="The climate by month">
      <table>
        <caption>
          Degree-days from daily means and {quantityText(DEGREE_DAY_BASE_C, 'temperature', system)}; humid is{' '}
          {quantityText(HUMID_LIMIT, 'share', system, 0)} and more; wind at 10 m
        </caption>
        <MonthHead rows="figure" />
        <tbody>
          {ROWS.map(([label, quantity, digits, of]) => (
            <tr key={label}>
              <th scope="row">
                {label}, {unitOf(quantity, system).sign}
              </th>
              {spells.map((spell, i) => {
                const value = toShown(of(spell), quantity, system);
                const text = Number.isNaN(value) ? '–' : numberText(value, digitsOf(quantity, digits));
                return <td key={MONTH_SHORT[i] ?? 'year'}>{text}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </NumbersFold>
  );
}
