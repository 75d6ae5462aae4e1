// The map of glass and mass: overheated hours as shades and lines of equal value, the limit drawn strong, the design
// as it stands marked. A click, or the two lists under the map, moves the design there.

import { useState } from 'preact/hooks';
import type { GlassMassMap } from '../../questions/glass-mass-grid.ts';
import { niceScale, tidy } from './answer-chart.ts';

const WIDTH = 560;
const HEIGHT = 400;
const FRAME = { left: 56, right: WIDTH - 12, top: 12, bottom: HEIGHT - 44 };

export function AnswerMap({
  map,
  onMove,
}: {
  map: GlassMassMap;
  onMove: (glassM2: number, massM2: number) => void;
}) {
  const [glass, setGlass] = useState(map.glassM2[0]!);
  const [mass, setMass] = useState(map.massM2[0]!);
  const side = map.glassM2.length;
  const mostGlass = map.glassM2.at(-1)!;
  const mostMass = map.massM2.at(-1)!;
  const atX = (m2: number) => FRAME.left + (m2 / mostGlass) * (FRAME.right - FRAME.left);
  const atY = (m2: number) => FRAME.bottom - (m2 / mostMass) * (FRAME.bottom - FRAME.top);
  const field = map.filled;
  const most = field === null ? 1 : Math.max(...field, 1);
  const cellW = (FRAME.right - FRAME.left) / (side - 1);
  const cellH = (FRAME.bottom - FRAME.top) / (side - 1);
  const isFarRight = map.drawn.glassM2 > 0.8 * mostGlass;
  const click = (event: MouseEvent) => {
    const svg = event.currentTarget as SVGSVGElement;
    const box = svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * WIDTH;
    const y = ((event.clientY - box.top) / box.height) * HEIGHT;
    const within = (share: number) => Math.min(1, Math.max(0, share));
    const glassM2 = within((x - FRAME.left) / (FRAME.right - FRAME.left)) * mostGlass;
    const massM2 = within((FRAME.bottom - y) / (FRAME.bottom - FRAME.top)) * mostMass;
    onMove(Math.round(glassM2 * 10) / 10, Math.round(massM2));
  };
  return (
    <div class="answer-map">
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the lists and button below do the same by keyboard */}
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label="Overheated hours by glass and mass"
        onClick={click}
      >
        {field?.map((hours, i) => {
          const [row, column] = [Math.floor(i / side), i % side];
          const x = atX(map.glassM2[column]!) - cellW / 2;
          const y = atY(map.massM2[row]!) - cellH / 2;
          const key = `${row} ${column}`;
          return (
            <rect
              key={key}
              class="answer-cell"
              x={x}
              y={y}
              width={cellW + 0.5}
              height={cellH + 0.5}
              fill-opacity={0.85 * Math.sqrt(hours / most)}
            />
          );
        })}
        {map.lines.map((line) =>
          line.paths.map((path, p) => {
            const middle = path[Math.floor(path.length / 2)]!;
            return (
              <g
                key={`${line.hours} ${path[0]!.join(' ')}`}
                class={line.kind === 'limit' ? 'answer-limit' : 'answer-level'}
              >
                <polyline
                  points={path.map(([g, m]) => `${atX(g).toFixed(1)},${atY(m).toFixed(1)}`).join(' ')}
                />
                {p === 0 && (
                  <text x={atX(middle[0])} y={atY(middle[1]) - 3} text-anchor="middle">
                    {line.hours} h{line.kind === 'limit' ? ' limit' : ''}
                  </text>
                )}
              </g>
            );
          }),
        )}
        <g class="answer-drawn">
          <circle cx={atX(map.drawn.glassM2)} cy={atY(map.drawn.massM2)} r={6} />
          <text
            x={atX(map.drawn.glassM2) + (isFarRight ? -9 : 9)}
            y={atY(map.drawn.massM2) + 4}
            text-anchor={isFarRight ? 'end' : 'start'}
          >
            as drawn
          </text>
        </g>
        {niceScale(0, mostGlass, 6)
          .ticks.filter((value) => value <= mostGlass)
          .map((value) => (
            <text key={value} x={atX(value)} y={FRAME.bottom + 16} text-anchor="middle">
              {tidy(value)}
            </text>
          ))}
        {niceScale(0, mostMass, 5)
          .ticks.filter((value) => value <= mostMass)
          .map((value) => (
            <text key={value} x={FRAME.left - 6} y={atY(value) + 4} text-anchor="end">
              {tidy(value)}
            </text>
          ))}
        <text x={(FRAME.left + FRAME.right) / 2} y={HEIGHT - 8} text-anchor="middle">
          equator-facing glass, m² (up: extra mass, m² of face)
        </text>
      </svg>
      <div class="answer-move">
        <label>
          Glass{' '}
          <select value={String(glass)} onChange={(event) => setGlass(Number(event.currentTarget.value))}>
            {map.glassM2.map((value) => (
              <option key={value} value={String(value)}>
                {tidy(value)} m²
              </option>
            ))}
          </select>
        </label>
        <label>
          Mass{' '}
          <select value={String(mass)} onChange={(event) => setMass(Number(event.currentTarget.value))}>
            {map.massM2.map((value) => (
              <option key={value} value={String(value)}>
                {tidy(value)} m²
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={() => onMove(glass, mass)}>
          Move the design there
        </button>
      </div>
    </div>
  );
}
