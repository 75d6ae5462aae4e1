// The climate the design stands in: at a glance, made hotter, or made from monthly normals. What it shows is fetched
// when it is first opened.

import { useState } from 'preact/hooks';
import type * as Sheet from './ClimateSheet.tsx';

const ID = 'climate';
/** What is above and in it has come by then [ms]. */
const FILLING_MS = 3000;

/** Opens the panel and brings it into view, again as it and the charts above it fill, until the person moves on. */
export function openClimate(): void {
  const panel = document.getElementById(ID);
  if (!(panel instanceof HTMLDetailsElement)) return;
  panel.open = true;
  panel.querySelector('summary')?.focus({ preventScroll: true });
  const follow = new ResizeObserver(() => panel.scrollIntoView({ block: 'start' }));
  follow.observe(document.body);
  const rest = new AbortController();
  const stop = () => {
    follow.disconnect();
    rest.abort();
  };
  for (const kind of ['wheel', 'touchstart', 'pointerdown', 'keydown'])
    window.addEventListener(kind, stop, { passive: true, signal: rest.signal });
  setTimeout(stop, FILLING_MS);
}

export function ClimatePanel() {
  const [sheet, setSheet] = useState<typeof Sheet | null>(null);
  const open = (event: Event) => {
    if (!(event.currentTarget as HTMLDetailsElement).open || sheet) return;
    void import('./ClimateSheet.tsx').then((loaded) => setSheet(loaded));
  };
  return (
    <details class="climate-panel" id={ID} onToggle={open}>
      <summary>
        <h2>The climate</h2>
      </summary>
      {sheet ? <sheet.ClimateSheet /> : <p>Fetching the climate…</p>}
    </details>
  );
}
