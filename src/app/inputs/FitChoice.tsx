// A number that is built smaller than asked for, since no more fits: what was asked, why it is not built, and the choice.
// It stands beside the number's field, and under the drawing for whoever changes the house there.

import { useComputed } from '@preact/signals';
import { quantityText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import { numberRange } from './number-range.ts';

export function FitChoice({ path, isNamed }: { path: string; isNamed: boolean }) {
  const workspace = useWorkspace();
  const note = useComputed(() => workspace.fitNotes.value.find((entry) => entry.path === path)).value;
  if (!note) return null;
  const { history, units } = workspace;
  const { label, quantity, digits } = numberRange(path, workspace.design.value, units.value);
  const say = (si: number) => quantityText(si, quantity, units.value, digits);
  return (
    <div class="input-fit" data-fit={path}>
      <p>
        {isNamed && `${label}: `}
        {say(note.was)} asked for, {say(note.now)} built. {note.reason} It comes back when there is room.
      </p>
      <p class="input-choices">
        <button type="button" data-settle={path} onClick={() => workspace.settle(path)}>
          Stay with {say(note.now)}
        </button>
        {history.canUndo.value && (
          <button type="button" onClick={() => history.undo()}>
            Undo the change
          </button>
        )}
      </p>
    </div>
  );
}

/** All that does not fit the house as it stands; read aloud as it comes. */
export function FitLines() {
  const { fitNotes } = useWorkspace();
  return (
    <div class="fit-lines" role="status">
      {fitNotes.value.map(({ path }) => (
        <FitChoice key={path} path={path} isNamed={true} />
      ))}
    </div>
  );
}
