// A week hour by hour: rooms, sunspace and outdoors as lines, the sun as a shade behind. The chart is drawn anew when
// the data's shape or the colour scheme changes; otherwise only its data are replaced. Its cursor moves the hour.

import { useSignalEffect } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import uPlot from 'uplot';
import { dayText } from '../parts/calendar-words.ts';
import { type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { useElementWidth } from '../parts/element-width.ts';
import { type ScreenColour, screenColour } from '../parts/palette.ts';
import { useWorkspace } from '../state/session-context.ts';
import type { WeekColumns } from './week-hours.ts';

const HEIGHT_PX = 230;

export function WeekChart({
  columns,
  system,
  coldC,
}: {
  columns: WeekColumns;
  system: UnitSystem;
  coldC: number;
}) {
  const workspace = useWorkspace();
  const { ref, width } = useElementWidth<HTMLDivElement>();
  const plot = useRef<uPlot | null>(null);
  const marked = useRef(false);
  const hasSunspace = columns.sunspace !== null;
  const latest = useRef<uPlot.AlignedData>(dataOf(columns));
  latest.current = dataOf(columns);
  const hot = useRef(columns.hot);
  hot.current = columns.hot;

  useLayoutEffect(() => {
    if (!ref.current || width === null) return;
    const host = ref.current;
    const draw = () => {
      plot.current?.destroy();
      plot.current = new uPlot(
        chartOptions(
          host,
          width,
          hasSunspace,
          system,
          { coldC, hot: () => hot.current },
          (hour) => {
            workspace.hour.value = hour;
          },
          () => workspace.hour.peek(),
        ),
        latest.current,
        host,
      );
    };
    draw();
    const scheme = matchMedia('(prefers-color-scheme: dark)');
    scheme.addEventListener('change', draw);
    return () => {
      scheme.removeEventListener('change', draw);
      plot.current?.destroy();
      plot.current = null;
    };
  }, [width, hasSunspace, system, coldC]);

  useEffect(() => {
    plot.current?.setData(latest.current);
  }, [columns]);

  const [first, last] = [columns.hours[0]!, columns.hours.at(-1)!];
  useSignalEffect(() => {
    const hour = workspace.hour.value;
    const isHere = hour !== null && hour >= first && hour <= last;
    if (isHere || marked.current) plot.current?.redraw(false, false);
    marked.current = isHere;
  });

  return <div ref={ref} class="week-chart" style={{ minHeight: `${HEIGHT_PX}px` }} aria-hidden="true" />;
}

/** Too cold is one temperature [°C]; too hot is a limit by hour, in the units shown. */
interface Limits {
  readonly coldC: number;
  readonly hot: () => Float64Array;
}

function dataOf(columns: WeekColumns): uPlot.AlignedData {
  const lines = [columns.hours, columns.sun, columns.outdoor, columns.house];
  if (columns.sunspace) lines.splice(3, 0, columns.sunspace);
  return lines as unknown as uPlot.AlignedData;
}

function chartOptions(
  host: HTMLElement,
  width: number,
  hasSunspace: boolean,
  system: UnitSystem,
  limits: Limits,
  onHour: (hour: number) => void,
  shownHour: () => number | null,
): uPlot.Options {
  const colour = (role: ScreenColour) => screenColour(host, role);
  const { fontSize, fontFamily } = getComputedStyle(host);
  const font = `${fontSize} ${fontFamily}`;
  const grid = { stroke: colour('--rule'), width: 1 };
  const axis = { stroke: colour('--ink-soft'), font, grid, ticks: { show: false } };
  const temperature = unitOf('temperature', system).sign;
  const series: uPlot.Series[] = [
    {},
    {
      label: 'sun',
      scale: 'sun',
      stroke: colour('--sun-line'),
      fill: colour('--sun-fill'),
      width: 0,
      points: { show: false },
    },
    {
      label: 'outdoors',
      scale: 't',
      stroke: colour('--sky-deep'),
      width: 1.2,
      dash: [5, 3],
      points: { show: false },
    },
    { label: 'rooms', scale: 't', stroke: colour('--ink'), width: 2.4, points: { show: false } },
  ];
  if (hasSunspace) {
    series.splice(3, 0, {
      label: 'sunspace',
      scale: 't',
      stroke: colour('--clay'),
      width: 1.6,
      points: { show: false },
    });
  }
  return {
    width,
    height: HEIGHT_PX,
    legend: { show: false },
    cursor: { drag: { x: false, y: false }, points: { size: 7 } },
    scales: { x: { time: false }, sun: { range: (_, __, most) => [0, Math.max(most * 2.2, 1)] }, t: {} },
    axes: [
      {
        ...axis,
        splits: (_, __, min, max) => dayStarts(min, max),
        values: (_, splits) => splits.map((hour) => shortDay(hour, width)),
        gap: 4,
      },
      {
        ...axis,
        scale: 't',
        size: 46,
        values: (_, splits) =>
          splits.map((t, i) => `${t}${i === splits.length - 1 ? ` ${temperature}` : ''}`.replace('-', '−')),
      },
    ],
    series,
    hooks: {
      setCursor: [
        (chart) => {
          const index = chart.cursor.idx;
          if (index !== null && index !== undefined && chart.cursor.event) onHour(chart.data[0][index]!);
        },
      ],
      draw: [(chart) => hourLine(chart, shownHour(), colour('--ink-soft'))],
      drawAxes: [(chart) => limitLines(chart, limits, colour('--clay'), colour('--sky-deep'), system)],
    },
  };
}

/** Where the section's hour is, when it is in this week. */
function hourLine(chart: uPlot, hour: number | null, stroke: string): void {
  const [first, last] = [chart.data[0][0]!, chart.data[0].at(-1)!];
  if (hour === null || hour < first || hour > last) return;
  const { ctx, bbox } = chart;
  const x = chart.valToPos(hour, 'x', true);
  ctx.save();
  ctx.strokeStyle = stroke;
  ctx.lineWidth = 1;
  ctx.beginPath();
  ctx.moveTo(x, bbox.top);
  ctx.lineTo(x, bbox.top + bbox.height);
  ctx.stroke();
  ctx.restore();
}

/** Thin lines where too hot and too cold begin. */
function limitLines(
  chart: uPlot,
  { coldC, hot }: Limits,
  hotStroke: string,
  coldStroke: string,
  system: UnitSystem,
): void {
  const { factor, offset } = unitOf('temperature', system);
  const { ctx, bbox } = chart;
  const hours = chart.data[0];
  const limits = hot();
  for (const [values, stroke] of [
    [limits, hotStroke],
    [limits.map(() => coldC * factor + offset), coldStroke],
  ] as const) {
    ctx.save();
    ctx.strokeStyle = stroke;
    ctx.lineWidth = 1;
    ctx.setLineDash([2, 4]);
    ctx.beginPath();
    let isDrawing = false;
    for (const [i, value] of values.entries()) {
      const y = Number.isFinite(value) ? chart.valToPos(value, 't', true) : Number.NaN;
      const isInside = y >= bbox.top && y <= bbox.top + bbox.height;
      const x = chart.valToPos(hours[i]!, 'x', true);
      if (isInside && isDrawing) ctx.lineTo(x, y);
      else if (isInside) ctx.moveTo(x, y);
      isDrawing = isInside;
    }
    ctx.stroke();
    ctx.restore();
  }
}

function dayStarts(min: number, max: number): number[] {
  const starts: number[] = [];
  for (let hour = Math.ceil(min / 24) * 24; hour <= max; hour += 24) starts.push(hour);
  return starts;
}

function shortDay(hour: number, width: number): string {
  const [day, month] = dayText(hour % 8760).split(' ');
  return width < 480 ? `${day}` : `${day} ${month!.slice(0, 3)}`;
}
