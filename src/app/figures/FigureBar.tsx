// On a narrow screen the four figures that matter most stay at the lower edge while numbers are changed further down.
// It repeats the figure panel, so it is not read out again.

import { quantityText } from '../parts/number-text.ts';
import { pricesChoice } from '../state/prices-choice.ts';
import { useWorkspace } from '../state/session-context.ts';
import { headlineFigures, inRun } from './headline-figures.ts';

const KEPT = [
  ['house-overheated', 'hot'],
  ['house-coldest', 'coldest'],
  ['house-humid', 'humid'],
  ['heating', 'heat'],
] as const;

export function FigureBar() {
  const workspace = useWorkspace();
  const shown = workspace.shown.value;
  const system = workspace.units.value;
  const preview = workspace.preview.value;
  if (!shown) return null;
  const figures = headlineFigures(shown.outcome, shown.design, system, pricesChoice.list.value);
  return (
    <div class="figure-bar" aria-hidden="true">
      {shown.design.hotter && <span class="figure-bar-mark">hotter year</span>}
      {KEPT.map(([id, label]) => {
        const figure = figures.find((entry) => entry.id === id);
        if (!figure) return null;
        const ghost = preview && inRun(id, preview.figures);
        return (
          <span key={id} class={`is-${figure.verdict}`}>
            <b class={ghost === null ? '' : 'figure-ghost'}>
              {ghost !== null && '→ '}
              {quantityText(ghost ?? figure.value, figure.quantity, system, figure.digits)}
            </b>
            <small>{label}</small>
          </span>
        );
      })}
    </div>
  );
}
