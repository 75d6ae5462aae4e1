// A number of a list's entry, a cover's or a room's: typed, or left empty for the usual one where there is one. What is typed is a draft
// (state/number-draft.ts).

import { useId } from 'preact/hooks';
import { isOnTape, type ShownQuantity, unitOf } from '../parts/display-unit.ts';
import { fieldText, quantityText, typedQuantity } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import { useNumberDraft } from '../state/use-number-draft.ts';
import { TypedField } from './TypedField.tsx';

export interface EntryNumberProps {
  readonly name: string;
  readonly limit: { readonly label: string; readonly min: number; readonly max: number };
  readonly quantity: ShownQuantity;
  /** SI; undefined for the usual */
  readonly value: number | undefined;
  readonly change: (value: number | undefined, gesture: string) => void;
  /** a number there must be; empty is refused */
  readonly required?: true;
  /** what scripts know it by; a cover's field unless said */
  readonly known?: Readonly<Record<`data-${string}`, string>>;
}

export function EntryNumber({ name, limit, quantity, value, change, required, known }: EntryNumberProps) {
  const system = useWorkspace().units.value;
  const id = useId();
  const { sign, digits } = unitOf(quantity, system);
  const isTape = isOnTape(quantity, system);
  const shown = value === undefined ? '' : fieldText(value, quantity, system, digits);
  const siOf = (text: string) => {
    // What is typed as it stands there changes nothing.
    if (text.trim() === shown && value !== undefined) return value;
    const typed = typedQuantity(text, quantity, system);
    return typed === null ? null : Number(typed.toFixed(4));
  };
  const isSound = (si: number | null): si is number => si !== null && si >= limit.min && si <= limit.max;
  const read = (text: string): { readonly si: number | undefined } | null => {
    if (text.trim() === '' && !required) return { si: undefined };
    const si = siOf(text);
    return isSound(si) ? { si } : null;
  };
  const take = ({ si }: { readonly si: number | undefined }, gesture: string) => {
    if (si !== value) change(si, gesture);
  };
  const { text, refused, on } = useNumberDraft(name, { read, take });
  const limits = `${quantityText(limit.min, quantity, system)} to ${quantityText(limit.max, quantity, system)}${required ? '' : ', or nothing for the usual'}`;
  return (
    <div class={`input${refused ? ' is-wrong' : ''}`}>
      <TypedField
        id={`${id}-field`}
        label={limit.label}
        sign={isTape ? null : sign}
        field={{
          inputMode: isTape ? 'text' : 'decimal',
          ...(known ?? { 'data-cover-field': name }),
          placeholder: required ? '' : 'usual',
          value: text ?? shown,
          'aria-invalid': text !== null && read(text) === null,
          'aria-describedby': `${id}-limits`,
          ...on,
        }}
      />
      <span class="input-limits" id={`${id}-limits`}>
        {refused ? `Give a number from ${limits}` : limits}
      </span>
    </div>
  );
}
