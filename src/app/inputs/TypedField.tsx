// A field to type a number in: its name before it, its unit behind. What is typed, and what becomes of it, is the caller's.

import type { ComponentChildren, InputHTMLAttributes } from 'preact';

interface TypedFieldProps {
  readonly id: string;
  readonly label: string;
  /** unit as a sign; null where it is typed with the number, and the field is the wider */
  readonly sign: string | null;
  /** attributes of the field itself */
  readonly field: InputHTMLAttributes<HTMLInputElement> &
    Readonly<Record<`data-${string}`, string | undefined>>;
  /** said of the unit to who does not see the sign */
  readonly children?: ComponentChildren;
}

export function TypedField({ id, label, sign, field, children }: TypedFieldProps) {
  return (
    <>
      <label class="input-label" for={id}>
        {label}
      </label>
      <span class="input-field">
        <input
          id={id}
          class={`input-text${sign === null ? ' is-wide' : ''}`}
          type="text"
          autocomplete="off"
          {...field}
        />
        {sign !== null && (
          <span class="input-unit" aria-hidden="true">
            {sign}
          </span>
        )}
        {children}
      </span>
    </>
  );
}
