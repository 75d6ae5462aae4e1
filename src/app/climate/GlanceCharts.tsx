// The two pictures of a climate. Their numbers stand in the table below, so the drawings are not read out.

import type { ClimateSummary } from '../../weather/prepared/climate-summary.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';
import { toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { useElementWidth } from '../parts/element-width.ts';
import { numberText } from '../parts/number-text.ts';
import { bandField, sunField, type Tick } from './glance-shapes.ts';

const HEIGHT_PX = 170;
const LEFT_PX = 44;
const TOP_PX = 18;
const BELOW_PX = 20;
const PLANES = ['level ground', 'upright to the equator', 'at 60° to the equator'] as const;

interface GlanceChartsProps {
  readonly summary: ClimateSummary;
  readonly system: UnitSystem;
  /** the sentence above the bars */
  readonly sun: string;
}

export function GlanceCharts({ summary, system, sun }: GlanceChartsProps) {
  const { ref, width } = useElementWidth<HTMLDivElement>();
  const inner = Math.max(120, (width ?? 0) - LEFT_PX);
  const degrees = (celsius: number) => toShown(celsius, 'temperature', system);
  const energy = (kWh: number) => toShown(kWh, 'energyPerArea', system);
  const air = bandField(
    summary.months.map((month) => ({
      high: degrees(month.meanDailyHighC),
      low: degrees(month.meanDailyLowC),
      highest: degrees(month.highestC),
      lowest: degrees(month.lowestC),
    })),
    inner,
    HEIGHT_PX,
  );
  const light = sunField(
    [
      summary.months.map(({ globalKWh }) => energy(globalKWh)),
      summary.months.map(({ upright90KWh }) => energy(upright90KWh)),
      summary.months.map(({ leaning60KWh }) => energy(leaning60KWh)),
    ],
    inner,
    HEIGHT_PX,
  );
  return (
    <div ref={ref} class="glance-charts">
      <ul class="cause-key" aria-hidden="true">
        <li>
          <i class="glance-band" /> mean night to mean day
        </li>
        <li>
          <i class="glance-whisker" /> lowest to highest
        </li>
      </ul>
      {width !== null && (
        <Frame inner={inner} ticks={air.ticks} sign={unitOf('temperature', system).sign}>
          <path class="glance-band" d={air.band} />
          {air.whiskers.map(({ x, top, bottom }, month) => (
            <line key={MONTH_SHORT[month]} class="glance-whisker" x1={x} x2={x} y1={top} y2={bottom} />
          ))}
        </Frame>
      )}
      <p class="chart-sentence">{sun}</p>
      <ul class="cause-key" aria-hidden="true">
        {PLANES.map((plane, i) => (
          <li key={plane}>
            <i class={`glance-plane-${i}`} /> {plane}
          </li>
        ))}
      </ul>
      {width !== null && (
        <Frame inner={inner} ticks={light.ticks} sign={unitOf('energyPerArea', system).sign}>
          {light.bars.map((bar) => (
            <rect
              key={`${bar.plane} ${bar.month}`}
              class={`glance-plane-${bar.plane}`}
              x={bar.x}
              y={bar.y}
              width={bar.width}
              height={bar.height}
            />
          ))}
        </Frame>
      )}
    </div>
  );
}

interface FrameProps {
  readonly inner: number;
  readonly ticks: readonly Tick[];
  readonly sign: string;
  readonly children: preact.ComponentChildren;
}

function Frame({ inner, ticks, sign, children }: FrameProps) {
  return (
    <svg width={inner + LEFT_PX} height={HEIGHT_PX + TOP_PX + BELOW_PX} aria-hidden="true">
      <g transform={`translate(${LEFT_PX} ${TOP_PX})`}>
        {ticks.map(({ value, y }) => (
          <g key={value}>
            <line class="bar-rule" x1={0} x2={inner} y1={y} y2={y} />
            <text class="bar-word" x={-6} y={y + 4} text-anchor="end">
              {numberText(value, Number.isInteger(value) ? 0 : 1)}
            </text>
          </g>
        ))}
        <text class="bar-word" x={2} y={-7}>
          {sign}
        </text>
        {children}
        {MONTH_SHORT.map((name, month) => (
          <text
            key={name}
            class="bar-word"
            x={((month + 0.5) * inner) / 12}
            y={HEIGHT_PX + 15}
            text-anchor="middle"
          >
            {inner < 420 ? name[0] : name}
          </text>
        ))}
      </g>
    </svg>
  );
}
