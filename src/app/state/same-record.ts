// A computed record that stays the same object while its fields stay the same, so that a component which shows one
// number of the design is not drawn anew when another number changes.

import { useComputed } from '@preact/signals';
import { useRef } from 'preact/hooks';

/** The record made from signals; drawn anew only when a field differs. */
export function useSameRecord<T extends object>(make: () => T): T {
  const last = useRef<T | null>(null);
  return useComputed(() => {
    const next = make();
    if (last.current && sameFields(last.current, next)) return last.current;
    last.current = next;
    return next;
  }).value;
}

function sameFields<T extends object>(one: T, other: T): boolean {
  const keys = Object.keys(one) as (keyof T)[];
  return keys.length === Object.keys(other).length && keys.every((key) => Object.is(one[key], other[key]));
}
