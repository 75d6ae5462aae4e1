// Charts are drawn one at a time, each in a task of its own, and only while they are on screen, so that a drag is
// never held up by a chart. In: what each chart does when its turn comes. A chart asked for twice is drawn once.

import { effect } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { useWorkspace } from '../state/session-context.ts';

const waiting = new Set<() => void>();
let running = false;

function takeTurn(draw: () => void): void {
  waiting.add(draw);
  if (running) return;
  running = true;
  const next = () => {
    const [first] = waiting;
    if (!first) {
      running = false;
      return;
    }
    waiting.delete(first);
    first();
    setTimeout(next, 0);
  };
  setTimeout(next, 0);
}

/** Charts start to follow a little before they scroll into view. */
const MARGIN = '200px';

/**
 * The answer a chart should show: the newest one while the chart is on screen, the last one it showed while it is not.
 *
 * @param ref the chart's outer element
 * @param first whether the first answer is drawn at once, in sight or not, for a chart that keys reach without scrolling
 */
export function useChartAnswer(
  ref: RefObject<HTMLElement | null>,
  first: 'at once' | 'in sight' = 'in sight',
): NumberedAnswer | null {
  const { answer } = useWorkspace();
  const [shown, setShown] = useState<NumberedAnswer | null>(() => answer.peek());
  const seen = useRef(true);
  useEffect(() => {
    let isEmpty = first === 'at once';
    const draw = () => {
      if (answer.peek() !== null) isEmpty = false;
      setShown(answer.peek());
    };
    const ask = () => {
      if (seen.current || isEmpty) takeTurn(draw);
    };
    const stop = effect(() => {
      void answer.value;
      ask();
    });
    const observer = new IntersectionObserver(
      ([entry]) => {
        seen.current = entry?.isIntersecting ?? true;
        ask();
      },
      { rootMargin: MARGIN },
    );
    if (ref.current) observer.observe(ref.current);
    return () => {
      stop();
      observer.disconnect();
      waiting.delete(draw);
    };
  }, []);
  return shown;
}
