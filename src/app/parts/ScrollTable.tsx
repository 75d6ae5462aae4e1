// A table that may be wider than its place: it scrolls by finger, mouse and, since it takes the focus, by keyboard.

import type { ComponentChildren } from 'preact';

export function ScrollTable({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard (WCAG 2.1.1)
    <section class="table-scroll" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
