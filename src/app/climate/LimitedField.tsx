// A number typed into a field: it takes effect as soon as it is a number within its limits; otherwise the limits are
// said and nothing changes.

import { useId, useState } from 'preact/hooks';
import { type ShownQuantity, toShown, toSi, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { numberText, typedNumber } from '../parts/number-text.ts';

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
  readonly onChange: (value: number) => void;
}

export function LimitedField(props: LimitedFieldProps) {
  const { name, label, quantity, value, min, max, whole, system, disabled, onChange } = props;
  const [typing, setTyping] = useState<string | null>(null);
  const id = useId();
  const shown = (si: number) => numberText(toShown(si, quantity, system), whole ? 0 : 1);
  const siOf = (text: string) => {
    const typed = typedNumber(text);
    return typed === null ? null : Number(toSi(typed, quantity, system).toFixed(4));
  };
  const isSound = (si: number | null): si is number =>
    si !== null && si >= min && si <= max && (!whole || Number.isInteger(si));
  const wrong = typing !== null && !isSound(siOf(typing));
  const limits = `${shown(min)} to ${shown(max)} ${unitOf(quantity, system).sign}`.trim();
  return (
    <label class={`limited-field${wrong ? ' is-wrong' : ''}`}>
      {label}
      <input
        type="text"
        inputMode="decimal"
        data-field={name}
        disabled={disabled}
        value={typing ?? shown(value)}
        aria-invalid={wrong}
        aria-describedby={id}
        onInput={(event) => {
          const text = event.currentTarget.value;
          setTyping(text);
          const si = siOf(text);
          if (isSound(si) && si !== value) onChange(si);
        }}
        onBlur={() => setTyping(null)}
      />
      <small id={id}>{wrong ? `Give a${whole ? ' whole' : ''} number from ${limits}` : limits}</small>
    </label>
  );
}
