// A menu with its name before it: options in, the value chosen out.

import { useId } from 'preact/hooks';

interface LabelledMenuProps {
  readonly label: string;
  /** what scripts know it by, as data attributes */
  readonly known: Readonly<Record<`data-${string}`, string>>;
  readonly value: string;
  readonly options: readonly (readonly [value: string, label: string])[];
  readonly choose: (value: string) => void;
}

export function LabelledMenu({ label, known, value, options, choose }: LabelledMenuProps) {
  const id = useId();
  return (
    <div class="input input-choice">
      <label class="input-label" for={id}>
        {label}
      </label>
      <select id={id} {...known} value={value} onChange={(event) => choose(event.currentTarget.value)}>
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
