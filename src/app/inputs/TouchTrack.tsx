// What a finger touches of a slider. The first stretch of its way decides: across moves the number, up or down scrolls the
// page and leaves the number alone for the rest of that touch. Nothing jumps to where the finger landed, and a touch the
// browser takes back leaves the number as it was.

import { useRef } from 'preact/hooks';
import { firstWay } from '../parts/first-way.ts';

interface TouchTrackProps {
  /** The finger has gone so far, as a share of the slider's length, since it landed. */
  readonly onMove: (share: number, gesture: string) => void;
  readonly onCancel: (gesture: string) => void;
  readonly name: string;
}

interface Touch {
  readonly gesture: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  isDrag: boolean;
}

export function TouchTrack({ onMove, onCancel, name }: TouchTrackProps) {
  const touch = useRef<Touch | null>(null);
  return (
    <div
      class="track-touch"
      aria-hidden="true"
      data-touch={name}
      onPointerDown={(event) => {
        touch.current = {
          gesture: `slide ${name} ${event.timeStamp}`,
          x: event.clientX,
          y: event.clientY,
          width: event.currentTarget.clientWidth,
          isDrag: false,
        };
      }}
      onPointerMove={(event) => {
        const at = touch.current;
        if (!at) return;
        const dx = event.clientX - at.x;
        if (!at.isDrag) {
          const way = firstWay(dx, event.clientY - at.y);
          if (way === null) return;
          if (way === 'up') {
            touch.current = null;
            return;
          }
          at.isDrag = true;
          event.currentTarget.setPointerCapture(event.pointerId);
        }
        onMove(dx / at.width, at.gesture);
      }}
      onPointerUp={() => {
        touch.current = null;
      }}
      onPointerCancel={() => {
        if (touch.current?.isDrag) onCancel(touch.current.gesture);
        touch.current = null;
      }}
      // Some browsers turn to scrolling when a finger drifts up in the middle of a drag.
      onTouchMove={(event) => {
        if (touch.current?.isDrag && event.cancelable) event.preventDefault();
      }}
    />
  );
}
