// A number typed into a field, as a draft that is taken when it is whole and within its limits (state/number-draft.ts).

import { useId } from 'preact/hooks';
import { type ShownQuantity, toShown, toSi, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { numberText, typedNumber } from '../parts/number-text.ts';
import { useNumberDraft } from '../state/use-number-draft.ts';

export interface LimitedFieldProps {
  readonly name: string;
  readonly label: string;
  readonly quantity: ShownQuantity;
  /** value and limits in SI */
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  readonly system: UnitSystem;
  /** it has no meaning now */
  readonly disabled: boolean;
  readonly onChange: (value: number, gesture: string) => void;
}

export function LimitedField(props: LimitedFieldProps) {
  const { name, label, quantity, value, min, max, whole, system, disabled, onChange } = props;
  const id = useId();
  const shown = (si: number) => numberText(toShown(si, quantity, system), whole ? 0 : 1);
  const siOf = (text: string) => {
    const typed = typedNumber(text);
    return typed === null ? null : Number(toSi(typed, quantity, system).toFixed(4));
  };
  const isSound = (si: number | null): si is number =>
    si !== null && si >= min && si <= max && (!whole || Number.isInteger(si));
  const read = (text: string) => {
    const si = siOf(text);
    return isSound(si) ? si : null;
  };
  const take = (si: number, gesture: string) => {
    if (si !== value) onChange(si, gesture);
  };
  const { text, refused, on } = useNumberDraft(name, { read, take });
  const limits = `${shown(min)} to ${shown(max)} ${unitOf(quantity, system).sign}`.trim();
  return (
    <label class={`limited-field${refused ? ' is-wrong' : ''}`}>
      {label}
      <input
        type="text"
        inputMode="decimal"
        data-field={name}
        disabled={disabled}
        value={text ?? shown(value)}
        aria-invalid={text !== null && read(text) === null}
        aria-describedby={id}
        {...on}
      />
      <small id={id}>{refused ? `Give a${whole ? ' whole' : ''} number from ${limits}` : limits}</small>
    </label>
  );
}
