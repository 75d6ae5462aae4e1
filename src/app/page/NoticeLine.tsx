// One line for what the person should know now: a climate that could not be loaded, a run that failed, a number that
// was drawn back to what fits. Read aloud when it changes.

import { limitOf } from '../../design/limits.ts';
import { useWorkspace } from '../state/workspace-context.ts';

export function NoticeLine() {
  const workspace = useWorkspace();
  const climate = workspace.climate.value;
  const lines = [
    ...(climate.state === 'failed' ? [climate.message] : []),
    ...(workspace.runFault.value === null
      ? []
      : [`This year could not be computed: ${workspace.runFault.value}`]),
    ...workspace.fitNotes.value.map((note) => `${limitOf(note.path).label} drawn back: ${note.reason}`),
  ];
  return (
    <div class="notices" role="status">
      {lines.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </div>
  );
}
