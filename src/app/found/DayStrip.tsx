// Days painted as shut, as away, or as not known: by a stroke of the mouse or a finger, or by keyboard, where the arrows walk,
// Space paints and Shift with an arrow paints on. What a day is stands in it as a word; colour only helps.

import { useRef, useState } from 'preact/hooks';
import type { ToldDay } from './brought.ts';
import type { Day } from './days.ts';

export type Brush = ToldDay | null;

const BRUSHES: readonly (readonly [string, Brush, string])[] = [
  ['shut', 'shut', 'Shut: windows, vents and the sunspace’s door stayed shut, but for what a diary says'],
  ['away', 'away', 'Away: nobody at home, and all shut'],
  ['unknown', null, 'Not known: opened as people do'],
];
const WORDS: Readonly<Record<ToldDay, string>> = { shut: 'shut', away: 'away' };

export interface DayStripProps {
  readonly days: readonly Day[];
  readonly told: ReadonlyMap<number, ToldDay>;
  readonly paint: (days: readonly number[], what: Brush) => void;
}

export function DayStrip({ days, told, paint }: DayStripProps) {
  const [brush, setBrush] = useState<Brush>('shut');
  const [at, setAt] = useState(0);
  const strip = useRef<HTMLFieldSetElement>(null);
  const stroke = useRef<number | null>(null);
  const here = Math.min(at, days.length - 1);

  const paintOver = (from: number, to: number) => {
    const [first, last] = [Math.min(from, to), Math.max(from, to)];
    paint(
      days.slice(first, last + 1).map(({ startMs }) => startMs),
      brush,
    );
  };
  const walk = (to: number, isPainting: boolean) => {
    const next = Math.max(0, Math.min(days.length - 1, to));
    if (isPainting) paintOver(here, next);
    setAt(next);
    strip.current?.querySelector<HTMLButtonElement>(`[data-day="${next}"]`)?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const perRow = rowLength(strip.current);
    const steps: Readonly<Record<string, number>> = {
      ArrowLeft: -1,
      ArrowRight: 1,
      ArrowUp: -perRow,
      ArrowDown: perRow,
      Home: -here,
      End: days.length - 1 - here,
    };
    const step = steps[event.key];
    if (step === undefined) return;
    event.preventDefault();
    walk(here + step, event.shiftKey);
  };
  const dayUnder = (event: PointerEvent): number | null => {
    const under = document.elementFromPoint(event.clientX, event.clientY)?.closest('[data-day]');
    return under && strip.current?.contains(under) ? Number(under.getAttribute('data-day')) : null;
  };
  const onPointerDown = (event: PointerEvent) => {
    const day = dayUnder(event);
    if (day === null || event.button !== 0) return;
    // A press alone is a click, and paints then; a finger that scrolls the page paints nothing.
    stroke.current = day;
  };
  const onPointerMove = (event: PointerEvent) => {
    if (stroke.current === null) return;
    if (event.buttons === 0) {
      stroke.current = null;
      return;
    }
    const day = dayUnder(event);
    if (day === null || day === stroke.current) return;
    paintOver(stroke.current, day);
    stroke.current = day;
  };
  const end = () => {
    stroke.current = null;
  };
  return (
    <div class="day-strip">
      <fieldset class="chips">
        <legend>Paint days as</legend>
        {BRUSHES.map(([id, value, words]) => (
          <label key={id} class={`chip is-${id}`}>
            <input
              type="radio"
              name="day-brush"
              data-brush={id}
              checked={brush === value}
              onChange={() => setBrush(value)}
            />
            <span>{words}</span>
          </label>
        ))}
      </fieldset>
      <p>
        <button
          type="button"
          data-days="all"
          onClick={() =>
            paint(
              days.map(({ startMs }) => startMs),
              brush,
            )
          }
        >
          Paint all {days.length} days
        </button>
      </p>
      <fieldset
        ref={strip}
        class="day-cells"
        onKeyDown={onKeyDown}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={end}
        onPointerCancel={end}
      >
        <legend class="visually-hidden">
          Days of the record. Arrows walk, Space paints, Shift with an arrow paints on.
        </legend>
        {days.map(({ startMs, weekday, date }, i) => {
          const what = told.get(startMs);
          return (
            <button
              key={startMs}
              type="button"
              class={`day-cell is-${what ?? 'unknown'}`}
              data-day={i}
              data-told={what ?? 'unknown'}
              tabIndex={i === here ? 0 : -1}
              onFocus={() => setAt(i)}
              onClick={() => paintOver(i, i)}
            >
              <small>{weekday} </small>
              <b>{date} </b>
              <span aria-hidden={what === undefined}>{what === undefined ? '?' : WORDS[what]}</span>
              {what === undefined && <span class="visually-hidden">not known</span>}
            </button>
          );
        })}
      </fieldset>
    </div>
  );
}

/** Days that stand side by side. */
function rowLength(strip: HTMLElement | null): number {
  const cells = [...(strip?.querySelectorAll<HTMLElement>('[data-day]') ?? [])];
  const top = cells[0]?.offsetTop;
  const next = cells.findIndex((cell) => cell.offsetTop !== top);
  return next < 0 ? cells.length : next;
}
