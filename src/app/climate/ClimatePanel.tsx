// The climate the design stands in: at a glance, made hotter, or made from monthly normals. What it shows is fetched
// when it is first opened.

import { useState } from 'preact/hooks';
import type * as Sheet from './ClimateSheet.tsx';

const ID = 'climate';

/** Opens the panel and brings it into view. */
export function openClimate(): void {
  const panel = document.getElementById(ID);
  if (!(panel instanceof HTMLDetailsElement)) return;
  panel.open = true;
  panel.querySelector('summary')?.focus({ preventScroll: true });
  panel.scrollIntoView({ block: 'start' });
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
