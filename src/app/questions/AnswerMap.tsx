// The map of glass and mass: hours too hot as shades and lines of equal value, the limit drawn strong, the design
// as it stands marked. A click moves the design there; so do the arrow keys with Enter, and the two lists under it.

import { useState } from 'preact/hooks';
import type { GlassMassMap } from '../../questions/glass-mass-grid.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { tidy } from './answer-chart.ts';
import { cellWords, drawMap, MAP_FRAME, MAP_HEIGHT, MAP_WIDTH, nearest } from './answer-map.ts';
import { unitShown, valueShown } from './answer-units.ts';

/** Darkest shade, so that lines and words stay readable over it. */
const DARKEST = 0.6;
/** Cells from one key to the next: right, up. */
const MOVES: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, 5],
  PageDown: [0, -5],
  Home: [Number.NEGATIVE_INFINITY, 0],
  End: [Number.POSITIVE_INFINITY, 0],
};

interface AnswerMapProps {
  readonly map: GlassMassMap;
  readonly system: UnitSystem;
  readonly onMove: (glassM2: number, massM2: number) => void;
}

export function AnswerMap({ map, system, onMove }: AnswerMapProps) {
  const side = map.glassM2.length;
  const [column, setColumn] = useState(() => nearest(map.glassM2, map.drawn.glassM2));
  const [row, setRow] = useState(() => nearest(map.massM2, map.drawn.massM2));
  const [isPointedAt, setPointedAt] = useState(false);
  const drawing = drawMap(map, system);
  const { left, right, top, bottom } = MAP_FRAME;
  const { drawn, drawnLabel } = drawing;
  const words = cellWords(map, column, row, system);
  const move = () => onMove(map.glassM2[column]!, map.massM2[row]!);
  const click = (event: MouseEvent) => {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * MAP_WIDTH;
    const y = ((event.clientY - box.top) / box.height) * MAP_HEIGHT;
    const within = (share: number) => Math.min(1, Math.max(0, share));
    const glassM2 = within((x - left) / (right - left)) * map.glassM2.at(-1)!;
    const massM2 = within((bottom - y) / (bottom - top)) * map.massM2.at(-1)!;
    setColumn(nearest(map.glassM2, glassM2));
    setRow(nearest(map.massM2, massM2));
    onMove(Math.round(glassM2 * 10) / 10, Math.round(massM2));
  };
  const press = (event: KeyboardEvent) => {
    const step = MOVES[event.key];
    if (step) {
      setColumn(Math.min(side - 1, Math.max(0, column + step[0])));
      setRow(Math.min(side - 1, Math.max(0, row + step[1])));
    } else if (event.key === 'Enter' || event.key === ' ') move();
    else return;
    event.preventDefault();
  };
  const choices = (axis: readonly number[]) =>
    axis.map((value, i) => (
      <option key={value} value={String(i)}>
        {tidy(valueShown(value, 'm²', system))} {unitShown('m²', system).sign}
      </option>
    ));
  return (
    <div class="answer-map">
      <div
        class="answer-map-field"
        role="slider"
        tabIndex={0}
        aria-label="Hours too hot by glass and mass. Arrow keys go over the map, Enter moves the design there"
        aria-valuemin={0}
        aria-valuemax={side * side - 1}
        aria-valuenow={row * side + column}
        aria-valuetext={words}
        onClick={click}
        onKeyDown={press}
        onFocus={() => setPointedAt(true)}
        onBlur={() => setPointedAt(false)}
      >
        <svg viewBox={`0 0 ${MAP_WIDTH} ${MAP_HEIGHT}`} aria-hidden="true">
          {drawing.shades.map(({ depth, path }) => (
            <path key={depth} class="answer-cell" d={path} fill-opacity={DARKEST * depth} />
          ))}
          <rect
            class="answer-map-edge"
            x={left}
            y={top}
            width={right - left}
            height={bottom - top}
            fill="none"
          />
          {drawing.lines.map(({ line: { hours, kind }, points }) => (
            <g key={`${kind} ${hours}`} class={kind === 'limit' ? 'answer-limit' : 'answer-level'}>
              {points.map((path) => (
                <polyline key={path} points={path} />
              ))}
            </g>
          ))}
          {drawing.labels.map(({ x, y, text, kind }) => (
            <text key={text} class={`answer-map-label is-${kind}`} x={x} y={y} text-anchor="middle">
              {text}
            </text>
          ))}
          {isPointedAt && (
            <rect
              class="answer-cursor"
              x={drawing.atX(map.glassM2[column]!) - 9}
              y={drawing.atY(map.massM2[row]!) - 9}
              width={18}
              height={18}
            />
          )}
          <g class="answer-drawn">
            <circle cx={drawn.x} cy={drawn.y} r={6} />
            <text class="answer-map-label" x={drawnLabel.x} y={drawnLabel.y} text-anchor={drawnLabel.anchor}>
              {drawnLabel.text}
            </text>
          </g>
          {drawing.xTicks.map(({ at, text }) => (
            <text key={text} x={at} y={bottom + 18} text-anchor="middle">
              {text}
            </text>
          ))}
          {drawing.yTicks.map(({ at, text }) => (
            <text key={text} x={left - 6} y={at + 5} text-anchor="end">
              {text}
            </text>
          ))}
          <text x={(left + right) / 2} y={MAP_HEIGHT - 8} text-anchor="middle">
            {drawing.xTitle}
          </text>
        </svg>
      </div>
      {map.lines.length > 0 && <p class="answer-map-key">{drawing.key}</p>}
      <div class="answer-move">
        <label>
          Glass{' '}
          <select value={String(column)} onChange={(event) => setColumn(Number(event.currentTarget.value))}>
            {choices(map.glassM2)}
          </select>
        </label>
        <label>
          Mass{' '}
          <select value={String(row)} onChange={(event) => setRow(Number(event.currentTarget.value))}>
            {choices(map.massM2)}
          </select>
        </label>
        <button type="button" onClick={move}>
          Move the design there
        </button>
        <p class="answer-map-cell">{words}.</p>
      </div>
    </div>
  );
}
