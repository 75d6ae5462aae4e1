// The whole year as hours × days: one column a day, midnight at the bottom, noon in the middle. Pointing at it, or
// the arrow keys, puts the section at that hour. Colours have a legend with numbers; the hour under the pointer is
// told in words.

import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { HOURS, MONTH_START_HOUR } from '../../weather/typical-year.ts';
import { ColourKey } from '../parts/ColourKey.tsx';
import { hourText, MONTH_SHORT } from '../parts/calendar-words.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { onScreen } from '../parts/screen-scale.ts';
import { useWorkspace } from '../state/session-context.ts';
import { useChartAnswer } from './chart-turns.ts';
import { paintYear } from './YearPicture.tsx';
import { type LayerId, layerChoices, type YearLayer, yearLayer } from './year-layers.ts';

const DAYS = 365;

/** @param beside what shows the hour that is pointed at */
export function YearMap({ beside }: { beside: ComponentChildren }) {
  const workspace = useWorkspace();
  const [wanted, setWanted] = useState<LayerId | null>(null);
  const ref = useRef<HTMLElement>(null);
  const answer = useChartAnswer(ref, 'at once');
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  if (!answer || climate.state !== 'ready') return <section ref={ref} class="chart" />;
  const choices = layerChoices(answer.year, answer.job.design);
  const id = choices.some((choice) => choice.id === wanted) ? wanted! : choices[0]!.id;
  const onPaper = yearLayer(id, answer.year, climate.year, answer.job.design, system);
  const layer = { ...onPaper, scale: onScreen(onPaper.scale) };
  return (
    <section ref={ref} class="chart" aria-labelledby="year-title">
      <div class="chart-head">
        <h2 id="year-title">The year, hour by hour</h2>
        <div class="chips" role="radiogroup" aria-label="Shown in the year map">
          {choices.map((choice) => (
            <label key={choice.id} class="chip">
              <input
                type="radio"
                name="year-layer"
                checked={choice.id === id}
                onChange={() => setWanted(choice.id)}
              />
              <span>{choice.label}</span>
            </label>
          ))}
        </div>
      </div>
      <p class="chart-sentence">{layer.sentence}</p>
      <div class="map-and-section">
        <div>
          <MapCanvas layer={layer} system={system} />
          <ColourKey {...layer} system={system} />
        </div>
        {beside}
      </div>
    </section>
  );
}

function MapCanvas({ layer, system }: { layer: YearLayer; system: UnitSystem }) {
  const workspace = useWorkspace();
  const canvas = useRef<HTMLCanvasElement>(null);
  const hour = workspace.hour.value;
  useEffect(() => {
    if (canvas.current) paintYear(canvas.current, layer.hours, layer.scale);
  }, [layer.hours, layer.scale]);

  const pointAt = (event: PointerEvent) => {
    const rect = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const day = Math.floor(((event.clientX - rect.left) / rect.width) * DAYS);
    const clock = 23 - Math.floor(((event.clientY - rect.top) / rect.height) * 24);
    if (day < 0 || day >= DAYS || clock < 0 || clock > 23) return;
    workspace.hour.value = day * 24 + clock;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') {
      workspace.hour.value = null;
      return;
    }
    const step = { ArrowUp: 1, ArrowDown: -1, ArrowRight: 24, ArrowLeft: -24, PageUp: 720, PageDown: -720 }[
      event.key
    ];
    if (step === undefined) return;
    event.preventDefault();
    workspace.hour.value = ((hour ?? 12) + step + HOURS) % HOURS;
  };
  const value =
    hour === null
      ? ''
      : `${hourText(hour)}: ${quantityText(layer.hours[hour]!, layer.quantity, system, layer.digits)}`;

  return (
    <>
      <div class="map-grid">
        <div class="map-clock" aria-hidden="true">
          <span>24 h</span>
          <span>18</span>
          <span>12</span>
          <span>6</span>
          <span>0</span>
        </div>
        <div
          class="map-field"
          role="slider"
          tabIndex={0}
          aria-label={`Hour of the year. ${layer.sentence}`}
          aria-valuemin={0}
          aria-valuemax={HOURS - 1}
          aria-valuenow={hour ?? 12}
          aria-valuetext={value || 'no hour chosen'}
          onPointerDown={pointAt}
          onPointerMove={(event) => {
            if (event.pointerType === 'mouse' || event.buttons > 0) pointAt(event);
          }}
          onKeyDown={onKeyDown}
        >
          <canvas ref={canvas} width={DAYS} height={24} />
          {hour !== null && (
            <span
              class="map-mark"
              style={{
                left: `${((Math.floor(hour / 24) + 0.5) / DAYS) * 100}%`,
                top: `${((23 - (hour % 24) + 0.5) / 24) * 100}%`,
              }}
            />
          )}
        </div>
        <div class="map-months" aria-hidden="true">
          {MONTH_SHORT.map((name, month) => (
            <span key={name} style={{ left: `${(MONTH_START_HOUR[month]! / HOURS) * 100}%` }}>
              {name}
            </span>
          ))}
        </div>
      </div>
      <p class="map-reading" aria-hidden="true">
        {value || 'Point at an hour to see the section at that hour.'}
      </p>
    </>
  );
}
