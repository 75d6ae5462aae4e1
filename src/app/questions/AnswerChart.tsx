// One chart of an answer as SVG: curves told apart by dash as well as colour, handbook marks, the limit. The numbers
// stand in a table under it.

import { useState } from 'preact/hooks';
import { FIGURE_NAMES, type FigureKey } from '../../questions/figures.ts';
import type { Chart } from '../../questions/question.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { NumbersFold } from '../parts/NumbersFold.tsx';
import { DASHES, drawChart, LETTER_ROW, tidy } from './answer-chart.ts';
import { unitShown, valueShown } from './answer-units.ts';

interface AnswerChartProps {
  readonly chart: Chart;
  readonly limitHours: number;
  readonly system: UnitSystem;
}

export function AnswerChart({ chart, limitHours, system }: AnswerChartProps) {
  const [figure, setFigure] = useState<FigureKey>(chart.y[0]!);
  const { unit } = FIGURE_NAMES[figure];
  const xUnit = chart.x.unit;
  const drawing = drawChart(chart, figure, figure === 'tooHotHours' ? limitHours : null, system);
  const { frame, shareRows } = drawing;
  return (
    <div class="answer-chart">
      <div class="answer-chart-head">
        <h4>{chart.title}</h4>
        <label>
          Upward{' '}
          <select value={figure} onChange={(event) => setFigure(event.currentTarget.value as FigureKey)}>
            {chart.y.map((key) => (
              <option key={key} value={key}>
                {FIGURE_NAMES[key].label}
              </option>
            ))}
          </select>
        </label>
      </div>
      <svg
        viewBox={`0 0 ${drawing.width} ${drawing.height}`}
        role="img"
        aria-label={`${chart.title}: ${drawing.yTitle}`}
      >
        {drawing.yTicks.map(({ at, text }) => (
          <g key={text}>
            <line class="answer-grid" x1={frame.left} x2={frame.right} y1={at} y2={at} />
            <text x={frame.left - 6} y={at + 4} text-anchor="end">
              {text}
            </text>
          </g>
        ))}
        {drawing.xTicks.map(({ at, text }) => (
          <text key={text} x={at} y={frame.bottom + 16} text-anchor="middle">
            {text}
          </text>
        ))}
        {shareRows.map(({ head, y, ticks }) => (
          <g key={head} class="answer-share">
            <text x={frame.left + 6} y={y} text-anchor="end">
              {head}
            </text>
            {ticks.map(({ at, text }) => (
              <text key={text} x={at} y={y} text-anchor="middle">
                {text}
              </text>
            ))}
          </g>
        ))}
        <text x={(frame.left + frame.right) / 2} y={drawing.height - 8} text-anchor="middle">
          {drawing.xTitle}
        </text>
        <text x={4} y={14}>
          {drawing.yTitle}
        </text>
        {drawing.marks.map(({ x, letter, row }) => (
          <g key={letter}>
            <line class="answer-mark" x1={x} x2={x} y1={frame.top} y2={frame.bottom} />
            <text x={x + 3} y={frame.top - 2 + LETTER_ROW * row}>
              {letter}
            </text>
          </g>
        ))}
        {drawing.limitY !== null && (
          <g>
            <line
              class="answer-limit"
              x1={frame.left}
              x2={frame.right}
              y1={drawing.limitY}
              y2={drawing.limitY}
            />
            <text x={frame.right} y={drawing.limitY - 4} text-anchor="end">
              limit {limitHours} h
            </text>
          </g>
        )}
        {drawing.lines.map((line, i) => (
          <g key={line.id} class={`answer-line is-${i % DASHES.length}`}>
            <polyline
              points={line.points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')}
              stroke-dasharray={DASHES[i % DASHES.length]}
            />
            {line.points.map(({ x, y, text }) => (
              <circle key={text} cx={x} cy={y} r={2.4} />
            ))}
          </g>
        ))}
      </svg>
      {chart.x.shares && (
        <p class="answer-shares">
          Under the scale, the same as a share of{' '}
          {chart.x.shares
            .map(({ of, short, wholeX }) => {
              const { sign, digits } = unitShown(xUnit, system);
              return `the ${of} (row “${short}, %”; the whole is ${valueShown(wholeX, xUnit, system).toFixed(digits ?? 0)} ${sign})`;
            })
            .join(' and of ')}
          .
        </p>
      )}
      <ul class="answer-legend">
        {drawing.lines.map((line, i) => (
          <li key={line.id} class={`answer-line is-${i % DASHES.length}`}>
            <svg viewBox="0 0 34 8" aria-hidden="true">
              <line x1="1" x2="33" y1="4" y2="4" stroke-dasharray={DASHES[i % DASHES.length]} />
            </svg>
            <span>{line.label}</span>
          </li>
        ))}
      </ul>
      {drawing.marks.length > 0 && (
        <ul class="answer-legend">
          {drawing.marks.map(({ letter, text }) => (
            <li key={letter}>
              <strong>{letter}</strong> <span>{text}</span>
            </li>
          ))}
        </ul>
      )}
      <NumbersFold label={`${chart.title}, as numbers`}>
        <table>
          <thead>
            <tr>
              <th scope="col">{chart.x.label}</th>
              {chart.curves.map((curve) => (
                <th key={curve.id} scope="col">
                  {curve.label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...new Set(chart.curves.flatMap(({ points }) => points.map(({ x }) => x)))]
              .toSorted((a, b) => a - b)
              .map((x) => (
                <tr key={x}>
                  <th scope="row">
                    {tidy(valueShown(x, xUnit, system))} {unitShown(xUnit, system).sign}
                  </th>
                  {chart.curves.map((curve) => {
                    const value = curve.points.find((point) => point.x === x)?.figures[figure];
                    return (
                      <td key={curve.id}>
                        {value === undefined || value === null ? '' : tidy(valueShown(value, unit, system))}
                      </td>
                    );
                  })}
                </tr>
              ))}
          </tbody>
        </table>
      </NumbersFold>
    </div>
  );
}
