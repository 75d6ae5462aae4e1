// Marks as SVG. In: marks in metres and a frame. Out: polygons, lines, dots and words in pixels, rounded to a tenth.

import type { JSX } from 'preact';
import type { Mark } from './mark.ts';
import type { SectionFrame } from './section-frame.ts';
import type { Point } from './section-shape.ts';

/** Where a point of the drawing lies on the screen. */
type Placing = Pick<SectionFrame, 'toPx'>;

export function MarkLayer({ marks, frame }: { marks: readonly Mark[]; frame: Placing }): JSX.Element {
  return <>{marks.map((mark, i) => markElement(mark, frame, i))}</>;
}

function markElement(mark: Mark, frame: Placing, key: number): JSX.Element {
  const className = mark.role;
  switch (mark.kind) {
    case 'area':
      return (
        <polygon
          key={key}
          class={className}
          points={path(mark.points, frame)}
          {...(mark.fill === undefined ? {} : { style: { fill: mark.fill } })}
        />
      );
    case 'line':
      return <polyline key={key} class={className} points={path(mark.points, frame)} />;
    case 'dot': {
      const { x, y } = frame.toPx(mark.at);
      return <circle key={key} class={className} cx={tenth(x)} cy={tenth(y)} r={mark.radiusPx} />;
    }
    case 'word': {
      const { x, y } = frame.toPx(mark.at);
      return (
        <text key={key} class={className} x={tenth(x)} y={tenth(y)} text-anchor={mark.anchor}>
          {mark.text}
        </text>
      );
    }
  }
}

function path(points: readonly Point[], frame: Placing): string {
  return points
    .map((at) => {
      const { x, y } = frame.toPx(at);
      return `${tenth(x)},${tenth(y)}`;
    })
    .join(' ');
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
