// What is run for a design, as a component wants it: asked for when what it is of changes, dropped when late.

import { useEffect, useRef, useState } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import type { Design } from '../../design/design.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';

/** The newest run that is in. */
export interface NewestRun<K, T> {
  /** what it is of */
  readonly key: K;
  /** null where it failed */
  readonly result: T | null;
  /** whether it is of what is asked for now */
  readonly isCurrent: boolean;
}

/**
 * Something run once what it is of has come to rest, given up when that moves on.
 *
 * @param key what it is of; always of one length
 * @param isReady nothing is run before
 * @param restMs what it is of has not moved for so long when it begins [ms]; waiting to be ready counts
 * @param run may end early once the signal is aborted; what it then gives is dropped
 * @returns null while nothing is in
 */
export function useRunAtRest<const K extends readonly unknown[], T extends object>(
  key: K,
  isReady: boolean,
  restMs: number,
  run: (signal: AbortSignal) => Promise<T>,
): NewestRun<K, T> | null {
  const [found, setFound] = useState<{ readonly key: K; readonly result: T | null } | null>(null);
  const current = found?.key.every((part, i) => Object.is(part, key[i])) ? found : null;
  const movedAt = useRef(0);
  useEffect(() => {
    movedAt.current = performance.now();
  }, key);
  useEffect(() => {
    if (!isReady || current?.result) return;
    const stop = new AbortController();
    const settle = (result: T | null) => {
      if (!stop.signal.aborted) setFound({ key, result });
    };
    const rested = performance.now() - movedAt.current;
    const timer = setTimeout(
      () => run(stop.signal).then(settle, () => settle(null)),
      Math.max(0, restMs - rested),
    );
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [...key, isReady]);
  return found && { ...found, isCurrent: current !== null };
}

export type RunState<T> = T | 'running' | 'failed';

/**
 * Something run at once for the design of an answer, and to its end.
 *
 * @param answer null while there is none to ask about
 * @param year the climate it stands in
 */
export function useRunFor<T extends object>(
  answer: NumberedAnswer | null,
  year: TypicalYear | null,
  run: (design: Design, year: TypicalYear) => Promise<T>,
): RunState<T> {
  const design = answer?.job.design ?? null;
  const newest = useRunAtRest([design, year], design !== null && year !== null, 0, () => run(design!, year!));
  return newest?.isCurrent ? (newest.result ?? 'failed') : 'running';
}
