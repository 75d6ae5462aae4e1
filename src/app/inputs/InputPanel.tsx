// All inputs of a design, in groups that open and close. What has no meaning for the design is not shown.

import { useComputed } from '@preact/signals';
import { useWorkspace } from '../state/session-context.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { CoverList } from './CoverList.tsx';
import { INPUT_GROUPS, type InputGroup } from './input-groups.ts';
import { NumberInput } from './NumberInput.tsx';

export function InputPanel() {
  return (
    <section class="inputs" aria-labelledby="inputs-title">
      <h2 id="inputs-title" class="visually-hidden">
        What can be changed
      </h2>
      {INPUT_GROUPS.map((group) => (
        <Group key={group.id} group={group} />
      ))}
    </section>
  );
}

function Group({ group }: { group: InputGroup }) {
  const { design } = useWorkspace();
  const shown = useComputed(() =>
    group.entries.map(({ when }) => (!when || when(design.value) ? '1' : '0')).join(''),
  ).value;
  const entries = group.entries.filter((_, i) => shown[i] === '1');
  return (
    <details class="input-group" data-group={group.id} open={group.open}>
      <summary>{group.title}</summary>
      <div class="input-fields">
        {entries.map(({ path, kind }) =>
          kind === 'number' ? <NumberInput key={path} path={path} /> : <ChoiceInput key={path} path={path} />,
        )}
      </div>
      {group.id === 'covers' && <CoverList />}
    </details>
  );
}
