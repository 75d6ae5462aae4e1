// The width an element has, followed as it changes. In: nothing. Out: a ref to put on the element and its width in
// CSS pixels, null until it is laid out.

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Width of an element, watched. */
export function useElementWidth<T extends HTMLElement>(): { ref: RefObject<T | null>; width: number | null } {
  const ref = useRef<T>(null);
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const wide = Math.round(element.getBoundingClientRect().width);
      // What is hidden for a while keeps the width it had.
      if (wide > 0 || element.offsetParent !== null) setWidth(wide);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}
