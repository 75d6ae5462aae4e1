// A logger's record and the house against it, filling while the match runs. Dots, dashes and words tell the lines apart;
// colour only helps. The same is told in numbers beneath.

import type { Target } from '../../matching/house-record.ts';
import { toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { useElementWidth } from '../parts/element-width.ts';
import { numberText } from '../parts/number-text.ts';
import { foundShapes } from './found-shapes.ts';
import type { Drawn } from './found-state.ts';

const HEIGHT = 240;

export function FoundPicture({ picture, system }: { picture: Drawn; system: UnitSystem }) {
  const { record } = picture.held;
  return (
    <div class="found-pictures">
      <ul class="found-key">
        <li class="is-measured">measured</li>
        <li class="is-found">the house as found</li>
        <li class="is-drawn">as drawn</li>
        <li class="is-yesterday">yesterday’s same hour</li>
        <li class="is-unseen">days it was not shown</li>
      </ul>
      {record.targets.map((target, t) => (
        <TargetPicture key={target.name} picture={picture} target={target} t={t} system={system} />
      ))}
    </div>
  );
}

interface TargetProps {
  readonly picture: Drawn;
  readonly target: Target;
  readonly t: number;
  readonly system: UnitSystem;
}

function TargetPicture({ picture: { held, drawn, readings }, target, t, system }: TargetProps) {
  const { ref, width } = useElementWidth<HTMLDivElement>();
  const isWarmth = target.kind === 'temperature';
  const shown = (column: Float64Array | undefined) =>
    column === undefined
      ? null
      : isWarmth
        ? column.map((value) => toShown(value, 'temperature', system))
        : column;
  const { record } = held;
  const shapes =
    width === null
      ? null
      : foundShapes(
          {
            period: record,
            utcOffsetH: record.weather.year.site.utcOffsetH,
            measured: shown(target.measured)!,
            drawn: shown(drawn?.[t]),
            found: shown(readings?.[t]),
            unseen: held.unseen[t]!,
          },
          width,
          HEIGHT,
        );
  const sign = isWarmth ? unitOf('temperature', system).sign : '%';
  return (
    <figure class="found-picture" ref={ref} style={{ minHeight: `${HEIGHT}px` }}>
      <figcaption>
        {target.name}, {isWarmth ? 'temperature' : 'humidity'} in {sign}
      </figcaption>
      {shapes && (
        <svg
          width={width!}
          height={HEIGHT}
          role="img"
          aria-label={`${target.name}: measured, as drawn and as found, hour by hour`}
          data-filled={readings === null ? 'no' : 'yes'}
        >
          {shapes.unseen.map(([from, to]) => (
            <rect
              key={from}
              class="found-unseen"
              x={from}
              width={to - from}
              y={shapes.plot.top}
              height={shapes.plot.foot - shapes.plot.top}
            />
          ))}
          {shapes.ticks.map(({ value, y }) => (
            <g key={value}>
              <line class="found-grid" x1={shapes.plot.left} x2={shapes.plot.right} y1={y} y2={y} />
              <text x={shapes.plot.left - 6} y={y + 4} text-anchor="end">
                {numberText(value, 0)}
              </text>
            </g>
          ))}
          {shapes.days.map(({ day, x, isNamed }) => (
            <g key={day.startMs}>
              <line class="found-grid" x1={x} x2={x} y1={shapes.plot.top} y2={shapes.plot.foot} />
              {isNamed && (
                <text x={x + 2} y={HEIGHT - 6}>
                  {day.date}
                </text>
              )}
            </g>
          ))}
          <path class="found-yesterday" d={shapes.yesterday} />
          <path class="found-drawn" d={shapes.drawn} />
          <path class="found-found" d={shapes.found} />
          <path class="found-measured" d={shapes.dots} />
        </svg>
      )}
    </figure>
  );
}
