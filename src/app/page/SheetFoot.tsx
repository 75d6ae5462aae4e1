// The foot of the sheet: where the weather is from and what the page does with what is typed into it.

import { bundledClimate, characterIn } from '../climate/bundled-climates.ts';
import { useWorkspace } from '../state/session-context.ts';

export function SheetFoot() {
  const { climate: of, units } = useWorkspace();
  const climate = of.value;
  const row = bundledClimate(climate.key);
  const year = climate.state === 'ready' ? climate.year : null;
  return (
    <footer class="sheet-foot">
      {year && (
        <p>
          Weather: {year.site.name}, {year.source}. {year.credit}. {row && characterIn(units.value, row)}
        </p>
      )}
      <p>
        Everything is computed in this browser; nothing is sent anywhere. A typical year is not next year:
        trust the difference between two designs more than any single figure. Your building code comes before
        this page.
      </p>
      <p>
        <a href="#trust">How far to trust it: what was checked, what is left out, what errors do</a>
      </p>
    </footer>
  );
}
