// On a narrow screen the four figures that matter most stay at the lower edge while numbers are changed further down.
// It repeats the figure panel, so it is not read out again.

import { quantityText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import { headlineFigures } from './headline-figures.ts';

const KEPT = [
  ['house-overheated', 'hot'],
  ['house-coldest', 'coldest'],
  ['house-humid', 'humid'],
  ['heating', 'heat'],
] as const;

export function FigureBar() {
  const workspace = useWorkspace();
  const answer = workspace.answer.value;
  const system = workspace.units.value;
  if (!answer) return null;
  const figures = headlineFigures(answer.outcome, answer.job.design, system);
  return (
    <div class="figure-bar" aria-hidden="true">
      {answer.job.design.hotter && <span class="figure-bar-mark">hotter year</span>}
      {KEPT.map(([id, label]) => {
        const figure = figures.find((entry) => entry.id === id);
        if (!figure) return null;
        return (
          <span key={id} class={`is-${figure.verdict}`}>
            <b>{quantityText(figure.value, figure.quantity, system, figure.digits)}</b>
            <small>{label}</small>
          </span>
        );
      })}
    </div>
  );
}
