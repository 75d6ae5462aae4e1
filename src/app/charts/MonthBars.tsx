// Monthly amounts by cause: stacked bars with a key, and the same numbers as a table that opens below. Every cause
// keeps its colour in every chart; the table is the text a screen reader and a printer need.

import type { MonthlyRow } from '../../outcomes/balances.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';
import { causeClass } from '../parts/cause-colours.ts';
import { type ShownQuantity, toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { useElementWidth } from '../parts/element-width.ts';
import { MonthHead } from '../parts/MonthHead.tsx';
import { NumbersFold } from '../parts/NumbersFold.tsx';
import { numberText } from '../parts/number-text.ts';
import { barField } from './month-bars.ts';

const HEIGHT_PX = 200;
const LEFT_PX = 44;
const BELOW_PX = 20;

export interface MonthBarsProps {
  readonly rows: readonly MonthlyRow[];
  readonly quantity: ShownQuantity;
  readonly system: UnitSystem;
  /** what the numbers are, for the table's caption */
  readonly caption: string;
}

export function MonthBars({ rows, quantity, system, caption }: MonthBarsProps) {
  const { ref, width } = useElementWidth<HTMLDivElement>();
  const shown = rows
    .map((row) => ({
      ...row,
      months: row.months.map((value) => toShown(value, quantity, system)),
      year: toShown(row.year, quantity, system),
    }))
    .filter((row) => row.months.some((value) => Math.abs(value) >= 0.05));
  const { sign } = unitOf(quantity, system);
  return (
    <div class="month-bars">
      <ul class="cause-key" aria-hidden="true">
        {shown.map(({ cause }) => (
          <li key={cause}>
            <i class={causeClass(cause)} />
            {cause}
          </li>
        ))}
      </ul>
      <div ref={ref} style={{ height: `${HEIGHT_PX + BELOW_PX}px` }}>
        {width !== null && <Bars rows={shown} width={width} sign={sign} />}
      </div>
      <NumbersFold label={caption}>
        <table>
          <caption>
            {caption}, {sign}
          </caption>
          <MonthHead rows="cause" />
          <tbody>
            {shown.map((row) => (
              <tr key={row.cause}>
                <th scope="row">{row.cause}</th>
                {row.months.map((value, month) => (
                  <td key={MONTH_SHORT[month]}>{numberText(value, 0)}</td>
                ))}
                <td>{numberText(row.year, 0)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </NumbersFold>
    </div>
  );
}

function Bars({ rows, width, sign }: { rows: readonly MonthlyRow[]; width: number; sign: string }) {
  const inner = Math.max(120, width - LEFT_PX);
  const field = barField(rows, inner, HEIGHT_PX - 12);
  return (
    <svg width={width} height={HEIGHT_PX + BELOW_PX + 6} aria-hidden="true">
      <g transform={`translate(${LEFT_PX} 16)`}>
        {field.ticks.map(({ value, y }) => (
          <g key={value}>
            <line class="bar-rule" x1={0} x2={inner} y1={y} y2={y} />
            <text class="bar-word" x={-6} y={y + 4} text-anchor="end">
              {numberText(value, 0)}
            </text>
          </g>
        ))}
        <text class="bar-word" x={2} y={field.ticks.at(-1)!.y - 4}>
          {sign}
        </text>
        {field.bars.map((bar) => (
          <rect
            key={`${bar.cause} ${bar.month}`}
            class={causeClass(bar.cause)}
            x={bar.x}
            y={bar.y}
            width={bar.width}
            height={Math.max(0, bar.height)}
          />
        ))}
        <line class="bar-zero" x1={0} x2={inner} y1={field.zeroY} y2={field.zeroY} />
        {MONTH_SHORT.map((name, month) => (
          <text
            key={name}
            class="bar-word"
            x={((month + 0.5) * inner) / 12}
            y={HEIGHT_PX + 4}
            text-anchor="middle"
          >
            {width < 460 ? name[0] : name}
          </text>
        ))}
      </g>
    </svg>
  );
}
