// A question that comes up by itself, after a file was dropped somewhere on the page, is brought before the person: its
// title scrolls into view and takes the focus, so that it is read aloud.

import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Put the ref on the title; it needs tabIndex −1. */
export function useArrival<T extends HTMLElement>(): RefObject<T | null> {
  const title = useRef<T>(null);
  useEffect(() => {
    title.current?.focus({ preventScroll: true });
    title.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return title;
}
