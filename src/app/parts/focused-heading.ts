// A view that has come in another's place is read from its heading: the heading takes the focus once the view stands.

import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** For the heading of a view, with tabIndex −1. */
export function useFocusedHeading(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return heading;
}
