// The width an element has, followed as it changes. In: nothing. Out: a ref to put on the element and its width in
// CSS pixels, null until it is laid out.

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Width of an element, watched. */
export function useElementWidth<T extends Element>(): { ref: RefObject<T | null>; width: number | null } {
  const ref = useRef<T>(null);
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => setWidth(Math.round(element.getBoundingClientRect().width));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}
