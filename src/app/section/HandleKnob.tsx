// One handle: a round knob that is dragged, or moved with the arrow keys (Shift for fine, Page for ten steps), and
// tells its figure while it moves. It is a slider to a screen reader. A finger has to set out along the handle's own
// line; one that sets out beside it, or that the browser takes back for scrolling, changes nothing.

import { useRef } from 'preact/hooks';
import { toShown, toSi, type UnitSystem } from '../parts/display-unit.ts';
import { isAlong } from '../parts/first-way.ts';
import { quantityText } from '../parts/number-text.ts';
import { type Handle, snapped, stepOf } from './handles.ts';
import type { Point } from './section-shape.ts';

export interface HandleKnobProps {
  readonly handle: Handle;
  readonly px: Point;
  readonly system: UnitSystem;
  readonly active: boolean;
  /** pointer position in the drawing's pixels */
  readonly toDrawing: (event: PointerEvent) => Point;
  readonly toMetres: (px: Point) => Point;
  readonly onShow: (shown: boolean) => void;
  readonly onStart: () => void;
  readonly onMove: (value: number, gesture: string) => void;
  readonly onEnd: () => void;
  readonly onCancel: (gesture: string) => void;
}

interface Drag {
  readonly gesture: string;
  readonly from: Point;
  readonly offset: Point;
  /** a finger has shown where it wants to go; a mouse need not */
  isUnderWay: boolean;
}

const KEY_STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
};

export function HandleKnob(props: HandleKnobProps) {
  const { handle, px, system, active } = props;
  const drag = useRef<Drag | null>(null);
  const text = quantityText(handle.value, handle.quantity, system);

  const onPointerDown = (event: PointerEvent) => {
    if (event.button !== 0) return;
    event.preventDefault();
    const target = event.currentTarget as SVGGElement;
    target.setPointerCapture(event.pointerId);
    target.focus();
    const at = props.toDrawing(event);
    drag.current = {
      gesture: `drag ${handle.id} ${event.timeStamp}`,
      from: at,
      offset: { x: at.x - px.x, y: at.y - px.y },
      isUnderWay: event.pointerType !== 'touch',
    };
    if (drag.current.isUnderWay) props.onStart();
  };
  const setsOutAlong = (at: Point, { from }: Drag) => {
    const valueAt = (dx: number, dy: number) =>
      handle.valueAt(props.toMetres({ x: px.x + dx, y: px.y + dy }));
    const line = { x: valueAt(1, 0) - valueAt(-1, 0), y: valueAt(0, 1) - valueAt(0, -1) };
    return isAlong({ x: at.x - from.x, y: at.y - from.y }, line);
  };
  const onPointerMove = (event: PointerEvent) => {
    if (!drag.current) return;
    const at = props.toDrawing(event);
    if (!drag.current.isUnderWay) {
      const along = setsOutAlong(at, drag.current);
      if (along === false) drag.current = null;
      if (!along || !drag.current) return;
      drag.current.isUnderWay = true;
      props.onStart();
    }
    const place = props.toMetres({ x: at.x - drag.current.offset.x, y: at.y - drag.current.offset.y });
    props.onMove(snapped(handle.valueAt(place), handle, system, event.shiftKey), drag.current.gesture);
  };
  const onPointerEnd = () => {
    if (!drag.current) return;
    drag.current = null;
    props.onEnd();
  };
  const onPointerCancel = () => {
    if (drag.current?.isUnderWay) props.onCancel(drag.current.gesture);
    onPointerEnd();
  };
  // Some browsers turn to scrolling when a finger drifts in the middle of a drag.
  const onTouchMove = (event: TouchEvent) => {
    if (drag.current?.isUnderWay && event.cancelable) event.preventDefault();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const value = valueByKey(event, handle, system);
    if (value === null) return;
    event.preventDefault();
    props.onMove(value, `keys ${handle.id}`);
  };

  return (
    <g
      class={`handle handle-${handle.axis}${active ? ' is-active' : ''}`}
      transform={`translate(${px.x.toFixed(1)} ${px.y.toFixed(1)})`}
      role="slider"
      tabIndex={0}
      aria-label={handle.label}
      aria-valuemin={rounded(toShown(handle.min, handle.quantity, system))}
      aria-valuemax={rounded(toShown(handle.max, handle.quantity, system))}
      aria-valuenow={rounded(toShown(handle.value, handle.quantity, system))}
      aria-valuetext={text}
      data-handle={handle.id}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerEnd}
      onPointerCancel={onPointerCancel}
      onTouchMove={onTouchMove}
      onKeyDown={onKeyDown}
      onPointerEnter={() => props.onShow(true)}
      onPointerLeave={() => props.onShow(false)}
      onFocus={() => props.onShow(true)}
      onBlur={() => props.onShow(false)}
    >
      <circle class="handle-reach" r={16} />
      <circle class="handle-knob" r={6} />
    </g>
  );
}

/** The value a key asks for; null for keys that are not the handle's. */
function valueByKey(event: KeyboardEvent, handle: Handle, system: UnitSystem): number | null {
  if (event.key === 'Home') return handle.min;
  if (event.key === 'End') return handle.max;
  const steps = KEY_STEPS[event.key];
  if (steps === undefined) return null;
  const step = stepOf(handle.quantity, system, event.shiftKey) * steps;
  const shown = toShown(handle.value, handle.quantity, system) + step;
  return snapped(toSi(shown, handle.quantity, system), handle, system, event.shiftKey);
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
